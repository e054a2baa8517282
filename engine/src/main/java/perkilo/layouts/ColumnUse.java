package perkilo.layouts;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a column of a list is used for.
 *
 * @param meaning what its cells hold
 * @param from for a price: the quantity that it applies from; null if the column does not say
 * @param packText for a price: the pack that it is for, as typed; empty if the column does not say
 * @param note for a price: what else the header says about it; for a surcharge: what it is for; nothing if it is for as
 *     much as the price
 * @param vat for a price: the per cent of VAT that it includes; null if it includes none
 */
public record ColumnUse(
        Meaning meaning,
        @Nullable BreakText from,
        String packText,
        PriceNote note,
        @Nullable BigDecimal vat) {

    private static final Pattern WITH_VAT = Pattern.compile("price with (\\d+(?:[.,]\\d+)?) ?% vat");

    /** The end of the words for amounts that are for as much as the price beside them. */
    static final String LIKE_PRICE = ", like the price";

    private static final String SURCHARGE = "surcharge per ";
    private static final String FROM = "price from ";
    private static final String OF = "price of ";

    /** A column that is described by its meaning alone. */
    public static ColumnUse of(Meaning meaning) {
        return new ColumnUse(meaning, null, "", PriceNote.NONE, null);
    }

    /** A column of prices. */
    public static ColumnUse price(PriceNote note) {
        return new ColumnUse(Meaning.PRICE, null, "", note, null);
    }

    /** A column of amounts that are added to prices. */
    public static ColumnUse surcharge(PriceNote note) {
        return new ColumnUse(Meaning.SURCHARGE, null, "", note, null);
    }

    /** A column of prices from a quantity upwards. */
    public static ColumnUse priceFrom(BreakText from, PriceNote note) {
        return new ColumnUse(Meaning.PRICE, from, "", note, null);
    }

    /** A column of prices of one pack. */
    public static ColumnUse priceOf(String pack, PriceNote note) {
        return new ColumnUse(Meaning.PRICE, null, pack, note, null);
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
        Matcher vat = WITH_VAT.matcher(text.toLowerCase(Locale.ROOT));
        if (vat.matches()) {
            BigDecimal per = new BigDecimal(vat.group(1).replace(',', '.'));
            return Optional.of(new ColumnUse(Meaning.PRICE, null, "", note, per));
        }
        Optional<Meaning> known = Meaning.of(text);
        if (text.toLowerCase(Locale.ROOT).startsWith("surcharge")
                && text.toLowerCase(Locale.ROOT).endsWith(LIKE_PRICE)) {
            return Optional.of(surcharge(PriceNote.NONE));
        }
        if (known.isEmpty() && text.regionMatches(true, 0, SURCHARGE, 0, SURCHARGE.length())) {
            return PriceNote.of("per " + text.substring(SURCHARGE.length()).strip())
                    .filter(PriceNote::saysWhatFor)
                    .map(ColumnUse::surcharge);
        }
        return known.map(
                meaning -> new ColumnUse(meaning, null, "", meaning == Meaning.PRICE ? note : PriceNote.NONE, null));
    }

    /** The words for a mapping file. */
    public String words() {
        if (from != null) {
            String unit = from.packs()
                    ? " packs"
                    : from.unit() == null ? "" : " " + from.unit().measure().symbol();
            return FROM + from.digits() + unit;
        }
        if (vat != null) {
            return "price with " + Quantity.plain(vat) + " % VAT";
        }
        if (meaning == Meaning.SURCHARGE) {
            return note.saysWhatFor() ? SURCHARGE + note.basisWords() : meaning.word() + LIKE_PRICE;
        }
        return packText.isEmpty() ? meaning.word() : OF + packText;
    }
}
