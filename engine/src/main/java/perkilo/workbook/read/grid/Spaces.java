package perkilo.workbook.read.grid;

/** Spaces of every kind, also those that a spreadsheet or a web page leaves unseen. */
final class Spaces {

    private Spaces() {}

    /** Without spaces and invisible characters at both ends; those inside stay, spaces in a row as one. */
    static String strip(String text) {
        return text.replaceAll("[\\u200B\\u2060\\uFEFF]", "")
                .replaceAll("[\\s\\p{Z}]+", " ")
                .strip();
    }
}
