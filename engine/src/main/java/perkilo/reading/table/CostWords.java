package perkilo.reading.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Words that say that something changes what is paid, in English, German, French, Italian and Spanish: a column or a
 * line with one of them is never left out unnoticed.
 */
final class CostWords {

    /** What such a word is about. */
    enum About {
        /** Something that is paid on top of the goods. */
        CHARGE,
        /** Something that is taken off the price. */
        DISCOUNT,
        /** A minimum, a validity or a currency. */
        TERM,
        /** A price. */
        PRICE
    }

    /** Words that count wherever they are in another word, as in {@code Seefrachtzuschlag}. */
    private static final Map<About, List<String>> PARTS = Map.of(
            About.CHARGE,
            List.of(
                    "freight",
                    "shipping",
                    "carriage",
                    "postage",
                    "transport",
                    "customs",
                    "tariff",
                    "surcharge",
                    "deposit",
                    "tooling",
                    "fracht",
                    "versand",
                    "lieferkosten",
                    "zuschlag",
                    "aufschlag",
                    "gebuhr",
                    "pfand",
                    "steuer",
                    "nebenkosten",
                    "rustkosten",
                    "werkzeugkosten",
                    "verpackungskosten",
                    "versicherung",
                    "insurance",
                    "douane",
                    "livraison",
                    "consigne",
                    "supplement",
                    "majoration",
                    "outillage",
                    "trasporto",
                    "spedizione",
                    "dazio",
                    "dogana",
                    "cauzione",
                    "maggiorazione",
                    "assicurazione",
                    "portes",
                    "flete",
                    "arancel",
                    "aduana",
                    "recargo",
                    "fianza"),
            About.DISCOUNT,
            List.of(
                    "discount",
                    "rebate",
                    "rabatt",
                    "nachlass",
                    "skonto",
                    "remise",
                    "rabais",
                    "ristourne",
                    "escompte",
                    "sconto",
                    "descuento"),
            About.TERM,
            List.of(
                    "minimum",
                    "mindest",
                    "valid",
                    "gultig",
                    "valable",
                    "currency",
                    "wahrung",
                    "devise",
                    "monnaie",
                    "valuta",
                    "divisa",
                    "moneda"),
            About.PRICE,
            List.of("price", "preis", "prezzo", "prezzi", "precio"));

    /** Words that count only when they are whole words. */
    private static final Map<About, Set<String>> WHOLE = Map.of(
            About.CHARGE,
            Set.of(
                    "duty",
                    "duties",
                    "fee",
                    "fees",
                    "charge",
                    "charges",
                    "handling",
                    "tax",
                    "taxes",
                    "vat",
                    "gst",
                    "levy",
                    "excise",
                    "setup",
                    "porto",
                    "zoll",
                    "mwst",
                    "ust",
                    "port",
                    "frais",
                    "droits",
                    "taxe",
                    "tva",
                    "assurance",
                    "spese",
                    "iva",
                    "envio",
                    "gastos",
                    "deposito",
                    "seguro",
                    "impuesto"),
            About.DISCOUNT,
            Set.of("bonus", "rappel"),
            About.TERM,
            Set.of(
                    "min",
                    "moq",
                    "mov",
                    "from",
                    "until",
                    "till",
                    "expires",
                    "expiry",
                    "ab",
                    "bis",
                    "minimo",
                    "minima",
                    "minimal",
                    "minimale",
                    "jusqu",
                    "jusquau",
                    "partir",
                    "fino",
                    "dal",
                    "hasta",
                    "desde"),
            About.PRICE,
            Set.of("prix", "cost", "costs", "kosten", "cout", "couts", "costo", "costi", "coste", "tarif"));

    /** Words that make it a name or a number that nothing is paid by, such as a customs code. */
    private static final Set<String> NO_AMOUNT = Set.of(
            "code",
            "codes",
            "number",
            "no",
            "nr",
            "num",
            "nummer",
            "numero",
            "id",
            "account",
            "konto",
            "contact",
            "kontakt",
            "address",
            "adresse",
            "weight",
            "gewicht",
            "poids",
            "peso",
            "class",
            "terms",
            "conditions",
            "bedingungen",
            "date",
            "datum",
            "list",
            "name");

    /** Words with which a person marks what is to be left out. */
    private static final List<String> MARKS = List.of(
            "not needed",
            "not used",
            "ignore",
            "nicht notig",
            "nicht benotigt",
            "pas necessaire",
            "non serve",
            "non necessario",
            "no necesario",
            "no hace falta");

    private static final int FIRST_BEYOND_ASCII = 0x80;

    private final Map<String, Optional<About>> known = new HashMap<>();

    /** What the first such word of a text is about; empty if there is none. */
    Optional<About> in(String text) {
        return known.computeIfAbsent(text, CostWords::find);
    }

    /** Whether a header is marked by the person as not needed. */
    static boolean isMarked(String header) {
        String plain = plain(header);
        return MARKS.stream().anyMatch(plain::contains);
    }

    private static Optional<About> find(String text) {
        List<String> words = words(text);
        if (words.stream().anyMatch(NO_AMOUNT::contains)) {
            return Optional.empty();
        }
        String joined = String.join("", words);
        if (joined.contains("deliverycost") || joined.contains("deliverycharge") || joined.contains("deliveryfee")) {
            return Optional.of(About.CHARGE);
        }
        for (About about : About.values()) {
            for (String word : words) {
                if (WHOLE.getOrDefault(about, Set.of()).contains(word)
                        || PARTS.getOrDefault(about, List.of()).stream().anyMatch(word::contains)) {
                    return Optional.of(about);
                }
            }
        }
        return Optional.empty();
    }

    /** The words of a text without accents, in lower case. */
    static List<String> words(String text) {
        String plain = plain(text);
        List<String> words = new ArrayList<>();
        int from = -1;
        for (int at = 0; at <= plain.length(); at++) {
            boolean letter = at < plain.length() && Character.isLetterOrDigit(plain.charAt(at));
            if (letter && from < 0) {
                from = at;
            } else if (!letter && from >= 0) {
                words.add(plain.substring(from, at));
                from = -1;
            }
        }
        return words;
    }

    private static String plain(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        for (int at = 0; at < lower.length(); at++) {
            if (lower.charAt(at) >= FIRST_BEYOND_ASCII) {
                return withoutMarks(lower);
            }
        }
        return lower;
    }

    private static String withoutMarks(String lower) {
        StringBuilder plain = new StringBuilder(lower.length());
        Normalizer.normalize(lower, Normalizer.Form.NFKD)
                .codePoints()
                .filter(letter -> Character.getType(letter) != Character.NON_SPACING_MARK)
                .forEach(plain::appendCodePoint);
        return plain.toString();
    }
}
