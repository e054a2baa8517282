package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.ItemCost;
import perkilo.costing.Listing;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.costing.Work;
import perkilo.decision.PlanAndActual.OfItem;
import perkilo.decision.PlanAndActual.Used;
import perkilo.model.ActualRow;
import perkilo.model.Book;
import perkilo.model.Settings;
import perkilo.names.Names;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.units.Conversion;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/**
 * Holds what runs really took against their plan, by standard costing: quantity variance at the standard price, price
 * variance for the actual quantity. What is not written down counts as planned.
 *
 * @param runs those that can be compared
 * @param unmatched the titles of the others
 * @param findings what a person should know
 */
public record ActualVariances(List<PlanAndActual> runs, List<String> unmatched, List<Finding> findings) {

    public ActualVariances {
        runs = List.copyOf(runs);
        unmatched = List.copyOf(unmatched);
        findings = List.copyOf(findings);
    }

    /** The parts of each run. */
    public Variances variances() {
        return new Variances(runs.stream().map(PlanAndActual::variance).toList(), unmatched);
    }

    /**
     * The runs beside their plan.
     *
     * @param plan the costs of {@link ActualRuns#plan}, an answer for each run in its order
     */
    public static ActualVariances of(CostOutcome.Costed plan, ActualRuns actual) {
        List<PlanAndActual> runs = new ArrayList<>();
        List<String> unmatched = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        ExchangeRates past = new ExchangeRates(plan.book().past().rates());
        for (int at = 0; at < actual.runs().size(); at++) {
            ActualRuns.One one = actual.runs().get(at);
            RunAnswer answer = plan.answers().get(at);
            RunCost cost = answer.cost();
            PlanAndActual held = cost == null || !answer.isComplete()
                    ? null
                    : new OfRun(plan.book(), past, cost, one, findings).held();
            if (held == null) {
                unmatched.add(one.title());
            } else {
                runs.add(held);
            }
        }
        return new ActualVariances(runs, unmatched, findings);
    }

    private static final class OfRun {

        private final Book book;
        private final ExchangeRates past;
        private final RunCost plan;
        private final ActualRuns.One run;
        private final List<Finding> findings;
        private final BigDecimal made;
        private boolean isClear = true;

        OfRun(Book book, ExchangeRates past, RunCost plan, ActualRuns.One run, List<Finding> findings) {
            this.book = book;
            this.past = past;
            this.plan = plan;
            this.run = run;
            this.findings = findings;
            this.made = ActualRuns.made(run);
        }

        @Nullable PlanAndActual held() {
            Map<String, List<ActualRow.Use>> uses = new LinkedHashMap<>();
            for (ActualRow row : run.rows()) {
                ActualRow.Use use = row.use();
                if (use != null) {
                    uses.computeIfAbsent(Names.key(use.item()), key -> new ArrayList<>())
                            .add(use);
                }
            }
            List<OfItem> items = new ArrayList<>();
            List<String> asPlanned = new ArrayList<>();
            for (ItemCost item : plan.items()) {
                List<ActualRow.Use> ofItem = uses.remove(item.item().key());
                if (ofItem != null) {
                    items.add(planned(item, ofItem));
                } else if (item.item().isNeeded()) {
                    items.add(planned(item, List.of()));
                    asPlanned.add(item.item().name());
                }
            }
            uses.values().forEach(others -> items.add(notPlanned(others)));
            if (!isClear) {
                return null;
            }
            say(asPlanned);
            return new PlanAndActual(run.name(), variance(items), made, items);
        }

        private void say(List<String> asPlanned) {
            Origin origin = run.rows().get(0).origin();
            if (run.made() == null) {
                findings.add(Finding.note(origin, ActualMessages.madeAsPlanned(run.title())));
            }
            if (run.hours() == null) {
                findings.add(Finding.note(origin, ActualMessages.hoursAsPlanned(run.title())));
            }
            if (!asPlanned.isEmpty()) {
                findings.add(Finding.note(origin, ActualMessages.asPlanned(run.title(), asPlanned)));
            }
        }

        private OfItem planned(ItemCost item, List<ActualRow.Use> uses) {
            BigDecimal price = item.landedPerUnit();
            BigDecimal standard = item.item().needed().multiply(made).divide(units(), MathContext.DECIMAL128);
            List<Used> used = used(
                    uses,
                    item.item().isMaterial(),
                    item.item().material() == null
                            ? null
                            : item.item().material().density());
            if (uses.isEmpty()) {
                return new OfItem(
                        item.item().name(),
                        item.item().unit(),
                        standard,
                        standard,
                        price,
                        standard.multiply(price),
                        BigDecimal.ZERO,
                        used,
                        Origin.NONE);
            }
            return item(
                    item.item().name(),
                    item.item().unit(),
                    standard,
                    price,
                    used,
                    uses.get(0).origin());
        }

        private OfItem notPlanned(List<ActualRow.Use> uses) {
            ActualRow.Use first = uses.get(0);
            boolean material = !first.unit().isCount();
            Figure density =
                    book.material(first.item()).map(known -> known.density()).orElse(null);
            if (first.paid() == null) {
                findings.add(Finding.error(
                        first.origin(), ActualMessages.notPlannedWithoutPrice(run.title(), first.item())));
                isClear = false;
            } else {
                findings.add(Finding.warning(first.origin(), ActualMessages.notPlanned(run.title(), first.item())));
            }
            List<Used> used = used(uses, material, density);
            return item(first.item(), material ? "kg" : "each", BigDecimal.ZERO, null, used, first.origin());
        }

        private static OfItem item(
                String name,
                String unit,
                BigDecimal standard,
                @Nullable BigDecimal price,
                List<Used> used,
                Origin origin) {
            BigDecimal actual = BigDecimal.ZERO;
            BigDecimal paid = BigDecimal.ZERO;
            BigDecimal exchange = BigDecimal.ZERO;
            for (Used one : used) {
                BigDecimal quantity = one.quantity().value().multiply(one.perUnit());
                actual = actual.add(quantity);
                Figure amount = one.paid();
                if (amount != null) {
                    paid = paid.add(amount.value().multiply(one.toHome()));
                    exchange = exchange.add(
                            amount.value().multiply(one.toHomeThen().subtract(one.toHome())));
                } else if (price != null) {
                    paid = paid.add(quantity.multiply(price));
                }
            }
            return new OfItem(name, unit, standard, actual, price, paid, exchange, used, origin);
        }

        private List<Used> used(List<ActualRow.Use> uses, boolean material, @Nullable Figure density) {
            List<Used> all = new ArrayList<>();
            for (ActualRow.Use use : uses) {
                boolean fits = use.unit().isCount() != material;
                boolean needsDensity = use.unit().kind() == Measure.Kind.VOLUME && density == null;
                if (!fits || needsDensity) {
                    isClear = false;
                    String symbol = use.unit().symbol();
                    findings.add(Finding.error(
                            use.quantity().origin(),
                            fits
                                    ? ActualMessages.needsDensity(use.item(), symbol)
                                    : ActualMessages.otherUnit(use.item(), symbol, material)));
                    continue;
                }
                if (use.paid() == null) {
                    findings.add(Finding.note(use.origin(), ActualMessages.asPlannedPrice(use.item())));
                }
                BigDecimal now = BigDecimal.ONE;
                BigDecimal then = BigDecimal.ONE;
                CurrencyUnit currency = use.currency();
                if (currency != null && !currency.equals(book.settings().home())) {
                    BigDecimal onDay = rateThen(currency, use);
                    then = onDay == null ? BigDecimal.ONE : onDay;
                    now = rateOfPlan(currency).orElse(then);
                }
                all.add(new Used(use.quantity(), Listing.basePer(use.unit(), density), use.paid(), now, then));
            }
            return all;
        }

        private Optional<BigDecimal> rateOfPlan(CurrencyUnit currency) {
            Settings settings = book.settings();
            return book.rates()
                    .on(settings.costingDate(), currency, settings.home())
                    .map(Conversion::factor);
        }

        /** The rate of the day of payment; null if there is none, which is reported. */
        private @Nullable BigDecimal rateThen(CurrencyUnit currency, ActualRow.Use use) {
            Day day = use.day();
            LocalDate date = day == null ? book.settings().costingDate() : day.date();
            Optional<BigDecimal> rate =
                    past.on(date, currency, book.settings().home()).map(Conversion::factor);
            if (rate.isEmpty() && day == null) {
                rate = rateOfPlan(currency);
            }
            if (rate.isEmpty()) {
                isClear = false;
                Origin origin = day == null ? use.origin() : day.origin();
                findings.add(Finding.error(origin, ActualMessages.noRate(currency.getCurrencyCode(), date)));
            }
            return rate.orElse(null);
        }

        private BigDecimal units() {
            return run.planned().units().value();
        }

        /** The states of the cost of a unit, in the order of {@link Variance.Part}. */
        private Variance variance(List<OfItem> items) {
            Map<Variance.Part, BigDecimal> changes = new HashMap<>();
            for (OfItem item : items) {
                BigDecimal price = item.standardPrice();
                if (price == null) {
                    add(changes, Variance.Part.RECIPE, item.paid());
                } else {
                    boolean leftOut = item.actual().signum() == 0;
                    add(
                            changes,
                            leftOut ? Variance.Part.RECIPE : Variance.Part.PROCESS,
                            item.actual().subtract(item.standard()).multiply(price));
                    add(
                            changes,
                            Variance.Part.PRICE,
                            item.paid().subtract(item.actual().multiply(price)));
                }
                add(changes, Variance.Part.EXCHANGE_RATE, item.exchange());
            }
            add(
                    changes,
                    Variance.Part.PROCESS,
                    work().subtract(standard(plan.work().total())));
            add(changes, Variance.Part.PURCHASE_CHOICE, plan.wasted().subtract(standard(plan.wasted())));
            add(changes, Variance.Part.ONE_OFFS, plan.oneOffShareOf(made).subtract(standard(plan.oneOffShare())));
            List<BigDecimal> states = new ArrayList<>();
            BigDecimal state = plan.total().divide(units(), MathContext.DECIMAL128);
            states.add(state);
            for (Variance.Part part : Variance.Part.values()) {
                BigDecimal change = changes.getOrDefault(part, BigDecimal.ZERO);
                state = state.add(change.divide(made, MathContext.DECIMAL128));
                states.add(state);
            }
            String title = plan.needs().title();
            return Variance.of(
                    run.name().isEmpty() ? title : title + " (" + run.name() + ")", plan.needs(), made, states);
        }

        private static void add(Map<Variance.Part, BigDecimal> changes, Variance.Part part, BigDecimal more) {
            changes.merge(part, more, BigDecimal::add);
        }

        /** What the plan has, for the units made. */
        private BigDecimal standard(BigDecimal ofPlan) {
            return ofPlan.multiply(made).divide(units(), MathContext.DECIMAL128);
        }

        /** The hours worked at the labour rate with overhead, and the plan's quality control. */
        private BigDecimal work() {
            Work work = plan.work();
            Figure hours = run.hours();
            if (hours == null) {
                return work.total();
            }
            BigDecimal labour =
                    hours.value().multiply(book.settings().labourRate().value());
            return labour.add(labour.multiply(work.overheadRate())).add(work.qualityControl());
        }
    }
}
