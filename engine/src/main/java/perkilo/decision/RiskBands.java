package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.decision.Moving.Piece;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.purchasing.LineCost;

/**
 * Historical simulation: every change of the currencies within so many days of the past is applied to today's rates,
 * those of one day together, and every change of a list price to today's price. The purchase is kept.
 */
public final class RiskBands {

    /** The least number of days on which a currency must be known: about one year of working days. */
    public static final int LEAST_DAYS = 250;

    private final CostOutcome.Costed costed;
    private final int horizon;
    private final LocalDate today;
    private final PastRates rates;
    private final PastPrices prices;
    private final Map<CurrencyUnit, NavigableMap<LocalDate, BigDecimal>> changes = new HashMap<>();

    private RiskBands(CostOutcome.Costed costed) {
        Settings settings = costed.book().settings();
        this.costed = costed;
        this.horizon = settings.outlook().horizonDays().value().intValue();
        this.today = settings.costingDate();
        CurrencyUnit measure = isForeign() ? Moving.measure(settings) : settings.home();
        this.rates = new PastRates(costed.book().past().rates(), measure, today);
        this.prices = new PastPrices(costed.book().past().quotes(), today);
    }

    /** Whether a supplier or an offer has another currency than home. */
    private boolean isForeign() {
        CurrencyUnit home = costed.book().settings().home();
        for (Offer offer : costed.book().offers()) {
            if (!offer.currency().equals(home)) {
                return true;
            }
        }
        for (Supplier supplier : costed.book().suppliers().values()) {
            if (!supplier.currency().equals(home)) {
                return true;
            }
        }
        return false;
    }

    /** The band of each complete run, in their order. */
    public static List<RiskBand> of(CostOutcome.Costed costed) {
        RiskBands bands = new RiskBands(costed);
        List<RiskBand> all = new ArrayList<>();
        for (RunCost cost : costed.runs()) {
            all.add(bands.new OfRun(cost).band());
        }
        return all;
    }

    private NavigableMap<LocalDate, BigDecimal> changes(CurrencyUnit currency) {
        return changes.computeIfAbsent(currency, one -> PastChanges.ofRates(rates.of(one), horizon));
    }

    private final class OfRun {

        private final RunCost cost;
        private final Moving moving;
        private final IdentityHashMap<LineCost, NavigableMap<LocalDate, BigDecimal>> priced = new IdentityHashMap<>();
        private final Set<CurrencyUnit> currencies = new LinkedHashSet<>();
        private final List<String> still = new ArrayList<>();

        OfRun(RunCost cost) {
            this.cost = cost;
            this.moving = new Moving(costed.market(), cost.purchase());
        }

        RiskBand band() {
            for (ItemCost item : cost.items()) {
                boolean moves = true;
                for (LineCost line : item.lines()) {
                    moves &= isPriceKnown(line);
                }
                if (!moves && item.item().isNeeded()) {
                    still.add(item.item().name());
                }
                for (Piece piece : moving.pieces(item)) {
                    if (piece.currency() != null && piece.amount().signum() != 0) {
                        currencies.add(piece.currency());
                    }
                }
            }
            List<RiskBand.Lack> lacking = new ArrayList<>();
            for (CurrencyUnit currency : currencies) {
                int days = rates.of(currency).size();
                if (days < LEAST_DAYS) {
                    lacking.add(new RiskBand.Lack.Rates(currency.getCurrencyCode(), days));
                }
            }
            if (currencies.isEmpty() && priced.isEmpty()) {
                lacking.add(new RiskBand.Lack.Anything());
            }
            List<LocalDate> starts = lacking.isEmpty() ? starts() : List.of();
            if (lacking.isEmpty() && starts.isEmpty()) {
                lacking.add(new RiskBand.Lack.Windows(
                        currencies.stream().map(CurrencyUnit::getCurrencyCode).toList()));
            }
            RiskBand.Figures figures = lacking.isEmpty() ? figures(starts) : null;
            return new RiskBand(cost, horizon, figures, alone(), still, lacking);
        }

        /** Whether there are enough lists of a pack, and a window fits between the first one and today. */
        private boolean isPriceKnown(LineCost line) {
            Offer offer = moving.offer(line);
            BigDecimal packs = BigDecimal.valueOf(line.line().packs());
            NavigableMap<LocalDate, BigDecimal> days =
                    prices.of(offer, offer.packSize().value().multiply(packs));
            boolean known = days.size() >= PastPrices.LEAST_DATES
                    && !days.firstKey().plusDays(horizon).isAfter(today);
            if (known) {
                priced.put(line, days);
            }
            return known;
        }

        /** The first days of the windows, the newest first. */
        private List<LocalDate> starts() {
            Set<LocalDate> days = new TreeSet<>(Collections.reverseOrder());
            if (currencies.isEmpty()) {
                priced.values().forEach(lists -> days.addAll(each(lists.firstKey())));
            } else {
                boolean first = true;
                for (CurrencyUnit currency : currencies) {
                    if (first) {
                        days.addAll(changes(currency).keySet());
                    } else {
                        days.retainAll(changes(currency).keySet());
                    }
                    first = false;
                }
            }
            return List.copyOf(days);
        }

        /** Every day from which a window ends by today. */
        private List<LocalDate> each(LocalDate from) {
            return from.datesUntil(today.minusDays(horizon).plusDays(1)).toList();
        }

        private RiskBand.Figures figures(List<LocalDate> starts) {
            BigDecimal[] costs = new BigDecimal[starts.size()];
            Arrays.fill(costs, cost.total());
            for (Map.Entry<Group, BigDecimal> group : groups().entrySet()) {
                List<BigDecimal> factors = factors(group.getKey(), starts);
                for (int at = 0; at < costs.length; at++) {
                    BigDecimal more = factors.get(at).subtract(BigDecimal.ONE);
                    costs[at] = costs[at].add(group.getValue().multiply(more), MathContext.DECIMAL128);
                }
            }
            BigDecimal by = Measure.of(cost);
            Percentile all = new Percentile(List.of(costs));
            LocalDate last = starts.get(0).plusDays(horizon);
            return new RiskBand.Figures(
                    all.at(Percentile.LOW).divide(by, MathContext.DECIMAL128),
                    all.at(Percentile.MIDDLE).divide(by, MathContext.DECIMAL128),
                    all.at(Percentile.HIGH).divide(by, MathContext.DECIMAL128),
                    costs.length,
                    starts.get(starts.size() - 1),
                    last);
        }

        /** What moves alike: the pieces of one currency, and each line whose price moves by itself. */
        private record Group(
                @Nullable CurrencyUnit currency, @Nullable LineCost line) {}

        private Map<Group, BigDecimal> groups() {
            Map<Group, BigDecimal> groups = new LinkedHashMap<>();
            for (ItemCost item : cost.items()) {
                for (Piece piece : moving.pieces(item)) {
                    LineCost line = piece.isPrice() && priced.containsKey(piece.line()) ? piece.line() : null;
                    if ((piece.currency() != null || line != null)
                            && piece.amount().signum() != 0) {
                        groups.merge(new Group(piece.currency(), line), piece.amount(), BigDecimal::add);
                    }
                }
            }
            return groups;
        }

        private List<BigDecimal> factors(Group group, List<LocalDate> starts) {
            LineCost line = group.line();
            CurrencyUnit currency = group.currency();
            List<BigDecimal> ofPrice =
                    line == null ? null : PastChanges.ofPrice(days(line), horizon, starts, own(line));
            List<BigDecimal> all = new ArrayList<>(starts.size());
            for (int at = 0; at < starts.size(); at++) {
                BigDecimal factor = currency == null
                        ? BigDecimal.ONE
                        : changes(currency).getOrDefault(starts.get(at), BigDecimal.ONE);
                all.add(ofPrice == null ? factor : factor.multiply(ofPrice.get(at), MathContext.DECIMAL64));
            }
            return all;
        }

        private NavigableMap<LocalDate, BigDecimal> days(LineCost line) {
            return Objects.requireNonNull(priced.get(line));
        }

        private List<BigDecimal> own(LineCost line) {
            return PastChanges.ofPrice(days(line), horizon, today);
        }

        /** How far each currency moved alone, and the price of each item whose every purchase has enough lists. */
        private Map<Factor, RiskBand.Spread> alone() {
            Map<Factor, RiskBand.Spread> all = new LinkedHashMap<>();
            for (CurrencyUnit currency : currencies) {
                if (rates.of(currency).size() >= LEAST_DAYS
                        && !changes(currency).isEmpty()) {
                    all.put(
                            new Factor(Factor.Kind.CURRENCY, currency.getCurrencyCode()),
                            spread(List.copyOf(changes(currency).values())));
                }
            }
            for (ItemCost item : cost.items()) {
                List<LineCost> lines = item.lines();
                if (lines.size() == 1 && priced.containsKey(lines.get(0))) {
                    all.put(new Factor(Factor.Kind.ITEM, item.item().name()), spread(own(lines.get(0))));
                }
            }
            return all;
        }

        private RiskBand.Spread spread(List<BigDecimal> factors) {
            Percentile all = new Percentile(factors);
            return new RiskBand.Spread(
                    all.at(Percentile.LOW).subtract(BigDecimal.ONE),
                    all.at(Percentile.HIGH).subtract(BigDecimal.ONE));
        }
    }
}
