package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.Item;
import perkilo.costing.ItemCost;
import perkilo.costing.KeptPurchase;
import perkilo.costing.Market;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.costing.RunNeeds;
import perkilo.model.Book;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;

/**
 * Finds what the cost of each run depends on: each factor is moved down and up, first with today's purchase kept, then
 * with the purchase planned anew.
 */
public final class WhatMoves {

    private static final BigDecimal ONE = BigDecimal.ONE;

    private final CostOutcome.Costed costed;
    private final BigDecimal move;
    private final @Nullable Anew anew;

    /** How purchases are planned anew. */
    private record Anew(PlanPurchases planner, SearchLimits limits) {}

    private WhatMoves(CostOutcome.Costed costed, @Nullable Anew anew) {
        this.costed = costed;
        this.move = costed.book().settings().sensitivity().value();
        this.anew = anew;
    }

    /** What the complete runs depend on with their purchase kept. */
    public static List<CostMoves> kept(CostOutcome.Costed costed) {
        return new WhatMoves(costed, null).all(done -> {});
    }

    /**
     * The same, and each purchase planned anew as well.
     *
     * @param progress receives the number of runs that are done, after each
     */
    public static List<CostMoves> replanned(
            CostOutcome.Costed costed, PlanPurchases planner, SearchLimits limits, IntConsumer progress) {
        return new WhatMoves(costed, new Anew(planner, limits)).all(progress);
    }

    private List<CostMoves> all(IntConsumer progress) {
        List<CostMoves> all = new ArrayList<>();
        for (RunCost cost : costed.runs()) {
            List<Swing> swings = new OfRun(cost).swings();
            all.add(new CostMoves(cost, Share.of(cost), swings));
            progress.accept(all.size());
        }
        return all;
    }

    /** A run with something changed; the market is that of today unless prices or rates are changed. */
    private record Changed(Book book, Run run, boolean sameMarket) {}

    private final class OfRun {

        private final RunCost cost;
        private final Moving moving;
        private final Book book;
        private final BigDecimal today;
        private final BigDecimal by;
        private final List<Swing> swings = new ArrayList<>();

        OfRun(RunCost cost) {
            this.cost = cost;
            this.moving = new Moving(costed.market(), cost.purchase());
            this.book = anew == null ? costed.book() : withOffersFor(costed.book(), cost.needs());
            this.today = Measure.ofOne(cost);
            this.by = Measure.of(cost);
        }

        /** The book with the offers of the run's items alone, so that another market is made quickly. */
        private static Book withOffersFor(Book book, RunNeeds needs) {
            Set<String> wanted = new HashSet<>();
            needs.items().forEach(item -> wanted.add(item.key()));
            List<Offer> offers = book.offers().stream()
                    .filter(offer -> wanted.contains(Names.key(offer.item())))
                    .toList();
            return book.withOffers(offers);
        }

        List<Swing> swings() {
            for (ItemCost item : cost.items()) {
                String name = item.item().name();
                inProportion(
                        new Factor(Factor.Kind.ITEM, name),
                        moving.withPrice(item),
                        factor -> Edits.price(book, name, factor));
            }
            for (CurrencyUnit currency : moving.currencies(cost.items())) {
                BigDecimal whole = BigDecimal.ZERO;
                for (ItemCost item : cost.items()) {
                    whole = whole.add(moving.withCurrency(item, currency));
                }
                inProportion(
                        new Factor(Factor.Kind.CURRENCY, currency.getCurrencyCode()),
                        whole,
                        factor -> Edits.currency(book, currency, factor));
            }
            BigDecimal work = cost.work()
                    .making()
                    .add(cost.work().filling())
                    .add(cost.work().overhead());
            inProportion(Factor.of(Factor.Kind.LABOUR_RATE), work, factor -> Edits.wage(book, factor));
            ofMaking();
            return swings.stream()
                    .filter(Swing::saysAnything)
                    .sorted(Comparator.comparing(Swing::width).reversed())
                    .toList();
        }

        private void ofMaking() {
            Run run = cost.needs().run();
            Product product = cost.needs().product();
            if (product != null) {
                String name = product.name();
                changing(Factor.Kind.FILL, factor -> new Changed(Edits.fill(book, name, factor), run, true));
                if (!product.fillLoss().isZero()) {
                    changing(
                            Factor.Kind.FILL_LOSS,
                            factor -> isPossible(product.fillLoss(), factor)
                                    ? new Changed(Edits.fillLoss(book, name, factor), run, true)
                                    : null);
                }
                List<Figure> losses = product.components().stream()
                        .map(Product.Component::loss)
                        .filter(loss -> !loss.isZero())
                        .toList();
                if (!losses.isEmpty()) {
                    changing(
                            Factor.Kind.COMPONENT_LOSSES,
                            factor -> losses.stream().allMatch(loss -> isPossible(loss, factor))
                                    ? new Changed(Edits.componentLosses(book, name, factor), run, true)
                                    : null);
                }
            }
            handlingLosses(run);
            changing(Factor.Kind.RUN_SIZE, factor -> sized(run, factor));
        }

        private void handlingLosses(Run run) {
            List<Figure> losses = cost.needs().items().stream()
                    .map(Item::material)
                    .filter(material ->
                            material != null && !material.handlingLoss().isZero())
                    .map(material -> material == null ? Figure.ZERO : material.handlingLoss())
                    .toList();
            if (!losses.isEmpty()) {
                String formula = cost.needs().formula().name();
                changing(
                        Factor.Kind.HANDLING_LOSSES,
                        factor -> losses.stream().allMatch(loss -> isPossible(loss, factor))
                                ? new Changed(Edits.handlingLosses(book, formula, factor), run, true)
                                : null);
            }
        }

        private @Nullable Changed sized(Run run, BigDecimal factor) {
            Run other = Edits.resized(run, factor);
            return other.equals(run) ? null : new Changed(book, other, true);
        }

        private static boolean isPossible(Figure loss, BigDecimal factor) {
            return loss.value().multiply(factor).compareTo(ONE) < 0;
        }

        /** A factor with which a part of the cost moves in proportion. */
        private void inProportion(Factor factor, BigDecimal whole, EditOfBook edit) {
            if (whole.signum() == 0) {
                return;
            }
            BigDecimal part = whole.divide(by, MathContext.DECIMAL128);
            boolean samePurchase = factor.kind() == Factor.Kind.LABOUR_RATE;
            BigDecimal down = today.subtract(part.multiply(move));
            BigDecimal up = today.add(part.multiply(move));
            Run run = cost.needs().run();
            swings.add(new Swing(
                    factor,
                    today,
                    part,
                    down,
                    up,
                    anew == null ? null : samePurchase ? down : replanned(new Changed(edit.by(less()), run, false)),
                    anew == null ? null : samePurchase ? up : replanned(new Changed(edit.by(more()), run, false))));
        }

        /** A factor that changes what the run needs. */
        private void changing(Factor.Kind kind, ChangeOfRun edit) {
            Changed less = edit.by(less());
            Changed more = edit.by(more());
            swings.add(
                    new Swing(Factor.of(kind), today, null, kept(less), kept(more), replanned(less), replanned(more)));
        }

        private BigDecimal less() {
            return ONE.subtract(move);
        }

        private BigDecimal more() {
            return ONE.add(move);
        }

        private @Nullable BigDecimal kept(@Nullable Changed changed) {
            return changed == null
                    ? null
                    : needs(changed)
                            .flatMap(needs -> KeptPurchase.cost(costed.market(), cost, needs))
                            .map(Measure::ofOne)
                            .orElse(null);
        }

        private @Nullable BigDecimal replanned(@Nullable Changed changed) {
            if (anew == null || changed == null) {
                return null;
            }
            Market market = changed.sameMarket() ? costed.market() : new Market(changed.book());
            RunCoster coster = new RunCoster(market, anew.planner(), anew.limits());
            return needs(changed)
                    .map(needs -> coster.cost(needs).cost())
                    .map(Measure::ofOne)
                    .orElse(null);
        }

        /** Empty if such a run cannot be made, such as a batch that is no larger than its hold-up. */
        private static Optional<RunNeeds> needs(Changed changed) {
            try {
                return Optional.of(RunNeeds.of(changed.book(), changed.run()));
            } catch (IllegalArgumentException impossible) {
                return Optional.empty();
            }
        }
    }

    /** A book changed by a factor. */
    @FunctionalInterface
    private interface EditOfBook {

        Book by(BigDecimal factor);
    }

    /** A run changed by a factor; null if there is no such run. */
    @FunctionalInterface
    private interface ChangeOfRun {

        @Nullable Changed by(BigDecimal factor);
    }
}
