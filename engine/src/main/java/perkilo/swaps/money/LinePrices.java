package perkilo.swaps.money;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import perkilo.costing.Item;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.purchasing.Need;
import perkilo.purchasing.PlanCost;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * What a material costs landed by its own lines alone: goods, insurance, freight by weight, duty.
 *
 * <p>What is charged for an order as a whole is left out, for other items may share it. That makes these prices low and
 * quick: good for leaving out what cannot pay, and for the straight-line prices of a blend. They are never shown as
 * what a run costs.
 */
public final class LinePrices {

    private final Market market;
    private final List<Vendor> vendors;
    private final Map<String, List<Quote>> quotes = new ConcurrentHashMap<>();

    /** Prices of a market. */
    public LinePrices(Market market) {
        this.market = market;
        this.vendors =
                market.vendors().stream().map(Vendor::withoutOrderCharges).toList();
    }

    /**
     * A purchase of one material from one offer.
     *
     * @param kg what is bought
     * @param landed what that costs, in home currency
     */
    public record Line(BigDecimal kg, BigDecimal landed) {

        /** Landed cost of one kilogram. */
        public BigDecimal perKg() {
            return kg.signum() == 0 ? BigDecimal.ZERO : landed.divide(kg, MathContext.DECIMAL64);
        }
    }

    /** Whether a material can be had on the costing date: bought, or made in the house. */
    public boolean isAvailable(Material material) {
        return !market.listings(material.name()).isEmpty()
                || housePrice(material).isPresent();
    }

    /** The cheapest line that covers a need; empty where nobody sells it. */
    public Optional<Line> cheapest(Material material, BigDecimal kg) {
        Optional<BigDecimal> house = housePrice(material);
        if (house.isPresent()) {
            return house.map(price -> new Line(kg, price.multiply(kg)));
        }
        Line best = null;
        for (Quote quote : quotes(material)) {
            for (Tier tier : quote.tiers()) {
                BigDecimal quantity = kg.max(quote.smallestLine()).max(tier.from());
                Line line = line(quote, quote.packsFor(quantity));
                if (best == null || line.landed().compareTo(best.landed()) < 0) {
                    best = line;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The lowest landed cost of a kilogram at any quantity; empty where nobody sells it. */
    public Optional<BigDecimal> lowestPerKg(Material material) {
        Optional<BigDecimal> house = housePrice(material);
        if (house.isPresent()) {
            return house;
        }
        return quotes(material).stream()
                .flatMap(quote -> quote.tiers().stream()
                        .map(tier -> line(
                                        quote,
                                        quote.packsFor(quote.smallestLine().max(tier.from())))
                                .perKg()))
                .min(BigDecimal::compareTo);
    }

    private Optional<BigDecimal> housePrice(Material material) {
        Item item = new Item(
                material.name(),
                Names.key(material.name()),
                material,
                List.of(),
                null,
                BigDecimal.ZERO,
                BigDecimal.ZERO);
        return market.housePrice(item).map(figure -> figure.value());
    }

    private List<Quote> quotes(Material material) {
        return quotes.computeIfAbsent(
                Names.key(material.name()),
                key -> market.listings(material.name()).stream()
                        .map((Listing listing) -> listing.quote(0, 0, 0))
                        .toList());
    }

    private Line line(Quote quote, long packs) {
        BigDecimal quantity = quote.quantity(packs);
        PurchaseProblem problem = PurchaseProblem.once(List.of(Need.once("", quantity)), vendors, List.of(quote));
        PurchasePlan plan = new PurchasePlan(List.of(new PurchasePlan.Line(0, 0, packs)));
        return new Line(quantity, PlanCost.of(problem, plan).outlay());
    }
}
