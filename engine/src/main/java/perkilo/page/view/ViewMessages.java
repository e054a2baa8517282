package perkilo.page.view;

/** What the page asks about a workbook, beside the questions that the reading has. */
final class ViewMessages {

    private ViewMessages() {}

    static String whichTable(String sheet) {
        return "What does the sheet \"" + sheet + "\" hold?";
    }

    static String whichColumn(String heading, String sheet) {
        return "What is in the column \"" + heading + "\" of the sheet \"" + sheet + "\"?";
    }
}
