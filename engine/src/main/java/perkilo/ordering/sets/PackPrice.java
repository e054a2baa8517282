package perkilo.ordering.sets;

import java.math.BigDecimal;
import java.util.List;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Tier;
import perkilo.purchasing.Vendor;

/**
 * What a line of one quote costs, in plain fractions for speed: everything but what is charged for the order as a
 * whole.
 *
 * <p>The same arithmetic as {@link perkilo.purchasing.PlanCost}, which costs the plan that comes out once more,
 * exactly.
 */
final class PackPrice {

    private final Quote quote;
    private final int index;
    private final double packSize;
    private final double[] tierPrice;
    private final double rounding;
    private final double goodsFactor;
    private final double perPack;
    private final double toVendor;

    /**
     * Prices of a quote.
     *
     * @param index of the quote among those of its item
     */
    PackPrice(Quote quote, int index, Vendor vendor) {
        this.quote = quote;
        this.index = index;
        this.packSize = quote.packSize().doubleValue();
        this.tierPrice = quote.tiers().stream()
                .mapToDouble(tier -> tier.pricePerPack().doubleValue())
                .toArray();
        Integer digits = quote.minorDigits();
        this.rounding = digits == null ? 0 : Math.pow(10, digits);
        double duty = quote.duty().doubleValue();
        double paid = 1 + vendor.margin().doubleValue();
        double dutyOnMore = vendor.dutyBasis() == DutyBasis.CIF ? duty : 0;
        double insurance = vendor.insurance().doubleValue();
        double toHome = vendor.toHome().doubleValue();
        this.toVendor = quote.toVendorCurrency().doubleValue();
        this.goodsFactor = toVendor * toHome * ((1 + insurance) * paid + duty + dutyOnMore * insurance);
        double freight = quote.kgPerPack().doubleValue() * vendor.freightPerKg().doubleValue();
        this.perPack = freight * (paid + dutyOnMore) * toHome;
    }

    int index() {
        return index;
    }

    Quote quote() {
        return quote;
    }

    double packSize() {
        return packSize;
    }

    /** Landed cost of a line in home currency. */
    double cost(long packs) {
        return goodsQuoted(packs) * goodsFactor + perPack * packs;
    }

    /** What the vendor counts towards the minimum order value, in the vendor's currency. */
    double goods(long packs) {
        return goodsQuoted(packs) * toVendor;
    }

    /** The lowest landed cost of one unit at any quantity; rounding of invoices may lower it by a trifle. */
    double lowestRate() {
        double lowest = Double.POSITIVE_INFINITY;
        for (double price : tierPrice) {
            lowest = Math.min(lowest, (price * goodsFactor + perPack) / packSize);
        }
        return lowest;
    }

    /** Numbers of packs that cover a quantity and are worth a look: the fewest, and the fewest of each better price. */
    long[] worthwhile(BigDecimal quantity) {
        List<Tier> tiers = quote.tiers();
        long[] packs = new long[tiers.size()];
        for (int i = 0; i < packs.length; i++) {
            packs[i] = quote.packsFor(
                    quantity.max(quote.smallestLine()).max(tiers.get(i).from()));
        }
        return packs;
    }

    private double goodsQuoted(long packs) {
        double exact = tierPrice[quote.tierFor(packs)] * packs;
        return rounding == 0 ? exact : Math.floor(exact * rounding + 0.5 + 1e-7) / rounding;
    }
}
