package perkilo.rates;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import perkilo.origin.Counted;

/** What a person reads about a table of rates and about the bank that publishes them. */
final class RateMessages {

    private RateMessages() {}

    // the table

    static String otherFile(Path file) {
        return file + " is not a table with only the columns From, To, Rate, Date and Source, so it is left untouched."
                + " Name another file with --out.";
    }

    static String keptRate(
            String from, String to, LocalDate day, BigDecimal incoming, BigDecimal there, String source) {
        return different(from, to, day, incoming, there, source)
                + " The table keeps its rate. Use --replace to take the new one.";
    }

    static String replacedRate(
            String from, String to, LocalDate day, BigDecimal incoming, BigDecimal there, String source) {
        return different(from, to, day, incoming, there, source) + " The table has the new rate now.";
    }

    private static String different(
            String from, String to, LocalDate day, BigDecimal incoming, BigDecimal there, String source) {
        return from + " to " + to + " of " + day + " is " + incoming.toPlainString() + " here, but "
                + there.toPlainString() + " in the table (" + (source.isEmpty() ? "no source" : source) + ").";
    }

    // the bank

    static String badStatus(String address, int status, String file) {
        return "The address " + address + " answered with status " + status + ". Try again later, or get " + file
                + " elsewhere and name it: perkilo rates FILE.";
    }

    static String unreachable(String address, long seconds) {
        return "The address " + address + " cannot be reached: there is no network, or it is blocked, or no answer came"
                + " within " + Counted.of(seconds, "second")
                + ". Get the file elsewhere and name it: perkilo rates FILE.";
    }
}
