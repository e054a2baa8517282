package perkilo.xlsx.write;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import perkilo.xlsx.author.SampleBook;
import perkilo.xlsx.author.SampleReport;

/** A workbook written part by part, in ways that our libraries do not use. */
final class HandMadeBook {

    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static final String LINKS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static final String SHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    /** The smallest workbook: the sheet Offers with the cells that {@link SampleReport} refers to. */
    static HandMadeBook least() {
        return new HandMadeBook()
                .part("[Content_Types].xml", types(""))
                .part("_rels/.rels", links(link("r1", "officeDocument", "xl/workbook.xml")))
                .part("xl/workbook.xml", workbook(""))
                .part("xl/_rels/workbook.xml.rels", links(link("r1", "worksheet", "worksheets/sheet1.xml")))
                .part("xl/worksheets/sheet1.xml", offers());
    }

    HandMadeBook part(String name, String text) {
        return part(name, text.getBytes(UTF_8));
    }

    HandMadeBook part(String name, String text, Charset charset) {
        return part(name, text.getBytes(charset));
    }

    HandMadeBook part(String name, byte[] bytes) {
        parts.put(name, bytes);
        return this;
    }

    /** The parts as they are now. */
    Map<String, byte[]> parts() {
        return Collections.unmodifiableMap(parts);
    }

    HandMadeBook without(String name) {
        parts.remove(name);
        return this;
    }

    /** Changes the text of a part. */
    HandMadeBook with(String name, String old, String fresh) {
        String text = new String(parts.getOrDefault(name, new byte[0]), UTF_8);
        return part(name, text.replace(old, fresh));
    }

    byte[] bytes() {
        return bytes(Deflater.BEST_COMPRESSION); // another level than ours, as other programs use
    }

    byte[] bytes(int level) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.setLevel(level);
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** The part with content types; {@code more} are further elements. */
    static String types(String more) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>"
                + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                + override("/xl/workbook.xml", SHEET + "sheet.main+xml")
                + override("/xl/worksheets/sheet1.xml", SHEET + "worksheet+xml")
                + more
                + "</Types>";
    }

    static String override(String part, String type) {
        return "<Override PartName=\"" + part + "\" ContentType=\"" + type + "\"/>";
    }

    static String links(String inside) {
        return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + inside
                + "</Relationships>";
    }

    static String link(String id, String type, String target) {
        return "<Relationship Id=\"" + id + "\" Type=\"" + LINKS + "/" + type + "\" Target=\"" + target + "\"/>";
    }

    /** The workbook part; {@code more} comes after the sheets. */
    static String workbook(String more) {
        return "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + LINKS + "\">"
                + "<sheets><sheet name=\"Offers\" sheetId=\"1\" r:id=\"r1\"/></sheets>" + more + "</workbook>";
    }

    /** The sheet part. */
    static String offers() {
        StringBuilder rows = new StringBuilder();
        for (int row = 1; row < SampleBook.offers().size(); row++) {
            Object[] offer = SampleBook.offers().get(row);
            rows.append("<row r=\"").append(row + 1).append("\">");
            for (int column = 2; column < offer.length; column++) {
                rows.append("<c r=\"")
                        .append((char) ('A' + column))
                        .append(row + 1)
                        .append("\"><v>")
                        .append(offer[column])
                        .append("</v></c>");
            }
            rows.append("</row>");
        }
        return "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows + "</sheetData></worksheet>";
    }
}
