package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
            "(\\d{1,4}(?:[.,]\\d{1,3})?) ?(?:€|\\$|£|eur|usd|gbp|chf|euro)? ?(?:/|per |pro |je |par |al |por )\\s?(kg|l|litre|liter|pack|drum|100 kg|to|t|tonne|piece|stuck)(?!\\p{L})");
    private static final Pattern CHARGE = Pattern.compile(
            "fracht|freight|transport|shipping|versand|(?<!\\p{L})port(?!\\p{L})|trasporto|flete|carriage|maut|energ|pfand|deposit"
                    + "|consigne|handling");

    private CostText() {}

    /** The question that a sentence raises; empty if it cannot change prices. */
    static Optional<Question> question(String clause, LooseLine line) {
        String folded = ListDates.folded(clause);
        String field = field(clause);
        if (VAT.matcher(folded).find()) {
            return includesVat(folded)
                    ? Optional.of(Question.of(
                            field,
                            line.origin(),
                            QuestionMessages.pricesWithVat(ListRows.shortened(clause)),
                            "take off 19 % VAT",
                            "prices are without VAT"))
                    : Optional.empty();
        }
        boolean surcharge = SURCHARGE.matcher(folded).find();
        boolean discount = !surcharge && DISCOUNT.matcher(folded).find();
        boolean charge = CHARGE.matcher(folded).find();
        Matcher percent = PERCENT.matcher(folded);
        Matcher amount = PER_UNIT.matcher(folded);
        List<String> choices = new ArrayList<>();
        if ((surcharge || discount || charge) && percent.find()) {
            choices.add((discount ? "subtract " : "add ") + percent.group(1).replace(',', '.') + " %");
        } else if ((surcharge || charge) && amount.find()) {
            choices.add("add " + amount.group(1).replace(',', '.') + " per " + unit(amount.group(2)));
        } else if (surcharge && line.place() != LooseLine.Place.WITHIN) {
            choices.add("add 3 %");
        }
        if (choices.isEmpty()) {
            return Optional.empty();
        }
        choices.add("ignore");
        return Optional.of(new Question(
                field, "", line.origin(), QuestionMessages.changesPrices(ListRows.shortened(clause)), choices));
    }

    private static String unit(String word) {
        return switch (word) {
            case "drum" -> "pack";
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

    /** Where the answer to a sentence is kept. */
    static String field(String clause) {
        return "line: " + ListRows.shortened(ListWords.tidy(clause));
    }
}
