package perkilo.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import javax.money.CurrencyQuery;
import javax.money.CurrencyQueryBuilder;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import javax.money.MonetaryContextBuilder;
import javax.money.UnknownCurrencyException;
import javax.money.spi.CurrencyProviderSpi;
import org.javamoney.moneta.Money;
import org.javamoney.moneta.spi.JDKCurrencyProvider;

/** Currencies by their ISO 4217 codes, and the rounding of amounts. */
public final class Currencies {

    private static final Pattern CODE = Pattern.compile("[A-Z]{3}");

    private static final int MONETA_PRECISION = 34;

    /** Used directly: the standard's registry uses it too, but is slow to set up itself and its logging. */
    private static final CurrencyProviderSpi ISO_4217 = new JDKCurrencyProvider();

    /** Currencies looked up before, since tables of rates look one up in every line. */
    private static final Map<String, Optional<CurrencyUnit>> FOUND = new ConcurrentHashMap<>();

    /** Stands for a currency that is not known: XXX, "no currency" in ISO 4217. */
    public static final CurrencyUnit UNKNOWN = of("XXX");

    private Currencies() {}

    /** Whether a currency is not known. */
    public static boolean isUnknown(CurrencyUnit currency) {
        return currency.equals(UNKNOWN);
    }

    /**
     * The currency with an ISO 4217 code.
     *
     * @param code in any case, such as {@code EUR}
     * @return empty if there is no such currency
     */
    public static Optional<CurrencyUnit> find(String code) {
        String upper = code.strip().toUpperCase(Locale.ROOT);
        return CODE.matcher(upper).matches() ? FOUND.computeIfAbsent(upper, Currencies::registered) : Optional.empty();
    }

    private static Optional<CurrencyUnit> registered(String code) {
        CurrencyQuery query = CurrencyQueryBuilder.of().setCurrencyCodes(code).build();
        return ISO_4217.getCurrencies(query).stream().findFirst();
    }

    /**
     * The currency with an ISO 4217 code that is known to exist.
     *
     * @throws UnknownCurrencyException if there is no such currency
     */
    public static CurrencyUnit of(String code) {
        return find(code).orElseThrow(() -> new UnknownCurrencyException(code));
    }

    /** The decimals of a currency's minor unit (ISO 4217): 2 for EUR, 0 for JPY, 3 for KWD. */
    public static int minorDigits(CurrencyUnit currency) {
        return Math.max(0, currency.getDefaultFractionDigits());
    }

    /** An amount as it is invoiced: rounded to the minor unit, half up. */
    public static BigDecimal invoiced(BigDecimal amount, CurrencyUnit currency) {
        return amount.setScale(minorDigits(currency), RoundingMode.HALF_UP);
    }

    /**
     * An amount as the standard's type, unrounded up to 34 significant digits.
     *
     * @param amount in {@code currency}
     */
    public static MonetaryAmount money(BigDecimal amount, CurrencyUnit currency) {
        return Money.of(
                amount,
                currency,
                MonetaryContextBuilder.of(Money.class)
                        .setPrecision(MONETA_PRECISION)
                        .setMaxScale(-1)
                        .set(RoundingMode.HALF_UP)
                        .build());
    }
}
