package perkilo.purchasing.search.quick;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.purchasing.DutySpread;
import perkilo.purchasing.Vendor;

/**
 * Finds the cheapest purchase from a set of vendors with their minimum order values.
 *
 * <p>It begins without the minimums. A vendor whose order is then too small either gets enough goods, or is paid their
 * small-order charge. Both are tried, unless they cannot beat the best purchase known. In all this the charges pay duty
 * at the vendor's lowest rate. Where they may pay more, {@link DutySearch} looks at what is left.
 */
final class MinimumOrders {

    /** Far below a minor unit, and above what rounding does. */
    private static final double A_LITTLE = 1e-7;

    private final List<Vendor> vendors;
    private final List<ItemCovers> items;
    private final double[] minimum;
    private final double[] opening;
    private final double[] charge;
    private final double[] goods;
    private final double[] duty;
    private final ChargeDuty chargeDuty;
    private @Nullable List<List<Cover.Pick>> best;
    private double bestCost = Double.POSITIVE_INFINITY;
    private double unsettled = Double.POSITIVE_INFINITY;

    /**
     * Purchases from some vendors.
     *
     * @param rates of duty by vendor
     */
    MinimumOrders(List<Vendor> vendors, DutySpread[] rates, List<ItemCovers> items) {
        this.vendors = vendors;
        this.items = items;
        this.minimum = vendors.stream()
                .mapToDouble(vendor -> vendor.minimumOrderValue().doubleValue())
                .toArray();
        this.opening = new double[minimum.length];
        this.charge = new double[minimum.length];
        for (int vendor = 0; vendor < minimum.length; vendor++) {
            BigDecimal lowest = rates[vendor].lowest();
            opening[vendor] = vendors.get(vendor).openingCost(lowest).doubleValue();
            charge[vendor] = vendors.get(vendor).smallOrderCost(lowest).doubleValue();
        }
        this.goods = new double[minimum.length];
        this.duty = new double[minimum.length];
        this.chargeDuty = new ChargeDuty(vendors, rates, items);
    }

    /**
     * What is bought.
     *
     * @param picks for each item
     * @param lines the cost of all lines, less the value of leftovers
     */
    private record Choice(List<List<Cover.Pick>> picks, double lines) {

        static Choice of(List<Option> options) {
            return new Choice(
                    options.stream().map(Option::picks).toList(),
                    options.stream().mapToDouble(Option::cost).sum());
        }
    }

    /** The best purchase so far; null if there is none. */
    @Nullable List<List<Cover.Pick>> best() {
        return best;
    }

    /** The cost of the best purchase so far. */
    double bestCost() {
        return bestCost;
    }

    /** The bound: no purchase from the sets tried costs less than this and than the best. */
    double unsettled() {
        return unsettled;
    }

    /** The cost of opening an order. */
    double opening(int vendor) {
        return opening[vendor];
    }

    /** Takes the cheapest covers from a set of vendors, one bit each, without changes: a first purchase to beat. */
    void tryOut(int set) {
        List<List<Cover.Pick>> picks = new ArrayList<>(items.size());
        double lines = 0;
        for (ItemCovers item : items) {
            Cover cover = item.from(set);
            if (cover == null) {
                return;
            }
            lines += cover.cost();
            picks.add(cover.picks());
        }
        consider(new Choice(picks, lines), 0);
    }

    /**
     * Takes what is known of a purchase, and the cheapest covers of the other items, from the vendors bought from if
     * they sell them: a first purchase to beat. It counts for a little more than it costs, so that the search comes to
     * the same purchase with it as without.
     */
    void startFrom(KnownPurchases.Known known) {
        List<List<Cover.Pick>> picks = new ArrayList<>(items.size());
        double lines = 0;
        for (ItemCovers item : items) {
            List<Cover.Pick> same = known.picks().get(item);
            if (same == null) {
                Cover cover = item.from(known.vendors());
                cover = cover == null ? item.from(-1) : cover;
                if (cover == null) {
                    return;
                }
                picks.add(cover.picks());
                lines += cover.cost();
            } else {
                picks.add(same);
                lines += item.cost(same);
            }
        }
        consider(new Choice(picks, lines), 0);
        bestCost += A_LITTLE;
    }

    /** Forgets what is left open, but not the best purchase. */
    void beginAgain() {
        unsettled = Double.POSITIVE_INFINITY;
    }

    /** Tries a set of vendors, one bit each. */
    void lookInto(int set) {
        lookInto(set, 0, 0);
    }

    /**
     * Tries a set of vendors.
     *
     * @param full those who have to get enough goods, one bit each
     * @param small those who are paid their charge, one bit each
     */
    private void lookInto(int set, int full, int small) {
        double fixed = 0;
        for (int vendor = 0; vendor < vendors.size(); vendor++) {
            fixed += bit(set, vendor) * opening[vendor] + bit(small, vendor) * charge[vendor];
        }
        Choice choice = full == 0 ? cheapest(set, fixed) : meeting(set, full, fixed);
        if (choice == null) {
            return;
        }
        int tooSmall = consider(choice, full | small);
        if (tooSmall < 0) {
            withDuty(set, full, small, fixed, choice.lines() + fixed);
        }
        if (tooSmall >= 0 && choice.lines() + fixed < bestCost - 1e-9) {
            decide(tooSmall, set, full, small);
        }
    }

    /**
     * Tries all ways for a vendor: they get enough goods, or their charge, or no order. The last one is a set of its
     * own, unless an order of theirs costs nothing to open.
     */
    private void decide(int vendor, int set, int full, int small) {
        lookInto(set, full | 1 << vendor, small);
        if (!vendors.get(vendor).refusesSmallOrders()) {
            lookInto(set, full, small | 1 << vendor);
        }
        if (opening[vendor] == 0) {
            lookInto(set & ~(1 << vendor), full, small);
        }
    }

    /** The cheapest covers without regard to minimums; null if they cannot beat the best. */
    private @Nullable Choice cheapest(int set, double fixed) {
        List<List<Cover.Pick>> picks = new ArrayList<>(items.size());
        double bound = fixed;
        double lines = 0;
        boolean exact = true;
        for (ItemCovers item : items) {
            Cover cover = item.from(set);
            if (cover == null) {
                return null;
            }
            bound += cover.bound();
            lines += cover.cost();
            exact &= cover.cost() - cover.bound() < 1e-6;
            picks.add(cover.picks());
        }
        if (bound >= bestCost - 1e-9) {
            return null;
        }
        unsettled = exact ? unsettled : Math.min(unsettled, bound);
        return new Choice(picks, lines);
    }

    /** The cheapest covers that bring enough goods to some vendors; null if they cannot beat the best. */
    private @Nullable Choice meeting(int set, int full, double fixed) {
        List<Measure> measures = minimums(full);
        double[] least = measures.stream().mapToDouble(Measure::enough).toArray();
        double lowerBound = fixed;
        double apart = fixed;
        List<Cover> covers = new ArrayList<>(items.size());
        for (ItemCovers item : items) {
            Cover cover = item.from(set);
            if (cover == null) {
                return null;
            }
            covers.add(cover);
            lowerBound += cover.bound();
            apart += isSoldBy(full, item) ? 0 : cover.cost();
        }
        double slack = bestCost - lowerBound;
        if (slack <= 1e-9) {
            return null;
        }
        List<CoverOptions.Found> options = new ArrayList<>();
        boolean exact = true;
        for (int at = 0; at < covers.size(); at++) {
            if (isSoldBy(full, items.get(at))) {
                options.add(items.get(at).options(set, measures, slack));
            } else {
                exact &= covers.get(at).cost() - covers.get(at).bound() < 1e-6;
            }
        }
        GoodsFront front = new GoodsFront(options, least, bestCost - apart);
        List<Option> chosen = front.choose();
        if (!exact || !front.isComplete()) {
            unsettled = Math.min(unsettled, lowerBound);
        } else {
            unsettled = Math.min(unsettled, apart + front.bound());
        }
        return chosen == null ? null : together(covers, chosen, full);
    }

    /** The minimum order values of some vendors, one bit each. */
    private List<Measure> minimums(int who) {
        List<Measure> measures = new ArrayList<>();
        for (int vendor = 0; vendor < minimum.length; vendor++) {
            if (bit(who, vendor) == 1 && minimum[vendor] > 0) {
                measures.add(Measure.minimum(vendor, minimum[vendor]));
            }
        }
        return measures;
    }

    /**
     * Looks for what is cheaper with all duty on the charges, in a set whose cheapest purchase at the lowest rates is
     * known. Where that makes another order too small, both ways are tried for its vendor.
     *
     * @param lowest the cost of the cheapest purchase at the lowest rates
     */
    private void withDuty(int set, int full, int small, double fixed, double lowest) {
        List<Measure> measures = minimums(full);
        double[] least = measures.stream().mapToDouble(Measure::enough).toArray();
        List<DutySearch.Order> orders = chargeDuty.orders(set, small, measures);
        if (orders.isEmpty()) {
            return;
        }
        if (lowest >= bestCost - DutySearch.TOLERANCE) {
            unsettled = Math.min(unsettled, lowest);
            return;
        }
        List<CoverOptions.Found> options = options(set, measures, fixed);
        if (!chargeDuty.isByValue(set) || !options.stream().allMatch(CoverOptions.Found::complete)) {
            unsettled = Math.min(unsettled, lowest);
            return;
        }
        DutySearch search = new DutySearch(
                orders, least, fixed, chosen -> consider(Choice.of(chosen), full | small), this::bestCost);
        double settled = search.search(options);
        if (search.tooSmall() >= 0) {
            decide(search.tooSmall(), set, full, small);
        } else {
            unsettled = Math.min(unsettled, settled);
        }
    }

    /** The options of each item that may be part of a better purchase. */
    private List<CoverOptions.Found> options(int set, List<Measure> measures, double fixed) {
        double slack = bestCost - fixed;
        for (ItemCovers item : items) {
            slack -= Objects.requireNonNull(item.from(set)).bound();
        }
        List<CoverOptions.Found> options = new ArrayList<>(items.size());
        for (ItemCovers item : items) {
            options.add(item.options(set, measures, slack));
        }
        return options;
    }

    private static boolean isSoldBy(int vendors, ItemCovers item) {
        return (item.sellers() & vendors) != 0;
    }

    /** Joins the chosen options with the cheapest covers of the items that no vendor short of goods sells. */
    private Choice together(List<Cover> covers, List<Option> chosen, int full) {
        List<List<Cover.Pick>> picks = new ArrayList<>(items.size());
        double lines = 0;
        int next = 0;
        for (int at = 0; at < items.size(); at++) {
            if (isSoldBy(full, items.get(at))) {
                Option option = chosen.get(next++);
                picks.add(option.picks());
                lines += option.cost();
            } else {
                picks.add(covers.get(at).picks());
                lines += covers.get(at).cost();
            }
        }
        return new Choice(picks, lines);
    }

    /**
     * Keeps a purchase if it is possible and the best so far.
     *
     * @return a vendor whose order is too small and who is not dealt with yet; −1 if there is none
     */
    private int consider(Choice choice, int dealtWith) {
        int used = countGoods(choice.picks());
        double cost = choice.lines();
        boolean possible = true;
        int tooSmall = -1;
        for (int vendor = 0; vendor < goods.length; vendor++) {
            if (bit(used, vendor) == 0) {
                continue;
            }
            cost += opening[vendor];
            boolean isSmall = goods[vendor] < minimum[vendor] - 1e-9;
            if (chargeDuty.isMixed(vendor)) {
                cost += chargeDuty.extra(vendor, goods[vendor], duty[vendor], isSmall);
            }
            if (isSmall) {
                possible &= !vendors.get(vendor).refusesSmallOrders();
                cost += charge[vendor];
                tooSmall = bit(dealtWith, vendor) == 1 ? tooSmall : vendor;
            }
        }
        if (possible && cost < bestCost - 1e-9) {
            bestCost = cost;
            best = choice.picks();
        }
        return tooSmall;
    }

    /** Adds up the goods and the duty on them by vendor, and returns the vendors bought from, one bit each. */
    private int countGoods(List<List<Cover.Pick>> picks) {
        Arrays.fill(goods, 0);
        Arrays.fill(duty, 0);
        int used = 0;
        for (List<Cover.Pick> ofItem : picks) {
            for (Cover.Pick pick : ofItem) {
                int vendor = pick.price().vendor();
                double line = pick.price().goods(pick.packs());
                goods[vendor] += line;
                duty[vendor] += line * pick.price().dutyRate();
                used |= 1 << vendor;
            }
        }
        return used;
    }

    private static int bit(int set, int vendor) {
        return set >> vendor & 1;
    }
}
