package perkilo.report.send;

import java.util.List;

/** What a person reads about orders that are to be sent. */
final class SendMessages {

    private SendMessages() {}

    static String buyerUnknown(List<String> settings) {
        return "The purchase orders leave room for what Settings do not say: " + String.join(", ", settings)
                + ". Add these settings, each with its value.";
    }

    static String suppliersUnknown(String column, List<String> suppliers) {
        return "The purchase orders to " + String.join(", ", suppliers) + " leave room for what is not known. Fill "
                + column + " on Suppliers for them.";
    }

    static String notOfThisPlan(String folder, List<String> files) {
        return "The folder " + folder + " has orders that are not in this plan: " + String.join(", ", files)
                + ". Do not send them by mistake; move those that you have sent to another folder.";
    }
}
