package perkilo.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;
import perkilo.units.EuroFixedRates;

/** Tells which rates of a table are not used because the euro had replaced their currency by then. */
public final class LegacyRates {

    /** A rate that differs by no more than this part of the fixed rate is the fixed rate, rounded. */
    private static final BigDecimal SAME = new BigDecimal("1e-5");

    private static final String LEAVE = "leave them out";
    private static final String KEEP = "keep them in the table, unused";

    private LegacyRates() {}

    /**
     * Asks about each replaced currency once, at its first rate that is not the one of the law.
     *
     * @return the rates without those that are left out
     */
    public static List<DatedRate> settled(List<DatedRate> rates, Findings findings, RateAnswers answers) {
        Map<CurrencyUnit, Boolean> leftOut = new HashMap<>();
        List<DatedRate> kept = new ArrayList<>();
        for (DatedRate rate : rates) {
            boolean out = false;
            for (CurrencyUnit currency : List.of(rate.from(), rate.to())) {
                Optional<DatedRate> fixed = EuroFixedRates.on(rate.date(), currency);
                if (fixed.isPresent() && !isSame(rate, fixed.get())) {
                    out |= leftOut.computeIfAbsent(
                            currency, one -> isLeftOut(one, rate, fixed.get(), findings, answers));
                }
            }
            if (!out) {
                kept.add(rate);
            }
        }
        return kept;
    }

    private static boolean isLeftOut(
            CurrencyUnit currency, DatedRate rate, DatedRate fixed, Findings findings, RateAnswers answers) {
        String code = currency.getCurrencyCode();
        String text =
                RateTableMessages.fixedFrom(code, rate.date(), fixed.rate().value(), fixed.source());
        RateAnswers.Question question = new RateAnswers.Question(
                "replaced currency",
                code,
                rate.rate().origin(),
                rate.rate().value().toPlainString(),
                text,
                List.of(LEAVE, KEEP));
        Optional<Boolean> answer = answers.ask(
                question,
                words -> words.equalsIgnoreCase(LEAVE)
                        ? Optional.of(true)
                        : words.equalsIgnoreCase(KEEP) ? Optional.of(false) : Optional.empty());
        if (answer.isEmpty()) {
            findings.warning(rate.rate().origin(), text);
        }
        return answer.orElse(false);
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
