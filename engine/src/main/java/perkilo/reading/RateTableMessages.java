package perkilo.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import perkilo.origin.Counted;
import perkilo.reading.table.CellMessages;

/** What a person reads about exchange rates: their files, their rows, and whether they can be used. */
final class RateTableMessages {

    private static final MathContext SHOWN = new MathContext(5);

    private RateTableMessages() {}

    // files

    static String noRates(Path file) {
        return file + " holds no exchange rates. Use a table with the columns From, To, Rate and Date, or a file of the"
                + " European Central Bank.";
    }

    static String noBankRates(Path file) {
        return file + " holds no exchange rates in the XML form of the European Central Bank.";
    }

    static String damagedXml(Path file) {
        return file + " is damaged XML. Get a fresh copy from where it was published.";
    }

    static String tablesInZip(Path file, int tables) {
        return file + " is a ZIP file with " + Counted.of(tables, "table")
                + ". It must hold one CSV or XML file with exchange rates.";
    }

    static String zipTooLarge(Path file, int megabytes) {
        return file + " is a ZIP file that unpacks to more than " + megabytes + " MB. Unpack it first.";
    }

    // rows

    static String sameCurrency(String currency) {
        return "From and To are both " + currency + ". Type two different currencies.";
    }

    static String secondRate(String from, String to, LocalDate day, String first) {
        return "This is a second rate from " + from + " to " + to + " on " + day + "; the first is in " + first
                + ". Keep one.";
    }

    static String unknownCurrency(String code) {
        return "\"" + code + "\" is not a known currency, so its rates are ignored.";
    }

    static String notADate(String text) {
        return CellMessages.notADate("Date", text);
    }

    static String notARate(String currency, String text) {
        return "The rate of " + currency + " is \"" + text + "\". It must be a number above zero.";
    }

    // rates that are missing, or old

    static String noRate(String from, String to, LocalDate day) {
        return "There is no rate from " + from + " to " + to + " on or before " + day
                + ". Add one to a Rates sheet, or name a file of rates.";
    }

    static String noRateUnused(String from, String to, LocalDate day) {
        return noRate(from, to, day) + " The offer is ignored, because nothing uses it.";
    }

    static String old(String from, String to, long days, LocalDate costingDate) {
        return "The rate from " + from + " to " + to + " is " + Counted.of(days, "day")
                + " older than the costing date " + costingDate + ". Add a newer one.";
    }

    // rates that others replace

    static String fixed(String currency, BigDecimal rate, String source) {
        return "The euro has replaced " + currency + ". Amounts are converted at " + law(currency, rate, source);
    }

    static String fixedInstead(String currency, BigDecimal rate, String source) {
        return "The rate between EUR and " + currency + " in this table is ignored. The rate is "
                + law(currency, rate, source);
    }

    private static String law(String currency, BigDecimal rate, String source) {
        return rate.toPlainString() + " " + currency + " for 1 EUR, fixed by law (" + source + ").";
    }

    static String fresherCross(
            String from, String to, LocalDate day, String through, LocalDate fresher, BigDecimal change) {
        return "The rate from " + from + " to " + to + " of " + day
                + " is not used, because a conversion through " + through + " with rates of " + fresher
                + " is more recent. That rate is " + compared(change) + ".";
    }

    private static String compared(BigDecimal change) {
        if (change.signum() == 0) {
            return "the same";
        }
        String percent =
                change.abs().movePointRight(2).setScale(2, RoundingMode.HALF_UP).toPlainString();
        return percent + " % " + (change.signum() > 0 ? "higher" : "lower");
    }

    static String contradictsOpposite(
            String from, String to, LocalDate day, BigDecimal rate, LocalDate backDay, String where, BigDecimal back) {
        return "The rate from " + from + " to " + to + " of " + day + " is " + rate.toPlainString()
                + ", but the rate from " + to + " to " + from + " of " + backDay + " in " + where + " is "
                + back.toPlainString() + ", which means "
                + BigDecimal.ONE.divide(back, SHOWN).stripTrailingZeros().toPlainString() + " from " + from + " to "
                + to
                + ". One of the two may be the wrong way round.";
    }
}
