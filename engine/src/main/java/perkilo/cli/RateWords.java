package perkilo.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.units.Conversion;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/** What a rate was on a day, in words. */
final class RateWords {

    /** A cross is shown to eight significant figures; what is computed with it is not rounded. */
    private static final MathContext SHOWN = new MathContext(8, RoundingMode.HALF_UP);

    private RateWords() {}

    /** The rate, and the published rates that it rests on. */
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

    /** That the rate is an old one, if it is. */
    static Optional<Finding> old(Conversion conversion, LocalDate asked) {
        long days = conversion.ageInDays(asked);
        return days > ExchangeRates.DAYS_UNTIL_OLD
                ? Optional.of(Finding.warning(
                        conversion.legs().get(0).rate().rate().origin(),
                        "the rate from %s to %s is %d days older than %s"
                                .formatted(conversion.from(), conversion.to(), days, asked)))
                : Optional.empty();
    }

    /** That no rate leads there, and what the table holds. */
    static Finding none(Path table, ExchangeRates rates, CurrencyUnit from, CurrencyUnit to, LocalDate asked) {
        Optional<LocalDate> first = rates.rates().stream().map(DatedRate::date).min(LocalDate::compareTo);
        String begins = first.map(day -> "; the table begins on " + day).orElse("");
        return Finding.error(
                new Origin(String.valueOf(table.getFileName()), "", ""),
                "no rate leads from %s to %s on or before %s%s".formatted(from, to, asked, begins));
    }

    private static String shown(BigDecimal factor) {
        BigDecimal rounded = factor.precision() > SHOWN.getPrecision() ? factor.round(SHOWN) : factor;
        BigDecimal plain = rounded.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
