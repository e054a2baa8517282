package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The day that each need of an item is planned for: its own, or the first later one on which it can be met.
 *
 * <p>A need can be met on a day if an order placed on or after the costing date can be there and good, or if the stock
 * that is there and good, less what needs before it take, covers the whole of it. Until then it takes nothing. A need
 * that no day can meet takes on its own day what the stock has.
 */
final class Timing {

    private static final Comparator<HorizonItem.Use> BY_DAY =
            Comparator.comparing(use -> use.run().goodsNeeded());

    private final LocalDate today;
    private final ItemOffers offers;
    private final List<StockOnHand> stock;
    private final List<HorizonItem.Use> uses;
    /** The needs that no day can meet, by index. */
    private final Set<Integer> hopeless = new HashSet<>();

    /**
     * The needs of an item.
     *
     * @param uses in the order of the demand; all of them need something
     */
    Timing(LocalDate today, ItemOffers offers, List<StockOnHand> stock, List<HorizonItem.Use> uses) {
        this.today = today;
        this.offers = offers;
        this.stock = stock;
        this.uses = uses.stream().sorted(BY_DAY).toList();
    }

    /** By need: with the day it is planned for, and the part that is not covered. */
    IdentityHashMap<HorizonItem.Use, HorizonItem.Use> planned() {
        while (true) {
            Pass pass = new Pass();
            pass.run();
            if (!hopeless.addAll(pass.waiting)) {
                return pass.planned;
            }
        }
    }

    private LocalDate ownDay(HorizonItem.Use use) {
        LocalDate own = use.run().goodsNeeded();
        return own.isBefore(today) ? today : own;
    }

    /** One pass through the days. */
    private final class Pass {
        private final IdentityHashMap<HorizonItem.Use, HorizonItem.Use> planned = new IdentityHashMap<>();
        private final List<Integer> waiting = new ArrayList<>();
        private final List<BigDecimal> left =
                new ArrayList<>(stock.stream().map(StockOnHand::quantity).toList());

        void run() {
            TreeSet<LocalDate> days = new TreeSet<>();
            stock.forEach(lot -> days.add(lot.from()));
            for (HorizonItem.Use use : uses) {
                days.add(ownDay(use));
                LocalDate possible = offers.firstDayFrom(ownDay(use));
                if (possible != null) {
                    days.add(possible);
                }
            }
            for (LocalDate day : days) {
                waiting.removeIf(index -> isMet(index, day));
                for (int index = 0; index < uses.size(); index++) {
                    if (ownDay(uses.get(index)).equals(day) && !isMet(index, day)) {
                        waiting.add(index);
                    }
                }
            }
        }

        /** Meets a need on a day, if it can be met then. */
        private boolean isMet(int index, LocalDate day) {
            HorizonItem.Use use = uses.get(index);
            boolean isHopeless = hopeless.contains(index);
            BigDecimal needed = use.item().needed();
            if (!isHopeless && !offers.canBeThere(day) && there(day).compareTo(needed) < 0) {
                return false;
            }
            BigDecimal missing = take(needed, day);
            BigDecimal notCovered = isHopeless ? missing : BigDecimal.ZERO;
            planned.put(use, new HorizonItem.Use(use.run(), use.item(), day, notCovered));
            return true;
        }

        private BigDecimal there(LocalDate day) {
            BigDecimal there = BigDecimal.ZERO;
            for (int lot = 0; lot < stock.size(); lot++) {
                there = stock.get(lot).isGoodOn(day) ? there.add(left.get(lot)) : there;
            }
            return there;
        }

        /** Takes a quantity from the stock, and returns what is missing. */
        private BigDecimal take(BigDecimal quantity, LocalDate day) {
            BigDecimal missing = quantity;
            for (int lot = 0; lot < stock.size() && missing.signum() > 0; lot++) {
                BigDecimal taken = stock.get(lot).isGoodOn(day) ? left.get(lot).min(missing) : BigDecimal.ZERO;
                left.set(lot, left.get(lot).subtract(taken));
                missing = missing.subtract(taken);
            }
            return missing;
        }
    }
}
