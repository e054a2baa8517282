package perkilo.xlsx.splice;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.xlsx.parts.PartNames;
import perkilo.xlsx.splice.WorkbookPart.LocalName;
import perkilo.xlsx.splice.WorkbookPart.Tab;

/** One run of setting sheets into a workbook. */
final class Grafting {

    private static final String LIKE_A_SHEET = "/xl/worksheets/sheet1.xml";

    private final BookPackage book;
    private final WorkbookPart workbook;
    private final OwnSheets own;
    private final Dialect dialect;
    private final ContentTypes types;
    private final WorkbookRelationships relationships;

    Grafting(BookPackage book, WorkbookPart workbook, OwnSheets own) throws IOException {
        this.book = book;
        this.workbook = workbook;
        this.own = own;
        this.dialect = workbook.dialect();
        this.types = ContentTypes.of(book);
        this.relationships = new WorkbookRelationships(book, workbook.part(), dialect);
    }

    void graft(Parts ours, Map<String, String> names, Set<String> given, Map<String, String> records, String subject)
            throws IOException {
        WorkbookPart oursWorkbook = WorkbookPart.of(ours);
        WorkbookRelationships oursRelationships = new WorkbookRelationships(ours, oursWorkbook.part(), dialect);
        PartGraft parts = new PartGraft(ours, book, types, dialect);
        String stylesPart = stylesPart();
        StyleMerge styles = new StyleMerge(
                ours.xml(only(oursRelationships.targets("styles"))),
                book.has(stylesPart) ? book.xml(stylesPart) : XmlParser.parse(defaultStyles()),
                StyleNumbers.usedIn(book));

        Map<String, String> partsOfEarlierRun = dropEarlierRun(parts, names);
        List<Integer> places = new ArrayList<>();
        for (Map.Entry<String, String> name : names.entrySet()) {
            String original = partOf(oursWorkbook, oursRelationships, name.getValue());
            String xml = dialect.translated(SheetXml.restyled(ours.xml(original), styles));
            places.add(place(name.getKey(), name.getValue(), original, xml, parts, partsOfEarlierRun));
        }
        book.put(stylesPart, styles.merged());
        finish();
        List<XmlElement> outdated = new ArrayList<>(LocalNames.outdated(workbook, places));
        outdated.addAll(ResultRecord.earlier(workbook));
        List<LocalName> added = localNames(oursWorkbook, names, places, given, records);
        if (!places.isEmpty()) {
            added.add(ResultRecord.of(book.sums(), workbook, subject, places.get(0)));
        }
        workbook.change(outdated, added);
        workbook.store(book);
    }

    private String stylesPart() {
        List<String> known = relationships.targets("styles");
        if (!known.isEmpty() && book.has(known.get(0))) {
            return known.get(0);
        }
        String part = PartNames.free("/xl/styles1.xml", book::has);
        types.add(part, DefaultStyles.TYPE);
        relationships.remove("styles");
        relationships.add("styles", part);
        return part;
    }

    private String defaultStyles() {
        return dialect.translated(DefaultStyles.XML);
    }

    /**
     * The parts of result sheets from an earlier run, by the names the sheets were built with; their contents have been
     * removed.
     */
    private Map<String, String> dropEarlierRun(PartGraft parts, Map<String, String> names) throws IOException {
        Map<String, String> earlier = new HashMap<>();
        for (String built : names.keySet()) {
            int place = own.placeOf(built);
            if (place >= 0) {
                String part = target(relationships, workbook.tabs().get(place));
                parts.dropWhatIsOnlyUsedBy(part);
                types.remove(part);
                earlier.put(built, part);
            }
        }
        return earlier;
    }

    private int place(
            String built,
            String name,
            String original,
            String xml,
            PartGraft parts,
            Map<String, String> partsOfEarlierRun)
            throws IOException {
        String earlier = partsOfEarlierRun.get(built);
        String part = earlier != null ? earlier : PartNames.free(LIKE_A_SHEET, book::has);
        parts.write(original, part, PartText.encoded(xml));
        return earlier != null ? own.placeOf(built) : workbook.add(new Tab(name, relationships.add("worksheet", part)));
    }

    private static List<LocalName> localNames(
            WorkbookPart oursWorkbook,
            Map<String, String> names,
            List<Integer> places,
            Set<String> given,
            Map<String, String> records)
            throws IOException {
        List<LocalName> added = new ArrayList<>();
        List<String> builtNames = List.copyOf(names.keySet());
        for (int i = 0; i < places.size(); i++) {
            String finalName = names.getOrDefault(builtNames.get(i), "");
            if (!given.contains(builtNames.get(i))) {
                added.add(OwnSheets.mark(places.get(i), builtNames.get(i), finalName));
            }
            String record = records.get(builtNames.get(i));
            if (record != null) {
                added.add(GivenSheets.mark(places.get(i), record, finalName));
            }
            added.addAll(LocalNames.of(oursWorkbook, finalName, places.get(i)));
        }
        return added;
    }

    private void finish() {
        workbook.recalculateOnOpening();
        for (String chain : relationships.targets("calcChain")) {
            book.drop(chain);
            types.remove(chain);
        }
        relationships.remove("calcChain");
        relationships.store(book);
        types.store(book);
    }

    private static String partOf(WorkbookPart workbook, WorkbookRelationships relationships, String name)
            throws IOException {
        for (Tab tab : workbook.tabs()) {
            if (tab.name().equals(name)) {
                return target(relationships, tab);
            }
        }
        throw new IllegalStateException("no sheet " + name);
    }

    private static String target(WorkbookRelationships relationships, Tab tab) throws UnfitPackageException {
        return relationships
                .target(tab.reference())
                .orElseThrow(() -> new UnfitPackageException(SpliceMessages.noSheet(tab.name())));
    }

    private static String only(List<String> targets) {
        return targets.get(0);
    }
}
