package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.model.Supplier;
import perkilo.purchasing.LineCost;

/**
 * Why a plan is as it is: what else could have been done, and what that would cost.
 *
 * @param items what doing without each chosen offer would cost; those that cost most at the front
 * @param suppliers what doing without each supplier would cost; those that get most at the front
 * @param shifts what each order would cost a month earlier or later
 * @param lines what more packs of each line would cost
 * @param minimums which packs and minimums cost most, the dearest at the front; at most ten
 * @param leftOut questions that were not asked, so that an answer comes in good time
 */
public record Reasons(
        List<NextBest> items,
        List<Without> suppliers,
        List<Shift> shifts,
        List<MorePacks> lines,
        List<Minimum> minimums,
        int leftOut) {

    /** Nothing was asked. */
    public static final Reasons NONE = new Reasons(List.of(), List.of(), List.of(), List.of(), List.of(), 0);

    public Reasons {
        items = List.copyOf(items);
        suppliers = List.copyOf(suppliers);
        shifts = List.copyOf(shifts);
        lines = List.copyOf(lines);
        minimums = List.copyOf(minimums);
    }

    /** Whether nothing was asked, or nothing could be. */
    public boolean isEmpty() {
        return items.isEmpty() && suppliers.isEmpty() && shifts.isEmpty() && lines.isEmpty() && minimums.isEmpty();
    }

    /**
     * Packs of one offer, in all months together.
     *
     * @param listing the offer
     * @param packs how many
     * @param from the day from which the price holds, if that is announced for later than the costing date; or null
     */
    public record Packs(
            Listing listing, long packs, @Nullable LocalDate from) {

        /** As a person says it: {@code 3 × 25 kg from Oleo}, and {@code at the price of} a day that is announced. */
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
     * @param chosen what is bought of it from that offer
     * @param instead what would be bought of the item from all others
     * @param difference of the new plan
     */
    public record NextBest(int item, Packs chosen, List<Packs> instead, Difference difference) {

        public NextBest {
            instead = List.copyOf(instead);
        }
    }

    /**
     * A new plan in which a supplier gets no order: what the supplier is worth.
     *
     * @param supplier who
     * @param orders how many orders the plan has for this supplier
     * @param landed what they cost, in home currency
     * @param difference of the new plan
     */
    public record Without(Supplier supplier, int orders, BigDecimal landed, Difference difference) {}

    /**
     * The same plan with an order a month earlier or later, together with what is ordered there already.
     *
     * @param order index among the plan's orders
     * @param months −1 or 1
     * @param joins whether the supplier has an order in that month already
     * @param difference of the changed plan
     */
    public record Shift(int order, int months, boolean joins, Difference difference) {}

    /**
     * The same plan with more packs of one line.
     *
     * @param order index among the plan's orders
     * @param line what is bought
     * @param listing the offer
     * @param packs how many it would then be
     * @param toNextBreak whether that is where the next price break begins; elsewhere it is the next number of packs
     *     that is sold
     * @param difference of the changed plan
     */
    public record MorePacks(
            int order, LineCost line, Listing listing, long packs, boolean toNextBreak, Difference difference) {}

    /**
     * A new plan without a minimum.
     *
     * @param kind what is left out
     * @param supplier whose it is
     * @param listing the offer that it belongs to; null for an order value
     * @param stated the minimum in a person's words
     * @param saves what a plan without it costs less, in home currency
     * @param cash what it ties up: how much less would leave the bank, in home currency
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

        /** What a supplier insists on. */
        public enum Kind {
            /** The smallest line of an offer. */
            MINIMUM_ORDER("minimum order"),
            /** Packs are sold by so many. */
            ORDER_MULTIPLE("order multiple"),
            /** The size of a pack; the new plan may buy tenths of it. */
            PACK("pack size"),
            /** The goods value of the smallest order. */
            ORDER_VALUE("minimum order value");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** As a person says it. */
            public String words() {
                return words;
            }
        }
    }
}
