package perkilo.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;
import perkilo.schema.Column;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;

/** One offer, from the rows of its price breaks. */
final class OneOffer {

    private final List<OfferRow> rows;
    private final OfferRow first;
    private final Findings findings;

    /**
     * One offer.
     *
     * @param rows of one supplier, item, pack and day, in the order of the file; at least one
     */
    OneOffer(List<OfferRow> rows, Findings findings) {
        this.rows = rows;
        this.first = rows.get(0);
        this.findings = findings;
    }

    Offer offer() {
        agreed(OffersSheet.CURRENCY_OF_PRICE, OfferRow::currency);
        Figure multiple = figure(OffersSheet.ORDER_MULTIPLE, OfferRow::orderMultiple);
        return new Offer(
                first.supplier(),
                first.item(),
                first.packSize(),
                first.packUnit(),
                breaks(),
                first.currency(),
                figure(OffersSheet.MINIMUM_ORDER, OfferRow::minimumOrder),
                multiple == null ? Figure.ONE : multiple,
                figure(OffersSheet.DUTY, OfferRow::duty),
                first.quotedOn(),
                agreed(OffersSheet.VALID_UNTIL, OfferRow::validUntil),
                first.origin());
    }

    private List<Offer.PriceBreak> breaks() {
        if (rows.size() == 1) {
            return List.of(priceBreak(first));
        }
        List<OfferRow> sorted = new ArrayList<>();
        for (OfferRow row : rows.stream()
                .sorted((one, other) -> from(one).compareTo(from(other)))
                .toList()) {
            OfferRow before = sorted.isEmpty() ? null : sorted.get(sorted.size() - 1);
            if (before == null || !OfferBook.same(from(before), from(row))) {
                sorted.add(row);
            } else {
                twice(before, row);
            }
        }
        rising(sorted);
        return sorted.stream().map(OneOffer::priceBreak).toList();
    }

    private static Offer.PriceBreak priceBreak(OfferRow row) {
        return new Offer.PriceBreak(row.from(), row.price(), row.per(), row.origin());
    }

    private void twice(OfferRow before, OfferRow row) {
        boolean same = OfferBook.same(before.price().value(), row.price().value()) && before.per() == row.per();
        if (same) {
            findings.warning(
                    row.origin(),
                    "the same offer already stands in %s"
                            .formatted(before.origin().where()));
        } else {
            findings.error(
                    row.row().origin(OffersSheet.PRICE),
                    "a second price from the same quantity, the first is in %s; keep one, or give each its date of quote"
                            .formatted(before.row().origin(OffersSheet.PRICE).where()));
        }
    }

    /** Says where a larger quantity costs more per unit than a smaller one. */
    private void rising(List<OfferRow> sorted) {
        for (int i = 1; i < sorted.size(); i++) {
            boolean alike = sorted.get(i - 1).per() == sorted.get(i).per();
            BigDecimal before = alike ? sorted.get(i - 1).price().value() : perUnit(sorted.get(i - 1));
            BigDecimal now = alike ? sorted.get(i).price().value() : perUnit(sorted.get(i));
            if (before != null && now != null && now.compareTo(before) > 0) {
                findings.warning(
                        sorted.get(i).row().origin(OffersSheet.PRICE),
                        "the price from %s %s is above that from a smaller quantity in %s"
                                .formatted(
                                        from(sorted.get(i)).toPlainString(),
                                        first.packUnit().symbol(),
                                        sorted.get(i - 1)
                                                .row()
                                                .origin(OffersSheet.PRICE)
                                                .where()));
            }
        }
    }

    private @Nullable BigDecimal perUnit(OfferRow row) {
        Measure per = row.per();
        if (per == null) {
            return row.price().value().divide(first.packSize().value(), MathContext.DECIMAL128);
        }
        if (per.kind() != first.packUnit().kind()) {
            return null;
        }
        BigDecimal units = first.packUnit().inBase().divide(per.inBase(), MathContext.DECIMAL128);
        return row.price().value().multiply(units);
    }

    private static BigDecimal from(OfferRow row) {
        Figure from = row.from();
        return from == null ? BigDecimal.ZERO : from.value();
    }

    private @Nullable Figure figure(Column column, Function<OfferRow, @Nullable Figure> value) {
        if (rows.size() == 1) {
            return value.apply(first);
        }
        agreed(column, row -> {
            Figure figure = value.apply(row);
            return figure == null ? null : figure.value().stripTrailingZeros();
        });
        for (OfferRow row : rows) {
            Figure figure = value.apply(row);
            if (figure != null) {
                return figure;
            }
        }
        return null;
    }

    /** What the rows say, where they all say the same or nothing; a row that says otherwise is reported. */
    private <T> @Nullable T agreed(Column column, Function<OfferRow, @Nullable T> value) {
        T said = null;
        for (OfferRow row : rows) {
            T other = value.apply(row);
            if (said == null) {
                said = other;
            } else if (other != null && !said.equals(other)) {
                findings.error(
                        row.row().origin(column),
                        "%s differs from that of the same offer's row in %s; they must agree"
                                .formatted(column.header(), first.origin().where()));
            }
        }
        return said;
    }
}
