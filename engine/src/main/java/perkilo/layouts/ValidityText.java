package perkilo.layouts;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a sentence says of the days for which prices hold, in five languages. */
final class ValidityText {

    /** What a date is. */
    enum Kind {
        /** The day that prices hold from, in so many words. */
        FIRST,
        /** The day of the list. */
        LIST,
        LAST,
        /** The first day or the last. */
        EITHER,
        /** A date without a word. */
        BARE
    }

    /**
     * A date and what it is.
     *
     * @param before the words before it
     */
    record Dated(Kind kind, ListDates.Read read, String before, String text) {}

    private static final String L = "(?<![\\p{L}])";
    private static final String R = "(?![\\p{L}])";
    private static final Pattern LAST = Pattern.compile(L
            + "(?:(?:valid|good|firm|holds?|held|fixed) )?(?:until|untill|till|to|up to|thru|through|expir\\w*|ends?(?: on)?)"
            + R + "|" + L
            + "(?:gultig(?:keit)?|gilt|fest|gelten|preisbindung)?,?:? ?bis(?: einschl\\w*\\.?| inkl\\.?)?(?: zum| am)?"
            + R
            + "|" + L + "(?:bindefrist\\w*|ablauf\\w*|lauft ab(?: am)?|endet(?: am)?)" + R
            + "|" + L + "(?:valables?|valides?|valable)? ?jusqu'?\\s?(?:au|a|en|a la fin de)?" + R
            + "|" + L + "(?:fin de (?:validite|la validite)|echeance|expire\\w*|date limite)" + R
            + "|" + L + "(?:valid[oaie] )?(?:fino|sino) ?a?l?l?a?" + R + "|" + L + "(?:entro(?: il)?|scad\\w+|termine)"
            + R
            + "|" + L + "(?:validos? |vigentes? )?hasta(?: el)?" + R + "|" + L + "(?:venc\\w+|vence|caduc\\w+)" + R);
    private static final Pattern FIRST = Pattern.compile(L
            + "(?:(?:valid|effective|applicable|applies|apply|in force|prices?) )?(?:from|as from|starting(?: from| on)?|beginning|since)"
            + R
            + "|" + L + "effective(?: date| as of| on)?" + R
            + "|" + L + "(?:gultig(?:keit)?|gelten|gilt|wirksam|preise|in kraft)? ?(?:ab|seit)(?: dem| sofort)?" + R
            + "|" + L + "gultig (?:vom|von)" + R + "|" + L + "in kraft(?: am)?" + R
            + "|" + L
            + "(?:valables? |applicables? |valides? )?(?:a partir du?|a compter du?|des(?: le)?|depuis(?: le)?|du)" + R
            + "|" + L + "(?:entree )?en vigueur(?: le| au| a partir du| des le| depuis le)?" + R
            + "|" + L + "applicables?(?: au| le)?" + R
            + "|" + L
            + "(?:valid[oaie] )?(?:dal|dall|a partire dal?|a decorrere dal|decorr\\w+(?: dal)?|in vigore(?: dal?)?)" + R
            + "|" + L
            + "(?:validos? |vigentes? )?(?:desde(?: el)?|a partir del?|en vigor(?: desde(?: el)?| a partir del?)?)"
            + R);
    private static final Pattern LIST = Pattern.compile(L
            + "(?:dated?|as of|as at|quoted?(?: on)?|issued?(?: on)?|list of|list date|price list|offer(?: of)?|quotation|status|updated)"
            + R
            + "|" + L + "(?:stand|datum|vom|preisliste|angebot\\w*|liste|preisstand|ausgabe)" + R
            + "|" + L + "(?:date|le|offre|devis|tarif en date|liste)" + R + "|" + L
            + "(?:data|listino|offerta|del|emess\\w+)" + R
            + "|" + L + "(?:fecha|lista|oferta|de fecha)" + R);
    private static final Pattern EITHER = Pattern.compile(L
            + "(?:au|valid|validity|gultig|gultigkeit|geltung|valables?|validite|valid[oaie]|validita|vigencia|vigentes?|validez|validos?)"
            + R);
    private static final Pattern RANGE = Pattern.compile(
            "\\s*(?:-|bis(?: zum)?|to|till|until|through|thru|au|a|al|jusqu'au|hasta(?: el)?|al|fino al|and|et le|y el|e il)\\s*(?:the |dem )?");
    private static final Pattern DURATION = Pattern.compile(L
            + "(\\d{1,3}|one|two|three|four|six|ein(?:en|e)?|zwei|drei|vier|sechs|un|une|deux|trois|quatre|six|due|tre|sei|dos|tres)"
            + "[- ]?(days?|tagen?|tage|jours?|giorni|dias|calendar days|kalendertagen?|weeks?|wochen?|semaines?|settiman[ae]|semanas?"
            + "|months?|monaten?|monate|mois|mes[ei]|meses|years?|jahre?|ans?|ann[io]|anos?)" + R);
    private static final Pattern HOLDS = Pattern.compile(L
            + "(?:valid\\w*|gultig\\w*|gilt|gelten|geltung\\w*|bindefrist\\w*|gebunden|preisbindung\\w*|bindend|fest|valab\\w*|vigen\\w*"
            + "|firm|held|holds?|fixed|binding|ferm[ei]s?|maintenus?|expir\\w*|open for)");
    private static final Pattern FROM_LIST = Pattern.compile(L
            + "(?:(?:from|after|as of) (?:the )?(?:date|issue|day) of (?:the|this|our)? ?(?:price )?(?:list|offer|quotation|quote)"
            + "|ab (?:dem )?(?:datum|ausstellung) (?:dieser|dieses|der|des|unserer|unseres) (?:preis)?(?:liste|angebot(?:e?s)?)"
            + "|ab (?:angebots|listen|ausstellungs)datum"
            + "|(?:a compter|a partir) de la date (?:de l'offre|de cette offre|du (?:present )?(?:tarif|devis)|de ce tarif)"
            + "|dalla data (?:dell'|di questa |della presente )?(?:offerta)|dalla data del (?:presente )?listino"
            + "|(?:desde|a partir de) la fecha de (?:la |esta )?(?:oferta|lista|tarifa))"
            + R);
    private static final Pattern OTHER = Pattern.compile(L
            + "(?:agb|allgemeine\\w*|terms|conditions|condizioni|condiciones|iso ?\\d+|certif\\w*|zertif\\w*|payment|payable|zahl\\w*|paiement"
            + "|pagamento|pago|holiday\\w*|\\w*urlaub|\\w*ferien|closed|geschlossen|ferme|chiuso|cerrado|messe|fair|salon|feria|fiera|deliver\\w*"
            + "|liefer\\w*|livr\\w*|consegna|entrega|best before|mhd|haltbar\\w*|harvest|\\w*ernte|recolte|raccolto|cosecha|print\\w*|gedruckt"
            + "|founded|gegrundet|copyright|lead time|order by|orders? (?:before|until)|bestell\\w*|commandes?|visit\\w*|tel|fax|shelf life)"
            + R);

    private ValidityText() {}

    /** Whether a sentence is about the days of something else than prices. */
    static boolean isOfSomethingElse(String clause) {
        String folded = ListDates.folded(clause);
        return OTHER.matcher(folded).find() && !TitleFacts.speaksOfPrices(folded);
    }

    /** Whether a sentence speaks of validity. */
    static boolean speaksOfValidity(String clause) {
        String folded = ListDates.folded(clause);
        return HOLDS.matcher(folded).find() || FROM_LIST.matcher(folded).find();
    }

    /** The dates of a sentence, from left to right. */
    static List<Dated> dates(String clause, ListDates dates) {
        List<Dated> found = new ArrayList<>();
        for (ListDates.Placed date : dates.all(clause)) {
            String before = ListDates.folded(date.before());
            boolean range = !found.isEmpty() && RANGE.matcher(before).matches();
            if (range) {
                Dated first = found.remove(found.size() - 1);
                found.add(new Dated(Kind.FIRST, first.read(), first.before(), first.text()));
            }
            found.add(new Dated(range ? Kind.LAST : kind(before), date.read(), date.before(), date.text()));
        }
        return found;
    }

    /** What the last word before a date says; of words that end at the same place the longest counts. */
    private static Kind kind(String before) {
        Kind kind = Kind.BARE;
        int end = -1;
        int length = 0;
        Pattern[] patterns = {LAST, FIRST, LIST, EITHER};
        Kind[] kinds = {Kind.LAST, Kind.FIRST, Kind.LIST, Kind.EITHER};
        for (int at = 0; at < patterns.length; at++) {
            Matcher matcher = patterns[at].matcher(before);
            while (matcher.find()) {
                int size = matcher.end() - matcher.start();
                if (size > 0 && (matcher.end() > end || (matcher.end() == end && size > length))) {
                    kind = kinds[at];
                    end = matcher.end();
                    length = size;
                }
            }
        }
        boolean alsoLast = kind == Kind.LIST && patterns[0].matcher(before).find();
        return alsoLast ? Kind.EITHER : kind;
    }

    /** How long prices hold; empty if the sentence does not say. */
    static Optional<Period> duration(String clause) {
        String folded = ListDates.folded(clause);
        Matcher duration = DURATION.matcher(folded);
        return speaksOfValidity(clause) && duration.find()
                ? Optional.of(period(duration.group(1), duration.group(2)))
                : Optional.empty();
    }

    private static Period period(String count, String unit) {
        int number = switch (count) {
            case "one", "ein", "einen", "eine", "un", "une" -> 1;
            case "two", "zwei", "deux", "due", "dos" -> 2;
            case "three", "drei", "trois", "tre", "tres" -> 3;
            case "four", "vier", "quatre" -> 4;
            case "six", "sechs", "sei" -> 6;
            default -> Integer.parseInt(count);
        };
        if (unit.startsWith("w") || unit.startsWith("sem") || unit.startsWith("set")) {
            return Period.ofWeeks(number);
        }
        if (unit.startsWith("mo") || unit.startsWith("mes")) {
            return Period.ofMonths(number);
        }
        if (unit.startsWith("y") || unit.startsWith("jahr") || unit.startsWith("an")) {
            return Period.ofYears(number);
        }
        return Period.ofDays(number);
    }
}
