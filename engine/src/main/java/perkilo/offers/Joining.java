package perkilo.offers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.units.Measure;

/** Joins rows with price breaks to one offer. */
final class Joining<R extends QuotedRow> {

    private final List<R> rows;
    private final R first;
    private final List<Conflict<R>> conflicts = new ArrayList<>();

    /**
     * Ready to join.
     *
     * @param rows of one supplier, item, pack and day, in the order of the file; at least one
     */
    Joining(List<R> rows) {
        this.rows = rows;
        this.first = rows.get(0);
    }

    JoinedOffer<R> joined() {
        if (rows.size() == 1) {
            return new JoinedOffer<>(first.offer(), rows, List.of());
        }
        Offer one = first.offer();
        agreed(Conflict.Field.CURRENCY, Offer::currency);
        Figure multiple =
                figure(Conflict.Field.ORDER_MULTIPLE, offer -> offer.terms().orderMultiple());
        List<Offer.PriceBreak> breaks = breaks();
        Figure minimum = figure(Conflict.Field.MINIMUM_ORDER, Offer::minimumOrder);
        Figure duty = figure(Conflict.Field.DUTY, Offer::duty);
        LineTerms.Listed listed = rows.stream()
                .map(row -> row.offer().terms().listed())
                .reduce(LineTerms.Listed.UNKNOWN, LineTerms.Listed::or);
        Validity validity = new Validity(one.quotedOn(), agreed(Conflict.Field.VALID_UNTIL, Offer::validUntil));
        Offer offer = new Offer(
                one.supplier(),
                one.item(),
                one.packSize(),
                one.packUnit(),
                breaks,
                one.currency(),
                LineTerms.of(minimum, multiple, duty).listedAs(listed.article(), listed.name()),
                validity,
                one.origin());
        return new JoinedOffer<>(offer, rows, List.copyOf(conflicts));
    }

    private List<Offer.PriceBreak> breaks() {
        List<R> sorted = new ArrayList<>();
        for (R row : rows.stream()
                .sorted((one, other) ->
                        price(one).fromQuantity().compareTo(price(other).fromQuantity()))
                .toList()) {
            R before = sorted.isEmpty() ? null : sorted.get(sorted.size() - 1);
            if (before == null
                    || !isSame(price(before).fromQuantity(), price(row).fromQuantity())) {
                sorted.add(row);
            } else {
                conflicts.add(twice(before, row));
            }
        }
        rising(sorted);
        return sorted.stream().map(Joining::price).toList();
    }

    private static Offer.PriceBreak price(QuotedRow row) {
        return row.offer().breaks().get(0);
    }

    private Conflict<R> twice(R before, R row) {
        Offer.PriceBreak one = price(before);
        Offer.PriceBreak other = price(row);
        boolean same = isSame(one.price().value(), other.price().value()) && one.per() == other.per();
        return same ? new Conflict.SamePrice<>(row, before) : new Conflict.OtherPrice<>(row, before);
    }

    private void rising(List<R> sorted) {
        for (int i = 1; i < sorted.size(); i++) {
            Offer.PriceBreak smaller = price(sorted.get(i - 1));
            Offer.PriceBreak larger = price(sorted.get(i));
            boolean alike = smaller.per() == larger.per();
            BigDecimal before = alike ? smaller.price().value() : perUnit(smaller);
            BigDecimal now = alike ? larger.price().value() : perUnit(larger);
            if (before != null && now != null && now.compareTo(before) > 0) {
                conflicts.add(new Conflict.Dearer<>(sorted.get(i), sorted.get(i - 1), larger.fromQuantity()));
            }
        }
    }

    /** The price of one of the pack's unit; null if the two units cannot be converted. */
    private @Nullable BigDecimal perUnit(Offer.PriceBreak price) {
        Measure per = price.per();
        Measure unit = first.offer().packUnit();
        if (per == null) {
            return price.price().value().divide(first.offer().packSize().value(), MathContext.DECIMAL128);
        }
        if (per.kind() != unit.kind()) {
            return null;
        }
        return price.price().value().multiply(unit.inBase().divide(per.inBase(), MathContext.DECIMAL128));
    }

    private static boolean isSame(BigDecimal one, BigDecimal other) {
        return one.compareTo(other) == 0;
    }

    private @Nullable Figure figure(Conflict.Field field, Function<Offer, @Nullable Figure> value) {
        agreed(field, offer -> {
            Figure figure = value.apply(offer);
            return figure == null ? null : figure.value().stripTrailingZeros();
        });
        for (R row : rows) {
            Figure figure = value.apply(row.offer());
            if (figure != null) {
                return figure;
            }
        }
        return null;
    }

    /** The value that the rows agree on; blank rows are ignored. */
    private <T> @Nullable T agreed(Conflict.Field field, Function<Offer, @Nullable T> value) {
        T said = null;
        for (R row : rows) {
            T other = value.apply(row.offer());
            if (said == null) {
                said = other;
            } else if (other != null && !said.equals(other)) {
                conflicts.add(new Conflict.Differs<>(field, row, first));
            }
        }
        return said;
    }
}
