package perkilo.swaps.law;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** What the tables of the law say about a formula. Amounts are fractions of the formula. */
final class LawMessages {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private LawMessages() {}

    static String stateOfLaw(LocalDate day) {
        return "State of law: European Union, " + DAY.format(day)
                + ". Local rules and a qualified safety assessor decide.";
    }

    static String within(BigDecimal level, String as, String limit, String purpose, String where) {
        return "The formula contains " + amount(level, as) + "; allowed is " + limit
                + (purpose.isEmpty() ? "" : " (purpose: " + purpose + ")") + ". " + capital(where) + ".";
    }

    static String above(BigDecimal level, String as, String limit, String materials, String where) {
        return "The formula contains " + amount(level, as) + " (" + materials + "), but allowed is " + limit + ". "
                + capital(where) + ".";
    }

    static String prohibited(String materials, String kind, String where) {
        return materials + ": prohibited in this kind of product (" + kind + "). " + capital(where) + ".";
    }

    static String phTooHigh(String materials, @Nullable BigDecimal ph, BigDecimal below, String where) {
        return "The final pH is " + (ph == null ? "?" : LimitWords.plain(ph)) + ", but with " + materials
                + " it has to be " + LimitWords.belowPh(below) + ". " + capital(where) + ".";
    }

    static String kindDecides(BigDecimal level, String as, String materials, String limit, String wider, String where) {
        return "The formula contains " + amount(level, as) + " (" + materials + "). Allowed is " + limit
                + " in some kinds of product" + (wider.isEmpty() ? "" : " and " + wider + " in others")
                + ". Type the part of the body into Kind on the Batches sheet. " + capital(where) + ".";
    }

    static String shareUnknown(List<String> materials, String limit, String where) {
        return "Allowed is " + limit + ", but the shares in " + String.join(", ", materials)
                + " are not known. Type them into its INCI name, such as A 70 % (and) B 30 %. " + capital(where) + ".";
    }

    static String noNumber(String group) {
        return "No maximum is known for " + group + " in this kind of product.";
    }

    static String condition(String group, String words, String where) {
        return capital(group) + ": " + words + " " + capital(where) + ".";
    }

    static String later(String group, String limit, @Nullable LocalDate from, String where) {
        return capital(group) + ": allowed is " + limit + " from " + (from == null ? "?" : DAY.format(from)) + ". "
                + capital(where) + ".";
    }

    static String otherPurpose(String asPreservative) {
        return "As a preservative it would be too much: " + asPreservative
                + " Another purpose has to be apparent from the product.";
    }

    private static String amount(BigDecimal level, String as) {
        return LimitWords.percent(level) + (as.isEmpty() ? "" : " as " + as);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
