package perkilo.layouts;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.units.Measure;

/**
 * Something that a list adds to its prices, or takes off.
 *
 * @param kind what is done
 * @param value the per cent, or the amount in the currency of the price
 * @param basis for an amount: what it is for; nothing otherwise
 */
record Adjustment(Kind kind, BigDecimal value, PriceNote basis) {

    /** What is done to a price. */
    enum Kind {
        ADD_PERCENT,
        TAKE_PERCENT,
        TAKE_OFF_VAT,
        ADD_AMOUNT
    }

    private static final int PLACES = 10;
    private static final Pattern PERCENT = Pattern.compile("(add|subtract) (\\d+(?:[.,]\\d+)?) ?%");
    private static final Pattern AMOUNT = Pattern.compile("add (\\d+(?:[.,]\\d+)?) (?:\\p{L}{3} |[€$£] ?)?per (.+)");
    private static final Pattern VAT = Pattern.compile("take off (\\d+(?:[.,]\\d+)?) ?% vat");

    static Adjustment discount(BigDecimal percent) {
        return new Adjustment(Kind.TAKE_PERCENT, percent, PriceNote.NONE);
    }

    static Adjustment surcharge(BigDecimal percent) {
        return new Adjustment(Kind.ADD_PERCENT, percent, PriceNote.NONE);
    }

    static Adjustment vat(BigDecimal percent) {
        return new Adjustment(Kind.TAKE_OFF_VAT, percent, PriceNote.NONE);
    }

    static Adjustment amount(BigDecimal amount, PriceNote basis) {
        return new Adjustment(Kind.ADD_AMOUNT, amount, basis);
    }

    /** The adjustment that a person's answer means, such as {@code add 3 %}; empty if it is none. */
    static Optional<Adjustment> of(String answer) {
        String words = answer.strip().toLowerCase(java.util.Locale.ROOT);
        Matcher percent = PERCENT.matcher(words);
        if (percent.matches()) {
            BigDecimal value = number(percent.group(2));
            return Optional.of(percent.group(1).equals("add") ? surcharge(value) : discount(value));
        }
        Matcher vat = VAT.matcher(words);
        if (vat.matches()) {
            return Optional.of(vat(number(vat.group(1))));
        }
        Matcher amount = AMOUNT.matcher(words);
        return amount.matches()
                ? PriceNote.of("per " + amount.group(2))
                        .filter(PriceNote::saysWhatFor)
                        .map(basis -> amount(number(amount.group(1)), basis))
                : Optional.empty();
    }

    private static BigDecimal number(String digits) {
        return new BigDecimal(digits.replace(',', '.'));
    }

    /**
     * The price after it.
     *
     * @param per what the price is for; null for a pack
     * @return empty if the amount is for something that the price cannot be compared with
     */
    Optional<BigDecimal> applied(BigDecimal price, @Nullable Measure per, Quantity pack) {
        BigDecimal fraction = value.movePointLeft(2);
        return switch (kind) {
            case ADD_PERCENT -> Optional.of(price.multiply(BigDecimal.ONE.add(fraction)));
            case TAKE_PERCENT -> Optional.of(price.multiply(BigDecimal.ONE.subtract(fraction)));
            case TAKE_OFF_VAT -> Optional.of(price.divide(BigDecimal.ONE.add(fraction), PLACES, RoundingMode.HALF_UP));
            case ADD_AMOUNT -> amountFor(per, pack).map(price::add);
        };
    }

    private Optional<BigDecimal> amountFor(@Nullable Measure per, Quantity pack) {
        Quantity of = per == null ? pack : new Quantity(BigDecimal.ONE, per);
        Quantity basisOf = basis.pack() ? pack : basis.per();
        if (basisOf == null) {
            return Optional.empty();
        }
        return of.in(basisOf.measure())
                .map(amount -> value.multiply(amount).divide(basisOf.amount(), PLACES, RoundingMode.HALF_UP));
    }

    /** In words, for the note of a price. */
    String words() {
        return switch (kind) {
            case ADD_PERCENT -> "plus " + Quantity.plain(value) + " %";
            case TAKE_PERCENT -> "less " + Quantity.plain(value) + " %";
            case TAKE_OFF_VAT -> "without " + Quantity.plain(value) + " % VAT";
            case ADD_AMOUNT -> "plus " + Quantity.plain(value) + " per " + basis.basisWords();
        };
    }
}
