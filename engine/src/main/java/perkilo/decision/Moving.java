package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.costing.ItemCost;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.costing.Purchase;
import perkilo.model.Settings;
import perkilo.offers.Offer;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.Vendor;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.EuroFixedRates;

/**
 * The parts of a kept purchase that move in proportion to a price or an exchange rate.
 *
 * <p>With an item's price move its goods, and what is charged in per cent of them: insurance, the bank's margin, duty.
 * Freight, and a line's share of the charges for the whole order, do not. With a currency moves all that is paid in it:
 * the price part of what is priced in it, and the other charges of suppliers who invoice in it.
 */
public final class Moving {

    private static final BigDecimal ONE = BigDecimal.ONE;

    private final Market market;
    private final Purchase purchase;

    /** The parts of a purchase that was made on a market. */
    public Moving(Market market, Purchase purchase) {
        this.market = market;
        this.purchase = purchase;
    }

    /** The part of an item's cost in the run, used and wasted, that moves with its price. */
    BigDecimal withPrice(ItemCost item) {
        if (item.housePrice() != null) {
            return item.used();
        }
        BigDecimal sum = BigDecimal.ZERO;
        for (LineCost line : item.lines()) {
            sum = sum.add(priced(line));
        }
        return counted(item, sum);
    }

    /** The part of an item's cost in the run, used and wasted, that moves with the value of a currency. */
    BigDecimal withCurrency(ItemCost item, CurrencyUnit currency) {
        BigDecimal sum = BigDecimal.ZERO;
        for (LineCost line : item.lines()) {
            Listing listing = purchase.listing(line);
            if (movesPrice(listing, currency)) {
                sum = sum.add(priced(line));
            }
            if (movesCharges(listing, currency)) {
                sum = sum.add(line.landed().subtract(priced(line)));
            }
        }
        return counted(item, sum);
    }

    /**
     * A part of an item's cost in the run, used and wasted, that moves with one currency.
     *
     * @param line the purchase
     * @param currency that it moves with; null for the home currency, which does not move
     * @param isPrice whether it moves with the price of the goods too
     * @param amount as it is today
     */
    record Piece(LineCost line, @Nullable CurrencyUnit currency, boolean isPrice, BigDecimal amount) {}

    /** The parts of an item's cost; a house price has none. */
    List<Piece> pieces(ItemCost item) {
        List<Piece> pieces = new ArrayList<>();
        for (LineCost line : item.lines()) {
            Listing listing = purchase.listing(line);
            BigDecimal price = priced(line);
            CurrencyUnit ofPrice = foreign(listing.offer().currency());
            CurrencyUnit ofCharges = foreign(listing.supplier().currency());
            pieces.add(new Piece(line, ofPrice, true, counted(item, price)));
            pieces.add(new Piece(
                    line, ofCharges, false, counted(item, line.landed().subtract(price))));
        }
        return pieces;
    }

    /** The offer of a purchase. */
    Offer offer(LineCost line) {
        return purchase.listing(line).offer();
    }

    /** The currency that all others are measured in: the home currency, or the euro if that has replaced it. */
    static CurrencyUnit measure(Settings settings) {
        return EuroFixedRates.on(settings.costingDate(), settings.home())
                .map(DatedRate::from)
                .orElse(settings.home());
    }

    private @Nullable CurrencyUnit foreign(CurrencyUnit currency) {
        if (currency.equals(market.book().settings().home())) {
            return null;
        }
        CurrencyUnit moving = moving(currency);
        return moving.equals(measure(market.book().settings())) ? null : moving;
    }

    /** Whether a listing's prices move with the value of a currency. */
    public boolean movesPrice(Listing listing, CurrencyUnit currency) {
        return moving(listing.offer().currency()).equals(currency);
    }

    /** Whether the other charges on a listing move with the value of a currency. */
    public boolean movesCharges(Listing listing, CurrencyUnit currency) {
        return moving(listing.supplier().currency()).equals(currency);
    }

    /** The currencies of a run's purchase, without the home currency; the euro for those that it has replaced. */
    Set<CurrencyUnit> currencies(Iterable<ItemCost> items) {
        Set<CurrencyUnit> all = new LinkedHashSet<>();
        for (ItemCost item : items) {
            for (LineCost line : item.lines()) {
                all.add(moving(purchase.listing(line).offer().currency()));
                all.add(moving(purchase.listing(line).supplier().currency()));
            }
        }
        CurrencyUnit home = market.book().settings().home();
        all.remove(home);
        if (!all.isEmpty()) {
            LocalDate day = market.book().settings().costingDate();
            EuroFixedRates.on(day, home).ifPresent(rate -> all.remove(rate.from()));
        }
        return all;
    }

    /** A currency that the euro has replaced moves with the euro. */
    private CurrencyUnit moving(CurrencyUnit currency) {
        if (currency.equals(market.book().settings().home())) {
            return currency; // without loading the fixed rates, which most books never need
        }
        LocalDate day = market.book().settings().costingDate();
        return EuroFixedRates.on(day, currency).isPresent() ? Currencies.of("EUR") : currency;
    }

    /** What moves with a line's price, in home currency, for all that is bought. */
    private BigDecimal priced(LineCost line) {
        Listing listing = purchase.listing(line);
        Vendor vendor = market.vendors().get(listing.vendor());
        Settings settings = market.book().settings();
        BigDecimal goods = line.own().goodsInvoiced();
        BigDecimal insured = goods.multiply(ONE.add(vendor.insurance()));
        BigDecimal dutiable = settings.dutyBasis() == DutyBasis.CIF ? insured : goods;
        BigDecimal paid = insured.multiply(ONE.add(vendor.margin()))
                .add(dutiable.multiply(listing.duty().value()));
        return paid.multiply(line.toHome());
    }

    /** The share of a purchase that the run uses or lets expire. */
    private static BigDecimal counted(ItemCost item, BigDecimal amount) {
        BigDecimal ordered = item.ordered();
        return amount.signum() == 0 || ordered.signum() == 0
                ? BigDecimal.ZERO
                : amount.multiply(item.item().needed().add(item.expiring())).divide(ordered, MathContext.DECIMAL128);
    }
}
