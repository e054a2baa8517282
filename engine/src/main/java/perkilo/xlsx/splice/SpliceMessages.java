package perkilo.xlsx.splice;

/** What a person reads about a workbook that no sheet can be set into; the file's name is put before it. */
final class SpliceMessages {

    private static final String SAVE_AGAIN = " Open it in your spreadsheet program and save it again.";

    private SpliceMessages() {}

    // the file is something else

    static String noWorkbook() {
        return "The file is not an XLSX or XLSM file.";
    }

    static String noPackage() {
        return "The file is not an XLSX or XLSM file, or it is protected by a password.";
    }

    // the workbook refuses new sheets

    static String protectedStructure() {
        return "The workbook is protected against new sheets."
                + " Remove the protection of its structure (Review, Protect Workbook).";
    }

    static String signed() {
        return "The workbook is digitally signed, and new sheets would break the signature."
                + " Use a copy without the signature.";
    }

    static String shared() {
        return "The workbook is shared with a record of changes. Stop sharing it first.";
    }

    static String styleAlternatives() {
        return "The workbook uses style alternatives that cannot be numbered safely." + SAVE_AGAIN;
    }

    // a cell cannot be changed

    static String noSheetOfYours(String sheet) {
        return "The workbook has no sheet \"" + sheet + "\" of yours.";
    }

    static String noCells() {
        return "The sheet has no cells.";
    }

    static String holdsFormula(String cell) {
        return cell + " holds a formula. Change it in your spreadsheet program.";
    }

    static String usedByFormula(String cell, String formula) {
        return cell + " may be used by the formula in " + formula
                + ", whose saved value would then be wrong. Change it in your spreadsheet program, which computes it again.";
    }

    // the workbook is damaged

    static String noPart(String part) {
        return "The workbook is damaged: its part " + part + " is missing." + SAVE_AGAIN;
    }

    static String partTwice(String part) {
        return "The workbook is damaged: it holds the part " + part + " twice." + SAVE_AGAIN;
    }

    static String partTooLarge(String part) {
        return "The workbook is damaged: its part " + part + " is too large." + SAVE_AGAIN;
    }

    static String packedPart(String part) {
        return "The workbook is damaged: its part " + part + " cannot be unpacked." + SAVE_AGAIN;
    }

    static String unknownEncoding(String encoding) {
        return "The workbook is damaged: a part is written in the unknown encoding " + encoding + "." + SAVE_AGAIN;
    }

    static String notWellFormed() {
        return "The workbook is damaged: its XML is not well-formed." + SAVE_AGAIN;
    }

    static String docType() {
        return "The workbook is damaged: it has a document type." + SAVE_AGAIN;
    }

    static String noNumber(String attribute, String value) {
        return "The workbook is damaged: " + attribute + "=\"" + value + "\" is not a number." + SAVE_AGAIN;
    }

    static String noSheet(String sheet) {
        return "The workbook is damaged: the sheet \"" + sheet + "\" is missing." + SAVE_AGAIN;
    }

    static String noStyle(int number, String list) {
        return "The workbook is damaged: style " + number + " of " + list + " is missing." + SAVE_AGAIN;
    }

    // what was written is not what was meant

    static String notAsWritten(String part) {
        return "What was written could not be read again: the part " + part
                + " differs. Nothing was replaced. Run the command again; if it happens again, check the disk.";
    }
}
