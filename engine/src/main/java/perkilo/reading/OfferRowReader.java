package perkilo.reading;

import static perkilo.schema.OffersSheet.FROM_QUANTITY;
import static perkilo.schema.OffersSheet.ITEM;
import static perkilo.schema.OffersSheet.MINIMUM_ORDER;
import static perkilo.schema.OffersSheet.PACK_SIZE;
import static perkilo.schema.OffersSheet.PACK_UNIT;
import static perkilo.schema.OffersSheet.PRICE;
import static perkilo.schema.OffersSheet.PRICE_PER;
import static perkilo.schema.OffersSheet.SUPPLIER;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.PackOffered;
import perkilo.offers.Unpriced;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.Amount;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.PriceBasis;
import perkilo.reading.table.TableRow;
import perkilo.reading.table.UnitText;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;

/** Reads the rows of offers; a row that lacks something or contradicts itself is reported and left out. */
final class OfferRowReader {

    private static final String US_DOLLAR = "USD";

    private final OfferCurrency currencies;
    private final Findings findings;
    private final List<Unpriced> unpriced = new ArrayList<>();
    private String lastSupplier = "";
    private Validity validity = Validity.UNKNOWN;

    OfferRowReader(OfferCurrency currencies, Findings findings) {
        this.currencies = currencies;
        this.findings = findings;
    }

    /** The packs that lists name without a price, of all rows so far. */
    List<Unpriced> unpriced() {
        return List.copyOf(unpriced);
    }

    private void withoutPrice(TableRow row) {
        Amount size = row.amount(PACK_SIZE);
        Measure unit = QuantityCells.unit(row, PACK_UNIT, PACK_SIZE, size);
        LocalDate quotedOn = row.date(OffersSheet.QUOTED_ON);
        if (size != null && unit != null && quotedOn != null && !asksWhoseGallons(row, unit, null, null)) {
            BigDecimal holds = QuantityCells.in(row, PACK_UNIT, size, unit).value();
            unpriced.add(new Unpriced(
                    PackOffered.of(row.text(SUPPLIER), row.text(ITEM), holds, unit), quotedOn, row.origin()));
        }
    }

    /** The offer in a row; empty if the row was reported. */
    Optional<OfferRow> read(TableRow row) {
        if (!row.table().grid().ofBook() && row.text(PRICE).equals(OffersSheet.NO_PRICE)) {
            withoutPrice(row);
            return Optional.empty();
        }
        boolean complete = row.require(PACK_SIZE, PRICE);
        Amount size = row.amount(PACK_SIZE);
        Amount price = row.amount(PRICE);
        Measure unit = QuantityCells.unit(row, PACK_UNIT, PACK_SIZE, size);
        Priced per = unit == null || size == null || price == null ? null : priced(row, price, size, unit);
        CurrencyUnit currency = price == null ? null : currencies.of(row, price);
        Figure from = QuantityCells.in(row, FROM_QUANTITY, unit);
        Figure minimum = QuantityCells.in(row, MINIMUM_ORDER, unit);
        Figure multiple = row.figure(OffersSheet.ORDER_MULTIPLE);
        Figure duty = row.figure(OffersSheet.DUTY);
        BigDecimal share = pricePaid(row);
        LocalDate quotedOn = row.date(OffersSheet.QUOTED_ON);
        LocalDate validUntil = row.date(OffersSheet.VALID_UNTIL);
        if (!complete || size == null || price == null || unit == null || per == null || currency == null) {
            return Optional.empty();
        }
        if (share == null || asksWhoseGallons(row, unit, per.measure(), currency)) {
            return Optional.empty();
        }
        Origin origin = row.origin();
        Figure each = changed(liveOnlyIfPlain(row, price, currency).times(per.factor()), share);
        validity = validity.orOf(quotedOn, validUntil);
        return Optional.of(new OfferRow(
                row,
                new Offer(
                        supplier(row.text(SUPPLIER)),
                        row.text(ITEM),
                        QuantityCells.in(row, PACK_UNIT, size, unit),
                        unit,
                        List.of(new Offer.PriceBreak(from, each, per.measure(), origin)),
                        currency,
                        LineTerms.of(minimum, multiple, duty)
                                .listedAs(row.text(OffersSheet.ARTICLE), row.text(OffersSheet.LISTED_AS)),
                        validity,
                        origin)));
    }

    /**
     * The part of the price that is paid, after a discount and a surcharge in their own columns: 0.95 with a discount
     * of 5 %. Null if it was reported.
     */
    private @Nullable BigDecimal pricePaid(TableRow row) {
        BigDecimal paid = BigDecimal.ONE;
        for (InputColumn column : List.of(OffersSheet.DISCOUNT, OffersSheet.SURCHARGE)) {
            if (!row.table().has(column) || row.isBlank(column)) {
                continue;
            }
            String header = row.table().headerText(column);
            if (row.isBareNumber(column) && header.indexOf('%') < 0) {
                findings.error(row.table().header(column), OfferMessages.percentOrAmount(header, column.header()));
                return null;
            }
            Figure rate = row.figure(column);
            if (rate == null) {
                return null;
            }
            SuspectedFractions.in(row, column, rate).ifPresent(text -> findings.warning(row.origin(column), text));
            if (!rate.isZero()) {
                findings.note(row.table().header(column), OfferMessages.pricesChanged(header));
                paid = paid.multiply(
                        column.equals(OffersSheet.DISCOUNT)
                                ? BigDecimal.ONE.subtract(rate.value())
                                : BigDecimal.ONE.add(rate.value()));
            }
        }
        return paid;
    }

    /** A price less a discount: a value, because it is in no cell. */
    private static Figure changed(Figure price, BigDecimal share) {
        return share.compareTo(BigDecimal.ONE) == 0
                ? price
                : price.withValue(price.value().multiply(share)).asConstant();
    }

    /**
     * Whether a gallon is in question, which is then reported.
     *
     * @param currency of the price; null if it has none
     */
    private boolean asksWhoseGallons(
            TableRow row, Measure unit, @Nullable Measure per, @Nullable CurrencyUnit currency) {
        if (unit.kind() != Measure.Kind.VOLUME && per != Measure.US_GAL) {
            return false;
        }
        CurrencyUnit invoiced = currencies.invoiced(row).orElse(currency);
        if (invoiced != null && invoiced.getCurrencyCode().equals(US_DOLLAR)) {
            return false;
        }
        Gallons.Asked asked = Gallons.of(row, PACK_UNIT, PACK_SIZE, PRICE_PER, PRICE, FROM_QUANTITY, MINIMUM_ORDER);
        if (asked == null) {
            return false;
        }
        findings.error(
                asked.origin(),
                invoiced == null
                        ? asked.question()
                        : QuantityMessages.gallonOfSupplier(
                                asked.question(), row.text(SUPPLIER), invoiced.getCurrencyCode()));
        return true;
    }

    /**
     * The price, as a constant if it is in words, such as {@code 8.90 €/kg}, that alone say its unit or its currency: a
     * number typed over them would not mean the same.
     */
    private Figure liveOnlyIfPlain(TableRow row, Amount price, CurrencyUnit currency) {
        Figure figure = price.figure();
        if (figure.held() != Figure.Held.WORDS || figure.perCell() == null) {
            return figure;
        }
        UnitText beside = price.beside();
        boolean saysWhatFor = beside.measure() != null || beside.pack();
        boolean known = !saysWhatFor || !row.isBlank(PRICE_PER) || isSameIn(price.header(), beside);
        return known && currencies.isSaidWithoutSign(row, price, currency) ? figure : figure.asConstant();
    }

    private static boolean isSameIn(UnitText header, UnitText beside) {
        return header.measure() == beside.measure()
                && header.pack() == beside.pack()
                && header.count().compareTo(beside.count()) == 0;
    }

    /** The name of a supplier; a list mostly repeats one name, which is kept once. */
    private String supplier(String name) {
        if (!name.equals(lastSupplier)) {
            lastSupplier = name;
        }
        return lastSupplier;
    }

    /** What a price is for; null if it was reported. */
    private @Nullable Priced priced(TableRow row, Amount price, Amount size, Measure packUnit) {
        Priced said = said(row, price);
        if (said == null) {
            return null;
        }
        if (said.unknown()) {
            if (size.figure().value().compareTo(BigDecimal.ONE) == 0) {
                return Priced.PACK;
            }
            FoundTable table = row.table();
            if (table.has(PRICE_PER)) {
                findings.error(
                        row.origin(PRICE_PER),
                        OfferMessages.unknownBasis(row.cell(PRICE).text(), packUnit.symbol()));
            } else {
                findings.error(table.header(PRICE), OfferMessages.unknownBasisOfColumn(table.headerText(PRICE)));
            }
            return null;
        }
        Measure measure = said.measure();
        boolean count = measure != null && measure.isCount();
        boolean packCount = packUnit.isCount();
        if (measure != null && count != packCount) {
            findings.error(row.origin(PRICE_PER), OfferMessages.otherBasis(measure.symbol(), packUnit.symbol()));
            return null;
        }
        return said;
    }

    private @Nullable Priced said(TableRow row, Amount price) {
        String text = row.text(PRICE_PER);
        if (text.isEmpty()) {
            Measure measure = price.measure().orElse(null);
            return price.perPack() ? Priced.PACK : measure == null ? Priced.UNKNOWN : one(price.count(), measure);
        }
        UnitText unit =
                UnitText.parse(text).or(() -> UnitText.parse("per " + text)).orElse(UnitText.NONE);
        Measure measure = unit.measure();
        if (!unit.pack() && measure == null) {
            findings.error(row.origin(PRICE_PER), OfferMessages.notABasis(text));
            return null;
        }
        Measure beside = price.beside().measure();
        if (beside != null && (beside != measure || price.count().compareTo(unit.count()) != 0)) {
            findings.error(row.origin(PRICE), OfferMessages.twoBases(price.per(), text));
            return null;
        }
        return measure == null ? Priced.PACK : one(unit.count(), measure);
    }

    /** A price for so many of a unit, as that for one. */
    private static Priced one(BigDecimal count, Measure measure) {
        PriceBasis basis = PriceBasis.of(count, measure).orElseThrow(); // texts name powers of ten alone
        return new Priced(basis.per(), false, basis.factor());
    }

    /**
     * What a price is for.
     *
     * @param measure null for one pack
     * @param unknown whether it is unknown
     * @param factor the factor that makes it the price for one
     */
    private record Priced(@Nullable Measure measure, boolean unknown, BigDecimal factor) {

        static final Priced PACK = new Priced(null, false, BigDecimal.ONE);
        static final Priced UNKNOWN = new Priced(null, true, BigDecimal.ONE);
    }
}
