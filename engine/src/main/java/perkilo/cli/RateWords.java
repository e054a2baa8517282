package perkilo.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.desk.RatesAnswer;
import perkilo.origin.Counted;
import perkilo.origin.Decimals;
import perkilo.units.Conversion;
import perkilo.units.DatedRate;

/** Exchange rates in words: what files of rates brought, and what a rate was on a day. */
final class RateWords {

    /** A cross rate is shown to eight significant figures; computations use the unrounded one. */
    private static final MathContext SHOWN = new MathContext(8, RoundingMode.HALF_UP);

    private RateWords() {}

    /** The rate, and the published rates that it is computed from. */
    static List<String> lines(Conversion conversion, LocalDate asked) {
        List<String> lines = new ArrayList<>();
        LocalDate day = asked.minusDays(conversion.ageInDays(asked));
        String when = day.equals(asked)
                ? "on " + asked
                : "on %s, the last day with a rate on or before %s".formatted(day, asked);
        lines.add("1 %s = %s %s %s".formatted(conversion.from(), shown(conversion.factor()), conversion.to(), when));
        for (Conversion.Leg leg : conversion.legs()) {
            DatedRate rate = leg.rate();
            lines.add("  1 %s = %s %s, %s%s"
                    .formatted(
                            rate.from(),
                            rate.rate().value().toPlainString(),
                            rate.to(),
                            rate.date(),
                            rate.source().isEmpty() ? "" : ", " + rate.source()));
        }
        return lines;
    }

    /** What each file brought, and what the table holds now. */
    static List<String> taken(Path table, RatesAnswer.Taken answer) {
        List<String> lines = new ArrayList<>();
        for (RatesAnswer.OfFile one : answer.files()) {
            int differing = one.taken().differing().size();
            lines.add(one.file() + ": " + Counted.of(one.taken().rates(), "rate") + ", "
                    + number(one.taken().added()) + " new"
                    + (differing == 0 ? "" : ", " + number(differing) + " different"));
        }
        String held = held(answer.rates());
        lines.add(answer.changed() ? "Written to " + table + ": " + held : "Nothing new for " + table + ": " + held);
        return lines;
    }

    private static String held(List<DatedRate> rates) {
        return rates.isEmpty()
                ? "no rates"
                : Counted.of(rates.size(), "rate") + " from "
                        + rates.get(rates.size() - 1).date() + " to "
                        + rates.get(0).date();
    }

    private static String number(long count) {
        return Decimals.readable(BigDecimal.valueOf(count), 0);
    }

    private static String shown(BigDecimal factor) {
        BigDecimal rounded = factor.precision() > SHOWN.getPrecision() ? factor.round(SHOWN) : factor;
        BigDecimal plain = rounded.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
