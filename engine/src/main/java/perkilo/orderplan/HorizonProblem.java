package perkilo.orderplan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.offers.OrderDays;
import perkilo.offers.PackOffered;
import perkilo.origin.Figure;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/**
 * The purchase problem of a horizon: what must be bought, and who sells it.
 *
 * @param horizon the months
 * @param runs in the order of the demand
 * @param items that must be bought, in the order of the problem's needs
 * @param listings the offers of the problem's quotes, by quote index; an offer that counts again later has several
 * @param days the days on which orders can be placed at each quote, by quote index
 * @param problem for the planner
 */
public record HorizonProblem(
        Horizon horizon,
        List<PlannedRun> runs,
        List<HorizonItem> items,
        List<Listing> listings,
        List<OrderDays> days,
        PurchaseProblem problem) {

    private static final BigDecimal MONTHS_A_YEAR = BigDecimal.valueOf(12);

    public HorizonProblem {
        runs = List.copyOf(runs);
        items = List.copyOf(items);
        listings = List.copyOf(listings);
        days = List.copyOf(days);
    }

    /**
     * The problem of some needs.
     *
     * @param runs in the order of the demand
     * @param items what they need
     */
    static HorizonProblem of(Market market, Horizon horizon, List<PlannedRun> runs, List<HorizonItem> items) {
        List<Listing> listings = new ArrayList<>();
        List<OrderDays> days = new ArrayList<>();
        List<Quote> quotes = new ArrayList<>();
        List<Need> needs = new ArrayList<>();
        for (int index = 0; index < items.size(); index++) {
            needs.add(need(market, items.get(index)));
            for (Listing listing : market.listings(items.get(index).name())) {
                for (OrderDays some : market.prices().orderDays(listing.offer())) {
                    OrderMonths months = OrderMonths.of(horizon, listing, some);
                    if (!months.isEmpty()) {
                        listings.add(listing);
                        days.add(some);
                        quotes.add(listing.quote(index, months.first(), months.last())
                                .heldUntil(months.heldUntil()));
                    }
                }
            }
        }
        Settings settings = market.book().settings();
        PurchaseProblem problem = new PurchaseProblem(
                horizon.periods(),
                needs,
                market.vendors(),
                quotes,
                orNone(settings.cashPerMonth()),
                orNone(settings.cashTotal()));
        return new HorizonProblem(horizon, runs, items, listings, days, problem);
    }

    /** The same problem without limits on what orders may cost. */
    HorizonProblem withoutCashLimits() {
        PurchaseProblem free = new PurchaseProblem(
                problem.periods(), problem.needs(), problem.vendors(), problem.quotes(), null, null);
        return new HorizonProblem(horizon, runs, items, listings, days, free);
    }

    /**
     * The quote for buying packs for another month: of the quotes for the same pack that are valid then, the cheapest
     * for this quantity, and of equal ones the same quote; empty if none is valid.
     */
    Optional<Integer> quoteFor(int quote, int period, long packs) {
        PackOffered pack = PackOffered.of(listings.get(quote).offer());
        return IntStream.concat(IntStream.of(quote), IntStream.range(0, listings.size()))
                .filter(other -> problem.quotes().get(other).firstPeriod() <= period
                        && period <= problem.quotes().get(other).lastPeriod())
                .filter(other -> other == quote
                        || PackOffered.of(listings.get(other).offer()).equals(pack))
                .boxed()
                .min(Comparator.comparing(
                        other -> goods(problem.quotes().get(other), packs),
                        Comparator.nullsLast(Comparator.naturalOrder())));
    }

    /** The cost of packs, in the vendor's currency; null if the quantity is too small. */
    private static @Nullable BigDecimal goods(Quote quote, long packs) {
        return quote.quantity(packs).compareTo(quote.smallestLine()) < 0
                ? null
                : quote.goods(packs).multiply(quote.toVendorCurrency());
    }

    /** The packs of an item that a plan buys, in all months together. */
    List<Reasons.Packs> packsOf(int item, PurchasePlan plan) {
        Map<Integer, Long> packs = new TreeMap<>();
        for (PurchasePlan.Line line : plan.lines()) {
            if (problem.quotes().get(line.quote()).item() == item) {
                packs.merge(line.quote(), line.packs(), Long::sum);
            }
        }
        List<Reasons.Packs> all = new ArrayList<>();
        packs.forEach((quote, count) -> all.add(new Reasons.Packs(listings.get(quote), count, announcedFor(quote))));
        return all;
    }

    /** The day from which a later price counts; null for a price that counts on the costing date. */
    private @Nullable LocalDate announcedFor(int quote) {
        LocalDate first = days.get(quote).first();
        return first.isAfter(horizon.today()) ? first : null;
    }

    /** Days from order to arrival; part of a day counts as one; zero if unknown. */
    public static int leadDays(Supplier supplier) {
        Figure days = supplier.leadTimeDays();
        return days == null ? 0 : days.value().setScale(0, RoundingMode.CEILING).intValueExact();
    }

    /**
     * Holding is {@code Holding % per year / 12 × lowest listed goods price} for one unit and month; the credit is
     * {@code Leftover credit % × lowest listed goods price}.
     */
    private static Need need(Market market, HorizonItem item) {
        Settings settings = market.book().settings();
        BigDecimal price = market.lowestPrice(item.name()).orElse(BigDecimal.ZERO);
        return item.asNeed(
                settings.holdingPerYear().value().multiply(price).divide(MONTHS_A_YEAR, MathContext.DECIMAL128),
                settings.leftoverCredit().value().multiply(price),
                creditable(market, item));
    }

    /**
     * The most of a leftover that can be used before it expires, if the need goes on as in the horizon: the need of an
     * average month, times the shelf life less the month of arrival; without a shelf life, the whole leftover.
     */
    private static BigDecimal creditable(Market market, HorizonItem item) {
        if (item.usablePeriods() == Need.UNLIMITED) {
            return market.mostThatIsBought(item.name(), item.total());
        }
        return item.total()
                .multiply(BigDecimal.valueOf(item.usablePeriods() - 1L))
                .divide(BigDecimal.valueOf(item.needed().size()), MathContext.DECIMAL128);
    }

    private static @Nullable BigDecimal orNone(@Nullable Figure limit) {
        return limit == null ? null : limit.value();
    }
}
