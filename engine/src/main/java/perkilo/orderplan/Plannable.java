package perkilo.orderplan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import perkilo.costing.Market;
import perkilo.costing.Missing;
import perkilo.costing.RunGaps;
import perkilo.costing.RunNeeds;
import perkilo.costing.Unsold;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Gaps;
import perkilo.model.Run;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * What of a book's demand can be planned: nothing is withheld because of something else. What cannot arrive in its
 * month is planned for the first month in which it can; what cannot be met at all, or is not known, is left out and
 * named.
 */
final class Plannable {

    private final Market market;
    private final Book book;
    private Horizon horizon;
    private final List<LateNeed> late = new ArrayList<>();
    private final List<NotCovered> notCovered = new ArrayList<>();
    private final Set<Finding> problems = new LinkedHashSet<>();
    private List<PlannedRun> runs = List.of();
    private List<HorizonItem> items = List.of();

    private Plannable(Market market, Horizon horizon) {
        this.market = market;
        this.book = market.book();
        this.horizon = horizon;
    }

    /** The part of a book's demand that can be planned over a horizon, which may grow for what is late. */
    static Plannable of(Market market, Horizon horizon) {
        Plannable plannable = new Plannable(market, horizon);
        plannable.find();
        return plannable;
    }

    /** The months that are planned. */
    Horizon horizon() {
        return horizon;
    }

    /** The purchase problem of what can be planned. */
    HorizonProblem problem() {
        return HorizonProblem.of(market, horizon, runs, items);
    }

    /** What is late or not covered. */
    Unmet unmet() {
        return new Unmet(late, notCovered);
    }

    /** Errors that say why. */
    List<Finding> problems() {
        return List.copyOf(problems);
    }

    /** Leaves out what a search found to be impossible; whether anything was left out. */
    boolean leaveOut(HorizonProblem basis, int index, int period, String why) {
        String name = basis.items().get(index).name();
        HorizonItem item = items.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElse(null);
        if (item == null) {
            return false;
        }
        boolean ofPeriod = item.uses().stream().anyMatch(use -> use.run().period() == period);
        HorizonItem left = withoutUses(item, use -> !ofPeriod || use.run().period() == period, why);
        List<HorizonItem> others = new ArrayList<>(items);
        int place = others.indexOf(item);
        if (left.uses().isEmpty()) {
            others.remove(place);
        } else {
            others.set(place, left);
        }
        items = List.copyOf(others);
        return left.uses().size() < item.uses().size();
    }

    /** Whether there is something that cannot be met, and nothing else. */
    boolean isNothing() {
        return items.isEmpty() && !notCovered.isEmpty();
    }

    private void find() {
        List<PlannedRun> known = new ArrayList<>();
        for (Gaps.Gap gap : book.gaps().of(Gaps.Kind.DEMAND)) {
            notCovered.add(unreadable(gap));
        }
        for (Demand demand : book.demand()) {
            Run run = new Run.OfProduct(demand.product(), demand.units(), demand.origin());
            RunGaps gaps = RunGaps.of(book, run);
            LocalDate neededBy = demand.neededBy().date();
            if (isUnreadable(demand)) {
                continue;
            }
            if (gaps.isAll() || horizon.periodOf(neededBy) >= Horizon.LONGEST) {
                String why =
                        gaps.isAll() ? gaps.missing().get(0).why() : "more than " + Horizon.LONGEST + " months ahead";
                notCovered.add(new NotCovered(
                        demand.product(), neededBy, demand.units().value(), "units", why, demand.origin()));
                continue;
            }
            for (Missing missing : gaps.missing()) {
                if (missing.part() != Missing.Part.WORK) {
                    notCovered.add(new NotCovered(missing.what(), neededBy, null, "", missing.why(), missing.origin()));
                }
            }
            RunNeeds needs = RunNeeds.of(book, run).without(gaps.leftOut());
            known.add(new PlannedRun(demand, Math.max(0, horizon.periodOf(neededBy)), needs));
        }
        runs = List.copyOf(known);
        extend();
        List<HorizonItem> plannable = new ArrayList<>();
        for (HorizonItem item : HorizonItem.of(market, horizon, runs)) {
            HorizonItem kept = kept(item);
            if (!kept.uses().isEmpty()) {
                plannable.add(kept);
            }
        }
        items = List.copyOf(plannable);
    }

    private NotCovered unreadable(Gaps.Gap gap) {
        Demand read = book.demand().stream()
                .filter(demand -> Gaps.place(demand.origin()).equals(gap.key()))
                .findFirst()
                .orElse(null);
        return new NotCovered(
                gap.what().isEmpty() ? gap.origin().where() : gap.what(),
                read == null ? null : read.neededBy().date(),
                read == null ? null : read.units().value(),
                "units",
                errorIn(gap.origin()),
                gap.origin());
    }

    private boolean isUnreadable(Demand demand) {
        return !book.gaps().of(Gaps.Kind.DEMAND, demand.origin().where()).isEmpty();
    }

    /** Adds months for items whose first delivery comes after the last month. */
    private void extend() {
        int periods = horizon.periods();
        for (HorizonItem item : HorizonItem.of(market, horizon, runs)) {
            int first = firstPeriod(item);
            if (!shortPeriods(item).isEmpty() && first < Horizon.LONGEST) {
                periods = Math.max(periods, first + 1);
            }
        }
        horizon = horizon.ofMonths(periods);
    }

    private HorizonItem kept(HorizonItem item) {
        List<Gaps.Gap> stock = book.gaps().of(Gaps.Kind.STOCK, item.name());
        if (!stock.isEmpty()) {
            return withoutUses(
                    item,
                    use -> true,
                    "its stock has an " + errorIn(stock.get(0).origin()));
        }
        problems.addAll(new AnnouncedPrices(market, horizon, List.of(item)).unmeasured(item.item()));
        List<Finding> unmeasured = StockOnHand.problems(book, item.item());
        if (!unmeasured.isEmpty()) {
            problems.addAll(unmeasured);
            return withoutUses(item, use -> true, errorIn(unmeasured.get(0).origin()));
        }
        List<Integer> missing = shortPeriods(item);
        if (missing.isEmpty()) {
            return overdue(item, Set.of());
        }
        if (market.listings(item.name()).isEmpty()) {
            Optional<String> reported = book.gaps().whyNoPrice(item.name());
            if (reported.isEmpty()) {
                problems.add(Finding.error(item.item().origin(), Unsold.why(book, item.item())));
            }
            String why = reported.orElse("no offer");
            return overdue(withoutUses(item, use -> missing.contains(use.run().period()), why), Set.of());
        }
        TooEarly early = new TooEarly(market, horizon);
        early.problem(item).ifPresent(problems::add);
        int first = firstPeriod(item);
        List<Integer> tooEarly =
                missing.stream().filter(period -> period < first).toList();
        if (tooEarly.isEmpty()) {
            return overdue(item, Set.of());
        }
        if (first >= horizon.periods()) {
            return overdue(
                    withoutUses(item, use -> tooEarly.contains(use.run().period()), "no delivery within the horizon"),
                    Set.of());
        }
        return shifted(item, tooEarly, first);
    }

    /** The item with the needs of some months moved to a later one. */
    private HorizonItem shifted(HorizonItem item, List<Integer> from, int to) {
        List<HorizonItem.Use> uses = new ArrayList<>();
        Set<HorizonItem.Use> moved = new LinkedHashSet<>();
        for (HorizonItem.Use use : item.uses()) {
            if (from.contains(use.run().period()) && use.item().isNeeded()) {
                moved.add(use);
                PlannedRun later =
                        new PlannedRun(use.run().demand(), to, use.run().needs());
                uses.add(new HorizonItem.Use(later, use.item()));
            } else {
                uses.add(use);
            }
        }
        late(item, moved, horizon.firstDay(to));
        overdue(item, moved);
        return item.withUses(uses);
    }

    /** Names needs before the costing date that are not named yet; the stock covers them today. */
    private HorizonItem overdue(HorizonItem item, Set<HorizonItem.Use> named) {
        Set<HorizonItem.Use> past = new LinkedHashSet<>();
        for (HorizonItem.Use use : item.uses()) {
            LocalDate neededBy = use.run().demand().neededBy().date();
            if (!named.contains(use) && use.item().isNeeded() && neededBy.isBefore(horizon.today())) {
                past.add(use);
            }
        }
        late(item, past, horizon.today());
        return item;
    }

    private void late(HorizonItem item, Set<HorizonItem.Use> uses, LocalDate possibleOn) {
        Map<LocalDate, List<PlannedRun>> byDay = new LinkedHashMap<>();
        for (HorizonItem.Use use : uses) {
            byDay.computeIfAbsent(use.run().demand().neededBy().date(), day -> new ArrayList<>())
                    .add(use.run());
        }
        byDay.forEach((day, waiting) -> late.add(new LateNeed(item.name(), day, possibleOn, waiting)));
    }

    /** The item without some of its uses, which are named as not covered by day. */
    private HorizonItem withoutUses(HorizonItem item, Predicate<HorizonItem.Use> which, String why) {
        List<HorizonItem.Use> kept = new ArrayList<>();
        Map<LocalDate, BigDecimal> byDay = new LinkedHashMap<>();
        Origin origin = item.item().origin();
        for (HorizonItem.Use use : item.uses()) {
            if (which.test(use) && use.item().isNeeded()) {
                byDay.merge(use.run().demand().neededBy().date(), use.item().needed(), BigDecimal::add);
            } else {
                kept.add(use);
            }
        }
        byDay.forEach((day, quantity) -> notCovered.add(
                new NotCovered(item.name(), day, quantity, item.item().unit(), why, origin)));
        return item.withUses(kept);
    }

    private int firstPeriod(HorizonItem item) {
        return market.listings(item.name()).stream()
                .map(listing -> OrderMonths.arrival(market.prices(), listing))
                .min(Comparator.naturalOrder())
                .map(horizon::firstPeriodFrom)
                .orElse(Integer.MAX_VALUE);
    }

    private static List<Integer> shortPeriods(HorizonItem item) {
        List<BigDecimal> net =
                item.asNeed(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO).net();
        List<Integer> periods = new ArrayList<>();
        for (int period = 0; period < net.size(); period++) {
            if (net.get(period).signum() > 0) {
                periods.add(period);
            }
        }
        return periods;
    }

    private static String errorIn(Origin origin) {
        return "error in " + origin.where();
    }
}
