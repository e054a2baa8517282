package perkilo.orderplan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Item;
import perkilo.costing.Market;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.purchasing.Need;

/**
 * An item over the horizon. Quantities are in kilograms or pieces.
 *
 * @param item as in the first run that needs it
 * @param uses the runs that need it, in the order of the demand
 * @param needed per month, as many as the horizon has
 * @param stock on the shelf and on order, what expires first at the front
 * @param usablePeriods the number of months in which a purchase may be used, including that of its arrival;
 *     {@link Need#UNLIMITED} if no shelf life is known
 */
public record HorizonItem(
        Item item, List<Use> uses, List<BigDecimal> needed, List<StockOnHand> stock, int usablePeriods) {

    public HorizonItem {
        uses = List.copyOf(uses);
        needed = List.copyOf(needed);
        stock = List.copyOf(stock);
    }

    /**
     * One run's need of the item.
     *
     * @param run the run
     * @param item its quantity, and its lines in the formula
     */
    public record Use(PlannedRun run, Item item) {}

    /** Every item that must be bought for the runs, in the order in which they first need it. */
    static List<HorizonItem> of(Market market, Horizon horizon, List<PlannedRun> runs) {
        Map<String, List<Use>> byName = new LinkedHashMap<>();
        for (PlannedRun run : runs) {
            for (Item item : run.needs().items()) {
                if (market.housePrice(item).isEmpty()) {
                    byName.computeIfAbsent(Names.key(item.name()), key -> new ArrayList<>())
                            .add(new Use(run, item));
                }
            }
        }
        return byName.values().stream()
                .map(uses -> merged(market, horizon, uses))
                .toList();
    }

    private static HorizonItem merged(Market market, Horizon horizon, List<Use> uses) {
        Item first = uses.get(0).item();
        return new HorizonItem(
                first,
                uses,
                needed(uses, horizon.periods()),
                StockOnHand.of(market.book(), horizon, first),
                usablePeriods(first));
    }

    private static List<BigDecimal> needed(List<Use> uses, int periods) {
        BigDecimal[] needed = new BigDecimal[periods];
        Arrays.fill(needed, BigDecimal.ZERO);
        for (Use use : uses) {
            int period = use.run().period();
            needed[period] = needed[period].add(use.item().needed());
        }
        return List.of(needed);
    }

    /** The same item for other uses. */
    HorizonItem withUses(List<Use> others) {
        return new HorizonItem(item, others, needed(others, needed.size()), stock, usablePeriods);
    }

    /** Whole months of shelf life; goods that arrive on the first of a month may be used in that month in any case. */
    static int usablePeriods(Item item) {
        Material material = item.material();
        Figure months = material == null ? null : material.shelfLifeMonths();
        return months == null
                ? Need.UNLIMITED
                : Math.max(1, months.value().setScale(0, RoundingMode.DOWN).intValueExact());
    }

    /** The item's name. */
    public String name() {
        return item.name();
    }

    /** The need of all months together. */
    public BigDecimal total() {
        return needed.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The last day on which goods that arrive for a period may be used; null if no shelf life is known. */
    public @Nullable LocalDate lastDay(Horizon horizon, int period) {
        return usablePeriods == Need.UNLIMITED
                ? null
                : horizon.firstDay(period).plusMonths(usablePeriods).minusDays(1);
    }

    /** The item as a need for the planner, without holding cost and credit for stock. */
    Need asNeed(BigDecimal holdingPerUnit, BigDecimal creditPerUnit, BigDecimal creditable) {
        return new Need(
                name(),
                needed,
                stock.stream().map(StockOnHand::asLot).toList(),
                usablePeriods,
                holdingPerUnit,
                creditPerUnit,
                creditable);
    }
}
