package perkilo.reading;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import perkilo.units.Currencies;

/**
 * What a title says of the currency that all rates of a table share.
 *
 * @param currency the shared currency
 * @param first whether a rate is for one unit of it, as in {@code 1 EUR =}; else a rate is in it, as in {@code EUR per
 *     unit}
 */
record RateBase(CurrencyUnit currency, boolean first) {

    private static final String CODE = "([A-Z]{3}|€|£|US\\$|[Ee]uros?)";
    private static final String PER = "(?:per|pro|je|par|pour|por|for|für|base|al)";

    private static final Pattern ONE_IS =
            Pattern.compile("(?<![\\d.,])1\\s*" + CODE + "\\s*(?:=|in\\b|en\\b|equals\\b)");
    private static final Pattern FOR_ONE = Pattern.compile(
            "(?i:\\b" + PER + ")\\s+(?:1\\s*|(?i:one|cada|ein|eine|einen|un|una|uno)\\s+)?" + CODE + "(?![A-Za-z])");
    private static final Pattern NAMED = Pattern.compile(
            "(?i:\\b(?:base(?: currency)?|basis(?:währung)?|(?:devise|monnaie) de (?:base|référence)|(?:valuta|divisa|moneda)"
                    + " base))\\s*[:=]?\\s*" + CODE + "(?![A-Za-z])");
    private static final Pattern PER_UNIT = Pattern.compile("(?<![A-Za-z])" + CODE
            + "\\s+(?i:" + PER + "\\s+(?:1\\s*|une?\\s+|una\\s+)?"
            + "(?:foreign\\s+|fremde?\\s+)?(?:currency\\s+)?(?:unit|currency|einheit|fremdwährung|währungseinheit|unité|unità|"
            + "unidad)\\b)");

    /** What a text says; empty for nothing. */
    static Optional<RateBase> in(String text) {
        Optional<RateBase> inIt = found(PER_UNIT, text, false);
        if (inIt.isPresent()) {
            return inIt;
        }
        return found(ONE_IS, text, true).or(() -> found(FOR_ONE, text, true)).or(() -> found(NAMED, text, true));
    }

    private static Optional<RateBase> found(Pattern pattern, String text, boolean first) {
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            Optional<CurrencyUnit> currency = currency(matcher.group(1));
            if (currency.isPresent()) {
                return Optional.of(new RateBase(currency.get(), first));
            }
        }
        return Optional.empty();
    }

    private static Optional<CurrencyUnit> currency(String text) {
        return switch (text) {
            case "€", "Euro", "euro", "Euros", "euros" -> Currencies.find("EUR");
            case "£" -> Currencies.find("GBP");
            case "US$" -> Currencies.find("USD");
            default -> Currencies.find(text);
        };
    }
}
