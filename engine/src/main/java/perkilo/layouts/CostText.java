package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences that change prices: surcharges, discounts, VAT. */
final class CostText {

    private static final String P =
            "(\\d{1,2}(?:[.,]\\d{1,2})?) ?(?:%|percent|prozent|pct|per cent|pour cent|por ciento|per cento)";
    private static final Pattern PERCENT = Pattern.compile(P);
    private static final Pattern SURCHARGE = Pattern.compile(
            "zuschlag|aufschlag|surcharge|supplement|majoration|surtaxe|sovrapprezz|maggiorazion|recargo|suplemento|levy"
                    + "|erhoh|increas|augment|hausse|aument|rincar|sobreprecio|premium|uplift|teuerung|(?:plus|zzgl\\.?|\\+) ?"
                    + P);
    private static final Pattern DISCOUNT = Pattern.compile(
            "rabatt|skonto|nachlass|discount|rebate|remise|rabais|escompte|ristourne|sconto|abbuono|descuento|rebaja"
                    + "|bonificacion|abzug|abzgl|(?:minus|less) ?" + P);
    private static final Pattern VAT = Pattern.compile(
            "mwst|(?<!\\p{L})ust(?!\\p{L})|umsatzsteuer|mehrwertsteuer|(?<!\\p{L})(?:vat|tva|iva|ttc|gst|sales tax|tax(?:es)?)(?!\\p{L})");
    private static final Pattern WITHOUT = Pattern.compile(
            "excl|exkl|zzgl|zuzug|plus|hors|(?<!\\p{L})ht(?!\\p{L})|ohne|sin |senza|\\+|oltre|esclus|excluid|no inclu|not incl|nicht"
                    + "|without|ex vat|mas iva|non compr|non incl|exempt|subject to");
    private static final Pattern WITH = Pattern.compile(
            "ttc|inkl|incl|einschl|compris|compres|with|con iva|mit |avec|ivato|brutto|gross|lordo|toutes taxes");
    private static final Pattern PER_UNIT = Pattern.compile(
            "(\\d{1,4}(?:[.,]\\d{1,3})?) ?(?:€|\\$|£|eur|usd|gbp|chf|euro)? ?(?:/|per |pro |je |par |al |por )\\s?(kg|l|litre|liter|pack|100 kg|to|t|tonne|piece|stuck)(?!\\p{L})");
    private static final Pattern CHARGE = Pattern.compile(
            "fracht|freight|transport|shipping|versand|(?<!\\p{L})port(?!\\p{L})|trasporto|flete|carriage|maut|energ|pfand|deposit"
                    + "|consigne|handling");

    private CostText() {}

    /** The end of answers about what is charged for an order as a whole. */
    static final String NOT_IN_PRICE = "(not in the price)";

    private static final String N = "(\\d{1,6}(?:[.,]\\d{1,3})?)";
    private static final Pattern MONEY = Pattern.compile("(?:€|\\$|£|\\b(?:eur|usd|gbp|chf|euro)\\b) ?" + N + "|" + N
            + " ?(?:€|\\$|£|(?:euro?|usd|gbp|chf)(?!\\p{L}))");
    private static final Pattern FEE = Pattern.compile(
            "charge|(?<!\\p{L})fee|gebuhr|pauschale|contribut|contribuc|kostenbeitrag|frais|(?<!\\p{L})spese|gastos|forfait|fianza|cauzione");
    private static final Pattern PER_ORDER = Pattern.compile(
            "(?:per|pro|je|par|por|al|alla|a|each|every|/) ?(?:order|shipment|consignment|delivery|invoice|auftrag|bestellung|sendung"
                    + "|lieferung|rechnung|commande|envoi|expedition|livraison|facture|ordine|spedizione|consegna|fattura|pedido"
                    + "|envio|entrega|factura)(?!\\p{L})");
    private static final Pattern SMALL = Pattern.compile(
            "(?:below|under|less than|unter|weniger als|moins de|inferieure?s? a|inferior(?:es|i)? a|meno di|menos de|sotto i|sotto)(?!\\p{L})"
                    + "|small.order|mindermenge|anbruch|kleinmenge|kleinauftrag");
    private static final Pattern FREE = Pattern.compile(
            "frei haus|frachtfrei|franko|franco|free (?:delivery|shipping|carriage|freight)|carriage paid|porto franco|portes pagados");
    private static final Pattern PER_WORD = Pattern.compile(
            N + " ?(?:€|\\$|£|eur|usd|gbp|chf|euro)? ?(?:/|per |pro |je |par |al |por )\\s?(\\p{L}{3,})");
    private static final int MOST_SCOPES = 2;
    private static final int LONG_WORD = 6;
    private static final int ENDING = 2;

    /**
     * The question that a sentence raises; empty if it cannot change prices.
     *
     * @param onList whether some item, pack or heading of the table holds a word
     */
    static Optional<Question> question(String clause, LooseLine line, Predicate<String> onList) {
        String folded = ListDates.folded(clause);
        String field = field(clause);
        if (VAT.matcher(folded).find()
                && !SURCHARGE
                        .matcher(folded.replaceAll("(?:plus|zzgl\\.?|\\+) ?" + P, ""))
                        .find()) {
            return includesVat(folded)
                    ? Optional.of(Question.of(
                            field,
                            line.origin(),
                            QuestionMessages.pricesWithVat(clause),
                            "take off 19 % VAT",
                            "prices are without VAT"))
                    : Optional.empty();
        }
        List<String> choices = choices(clause, folded, onList);
        boolean named = choices.isEmpty() && SURCHARGE.matcher(folded).find();
        if (choices.isEmpty() && (!named || line.place() == LooseLine.Place.WITHIN)) {
            return Optional.empty();
        }
        boolean adds = choices.stream().anyMatch(choice -> Adjustment.of(choice).isPresent());
        choices.add("ignore");
        return Optional.of(new Question(
                field,
                "",
                line.origin(),
                adds
                        ? QuestionMessages.changesSomePrices(clause)
                        : named ? QuestionMessages.changesPricesHow(clause) : QuestionMessages.changesPrices(clause),
                choices));
    }

    private static List<String> choices(String clause, String folded, Predicate<String> onList) {
        boolean surcharge = SURCHARGE.matcher(folded).find();
        boolean discount = !surcharge && DISCOUNT.matcher(folded).find();
        boolean charge = CHARGE.matcher(folded).find();
        boolean fee = FEE.matcher(folded).find();
        List<String> choices = new ArrayList<>();
        Matcher percent = PERCENT.matcher(folded);
        if ((surcharge || discount || charge) && percent.find()) {
            String change = (discount ? "subtract " : "add ") + percent.group(1).replace(',', '.') + " %";
            choices.add(change);
            scopes(clause, onList).forEach(words -> choices.add(LineAdjustment.only(change, words)));
            return choices;
        }
        if (!surcharge && !charge && !fee) {
            return choices;
        }
        Matcher amount = PER_UNIT.matcher(folded);
        if (amount.find()) {
            String change = "add " + amount.group(1).replace(',', '.') + " per " + unit(amount.group(2));
            choices.add(change);
            scopes(clause, onList).forEach(words -> choices.add(LineAdjustment.only(change, words)));
            return choices;
        }
        Matcher perWord = PER_WORD.matcher(folded);
        while (perWord.find()) {
            if (ListWords.is("container", perWord.group(2))) {
                String change = "add " + perWord.group(1).replace(',', '.') + " per pack";
                choices.add(change);
                if (onList.test(perWord.group(2))) {
                    choices.add(LineAdjustment.only(change, perWord.group(2)));
                }
                return choices;
            }
        }
        return lumpSums(folded, surcharge || fee, choices);
    }

    /** What is charged for an order as a whole: always, or for small ones. */
    private static List<String> lumpSums(String folded, boolean surely, List<String> choices) {
        Matcher money = MONEY.matcher(folded);
        String sum = "";
        String below = "";
        while (money.find()) {
            String figure = (money.group(1) == null ? money.group(2) : money.group(1)).replace(',', '.');
            boolean limit = lastBefore(SMALL, folded, money.start()) >= 0
                    && folded.substring(lastBefore(SMALL, folded, money.start()), money.start())
                                    .length()
                            <= LONGEST_LIMIT;
            if (limit
                    && below.isEmpty()
                    && !SMALL_NAME.matcher(folded.substring(0, money.start())).find()) {
                below = figure;
            } else if (sum.isEmpty()) {
                sum = figure;
            }
        }
        boolean perOrder = PER_ORDER.matcher(folded).find();
        boolean small = SMALL.matcher(folded).find();
        boolean free = FREE.matcher(folded).find();
        if (sum.isEmpty() || (free && !perOrder && !small) || (!surely && !perOrder && !small)) {
            return choices;
        }
        if (small) {
            choices.add(
                    sum + (below.isEmpty() ? " for small orders " : " for orders below " + below + " ") + NOT_IN_PRICE);
        }
        if (perOrder || !small) {
            choices.add(sum + " per order " + NOT_IN_PRICE);
        }
        return choices;
    }

    private static final int LONGEST_LIMIT = 16;
    private static final Pattern SMALL_NAME =
            Pattern.compile("(?:small.order|mindermenge|anbruch|kleinmenge|kleinauftrag)\\S* ?$");

    /** Words of a sentence that items, packs or headings of the list have too, without their endings. */
    private static List<String> scopes(String clause, Predicate<String> onList) {
        List<String> words = new ArrayList<>();
        for (String word : clause.split("[^\\p{L}]+", -1)) {
            String stem = word.length() < LONG_WORD ? "" : word.substring(0, word.length() - ENDING);
            boolean cost = ListWords.speaksOfCost(word)
                    || SURCHARGE.matcher(ListDates.folded(word)).find();
            if (!stem.isEmpty() && !cost && words.size() < MOST_SCOPES && onList.test(stem)) {
                words.add(stem);
            }
        }
        return words;
    }

    private static String unit(String word) {
        return switch (word) {
            case "stuck" -> "piece";
            default -> word;
        };
    }

    /** Whether the word nearest before the word for VAT, or else nearest after it, says that it is included. */
    private static boolean includesVat(String folded) {
        Matcher vat = VAT.matcher(folded);
        if (!vat.find()) {
            return false;
        }
        if (vat.group().equals("ttc")) {
            return true;
        }
        int with = lastBefore(WITH, folded, vat.start());
        int without = lastBefore(WITHOUT, folded, vat.start());
        if (with >= 0 || without >= 0) {
            return with > without;
        }
        String after = folded.substring(vat.end());
        Matcher says = WITH.matcher(after);
        Matcher denies = WITHOUT.matcher(after);
        return says.find() && !(denies.find() && denies.start() <= says.start());
    }

    private static int lastBefore(Pattern pattern, String text, int end) {
        int last = -1;
        Matcher matcher = pattern.matcher(text);
        while (matcher.find() && matcher.start() < end) {
            last = matcher.start();
        }
        return last;
    }

    /** Whether a sentence changes what is paid, so that it says nothing of what prices are for. */
    static boolean isCost(String clause) {
        String folded = ListDates.folded(clause);
        return SURCHARGE.matcher(folded).find()
                || DISCOUNT.matcher(folded).find()
                || CHARGE.matcher(folded).find();
    }

    /** Whether a sentence names a sum of money. */
    static boolean saysMoney(String clause) {
        return MONEY.matcher(ListDates.folded(clause)).find();
    }

    /** Where the answer to a sentence is kept. */
    static String field(String clause) {
        return "line: " + ListRows.shortened(ListWords.tidy(clause));
    }
}
