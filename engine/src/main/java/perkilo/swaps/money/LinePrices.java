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
 * Landed prices of materials by their own lines alone: goods, insurance, freight by weight, duty.
 *
 * <p>Charges for an order as a whole are left out, because other items may share them. That makes these prices low and
 * fast to compute; they serve as the straight-line prices of a blend, and are never shown as the cost of a run.
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

    /** Whether a material is available on the costing date: it has an offer or a house price. */
    public boolean isAvailable(Material material) {
        return !market.listings(material.name()).isEmpty()
                || housePrice(material).isPresent();
    }

    /** The cheapest line that covers a need; empty without an offer and a house price. */
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
