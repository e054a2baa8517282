package perkilo.layouts;

/** Why something on a list is not used. */
final class NotReadMessages {

    private NotReadMessages() {}

    static String notNeeded() {
        return "Prices do not depend on this column.";
    }

    static String notUnderstood() {
        return "The header is not understood.";
    }

    static String answeredNothing() {
        return "You said that the column is not needed.";
    }

    static String blank() {
        return "The column is blank.";
    }

    static String otherColumnHolds(String header) {
        return "The column \"" + header + "\" is read in its place.";
    }

    static String dateOfSomethingElse() {
        return "The date in this line seems to be about something else.";
    }

    static String lineNotUnderstood() {
        return "The line speaks of money, a date or a percentage, and is not understood.";
    }

    static String answeredIgnore() {
        return "You said that the line does not change the prices.";
    }

    static String sheetNotUnderstood() {
        return "No table of prices was found on this sheet.";
    }
}
