package perkilo.xlsx.grid;

import perkilo.origin.Counted;

/** What is wrong with a cell that cannot be used, in words that follow "is": {@code Price is …}. */
final class CellFaults {

    private CellFaults() {}

    // values

    static String errorValue(String value) {
        return value + ", an error value";
    }

    static String errorValue() {
        return "an error value";
    }

    static String notANumber(String text) {
        return "\"" + text + "\", which is not a number; type it again";
    }

    static String notADate(String text) {
        return "\"" + text + "\", which is not a date; type it again";
    }

    static String tooLarge() {
        return "a number too large to be meant";
    }

    static String tooLargeOrSmall(String text) {
        return "\"" + text + "\", a number too large or too small to be meant";
    }

    static String tooManyDigits(int most) {
        return "a number of more than " + most + " characters";
    }

    static String noDay() {
        return "a number formatted as a date that is not a valid date";
    }

    static String tooLong(int characters) {
        return "a text of " + Counted.of(characters, "character") + ", more than a cell can hold; shorten it";
    }

    static String object() {
        return "an object, but a single value was expected";
    }

    // formulas that cannot be computed

    static String circle() {
        return "a formula that refers to itself";
    }

    static String noSavedValue() {
        return "a formula without a saved value that cannot be computed here; "
                + "open the workbook in your spreadsheet program and save it";
    }

    static String notComputed() {
        return "a formula whose saved value was computed by no program, and that cannot be computed here; "
                + "open the workbook in your spreadsheet program and save it";
    }

    // damage

    static String noText() {
        return "a reference to a text that is missing in the workbook, so the file is damaged; type the text again";
    }

    static String twice() {
        return "in the file twice, so the file is damaged; type it again";
    }
}
