package perkilo.reading;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.units.Currencies;

/**
 * A column of rates, by its header.
 *
 * @param currency the currency that the header names
 * @param units for how many units of it a rate is: 100 for {@code JPY (100)}
 * @param per the currency of which one unit costs the rate, as in {@code USD per EUR}; null if the header names only
 *     one
 */
record RateColumn(
        CurrencyUnit currency, BigDecimal units, @Nullable CurrencyUnit per) {

    private static final Pattern ONE = Pattern.compile(
            "(?:(\\d{1,7})\\s*)?([A-Z]{3})(?:\\s*\\(?(?:(?i:per|je|pro|par|por|x)\\s*)?(\\d{1,7})\\)?)?");
    private static final Pattern PAIR =
            Pattern.compile("(?:1\\s*)?([A-Z]{3})\\s+(?i:per|je|pro|par|pour|por|al)\\s+(?:(\\d{1,7})\\s*)?([A-Z]{3})");

    /** The column that a header describes; empty if it names no currency. */
    static Optional<RateColumn> of(String header) {
        String text = header.strip();
        Matcher pair = PAIR.matcher(text);
        if (pair.matches()) {
            Optional<CurrencyUnit> to = Currencies.find(pair.group(1));
            Optional<CurrencyUnit> from = Currencies.find(pair.group(3));
            return to.isPresent() && from.isPresent()
                    ? Optional.of(new RateColumn(to.get(), number(pair.group(2)), from.get()))
                    : Optional.empty();
        }
        Matcher one = ONE.matcher(text);
        if (!one.matches() || (one.group(1) != null && one.group(3) != null)) {
            return Optional.empty();
        }
        BigDecimal units = number(one.group(1) == null ? one.group(3) : one.group(1));
        return Currencies.find(one.group(2)).map(currency -> new RateColumn(currency, units, null));
    }

    private static BigDecimal number(@Nullable String digits) {
        return digits == null || new BigDecimal(digits).signum() == 0 ? BigDecimal.ONE : new BigDecimal(digits);
    }
}
