package perkilo.reading.table;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import perkilo.units.Currencies;

/**
 * A currency as it is written beside a number: a code, or a sign that several currencies may share.
 *
 * @param text as typed
 * @param meanings the currencies it can stand for, the usual one first; at least one
 */
public record CurrencySign(String text, List<CurrencyUnit> meanings) {

    private static final Map<String, List<String>> SIGNS = Map.ofEntries(
            Map.entry("€", List.of("EUR")),
            Map.entry("EURO", List.of("EUR")),
            Map.entry("EUROS", List.of("EUR")),
            Map.entry("£", List.of("GBP")),
            Map.entry("$", List.of("USD", "CAD", "AUD", "NZD", "SGD", "HKD", "MXN", "TWD")),
            Map.entry("US$", List.of("USD")),
            Map.entry("C$", List.of("CAD")),
            Map.entry("CA$", List.of("CAD")),
            Map.entry("A$", List.of("AUD")),
            Map.entry("AU$", List.of("AUD")),
            Map.entry("NZ$", List.of("NZD")),
            Map.entry("S$", List.of("SGD")),
            Map.entry("HK$", List.of("HKD")),
            Map.entry("R$", List.of("BRL")),
            Map.entry("¥", List.of("JPY", "CNY")),
            Map.entry("RMB", List.of("CNY")),
            Map.entry("₹", List.of("INR")),
            Map.entry("₩", List.of("KRW")),
            Map.entry("₺", List.of("TRY")),
            Map.entry("ZŁ", List.of("PLN")),
            Map.entry("KČ", List.of("CZK")),
            Map.entry("KR", List.of("SEK", "NOK", "DKK")),
            Map.entry("SFR", List.of("CHF")),
            Map.entry("FR", List.of("CHF")));

    /** Language codes in number formats, and the currency that a shared sign means in each. */
    private static final Map<String, String> LANGUAGES = Map.of(
            "409", "USD", "1009", "CAD", "C0C", "CAD", "C09", "AUD", "1409", "NZD", "4809", "SGD", "C04", "HKD", "411",
            "JPY", "804", "CNY");

    private static final Pattern BRACKETED = Pattern.compile("\\[\\$([^\\]-]*)(?:-([0-9A-Fa-f]+))?]");
    private static final Pattern BARE = Pattern.compile("[€£$¥₹₩₺]|\\b[A-Z]{3}\\b");

    public CurrencySign {
        meanings = List.copyOf(meanings);
    }

    /** A currency by its code. */
    public static CurrencySign of(CurrencyUnit currency) {
        return new CurrencySign(currency.getCurrencyCode(), List.of(currency));
    }

    /** The currency that a code or sign stands for; empty if it is neither. */
    public static Optional<CurrencySign> parse(String text) {
        String key = text.strip().toUpperCase(Locale.ROOT);
        List<String> codes = SIGNS.get(key);
        if (codes != null) {
            return Optional.of(new CurrencySign(
                    text.strip(), codes.stream().map(Currencies::of).toList()));
        }
        return Currencies.find(key).map(currency -> new CurrencySign(text.strip(), List.of(currency)));
    }

    /** The currency that a number format shows, such as {@code [$€-407]} or {@code "$"#,##0.00}; empty if none. */
    public static Optional<CurrencySign> ofFormat(String format) {
        Matcher bracketed = BRACKETED.matcher(format);
        while (bracketed.find()) {
            String language = bracketed.group(2);
            String code = language == null ? null : LANGUAGES.get(language.toUpperCase(Locale.ROOT));
            Optional<CurrencySign> sign = parse(bracketed.group(1));
            if (sign.isPresent()) {
                return code == null || sign.get().isClear() ? sign : Optional.of(CurrencySign.of(Currencies.of(code)));
            }
        }
        Matcher bare = BARE.matcher(BRACKETED.matcher(format).replaceAll(""));
        return bare.find() ? parse(bare.group()) : Optional.empty();
    }

    /** Whether it can only mean one currency. */
    public boolean isClear() {
        return meanings.size() == 1;
    }

    /** Whether it can mean a currency. */
    public boolean canMean(CurrencyUnit currency) {
        return meanings.contains(currency);
    }

    /** Whether it is the dollar sign, which means US dollars unless something else decides. */
    public boolean isDollar() {
        return !isClear() && meanings.get(0).getCurrencyCode().equals("USD");
    }
}
