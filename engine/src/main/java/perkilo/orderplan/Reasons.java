package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.model.Supplier;
import perkilo.purchasing.LineCost;

/**
 * The reasons for a plan: the alternatives, and their costs.
 *
 * @param items the cost of not using each chosen offer; the most expensive items first
 * @param suppliers the cost of not using each supplier; those who are paid most first
 * @param shifts the cost of each order for the day before or after
 * @param lines the cost of more packs of each line
 * @param minimums the packs and minimums that cost most, the most expensive first; at most ten
 * @param leftOut number of questions that were not asked, to save time
 */
public record Reasons(
        List<NextBest> items,
        List<Without> suppliers,
        List<Shift> shifts,
        List<MorePacks> lines,
        List<Minimum> minimums,
        int leftOut) {

    /** No questions were asked. */
    public static final Reasons NONE = new Reasons(List.of(), List.of(), List.of(), List.of(), List.of(), 0);

    public Reasons {
        items = List.copyOf(items);
        suppliers = List.copyOf(suppliers);
        shifts = List.copyOf(shifts);
        lines = List.copyOf(lines);
        minimums = List.copyOf(minimums);
    }

    /** Whether there are no answers. */
    public boolean isEmpty() {
        return items.isEmpty() && suppliers.isEmpty() && shifts.isEmpty() && lines.isEmpty() && minimums.isEmpty();
    }

    /**
     * Packs of one offer, in all.
     *
     * @param listing the offer
     * @param packs the number of packs
     * @param from the day from which the price is valid, if it is announced for after the costing date; or null
     */
    public record Packs(
            Listing listing, long packs, @Nullable LocalDate from) {

        /** Whether other packs are of the same offer at the same price. */
        boolean isOfPriceOf(Packs other) {
            return listing.equals(other.listing) && Objects.equals(from, other.from);
        }

        /** These packs and others at the same price. */
        Packs and(Packs more) {
            return new Packs(listing, packs + more.packs, from);
        }

        /** In words: {@code 3 × 25 kg from Oleo}; {@code at the price of} a day, if the price is announced. */
        public String words() {
            return "%s × %s from %s%s"
                    .formatted(
                            packs,
                            listing.offer().pack(),
                            listing.supplier().name(),
                            from == null ? "" : " at the price of " + from);
        }
    }

    /**
     * A new plan in which an item's chosen offer may not be used.
     *
     * @param item index of the item
     * @param chosen the packs bought from that offer
     * @param instead the packs bought from all other offers
     * @param difference of the new plan
     */
    public record NextBest(int item, Packs chosen, List<Packs> instead, Difference difference) {

        public NextBest {
            instead = List.copyOf(instead);
        }
    }

    /**
     * A new plan in which a supplier gets no order: the value of this supplier.
     *
     * @param supplier who gets no order
     * @param orders number of the supplier's orders in the plan
     * @param landed their cost, in home currency
     * @param difference of the new plan
     */
    public record Without(Supplier supplier, int orders, BigDecimal landed, Difference difference) {}

    /**
     * The same plan with an order for the day with needs before or after, together with the supplier's order for that
     * day if there is one.
     *
     * @param order index among the plan's orders
     * @param by −1 or 1
     * @param to the day that its goods are bought for then
     * @param joins whether the supplier has an order for that day already
     * @param difference of the changed plan
     */
    public record Shift(int order, int by, LocalDate to, boolean joins, Difference difference) {}

    /**
     * The same plan with more packs of one line.
     *
     * @param order index among the plan's orders
     * @param line of the plan
     * @param listing the offer
     * @param packs the larger number of packs
     * @param toNextBreak whether this number reaches the next price break; otherwise it is the next number of packs
     *     that is sold
     * @param difference of the changed plan
     */
    public record MorePacks(
            int order, LineCost line, Listing listing, long packs, boolean toNextBreak, Difference difference) {}

    /**
     * A new plan without a minimum.
     *
     * @param kind of the minimum
     * @param supplier who sets it
     * @param listing the offer that it belongs to; null for an order value
     * @param stated the minimum in words
     * @param saves the saving of a plan without it, in home currency
     * @param cash payments saved by a plan without it, in home currency
     * @param proven whether both plans are proven cheapest
     */
    public record Minimum(
            Kind kind,
            Supplier supplier,
            @Nullable Listing listing,
            String stated,
            BigDecimal saves,
            BigDecimal cash,
            boolean proven) {

        /** A kind of minimum. */
        public enum Kind {
            /** The smallest line of an offer. */
            MINIMUM_ORDER("minimum order"),
            /** Packs are sold in multiples. */
            ORDER_MULTIPLE("order multiple"),
            /** The size of a pack; the new plan may buy tenths of it. */
            PACK("pack size"),
            /** The goods value of the smallest order. */
            ORDER_VALUE("minimum order value");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** The kind in words. */
            public String words() {
                return words;
            }
        }
    }
}
