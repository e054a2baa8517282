package perkilo.reading;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;
import perkilo.units.EuroFixedRates;

/** Tells which rates of a table are not used because the euro had replaced their currency by then. */
public final class LegacyRates {

    /** A rate that differs by no more than this part of the fixed rate is the fixed rate, rounded. */
    private static final BigDecimal SAME = new BigDecimal("1e-5");

    private LegacyRates() {}

    /** Warns of each replaced currency once, at its first rate that is not the one of the law. */
    public static void check(List<DatedRate> rates, Findings findings) {
        Set<CurrencyUnit> told = new HashSet<>();
        for (DatedRate rate : rates) {
            for (CurrencyUnit currency : List.of(rate.from(), rate.to())) {
                Optional<DatedRate> fixed = EuroFixedRates.on(rate.date(), currency);
                if (fixed.isPresent() && !isSame(rate, fixed.get()) && told.add(currency)) {
                    findings.warning(
                            rate.rate().origin(),
                            RateTableMessages.fixedFrom(
                                    currency.getCurrencyCode(),
                                    rate.date(),
                                    fixed.get().rate().value(),
                                    fixed.get().source()));
                }
            }
        }
    }

    /** Whether a rate is that of the law, in either direction. */
    private static boolean isSame(DatedRate rate, DatedRate fixed) {
        BigDecimal exact = fixed.rate().value();
        BigDecimal typed = rate.rate().value();
        if (rate.from().equals(fixed.from()) && rate.to().equals(fixed.to())) {
            return typed.subtract(exact).abs().compareTo(exact.multiply(SAME)) <= 0;
        }
        boolean back = rate.from().equals(fixed.to()) && rate.to().equals(fixed.from());
        return back && typed.multiply(exact).subtract(BigDecimal.ONE).abs().compareTo(SAME) <= 0;
    }
}
