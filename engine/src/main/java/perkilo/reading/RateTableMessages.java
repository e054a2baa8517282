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

    static String notAnswers(Path file) {
        return file + " does not hold answers about exchange rates. Move it elsewhere, and answer again.";
    }

    // questions whose answers are kept

    static String whichDay(LocalDate one, LocalDate other) {
        return "The dates of this column do not tell the day from the month. Is this " + one + " or " + other + "?";
    }

    static String whichNumber(BigDecimal small, BigDecimal large) {
        return "The rates of this column do not tell which mark is the decimal mark. Is this " + small.toPlainString()
                + " or " + large.toPlainString() + "?";
    }

    static String whichBase(String currency, String rate) {
        return "What are the rates of this table for? \"1 EUR =\" means that 1 EUR costs " + rate + " " + currency
                + ". \"EUR per unit\" means that 1 " + currency + " costs " + rate
                + " EUR. Choose, or type the same with another currency.";
    }

    static String whichOther(String column, String currency) {
        return "This table has " + currency + " in its column " + column
                + " and does not name the other currency. Which one is it?";
    }

    static String whichColumn() {
        return "The table has columns From and To as well as a column for each currency. Which of the two counts?";
    }

    static String whichUnits(BigDecimal units, String base, String currency, BigDecimal rate) {
        String count = units.toPlainString();
        String price = rate.toPlainString();
        return "Does " + count + " " + base + " = " + price + " " + currency + " hold, or " + count + " " + currency
                + " = " + price + " " + base + "? Choose the currency that the units of this table are of.";
    }

    // rows

    static String sameCurrency(String currency) {
        return "From and To are both " + currency + ". Type two different currencies.";
    }

    static String secondRate(String from, String to, LocalDate day, String first) {
        return "This is a second rate from " + from + " to " + to + " on " + day + "; the first is in " + first
                + ". Keep one.";
    }

    static String noBase(String currency, String rate) {
        return "It is not clear what this rate of " + currency + (rate.isEmpty() ? "" : ", " + rate + ",")
                + " is for. If 1 EUR costs so many " + currency + ", type \"1 EUR =\" in a line above the table. If 1 "
                + currency
                + " costs so many EUR, type \"EUR per unit\". Instead of EUR, name the currency that is meant."
                + " Or add a column From with its code in each row.";
    }

    static String noOther(String column, String missing, String currency) {
        return "The table has a column " + column + " (" + currency + ") but no column " + missing + ". Add a column "
                + missing + " with the other currency, or name it in a line above the table: \""
                + (missing.equals("To") ? "EUR per unit" : "1 EUR =") + "\".";
    }

    static String twoBases() {
        return "The table has columns From and To as well as a column for each currency. Delete From or To.";
    }

    static String titleContradicts(String column, String currency) {
        return "The line above the table names " + currency + " in the place of the column " + column
                + ". Name the column From if a rate is for 1 unit of its currency, and To if the rate is in it.";
    }

    static String unitsOfWhich(BigDecimal units, String base, String currency, BigDecimal rate) {
        String count = units.toPlainString();
        String price = rate.toPlainString();
        return "A rate for " + count + " units can mean two things here: " + count + " " + base + " = " + price + " "
                + currency + ", or " + count + " " + currency + " = " + price + " " + base
                + ". Use the columns From and To, so that the units are those of From.";
    }

    static String notUnits(String text) {
        return "Units is \"" + text + "\". It must be a number above zero, such as 100.";
    }

    static String noCurrency(String column, String text) {
        return column + " is \"" + text + "\", which is not a known currency. Type its ISO 4217 code, such as USD.";
    }

    static String sameCurrency(String currency, BigDecimal rate) {
        return "The rate from " + currency + " to " + currency + " is " + rate.toPlainString()
                + ", but it must be 1. Check which currency the rates are for.";
    }

    static String blankRates(int cells) {
        return Counted.of(cells, "rate") + (cells == 1 ? " is" : " are")
                + " missing here. For such a day the rate of the last day before it is used.";
    }

    static String rowsWithoutRates(int rows) {
        return Counted.of(rows, "row") + (rows == 1 ? " has" : " have") + " no rate and " + (rows == 1 ? "is" : "are")
                + " left out.";
    }

    static String twoDays(String text) {
        return "Date is \"" + text + "\", and neither it nor the other dates of its column tell the day from the month."
                + " Type the dates as in 2026-11-20.";
    }

    static String twoRates(String text) {
        return "Rate is \"" + text + "\", and neither it nor the other rates tell whether the mark in it is a decimal"
                + " mark. Type one more decimal, such as a zero at the end.";
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

    // rates that are far from others

    static String inverted(
            String from,
            String to,
            LocalDate day,
            BigDecimal rate,
            LocalDate dayBefore,
            String where,
            BigDecimal before) {
        return "The rate from " + from + " to " + to + " is " + rate.toPlainString() + " on " + day + " but "
                + before.toPlainString() + " on " + dayBefore + " (" + where + "). Does 1 " + from + " cost "
                + rate.toPlainString() + " " + to + ", or does 1 " + to + " cost " + rate.toPlainString() + " " + from
                + "? In the second case type " + inverse(rate) + ", or exchange From and To. If the earlier rate is"
                + " wrong, correct that one.";
    }

    static String jump(
            String from,
            String to,
            LocalDate day,
            BigDecimal rate,
            LocalDate dayBefore,
            String where,
            BigDecimal before,
            int others) {
        BigDecimal change = rate.divide(before, SHOWN).subtract(BigDecimal.ONE);
        return "The rate from " + from + " to " + to + " is " + rate.toPlainString() + " on " + day + ", which is "
                + change.abs()
                        .movePointRight(2)
                        .setScale(0, RoundingMode.HALF_UP)
                        .toPlainString() + " % "
                + (change.signum() > 0 ? "more" : "less") + " than the " + before.toPlainString() + " of " + dayBefore
                + " ("
                + where + ")."
                + (others == 0
                        ? ""
                        : " " + Counted.of(others, "later rate") + " of the pair "
                                + (others == 1 ? "differs" : "differ") + " as much from the one before.")
                + " Check whether it is right.";
    }

    private static String inverse(BigDecimal rate) {
        return BigDecimal.ONE.divide(rate, SHOWN).stripTrailingZeros().toPlainString();
    }

    // rates that others replace

    static String fixed(String currency, BigDecimal rate, String source) {
        return "The euro has replaced " + currency + ". Amounts are converted at " + law(currency, rate, source);
    }

    static String fixedInstead(String currency, BigDecimal rate, String source) {
        return "The rate between EUR and " + currency + " in this table is ignored. The rate is "
                + law(currency, rate, source);
    }

    static String fixedFrom(String currency, LocalDate day, BigDecimal rate, String source) {
        return "On " + day + " the euro has replaced " + currency + ", so rates of " + currency
                + " from then on are not used. The rate is " + law(currency, rate, source);
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
