package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.orderplan.Difference;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Reasons;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Origin;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/**
 * Tables that explain a plan: what else could have been done, and what that would cost. All figures are values, because
 * a formula cannot make a plan.
 */
public final class WhyTables {

    private static final Table<Listing> OFFER = new Table<>(offer(listing -> listing));

    private final OrderPlan plan;
    private final Reasons reasons;
    private final String home;
    private final NumberFormat money;

    /** The tables of a plan. */
    public WhyTables(OrderOutcome.Planned planned, Reasons reasons) {
        this.plan = planned.plan();
        this.reasons = reasons;
        this.home = planned.book().settings().home().getCurrencyCode();
        this.money = NumberFormat.money(home, 2);
    }

    /** The extra cost of a plan without each chosen offer. */
    public Table.Filled<Reasons.NextBest> nextBest() {
        Column<Reasons.NextBest> item = Column.<Reasons.NextBest>of("item", "Item")
                .words(best -> plan.basis().items().get(best.item()).name())
                .look(Look.LABEL)
                .width(44)
                .json();
        Column<Reasons.NextBest> chosen = Column.<Reasons.NextBest>of("chosen", "Chosen")
                .words(best -> best.chosen().words())
                .width(50)
                .json(best -> packs().one(best.chosen()));
        Column<Reasons.NextBest> instead = Column.<Reasons.NextBest>of("instead", "Instead")
                .words(best -> words(best.instead()))
                .width(40)
                .json(best -> packs().with(best.instead()));
        return asked(Reasons.NextBest::difference, List.of(item, chosen, instead))
                .with(reasons.items());
    }

    /** The extra cost of a plan without each supplier. */
    public Table.Filled<Reasons.Without> withoutSupplier() {
        Column<Reasons.Without> supplier = Column.<Reasons.Without>of("supplier", "Supplier")
                .words(without -> without.supplier().name())
                .look(Look.LABEL)
                .link(without -> without.supplier().origin())
                .json();
        Column<Reasons.Without> orders = Column.<Reasons.Without>of("orders", "Orders")
                .value(without -> BigDecimal.valueOf(without.orders()))
                .format(NumberFormat.WHOLE)
                .json(Reasons.Without::orders);
        Column<Reasons.Without> landed = Column.<Reasons.Without>of("landedHome", "Their orders, landed, " + home)
                .value(Reasons.Without::landed)
                .format(money)
                .json();
        return asked(Reasons.Without::difference, List.of(supplier, orders, landed))
                .with(reasons.suppliers());
    }

    /** The extra cost of the same plan with an order for the day with needs before or after. */
    public Table.Filled<Reasons.Shift> shifts() {
        Column<Reasons.Shift> moved = Column.<Reasons.Shift>of("to", "Bought for")
                .words(WhyTables::moved)
                .json(shift -> shift.to().toString());
        // Blank on the sheet, where the words before say it; keeps the costs of all tables in the same columns.
        Column<Reasons.Shift> joins =
                Column.<Reasons.Shift>of("joins", "").words(shift -> "").json(Reasons.Shift::joins);
        Function<Reasons.Shift, SupplierOrder> order = shift -> plan.orders().get(shift.order());
        return asked(Reasons.Shift::difference, List.of(supplier(order), neededBy(order), moved, joins))
                .with(reasons.shifts());
    }

    /** The extra cost of the same plan with more packs of a line. */
    public Table.Filled<Reasons.MorePacks> morePacks() {
        Column<Reasons.MorePacks> line = Column.<Reasons.MorePacks>of("offer", "Line")
                .words(more -> more.listing().offer().item() + ": "
                        + packs(more.line().line().packs(), more.listing()))
                .json(more -> OFFER.one(more.listing()));
        Column<Reasons.MorePacks> packs = Column.<Reasons.MorePacks>of("packs", "")
                .json(more -> more.line().line().packs())
                .notOnSheet();
        Column<Reasons.MorePacks> wouldBe = Column.<Reasons.MorePacks>of("wouldBe", "Would be")
                .words(more ->
                        packs(more.packs(), more.listing()) + (more.toNextBreak() ? ", the next price break" : ""))
                .json(Reasons.MorePacks::packs);
        Column<Reasons.MorePacks> nextBreak = Column.<Reasons.MorePacks>of("nextBreak", "")
                .json(Reasons.MorePacks::toNextBreak)
                .notOnSheet();
        Function<Reasons.MorePacks, SupplierOrder> order = more -> plan.orders().get(more.order());
        return asked(
                        Reasons.MorePacks::difference,
                        List.of(supplier(order), neededBy(order), line, packs, wouldBe, nextBreak))
                .with(reasons.lines());
    }

    /** The minimums that cost most. */
    public Table.Filled<Reasons.Minimum> minimums() {
        Column<Reasons.Minimum> supplier = Column.<Reasons.Minimum>of("supplier", "Supplier")
                .words(minimum -> minimum.supplier().name())
                .look(Look.LABEL)
                .link(minimum -> minimum.supplier().origin())
                .json();
        Column<Reasons.Minimum> what = Column.<Reasons.Minimum>of("minimum", "What")
                .words(minimum -> minimum.kind().words() + ": " + minimum.stated())
                .json(minimum -> minimum.kind().words());
        Column<Reasons.Minimum> stated = Column.<Reasons.Minimum>of("stated", "")
                .json(Reasons.Minimum::stated)
                .notOnSheet();
        Column<Reasons.Minimum> pack = Column.<Reasons.Minimum>of("pack", "Offer")
                .words(minimum -> pack(minimum.listing()))
                .link(minimum -> originOf(minimum.listing()));
        Column<Reasons.Minimum> saves = Column.<Reasons.Minimum>of("saves", "Costs you")
                .value(Reasons.Minimum::saves)
                .format(money)
                .look(Look.KEY)
                .json();
        Column<Reasons.Minimum> cash = Column.<Reasons.Minimum>of("cashTiedUp", "Cash tied up")
                .value(Reasons.Minimum::cash)
                .format(money)
                .json();
        Column<Reasons.Minimum> proven = Column.<Reasons.Minimum>of("proven", "")
                .words(minimum -> unproven(minimum.proven()))
                .look(Look.HINT)
                .json(Reasons.Minimum::proven);
        Column<Reasons.Minimum> offer = Column.<Reasons.Minimum>of("offer", "")
                .json(minimum -> minimum.listing() == null ? null : OFFER.one(minimum.listing()))
                .notOnSheet();
        return Table.of(supplier, what, stated, pack, saves, cash, proven, offer)
                .with(reasons.minimums());
    }

    /** How many alternatives were not computed. */
    public int notAsked() {
        return reasons.leftOut();
    }

    /** A table with the given columns for the alternative, then the columns for the cost of the other plan. */
    private <R> Table<R> asked(Function<R, Difference> difference, List<Column<R>> question) {
        List<Column<R>> columns = new ArrayList<>(question);
        columns.add(Column.<R>of("possible", "")
                .json(row -> isPossible(difference.apply(row)))
                .notOnSheet());
        columns.add(Column.<R>of("costsMore", "Costs more")
                .value(row -> difference.apply(row) instanceof Difference.Costs costs ? costs.cost() : null)
                .words(row -> difference.apply(row) instanceof Difference.NotPossible ? "not possible" : "not known")
                .wordsLook(Look.PLAIN)
                .format(money)
                .look(Look.KEY)
                .width(16)
                .json()
                .jsonWhere(row -> difference.apply(row) instanceof Difference.Costs));
        columns.add(Column.<R>of("moreCash", "More cash")
                .value(row -> difference.apply(row) instanceof Difference.Costs costs ? costs.cash() : null)
                .format(money)
                .width(16)
                .json()
                .jsonWhere(row -> difference.apply(row) instanceof Difference.Costs));
        columns.add(Column.<R>of("proven", "")
                .words(row -> remark(difference.apply(row)))
                .look(Look.HINT)
                .width(44)
                .json(row -> difference.apply(row) instanceof Difference.Costs costs ? costs.proven() : null)
                .jsonWhere(row -> difference.apply(row) instanceof Difference.Costs));
        columns.add(Column.<R>of("why", "")
                .json(row -> difference.apply(row) instanceof Difference.NotPossible not ? not.why() : null)
                .jsonWhere(row -> difference.apply(row) instanceof Difference.NotPossible)
                .notOnSheet());
        return new Table<>(columns);
    }

    private static <R> Column<R> supplier(Function<R, SupplierOrder> order) {
        return Column.<R>of("supplier", "Order")
                .words(row -> title(order.apply(row)))
                .look(Look.LABEL)
                .json(row -> order.apply(row).supplier().name());
    }

    private static <R> Column<R> neededBy(Function<R, SupplierOrder> order) {
        return Column.<R>of("neededBy", "")
                .json(row -> order.apply(row).neededBy())
                .notOnSheet();
    }

    private static String title(SupplierOrder order) {
        return order.supplier().name() + ", arrives on " + order.arrivesOn();
    }

    private static String moved(Reasons.Shift shift) {
        return shift.to() + (shift.joins() ? ", joined with the order for that day" : "");
    }

    private static String words(List<Reasons.Packs> packs) {
        return packs.stream().map(Reasons.Packs::words).collect(Collectors.joining(" + "));
    }

    private static String packs(long packs, Listing listing) {
        return packs + " × " + listing.offer().pack();
    }

    private static @Nullable String pack(@Nullable Listing listing) {
        return listing == null
                ? null
                : listing.offer().item() + ", " + listing.offer().pack();
    }

    private static Origin originOf(@Nullable Listing listing) {
        return listing == null ? Origin.NONE : listing.offer().origin();
    }

    private static @Nullable Boolean isPossible(Difference difference) {
        return difference instanceof Difference.NotKnown ? null : difference instanceof Difference.Costs;
    }

    private static String remark(Difference difference) {
        if (difference instanceof Difference.Costs costs) {
            return unproven(costs.proven());
        }
        return difference instanceof Difference.NotPossible not ? not.why() : "no answer within the search allowed";
    }

    private static String unproven(boolean proven) {
        return proven ? "" : "at most: the other plan is the best found within the search allowed";
    }

    private static Table<Reasons.Packs> packs() {
        List<Column<Reasons.Packs>> columns = offer(Reasons.Packs::listing);
        columns.add(Column.<Reasons.Packs>of("packs", "").json(Reasons.Packs::packs));
        return new Table<>(columns);
    }

    /** The columns that identify an offer in JSON. */
    private static <R> List<Column<R>> offer(Function<R, Listing> listing) {
        List<Column<R>> columns = new ArrayList<>();
        columns.add(Column.<R>of("supplier", "")
                .json(row -> listing.apply(row).supplier().name()));
        columns.add(
                Column.<R>of("item", "").json(row -> listing.apply(row).offer().item()));
        columns.add(Column.<R>of("packSize", "")
                .json(row -> listing.apply(row).offer().packSize().value()));
        columns.add(Column.<R>of("packUnit", "")
                .json(row -> listing.apply(row).offer().packUnit().symbol()));
        columns.add(Column.<R>of("quotedOn", "")
                .json(row -> listing.apply(row).offer().quotedOn()));
        return columns;
    }
}
