package perkilo.xlsx.grid;

import java.nio.charset.StandardCharsets;

/** Files in the container that office suites used before 2007, and still use for what is encrypted. */
final class CompoundFile {

    private CompoundFile() {}

    /** What such a file is and what to do, by the names of the streams in it. */
    static String refusal(byte[] content) {
        if (holds(content, "EncryptedPackage")) {
            return "is protected by a password; open it in your spreadsheet program and save it without one";
        }
        if (holds(content, "WordDocument")) {
            return "is a Word document, not a workbook; bring the tables into a spreadsheet and save it as .xlsx";
        }
        return "is a workbook in the old format (.xls); open it in your spreadsheet program and save it as .xlsx";
    }

    private static boolean holds(byte[] content, String stream) {
        String wide = new String(stream.getBytes(StandardCharsets.UTF_16LE), StandardCharsets.ISO_8859_1);
        return FileKind.mentions(content, wide);
    }
}
