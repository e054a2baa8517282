package perkilo.report.send;

import java.util.List;

/** What a person reads about orders that are to be sent. */
final class SendMessages {

    private SendMessages() {}

    static String buyerUnknown(List<String> settings) {
        return "The purchase orders leave room for what the settings do not say: " + String.join(", ", settings)
                + ". Add a row for each to the table of settings.";
    }

    static String addressesUnknown(List<String> suppliers) {
        return "The purchase orders to " + String.join(", ", suppliers)
                + " have no address. Fill the column Address in the table of suppliers for them.";
    }

    static String notOfThisPlan(String folder, List<String> files) {
        return "The folder " + folder + " has orders that are not in this plan: " + String.join(", ", files)
                + ". Do not send them by mistake; move those that you have sent to another folder.";
    }
}
