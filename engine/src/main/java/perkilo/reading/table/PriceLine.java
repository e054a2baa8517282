package perkilo.reading.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * A line beside a table that says what its prices are in, such as {@code Prices in USD per lb}.
 *
 * @param row from zero
 * @param currency as typed; empty if it names none
 * @param per a unit, or a word for a pack; empty if it names none
 */
record PriceLine(int row, String currency, String per) {

    private static final Set<String> PRICES = Set.of(
            "price",
            "prices",
            "preis",
            "preise",
            "prix",
            "prezzo",
            "prezzi",
            "precio",
            "precios",
            "currency",
            "wahrung",
            "devise",
            "monnaie",
            "valuta",
            "divisa",
            "moneda",
            "quoted",
            "amounts");

    private static final Set<String> PER = Set.of("per", "je", "pro", "par", "al", "por");

    /** Words that change nothing in such a line; any other word makes it more than that. */
    private static final Set<String> FILLERS = Set.of(
            "all",
            "in",
            "are",
            "is",
            "net",
            "our",
            "unit",
            "list",
            "material",
            "materials",
            "raw",
            "the",
            "of",
            "and",
            "alle",
            "netto",
            "sind",
            "unsere",
            "rohstoffe",
            "verstehen",
            "sich",
            "tous",
            "les",
            "en",
            "sont",
            "nets",
            "tutti",
            "i",
            "sono",
            "netti",
            "todos",
            "los",
            "son",
            "netos",
            "stated",
            "as",
            "goods",
            "ex",
            "works");

    private static final int CODE = 3;

    /** The line in a text; empty if it says nothing about prices, or more than what they are in. */
    static Optional<PriceLine> parse(int row, String text) {
        String currency = "";
        String per = "";
        boolean prices = false;
        boolean perNext = false;
        for (String word : split(text)) {
            String plain = String.join("", CostWords.words(word));
            if (word.equals("/") || PER.contains(plain)) {
                perNext = true;
            } else if (perNext) {
                if (!per.isEmpty() || unit(word) == null) {
                    return Optional.empty();
                }
                per = word;
                perNext = false;
            } else if (PRICES.contains(plain)) {
                prices = true;
            } else if (isCurrency(word)) {
                if (!currency.isEmpty()) {
                    return Optional.empty();
                }
                currency = word;
            } else if (!plain.isEmpty() && !FILLERS.contains(plain)) {
                return Optional.empty();
            }
        }
        boolean both = !currency.isEmpty() && !per.isEmpty();
        return (prices && !(currency.isEmpty() && per.isEmpty())) || both
                ? Optional.of(new PriceLine(row, currency, per))
                : Optional.empty();
    }

    private static @Nullable String unit(String word) {
        return Measure.parse(word).isPresent() || UnitText.isPack(word) ? word : null;
    }

    private static boolean isCurrency(String word) {
        boolean code = word.length() == CODE
                && word.equals(word.toUpperCase(Locale.ROOT))
                && Currencies.find(word).isPresent();
        return code
                || (word.length() <= 2
                        && !Character.isLetterOrDigit(word.charAt(0))
                        && CurrencySign.parse(word).isPresent());
    }

    /** The words; a slash is one of its own. */
    private static List<String> split(String text) {
        List<String> words = new ArrayList<>();
        for (String word : text.replace("/", " / ").split("[\\s\\p{Z},;:()\\[\\]!]+", -1)) {
            String bare = word.endsWith(".") ? word.substring(0, word.length() - 1) : word;
            if (!bare.isEmpty()) {
                words.add(bare);
            }
        }
        return words;
    }

    /** The same line without the part that the table says itself. */
    PriceLine without(boolean itsCurrency, boolean itsUnit) {
        return new PriceLine(row, itsCurrency ? "" : currency, itsUnit ? "" : per);
    }

    /** Whether it adds nothing. */
    boolean isEmpty() {
        return currency.isEmpty() && per.isEmpty();
    }

    /** The unit of a header, with what this line adds. */
    String addedTo(String header) {
        UnitText said = UnitText.parse(header).orElse(null);
        if (said == null) {
            return header;
        }
        boolean unitSaid = said.measure() != null || said.pack();
        String money = said.currency() != null ? said.currency().text() : currency;
        if (unitSaid) {
            return said.currency() != null || money.isEmpty() ? header : money + " per " + ofUnit(header);
        }
        return per.isEmpty() ? money : (money + " per " + per).strip();
    }

    private static String ofUnit(String header) {
        String bare = header.strip();
        String lower = bare.toLowerCase(Locale.ROOT);
        if (lower.startsWith("per ")) {
            return bare.substring("per ".length()).strip();
        }
        return bare.startsWith("/") ? bare.substring(1).strip() : bare;
    }
}
