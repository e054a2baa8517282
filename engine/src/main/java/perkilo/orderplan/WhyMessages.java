package perkilo.orderplan;

import java.util.List;

/** What a person reads about another plan that is not possible. */
final class WhyMessages {

    private WhyMessages() {}

    static String noPriceThen(String item, String pack) {
        return "No price for \"" + item + "\" in packs of " + pack + " is valid then.";
    }

    static String cannotArriveBy(String day) {
        return "It cannot arrive by " + day + ".";
    }

    static String belowFirstPrice(long packs, String pack, String item, String from, String unit) {
        return packs + " × " + pack + " of \"" + item + "\" are too few: the first price that is valid then starts at "
                + from + " " + unit + ".";
    }

    static String wouldBeMissing(String item, String day) {
        return "\"" + item + "\" would be missing on " + day + ".";
    }

    static String breaksLimit() {
        return "It breaks a minimum order value or a limit on cash.";
    }

    static String noOtherOffer(List<String> items) {
        return "No other offer arrives in time for " + Quantities.quoted(items) + ".";
    }
}
