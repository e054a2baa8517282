package perkilo.workbook.read;

import static perkilo.workbook.schema.OffersSheet.FROM_QUANTITY;
import static perkilo.workbook.schema.OffersSheet.ITEM;
import static perkilo.workbook.schema.OffersSheet.MINIMUM_ORDER;
import static perkilo.workbook.schema.OffersSheet.PACK_SIZE;
import static perkilo.workbook.schema.OffersSheet.PACK_UNIT;
import static perkilo.workbook.schema.OffersSheet.PRICE;
import static perkilo.workbook.schema.OffersSheet.PRICE_PER;
import static perkilo.workbook.schema.OffersSheet.SUPPLIER;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.units.Measure;
import perkilo.workbook.read.table.Amount;
import perkilo.workbook.read.table.Findings;
import perkilo.workbook.read.table.TableRow;
import perkilo.workbook.read.table.UnitText;
import perkilo.workbook.schema.OffersSheet;

/** Reads the rows of offers; a row that lacks something or contradicts itself is reported and left out. */
final class OfferRowReader {

    private final OfferCurrency currencies;
    private final Findings findings;
    private String lastSupplier = "";

    OfferRowReader(OfferCurrency currencies, Findings findings) {
        this.currencies = currencies;
        this.findings = findings;
    }

    /** What a row says; empty where it was reported. */
    Optional<OfferRow> read(TableRow row) {
        boolean complete = row.require(PACK_SIZE, PRICE);
        Amount size = row.amount(PACK_SIZE);
        Amount price = row.amount(PRICE);
        Measure unit = Quantities.unit(row, PACK_UNIT, PACK_SIZE, size);
        Priced per = unit == null || size == null || price == null ? null : priced(row, price, size, unit);
        CurrencyUnit currency = price == null ? null : currencies.of(row, price);
        Figure from = Quantities.in(row, FROM_QUANTITY, unit);
        Figure minimum = Quantities.in(row, MINIMUM_ORDER, unit);
        Figure multiple = row.figure(OffersSheet.ORDER_MULTIPLE);
        Figure duty = row.figure(OffersSheet.DUTY);
        LocalDate quotedOn = row.date(OffersSheet.QUOTED_ON);
        LocalDate validUntil = row.date(OffersSheet.VALID_UNTIL);
        if (!complete || size == null || price == null || unit == null || per == null || currency == null) {
            return Optional.empty();
        }
        return Optional.of(new OfferRow(
                row,
                row.origin(),
                supplier(row.text(SUPPLIER)),
                row.text(ITEM),
                Quantities.in(row, PACK_UNIT, size, unit),
                unit,
                from,
                liveOnlyIfPlain(row, price, currency),
                per.measure(),
                currency,
                minimum,
                multiple,
                duty,
                quotedOn,
                validUntil));
    }

    /**
     * A price in words, such as {@code 8.90 €/kg}, can be typed over by a number only where the row or the header says
     * without them what it is for and in which currency.
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
        return header.measure() == beside.measure() && header.pack() == beside.pack();
    }

    /** A list is mostly one supplier's: his name is kept once. */
    private String supplier(String name) {
        if (!name.equals(lastSupplier)) {
            lastSupplier = name;
        }
        return lastSupplier;
    }

    /** What the price is for; null if it was reported. */
    private @Nullable Priced priced(TableRow row, Amount price, Amount size, Measure packUnit) {
        Priced said = said(row, price);
        if (said == null) {
            return null;
        }
        if (said.unknown()) {
            if (size.figure().value().compareTo(BigDecimal.ONE) == 0) {
                return Priced.PACK;
            }
            findings.error(
                    row.origin(PRICE_PER),
                    "it is not said what the price of %s is for; fill Price per with pack, %s …"
                            .formatted(row.cell(PRICE).text(), packUnit.symbol()));
            return null;
        }
        Measure measure = said.measure();
        boolean count = measure != null && measure.kind() == Measure.Kind.COUNT;
        boolean packCount = packUnit.kind() == Measure.Kind.COUNT;
        if (measure != null && count != packCount) {
            findings.error(
                    row.origin(PRICE_PER),
                    "the price is per %s, but the pack is measured in %s"
                            .formatted(measure.symbol(), packUnit.symbol()));
            return null;
        }
        return said;
    }

    private @Nullable Priced said(TableRow row, Amount price) {
        String text = row.text(PRICE_PER);
        if (text.isEmpty()) {
            return price.perPack()
                    ? Priced.PACK
                    : new Priced(price.measure().orElse(null), price.measure().isEmpty());
        }
        UnitText unit = UnitText.parse(text).orElse(UnitText.NONE);
        if (!unit.pack() && unit.measure() == null) {
            findings.error(
                    row.origin(PRICE_PER),
                    "Price per is \"%s\", which is not understood; expected pack, kg, g, lb, oz, L, US gal or each"
                            .formatted(text));
            return null;
        }
        Measure beside = price.beside().measure();
        if (beside != null && beside != unit.measure()) {
            findings.error(
                    row.origin(PRICE), "Price is per %s, but Price per says %s".formatted(beside.symbol(), text));
            return null;
        }
        return unit.pack() ? Priced.PACK : new Priced(unit.measure(), false);
    }

    /**
     * What a price is for.
     *
     * @param measure null for one pack
     * @param unknown whether nothing says
     */
    private record Priced(@Nullable Measure measure, boolean unknown) {

        static final Priced PACK = new Priced(null, false);
    }
}
