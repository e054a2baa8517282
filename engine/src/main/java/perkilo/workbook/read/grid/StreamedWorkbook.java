package perkilo.workbook.read.grid;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.workbook.schema.Schemas;

/**
 * Reads a workbook's values from beginning to end, without building the whole in memory: price lists get long.
 *
 * <p>It only vouches for ordinary workbooks. Whatever is out of the ordinary (formulas without saved values, links to
 * other workbooks, anything damaged or dangerous) is left to {@link WorkbookFile}, which opens the workbook as a whole
 * and knows what to say.
 */
final class StreamedWorkbook {

    private static final long MOST_INFLATED = 100;
    private static final long SMALL = 100_000;

    private final String file;
    private final ZipFile zip;
    private final XMLInputFactory factory = factory();
    private final List<Finding> findings = new ArrayList<>();

    private StreamedWorkbook(String file, ZipFile zip) {
        this.file = file;
        this.zip = zip;
    }

    /** The visible sheets of a workbook; empty where it has to be opened as a whole. */
    static Optional<Grids> read(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            return Optional.of(new StreamedWorkbook(String.valueOf(file.getFileName()), zip).read());
        } catch (IOException | XMLStreamException | RuntimeException outOfTheOrdinary) {
            return Optional.empty();
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory;
    }

    private Grids read() throws IOException, XMLStreamException {
        Outline outline = part("xl/workbook.xml", Outline::read);
        Map<String, String> targets = part("xl/_rels/workbook.xml.rels", StreamedWorkbook::targets);
        List<Cell> texts = has("xl/sharedStrings.xml") ? part("xl/sharedStrings.xml", SharedTexts::read) : List.of();
        NumberFormats formats = part("xl/styles.xml", NumberFormats::read);
        ScannedCells cells = new ScannedCells(texts, formats, outline.date1904);
        List<Grid> grids = new ArrayList<>();
        for (int at = 0; at < outline.sheets.size(); at++) {
            Sheet sheet = outline.sheets.get(at);
            String target = targets.get(sheet.id);
            if (target == null || !target.contains("worksheets/")) {
                throw new NotStreamableException("a sheet that is no worksheet");
            }
            if (outline.ours.contains(at)) {
                continue;
            }
            String part = target.startsWith("/") ? target.substring(1) : "xl/" + target;
            if (sheet.visible) {
                grids.add(grid(sheet.name, part, cells));
            } else if (part(part, SheetScan::hasRows)) {
                findings.add(HiddenParts.sheet(file, sheet.name));
            }
        }
        return new Grids(grids, findings);
    }

    private Grid grid(String name, String part, ScannedCells cells) throws IOException, XMLStreamException {
        SheetScan scan = part(part, xml -> {
            SheetScan reading = new SheetScan(xml, cells);
            reading.read();
            return reading;
        });
        if (!scan.hidden().isEmpty()) {
            findings.add(HiddenParts.rows(new Origin(file, name, ""), scan.hidden()));
        }
        return new Grid(file, name, name, scan.rows(), scan.merged(), new TreeMap<>(), false);
    }

    private boolean has(String part) {
        return zip.getEntry(part) != null;
    }

    private <T> T part(String name, PartReader<T> reader) throws IOException, XMLStreamException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new NotStreamableException("no part " + name);
        }
        long most = Math.max(SMALL, entry.getCompressedSize() * MOST_INFLATED);
        try (InputStream in = new LimitedStream(zip.getInputStream(entry), most)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in, "UTF-8");
            if (xml.next() == XMLStreamConstants.DTD) {
                throw new NotStreamableException("a DOCTYPE declaration");
            }
            return reader.read(xml);
        }
    }

    private static Map<String, String> targets(XMLStreamReader xml) throws XMLStreamException {
        Map<String, String> targets = new HashMap<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("Relationship")) {
                targets.put(xml.getAttributeValue(null, "Id"), xml.getAttributeValue(null, "Target"));
            }
        }
        return targets;
    }

    /** Reads one part. */
    private interface PartReader<T> {

        T read(XMLStreamReader xml) throws XMLStreamException;
    }

    /** One sheet as the workbook lists it. */
    private record Sheet(String name, String id, boolean visible) {}

    /** What the workbook says of itself. */
    private static final class Outline {

        private static final String STRICT = "http://purl.oclc.org/ooxml/";

        private final List<Sheet> sheets = new ArrayList<>();
        private final Set<Integer> ours = new HashSet<>();
        private boolean date1904;

        private static Outline read(XMLStreamReader xml) throws XMLStreamException {
            Outline outline = new Outline();
            do {
                if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
                    outline.element(xml);
                }
                xml.next();
            } while (xml.hasNext());
            return outline;
        }

        private void element(XMLStreamReader xml) {
            switch (xml.getLocalName()) {
                case "workbook" -> {
                    if (String.valueOf(xml.getNamespaceURI()).startsWith(STRICT)) {
                        throw new NotStreamableException("Strict Open XML");
                    }
                }
                case "workbookPr" -> {
                    String value = xml.getAttributeValue(null, "date1904");
                    date1904 = "1".equals(value) || "true".equals(value);
                }
                case "sheet" -> sheets.add(sheet(xml));
                case "definedName" -> {
                    String sheet = xml.getAttributeValue(null, "localSheetId");
                    if (Schemas.RESULT_MARK.equals(xml.getAttributeValue(null, "name")) && sheet != null) {
                        ours.add(Integer.parseInt(sheet));
                    }
                }
                case "externalReference" -> throw new NotStreamableException("links to other workbooks");
                default -> {}
            }
        }

        private static Sheet sheet(XMLStreamReader xml) {
            String id = relationship(xml);
            if (id == null) {
                throw new NotStreamableException("a sheet without a part");
            }
            String state = xml.getAttributeValue(null, "state");
            boolean visible = state == null || state.equals("visible");
            return new Sheet(xml.getAttributeValue(null, "name"), id, visible);
        }

        private static @Nullable String relationship(XMLStreamReader xml) {
            for (int at = 0; at < xml.getAttributeCount(); at++) {
                if (xml.getAttributeLocalName(at).equals("id") && xml.getAttributeNamespace(at) != null) {
                    return xml.getAttributeValue(at);
                }
            }
            return null;
        }
    }
}
