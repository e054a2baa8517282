package perkilo.pricelists;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListLine;
import perkilo.layouts.Quantity;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;

/**
 * A row of a kept list. Texts are as they are written; what a row does not say is empty.
 *
 * @param item the item that it means
 * @param packSize a number, in the pack's unit
 * @param packUnit the pack's unit
 * @param from the quantity that the price begins at, in the pack's unit
 * @param price a number, or {@link OffersSheet#NO_PRICE}
 * @param per what the price is for
 * @param terms what else the row says
 * @param quotedOn its day
 * @param file the file that it came from
 */
record KeptRow(
        String supplier,
        String item,
        String packSize,
        String packUnit,
        String from,
        String price,
        String per,
        String currency,
        Terms terms,
        String quotedOn,
        String file) {

    private static final String PACK = "pack";

    /**
     * The conditions of a price.
     *
     * @param article the supplier's number for the item
     * @param listedAs the supplier's name for the item, if it is another
     */
    record Terms(
            String minimum,
            String multiple,
            String duty,
            String validUntil,
            String note,
            String article,
            String listedAs) {

        /** The terms of two rows that say the same price; empty if they contradict each other. */
        Optional<Terms> joined(Terms other) {
            return agree(minimum, other.minimum)
                            && agree(multiple, other.multiple)
                            && agree(duty, other.duty)
                            && agree(validUntil, other.validUntil)
                    ? Optional.of(new Terms(
                            filled(minimum, other.minimum),
                            filled(multiple, other.multiple),
                            filled(duty, other.duty),
                            filled(validUntil, other.validUntil),
                            filled(note, other.note),
                            filled(article, other.article),
                            filled(listedAs, other.listedAs)))
                    : Optional.empty();
        }

        private static boolean agree(String one, String other) {
            return one.isEmpty() || other.isEmpty() || one.equals(other);
        }

        private static String filled(String one, String other) {
            return one.isEmpty() ? other : one;
        }

        private String words() {
            return said(", minimum ", minimum)
                    + said(", multiple of ", multiple)
                    + said(", duty % ", duty)
                    + said(", valid until ", validUntil);
        }

        private static String said(String before, String term) {
            return term.isEmpty() ? "" : before + term;
        }
    }

    /** A line as it is kept. */
    static KeptRow of(
            String supplier,
            String item,
            ListLine line,
            @Nullable LocalDate quotedOn,
            @Nullable LocalDate validUntil,
            String file) {
        String code = line.listed().code();
        String listed = item.equals(line.item()) ? code : ("listed as " + line.item() + " " + code).strip();
        String between = listed.isEmpty() || line.note().isEmpty() ? "" : "; ";
        String note = listed + between + line.note();
        Offer.PriceBreak price = line.price();
        boolean priced = price != null && line.currency() != null;
        LocalDate ownEnd = line.validity().validUntil();
        Terms terms = new Terms(
                number(line.terms().minimumOrder()),
                number(line.terms().orderMultiple()),
                percent(line.terms().duty()),
                date(ownEnd == null ? validUntil : ownEnd),
                note,
                code,
                item.equals(line.item()) ? "" : line.item());
        return new KeptRow(
                supplier,
                item,
                Quantity.plain(line.pack().amount()),
                line.pack().measure().symbol(),
                price == null ? "" : number(price.from()),
                priced && price != null ? number(price.price()) : OffersSheet.NO_PRICE,
                priced && price != null ? per(price.per()) : "",
                line.currency() == null || !priced ? "" : line.currency().getCurrencyCode(),
                terms,
                date(line.quotedOn() == null ? quotedOn : line.quotedOn()),
                file);
    }

    private static String per(@Nullable Measure measure) {
        return measure == null ? PACK : measure.symbol();
    }

    private static String number(@Nullable Figure number) {
        return number == null ? "" : Quantity.plain(number.value());
    }

    private static String percent(@Nullable Figure fraction) {
        return fraction == null ? "" : Quantity.plain(fraction.value().movePointRight(2));
    }

    private static String date(@Nullable LocalDate date) {
        return date == null ? "" : date.toString();
    }

    /** What can have only one price: an item in a pack, from a quantity, on a day. */
    String place() {
        return packAndBreak() + "|" + quotedOn;
    }

    /** An item in a pack, from a quantity. */
    String packAndBreak() {
        return Names.key(item) + "|" + plain(packSize) + "|" + packUnit + "|" + plain(from);
    }

    private static String plain(String number) {
        BigDecimal value = number(number);
        return value == null || value.signum() == 0 ? "" : Quantity.plain(value);
    }

    private static @Nullable BigDecimal number(String text) {
        try {
            return text.isEmpty() ? null : new BigDecimal(text);
        } catch (NumberFormatException noNumber) {
            return null;
        }
    }

    /** The pack and the quantity in words: {@code Glycerin, 25 kg, from 100}. */
    String words() {
        return item + ", " + packSize + " " + packUnit + (plain(from).isEmpty() ? "" : ", from " + from);
    }

    /** The price in words: {@code 12.5 EUR/kg}. */
    String priceWords() {
        return isPriced() ? price + " " + currency + "/" + per : "no price";
    }

    /** The price and its terms in words. */
    String allWords() {
        return priceWords() + terms.words();
    }

    /** Whether it has a price. */
    boolean isPriced() {
        return number(price) != null;
    }

    /**
     * A price for one base unit.
     *
     * @param amount for one kilogram, litre or piece
     */
    record UnitPrice(BigDecimal amount, Measure.Kind kind, String currency) {

        /** Whether two prices can be compared. */
        boolean isLike(UnitPrice other) {
            return kind == other.kind && currency.equals(other.currency);
        }
    }

    /** The price for one base unit; empty if there is none. */
    Optional<UnitPrice> unitPrice() {
        BigDecimal amount = number(price);
        BigDecimal size = number(packSize);
        Optional<Measure> unit = Measure.parse(per.equals(PACK) ? packUnit : per);
        if (amount == null || size == null || size.signum() <= 0 || unit.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal content = per.equals(PACK)
                ? size.multiply(unit.get().inBase())
                : unit.get().inBase();
        return Optional.of(new UnitPrice(
                amount.divide(content, MathContext.DECIMAL64), unit.get().kind(), currency));
    }

    /** Whether another row has the same price. */
    boolean hasPriceOf(KeptRow other) {
        if (!isPriced() || !other.isPriced()) {
            return isPriced() == other.isPriced();
        }
        Optional<UnitPrice> one = unitPrice();
        Optional<UnitPrice> two = other.unitPrice();
        return one.isPresent()
                && two.isPresent()
                && one.get().isLike(two.get())
                && one.get().amount().compareTo(two.get().amount()) == 0;
    }

    /** The same row with other terms. */
    KeptRow with(Terms others) {
        return new KeptRow(supplier, item, packSize, packUnit, from, price, per, currency, others, quotedOn, file);
    }

    /** The same row from other files. */
    KeptRow from(String files) {
        return new KeptRow(supplier, item, packSize, packUnit, from, price, per, currency, terms, quotedOn, files);
    }
}
