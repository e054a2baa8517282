package perkilo.orderplan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Supplier;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/** The packs and minimums that may have made a plan buy more than it needs. */
final class Minimums {

    private static final BigDecimal TEN = BigDecimal.TEN;

    private final Market market;
    private final OrderPlan plan;
    private final PurchaseProblem problem;

    Minimums(Market market, OrderPlan plan) {
        this.market = market;
        this.plan = plan;
        this.problem = plan.basis().problem();
    }

    /**
     * A pack size or a minimum.
     *
     * @param stated the minimum in words
     * @param relaxed the problem without it, quotes in the same order
     * @param atStake the most it is likely to cost, in home currency: the leftover, or the order's minimum
     */
    record Candidate(
            Reasons.Minimum.Kind kind,
            Supplier supplier,
            @Nullable Listing listing,
            String stated,
            PurchaseProblem relaxed,
            BigDecimal atStake) {}

    /** All pack sizes and minimums, those with most at stake first. */
    List<Candidate> candidates() {
        List<Candidate> candidates = new ArrayList<>();
        List<Integer> used = plan.plan().lines().stream()
                .map(PurchasePlan.Line::quote)
                .distinct()
                .sorted()
                .toList();
        used.forEach(quote -> offer(quote, candidates));
        used.stream()
                .map(quote ->
                        plan.basis().supplierOf(problem.quotes().get(quote).vendor()))
                .distinct()
                .sorted()
                .forEach(vendor -> orderValue(vendor, candidates));
        candidates.sort(Comparator.comparing(Candidate::atStake).reversed());
        return candidates;
    }

    private void offer(int index, List<Candidate> candidates) {
        Quote quote = problem.quotes().get(index);
        Listing listing = plan.basis().listings().get(index);
        BigDecimal excess = excess(quote.item());
        if (excess.signum() == 0) {
            return;
        }
        BigDecimal atStake = excess.multiply(listing.lowestPrice());
        if (isHeldUpByMinimum(index, quote)) {
            String stated = Quantities.of(
                    quote.minimum(), plan.basis().items().get(quote.item()).item());
            add(candidates, Reasons.Minimum.Kind.MINIMUM_ORDER, index, stated, withoutMinimum(quote), atStake);
        }
        if (quote.multiple() > 1) {
            String stated = "%d packs at a time".formatted(quote.multiple());
            add(candidates, Reasons.Minimum.Kind.ORDER_MULTIPLE, index, stated, onePackAtATime(quote), atStake);
        }
        if (hasTenths(quote, listing)) {
            String stated = listing.offer().pack();
            add(candidates, Reasons.Minimum.Kind.PACK, index, stated, inTenths(quote), atStake);
        }
    }

    private void orderValue(int index, List<Candidate> candidates) {
        Vendor vendor = problem.vendors().get(index);
        if (vendor.minimumOrderValue().signum() > 0) {
            Supplier supplier = market.suppliers().get(index);
            List<Vendor> vendors = new ArrayList<>(problem.vendors());
            for (int one = 0; one < vendors.size(); one++) {
                if (plan.basis().supplierOf(one) == index) {
                    vendors.set(one, withoutMinimum(vendor));
                }
            }
            candidates.add(new Candidate(
                    Reasons.Minimum.Kind.ORDER_VALUE,
                    supplier,
                    null,
                    Quantities.amount(vendor.minimumOrderValue()) + " " + supplier.currency(),
                    problem(vendors, problem.quotes()),
                    vendor.minimumOrderValue().multiply(vendor.toHome())));
        }
    }

    private void add(
            List<Candidate> candidates,
            Reasons.Minimum.Kind kind,
            int index,
            String stated,
            Quote relaxed,
            BigDecimal atStake) {
        Listing listing = plan.basis().listings().get(index);
        List<Quote> quotes = new ArrayList<>(problem.quotes());
        quotes.set(index, relaxed);
        candidates.add(
                new Candidate(kind, listing.supplier(), listing, stated, problem(problem.vendors(), quotes), atStake));
    }

    /** The quantity of an item that is bought and not used: left over, or expired. */
    private BigDecimal excess(int item) {
        return plan.stock().get(item).lots().stream()
                .filter(LotUse::isBought)
                .map(LotUse::left)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private boolean isHeldUpByMinimum(int index, Quote quote) {
        return plan.plan().lines().stream()
                .filter(line -> line.quote() == index)
                .anyMatch(line -> line.packs() > quote.multiple()
                        && quote.quantity(line.packs() - quote.multiple()).compareTo(quote.minimum()) < 0);
    }

    /** Whether a tenth of a pack is possible: pieces are not cut. */
    private static boolean hasTenths(Quote quote, Listing listing) {
        return !listing.isByPiece() || quote.packSize().remainder(TEN).signum() == 0;
    }

    private PurchaseProblem problem(List<Vendor> vendors, List<Quote> quotes) {
        return problem.withOffers(vendors, quotes);
    }

    private static Quote withoutMinimum(Quote quote) {
        return quote.inPacks(quote.packSize(), quote.kgPerPack(), quote.multiple(), BigDecimal.ZERO, quote.tiers());
    }

    private static Quote onePackAtATime(Quote quote) {
        return quote.inPacks(quote.packSize(), quote.kgPerPack(), 1, quote.minimum(), quote.tiers());
    }

    private static Quote inTenths(Quote quote) {
        List<Tier> tiers = quote.tiers().stream()
                .map(tier -> new Tier(tier.from(), tier.pricePerPack().movePointLeft(1)))
                .toList();
        return quote.inPacks(
                quote.packSize().movePointLeft(1),
                quote.kgPerPack().movePointLeft(1),
                quote.multiple(),
                quote.minimum(),
                tiers);
    }

    private static Vendor withoutMinimum(Vendor vendor) {
        return new Vendor(
                vendor.name(),
                vendor.toHome(),
                vendor.margin(),
                vendor.freightPerOrder(),
                vendor.freightPerKg(),
                vendor.insurance(),
                BigDecimal.ZERO,
                null,
                vendor.dutyBasis());
    }
}
