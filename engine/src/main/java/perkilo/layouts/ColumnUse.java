package perkilo.layouts;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a column of a list is used for.
 *
 * @param meaning what its cells hold
 * @param from for a price: the quantity that it applies from; null if the column does not say
 * @param packText for a price: the pack that it is for, as typed; empty if the column does not say
 * @param note for a price: what else the header says about it
 */
public record ColumnUse(Meaning meaning, @Nullable BreakText from, String packText, PriceNote note) {

    private static final String FROM = "price from ";
    private static final String OF = "price of ";

    /** A column that is described by its meaning alone. */
    public static ColumnUse of(Meaning meaning) {
        return new ColumnUse(meaning, null, "", PriceNote.NONE);
    }

    /** A column of prices. */
    public static ColumnUse price(PriceNote note) {
        return new ColumnUse(Meaning.PRICE, null, "", note);
    }

    /** A column of prices from a quantity upwards. */
    public static ColumnUse priceFrom(BreakText from, PriceNote note) {
        return new ColumnUse(Meaning.PRICE, from, "", note);
    }

    /** A column of prices of one pack. */
    public static ColumnUse priceOf(String pack, PriceNote note) {
        return new ColumnUse(Meaning.PRICE, null, pack, note);
    }

    /**
     * The use that a mapping file gives a column.
     *
     * @param words such as {@code item}, {@code price from 25 kg} or {@code price of 25 kg}
     * @param note what the column's header says about its prices
     * @return empty if the words are not understood
     */
    public static Optional<ColumnUse> parse(String words, PriceNote note) {
        String text = words.strip();
        if (text.regionMatches(true, 0, FROM, 0, FROM.length())) {
            return BreakText.of(text.substring("price ".length()))
                    .filter(from -> from.kind() == BreakText.Kind.FROM)
                    .map(from -> priceFrom(from, note));
        }
        if (text.regionMatches(true, 0, OF, 0, OF.length())) {
            return Optional.of(priceOf(text.substring(OF.length()), note));
        }
        return Meaning.of(text)
                .map(meaning -> new ColumnUse(meaning, null, "", meaning == Meaning.PRICE ? note : PriceNote.NONE));
    }

    /** The words for a mapping file. */
    public String words() {
        if (from != null) {
            String unit = from.packs()
                    ? " packs"
                    : from.unit() == null ? "" : " " + from.unit().measure().symbol();
            return FROM + from.digits() + unit;
        }
        return packText.isEmpty() ? meaning.word() : OF + packText;
    }
}
