package perkilo.orderplan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import perkilo.costing.Item;
import perkilo.costing.Market;
import perkilo.costing.Missing;
import perkilo.costing.RunGaps;
import perkilo.costing.RunNeeds;
import perkilo.costing.Unsold;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Gaps;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * What of a book's demand can be planned: nothing is withheld because of something else. What cannot be there on its
 * day is planned for the first day on which it can; what cannot be met at all, or is not known, is left out and named.
 */
final class Plannable {

    private final Market market;
    private final Market later;
    private final Book book;
    private final WorkDays workDays;
    private final LocalDate today;
    private final List<LateNeed> late = new ArrayList<>();
    private final List<NotCovered> notCovered = new ArrayList<>();
    private final Set<Finding> problems = new LinkedHashSet<>();
    private final Set<String> withoutSafety = new HashSet<>();
    private List<PlannedRun> runs = List.of();
    private List<Wanted> items = List.of();

    private Plannable(Market market, Market later) {
        this.market = market;
        this.later = later;
        this.book = market.book();
        this.workDays = WorkDays.of(book);
        this.today = book.settings().costingDate();
    }

    /**
     * The part of a book's demand that can be planned.
     *
     * @param market the offers until the last day of the demand
     * @param later the offers after that as well
     */
    static Plannable of(Market market, Market later) {
        Plannable plannable = new Plannable(market, later);
        plannable.find();
        return plannable;
    }

    /** The days of the plan. */
    Horizon horizon() {
        return new PlanDays(later, workDays, withoutSafety).of(items);
    }

    /**
     * The purchase problem of what can be planned.
     *
     * @param offers until the end of the plan
     */
    HorizonProblem problem(Market offers) {
        Horizon horizon = horizon();
        SafetyStock safety = new SafetyStock(offers, workDays, withoutSafety);
        return HorizonProblem.of(
                offers,
                horizon,
                workDays,
                runs,
                items.stream()
                        .map(item -> HorizonItem.of(horizon, item, safety.of(horizon, item)))
                        .toList());
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
        Wanted item = items.stream()
                .filter(one -> one.item().name().equals(name))
                .findFirst()
                .orElse(null);
        if (item == null) {
            return false;
        }
        if (!basis.items().get(index).safety().isNone() && withoutSafety.add(Names.key(name))) {
            problems.add(Finding.warning(item.item().origin(), OrderMessages.safetyNotKept(name)));
            return true;
        }
        LocalDate day = basis.horizon().day(period);
        boolean ofDay = item.uses().stream().anyMatch(use -> use.day().equals(day));
        Wanted left = withoutUses(item, use -> !ofDay || use.day().equals(day), why);
        List<Wanted> others = new ArrayList<>(items);
        int place = others.indexOf(item);
        if (left.isPlanned()) {
            others.set(place, left);
        } else {
            others.remove(place);
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
        LocalDate last = Horizon.lastDay(book);
        for (Demand demand : book.demand()) {
            Run run = new Run.OfProduct(demand.product(), demand.units(), demand.origin());
            RunGaps gaps = RunGaps.of(book, run);
            LocalDate neededBy = demand.neededBy().date();
            if (isUnreadable(demand)) {
                continue;
            }
            if (gaps.isAll() || neededBy.isAfter(last)) {
                String why =
                        gaps.isAll() ? gaps.missing().get(0).why() : "more than " + Horizon.MOST + " days with needs";
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
            known.add(new PlannedRun(demand, neededBy.minusDays(leadDays(demand)), needs));
        }
        runs = List.copyOf(known);
        List<Wanted> plannable = new ArrayList<>();
        for (List<HorizonItem.Use> uses : usesByItem().values()) {
            Wanted kept = kept(uses);
            if (kept.isPlanned()) {
                plannable.add(kept);
            }
        }
        items = List.copyOf(plannable);
    }

    /** The days before the units on which goods are needed: of the product, else of all; zero if not said. */
    private int leadDays(Demand demand) {
        Figure own = book.product(demand.product()).map(Product::leadDays).orElse(null);
        Figure all = book.settings().ordering().makingLeadDays();
        Figure days = own == null ? all : own;
        return days == null ? 0 : days.value().setScale(0, RoundingMode.CEILING).intValueExact();
    }

    /** By item, in the order in which they are first needed: the runs that need it, for goods that must be bought. */
    private Map<String, List<HorizonItem.Use>> usesByItem() {
        Map<String, List<HorizonItem.Use>> byName = new LinkedHashMap<>();
        for (PlannedRun run : runs) {
            for (Item item : run.needs().items()) {
                if (market.housePrice(item).isEmpty()) {
                    byName.computeIfAbsent(Names.key(item.name()), key -> new ArrayList<>())
                            .add(new HorizonItem.Use(run, item, run.goodsNeeded(), BigDecimal.ZERO));
                }
            }
        }
        return byName;
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

    private Wanted kept(List<HorizonItem.Use> uses) {
        Item item = uses.get(0).item();
        Wanted all = new Wanted(item, uses, StockOnHand.of(book, item));
        List<Gaps.Gap> stock = book.gaps().of(Gaps.Kind.STOCK, item.name());
        if (!stock.isEmpty()) {
            String why = "its stock has an " + errorIn(stock.get(0).origin());
            return withoutUses(all, use -> true, why);
        }
        problems.addAll(new AnnouncedPrices(market, Horizon.lastDay(book), List.of(item.name())).unmeasured(item));
        List<Finding> unmeasured = StockOnHand.problems(book, item);
        if (!unmeasured.isEmpty()) {
            problems.addAll(unmeasured);
            return withoutUses(all, use -> true, errorIn(unmeasured.get(0).origin()));
        }
        return timed(all, new ItemOffers(later, workDays, item));
    }

    /** The item with its needs on the days on which they can be met; what is late or not covered is named. */
    private Wanted timed(Wanted all, ItemOffers offers) {
        List<HorizonItem.Use> needed =
                all.uses().stream().filter(use -> use.item().isNeeded()).toList();
        IdentityHashMap<HorizonItem.Use, HorizonItem.Use> planned =
                new Timing(today, offers, all.stock(), needed).planned();
        List<HorizonItem.Use> uses = new ArrayList<>();
        List<HorizonItem.Use> waiting = new ArrayList<>();
        List<HorizonItem.Use> lacking = new ArrayList<>();
        for (HorizonItem.Use use : all.uses()) {
            HorizonItem.Use then = planned.getOrDefault(use, use);
            uses.add(then);
            if (then.day().isAfter(use.run().goodsNeeded()) && then.quantity().signum() > 0) {
                waiting.add(then);
            }
            if (then.notCovered().signum() > 0) {
                lacking.add(then);
            }
        }
        late(all.item(), waiting);
        new TooEarly(today, all, offers).problem(waiting).ifPresent(problems::add);
        if (!lacking.isEmpty()) {
            notCovered(all.item(), lacking, whyNotCovered(all.item(), offers));
        }
        return all.with(uses);
    }

    private String whyNotCovered(Item item, ItemOffers offers) {
        if (!offers.isEmpty()) {
            return "no delivery on any day";
        }
        Optional<String> reported = book.gaps().whyNoPrice(item.name());
        if (reported.isEmpty()) {
            problems.add(Finding.error(item.origin(), Unsold.why(book, item)));
        }
        return reported.orElse("no offer");
    }

    /** Names late needs: one entry for each day on which they are needed, and on which they are possible. */
    private void late(Item item, List<HorizonItem.Use> uses) {
        Map<List<LocalDate>, List<PlannedRun>> byDay =
                new TreeMap<>(Comparator.<List<LocalDate>, LocalDate>comparing(days -> days.get(0))
                        .thenComparing(days -> days.get(1)));
        for (HorizonItem.Use use : uses) {
            byDay.computeIfAbsent(List.of(use.run().goodsNeeded(), use.day()), day -> new ArrayList<>())
                    .add(use.run());
        }
        byDay.forEach((days, runsOfDay) -> late.add(new LateNeed(item.name(), days.get(0), days.get(1), runsOfDay)));
    }

    private void notCovered(Item item, List<HorizonItem.Use> uses, String why) {
        Map<LocalDate, BigDecimal> byDay = new TreeMap<>();
        uses.forEach(use -> byDay.merge(use.run().goodsNeeded(), use.notCovered(), BigDecimal::add));
        byDay.forEach((day, quantity) ->
                notCovered.add(new NotCovered(item.name(), day, quantity, item.unit(), why, item.origin())));
    }

    /** The item without some of its uses, which are named as not covered by day. */
    private Wanted withoutUses(Wanted item, Predicate<HorizonItem.Use> which, String why) {
        List<HorizonItem.Use> kept = new ArrayList<>();
        List<HorizonItem.Use> gone = new ArrayList<>();
        for (HorizonItem.Use use : item.uses()) {
            if (which.test(use) && use.item().isNeeded()) {
                gone.add(new HorizonItem.Use(use.run(), use.item(), use.day(), use.quantity()));
            } else {
                kept.add(use);
            }
        }
        notCovered(item.item(), gone, why);
        return item.with(kept);
    }

    private static String errorIn(Origin origin) {
        return "error in " + origin.where();
    }
}
