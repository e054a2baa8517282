package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Files under the name of a workbook that are none, or that are made to do harm: each is told, in one sentence, what it
 * is and what to do; nothing is written.
 */
final class HostileFilesTest {

    private static final String SAVE_AS = ". Open it in your spreadsheet program and save it as .xlsx.";
    private static final String SAVE_AGAIN = ". Open it in your spreadsheet program and save it again.";

    private static final long MOST_MEGABYTES = 100;

    @TempDir
    private Path folder = Path.of("");

    static Stream<Arguments> files() throws Exception {
        byte[] sound = RawBook.sound().bytes();
        return Stream.of(
                Arguments.of("xls", xls(), "is a workbook in the old format (.xls)" + SAVE_AS),
                Arguments.of("xlsb", xlsb(), "is a binary workbook (.xlsb)" + SAVE_AS),
                Arguments.of("ods", ods(), "is an OpenDocument file (.ods)" + SAVE_AS),
                Arguments.of(
                        "CSV",
                        "Supplier;Item;Price\nA;B;1\n".getBytes(UTF_8),
                        "is a text file (CSV), not a workbook" + SAVE_AS),
                Arguments.of(
                        "a web page",
                        "<!DOCTYPE html><html><body><table><tr><td>1".getBytes(UTF_8),
                        "is a web page (HTML), not a workbook" + SAVE_AS),
                Arguments.of(
                        "encrypted",
                        encrypted(sound),
                        "is protected by a password. Open it in your spreadsheet program and save it without a password."),
                Arguments.of(
                        "cut short",
                        Arrays.copyOf(sound, sound.length * 2 / 3),
                        "is damaged or was not copied completely. Get a fresh copy."),
                Arguments.of(
                        "its last byte changed, which says how long the comment is",
                        lastByteChanged(sound),
                        "is damaged or was not copied completely. Get a fresh copy."),
                Arguments.of("empty", new byte[0], "is empty. Use a copy that has content."),
                Arguments.of(
                        "bytes changed in the middle",
                        scrambled(sound),
                        "is damaged and cannot be opened as a workbook" + SAVE_AGAIN),
                Arguments.of(
                        "a part of 300 MB of blanks",
                        bomb(),
                        "unpacks to far more than its size, which no real workbook does" + SAVE_AGAIN),
                Arguments.of(
                        "a sheet of 300 MB of blanks",
                        sheetBomb(),
                        "unpacks to far more than its size, which no real workbook does" + SAVE_AGAIN),
                Arguments.of(
                        "entities in entities",
                        entities(),
                        "holds a DOCTYPE declaration, which no spreadsheet program writes" + SAVE_AGAIN),
                Arguments.of(
                        "an entity from a file",
                        RawBook.sound()
                                .change(RawBook.sound().partOf("Offers"), HostileFilesTest::outsideEntity)
                                .bytes(),
                        "holds a DOCTYPE declaration, which no spreadsheet program writes" + SAVE_AGAIN),
                Arguments.of(
                        "a part twice",
                        twice(),
                        "holds the part \"XL/workbook.xml\" twice, so two programs may read different contents"
                                + SAVE_AGAIN),
                Arguments.of(
                        "a part outside",
                        RawBook.sound()
                                .part("../../outside.txt", new byte[] {1})
                                .bytes(),
                        "holds a part called \"../../outside.txt\", which would land outside its folder when unpacked. "
                                + "Get a fresh copy from the source of the file."),
                Arguments.of(
                        "100,000 parts",
                        manyParts(),
                        "holds 100,007 parts, far more than a workbook has. Get a fresh copy from the source of the file."),
                Arguments.of(
                        "a row beyond the last",
                        RawBook.sound()
                                .behind("Offers", "")
                                .change(
                                        RawBook.sound().partOf("Offers"),
                                        xml -> xml.replace("r=\"3\"", "r=\"99999999\""))
                                .bytes(),
                        "is damaged: its sheet \"Offers\" has row 99,999,999, which no sheet can have" + SAVE_AGAIN),
                Arguments.of(
                        "no list of sheets",
                        without("xl/workbook.xml"),
                        "is damaged: the part that lists its sheets is missing. Get a fresh copy."));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void a_file_that_cannot_be_read_is_told_what_it_is(String what, byte[] bytes, String expected) throws IOException {
        Ran ran = Ran.of(folder, bytes, "cost");

        assertThat(ran.messages()).containsExactly(Ran.BOOK + " " + expected);
        assertThat(ran.exit()).isEqualTo(Exit.FILE);
        assertThat(ran.files()).containsExactly(Ran.BOOK);
        assertThat(ran.untouched()).isTrue();
        assertThat(ran.megabytes()).isLessThan(MOST_MEGABYTES);
    }

    @Test
    void a_sheet_whose_part_is_missing_is_named() throws IOException {
        Ran ran = Ran.of(folder, without(RawBook.sound().partOf("Runs")), "cost");

        assertThat(ran.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(ran.messages())
                .contains("error Runs: The workbook is damaged: it lists this sheet but does not hold it. "
                        + "Get a fresh copy.");
        assertThat(ran.files()).containsExactly(Ran.BOOK);
    }

    private static byte[] xls() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (HSSFWorkbook book = new HSSFWorkbook()) {
            book.createSheet("Offers").createRow(0).createCell(0).setCellValue("Supplier");
            book.write(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] xlsb() {
        Map<String, byte[]> parts = RawBook.sound().parts();
        parts.remove("xl/workbook.xml");
        parts.put("xl/workbook.bin", new byte[] {(byte) 0x83, 1, 0});
        parts.computeIfPresent(
                "_rels/.rels",
                (name, xml) -> new String(xml, UTF_8)
                        .replace("workbook.xml", "workbook.bin")
                        .getBytes(UTF_8));
        return RawBook.zip(parts);
    }

    private static byte[] ods() {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        parts.put("mimetype", "application/vnd.oasis.opendocument.spreadsheet".getBytes(UTF_8));
        parts.put("content.xml", "<office:document-content/>".getBytes(UTF_8));
        return RawBook.zip(parts);
    }

    private static byte[] encrypted(byte[] book) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (POIFSFileSystem files = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("balm");
            try (OPCPackage content = OPCPackage.open(new ByteArrayInputStream(book));
                    var out = encryptor.getDataStream(files)) {
                content.save(out);
            }
            files.writeFilesystem(bytes);
        }
        return bytes.toByteArray();
    }

    private static byte[] lastByteChanged(byte[] book) {
        byte[] changed = book.clone();
        changed[changed.length - 1] = 1;
        return changed;
    }

    /** The packed content of the sheet of offers overwritten. */
    private static byte[] scrambled(byte[] book) {
        byte[] name = RawBook.sound().partOf("Offers").getBytes(UTF_8);
        byte[] changed = book.clone();
        int at = new String(book, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf(new String(name, UTF_8))
                + name.length;
        Arrays.fill(changed, at + 20, at + 120, (byte) 0xFF);
        return changed;
    }

    static byte[] bomb() {
        return RawBook.sound()
                .part("xl/sharedStrings.xml", blanks(300))
                .change("xl/_rels/workbook.xml.rels", HostileFilesTest::withTexts)
                .bytes();
    }

    static byte[] sheetBomb() {
        RawBook book = RawBook.sound();
        return book.part(book.partOf("Offers"), blanks(300)).bytes();
    }

    static byte[] entities() {
        return RawBook.sound()
                .change("xl/workbook.xml", HostileFilesTest::billionLaughs)
                .bytes();
    }

    private static byte[] blanks(int megabytes) {
        byte[] blanks = new byte[megabytes << 20];
        Arrays.fill(blanks, (byte) ' ');
        return blanks;
    }

    private static String withTexts(String links) {
        return links.replace(
                "</Relationships>",
                "<Relationship Id=\"t1\" Type=\"" + RawBook.LINKS
                        + "/sharedStrings\" Target=\"sharedStrings.xml\"/></Relationships>");
    }

    private static String billionLaughs(String xml) {
        StringBuilder type = new StringBuilder("<!DOCTYPE workbook [<!ENTITY e0 \"ha\">");
        for (int level = 1; level < 10; level++) {
            type.append("<!ENTITY e%d \"%s\">"
                    .formatted(level, "&e%d;".formatted(level - 1).repeat(10)));
        }
        return type + "]>" + xml.replace("</workbook>", "&e9;</workbook>");
    }

    private static String outsideEntity(String xml) {
        return "<!DOCTYPE worksheet [<!ENTITY out SYSTEM \"file:///etc/hostname\">]>"
                + xml.replaceFirst("<v>", "<v>&out;");
    }

    private static byte[] twice() {
        return RawBook.sound()
                .part("XL/workbook.xml", "<workbook/>".getBytes(UTF_8))
                .bytes();
    }

    static byte[] manyParts() {
        RawBook book = RawBook.sound();
        int own = book.parts().size();
        for (int i = own; i < 100_007; i++) {
            book.part("xl/media/" + i + ".png", new byte[0]);
        }
        return book.bytes();
    }

    private static byte[] without(String part) {
        Map<String, byte[]> parts = RawBook.sound().parts();
        parts.remove(part);
        return RawBook.zip(parts);
    }
}
