package perkilo.reading;

import java.time.LocalDate;
import java.util.List;

/** What a person reads about settings. */
final class SettingMessages {

    private SettingMessages() {}

    // names

    static String unknown(String name) {
        return "\"" + name + "\" is not a known setting, so it is ignored.";
    }

    static String unknown(String name, String meant) {
        return unknown(name) + " Did you mean \"" + meant + "\"?";
    }

    static String twice(String name, String first) {
        return "The setting \"" + name + "\" is listed twice; the first is in " + first + ". Keep one.";
    }

    // currencies

    static String noHome() {
        return "No home currency is set. Set \"Home currency\" on a Settings sheet.";
    }

    static String noHome(List<String> currencies) {
        return "No home currency is set, and the offers are in " + String.join(", ", currencies)
                + ". Set \"Home currency\" on a Settings sheet.";
    }

    static String reportCurrency(String word) {
        return "Report currencies name \"" + word + "\", which is not a known currency. Type codes such as EUR, GBP.";
    }

    // others

    static String noCostingDate(LocalDate today) {
        return "No costing date is set, so the prices of today, " + today + ", are used.";
    }

    static String dutyBasis(String text) {
        return "Duty basis is \"" + text + "\". Type CIF or FOB.";
    }
}
