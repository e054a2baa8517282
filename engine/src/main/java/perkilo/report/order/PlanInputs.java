package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Material;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.orderplan.HorizonItem;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.StockOnHand;
import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/**
 * Inputs of a plan besides prices, packs and quantities: days and limits that no amount on the sheets shows. Each is
 * shown beside its value when the plan was made.
 */
final class PlanInputs {

    private static final Column<Input> NAME = Column.<Input>of("input", "Input")
            .words(Input::name)
            .look(Look.LABEL)
            .link(Input::origin);
    private static final Column<Input> NOW =
            Column.<Input>of("now", "Now").formula(row -> row.entry().now()).format(Input::format);
    private static final Column<Input> PLANNED = Column.<Input>of("planned", "When it was planned")
            .formula(row -> row.entry().then())
            .format(Input::format);
    private static final Column<Input> CHANGED = Column.<Input>of("changed", "Changed")
            .value(input -> BigDecimal.ZERO)
            .formula(row -> Expr.differs(row.ref(NOW), row.ref(PLANNED)))
            .format(NumberFormat.WHOLE)
            .mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.WARNING));
    private static final Table<Input> TABLE = Table.of(NAME, NOW, PLANNED, CHANGED);

    private final Book book;
    private final OrderOutcome.Planned planned;
    private final List<Input> inputs = new ArrayList<>();

    private PlanInputs(OrderOutcome.Planned planned) {
        this.planned = planned;
        this.book = planned.book();
    }

    private record Input(String name, Origin origin, Expr now, Expr then, NumberFormat format) {}

    /**
     * Writes the inputs, and returns the number that have changed.
     *
     * @param row the first, from zero
     */
    static Expr write(OrderOutcome.Planned planned, SheetBuilder sheet, int row) {
        PlanInputs all = new PlanInputs(planned);
        all.collect();
        return all.inputs.isEmpty() ? Expr.of(0) : all.write(sheet, row);
    }

    private void collect() {
        for (Demand demand : book.demand()) {
            add(demand.product() + ": needed by", demand.neededBy());
        }
        Settings.Ordering ordering = book.settings().ordering();
        add("Making lead days", ordering.makingLeadDays());
        book.demand().stream()
                .map(demand -> book.product(demand.product()).orElse(null))
                .filter(Objects::nonNull)
                .distinct()
                .forEach(product -> add(product.name() + ": lead days", product.leadDays()));
        book.daysOff().forEach(one -> add("Day off", one.day()));
        for (HorizonItem item : planned.plan().basis().items()) {
            for (StockOnHand stock : item.stock()) {
                add(item.name() + ": expires", stock.lot().expires());
                add(item.name() + ": expected on", stock.lot().expected());
            }
            Material material = item.item().material();
            add(item.name() + ": shelf life months", material == null ? null : material.shelfLifeMonths());
            add(item.name() + ": safety stock", item.statedSafety(book));
        }
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        for (Listing listing : planned.plan().basis().listings()) {
            Offer offer = listing.offer();
            String name = "%s, %s, %s: ".formatted(offer.supplier(), offer.item(), offer.pack());
            add(name + "minimum order", offer.minimumOrder());
            add(name + "order multiple", offer.orderMultiple());
            suppliers.put(Names.key(offer.supplier()), listing.supplier());
        }
        for (Supplier supplier : suppliers.values()) {
            add(supplier.name() + ": lead time days", supplier.leadTimeDays());
            add(supplier.name() + ": minimum order value", supplier.minimumOrderValue());
        }
    }

    private void add(String name, @Nullable Day day) {
        if (day != null && day.isLive()) {
            add(new Input(name, day.origin(), Expr.input(day), Expr.day(day.date()), NumberFormat.DATE));
        }
    }

    private void add(String name, @Nullable Figure figure) {
        if (figure != null) {
            add(new Input(name, figure.origin(), Expr.input(figure), Expr.of(figure.value()), NumberFormat.GENERAL));
        }
    }

    /** Keeps an input if a person can change it in the workbook. */
    private void add(Input input) {
        if (input.now().isLive()) {
            inputs.add(input);
        }
    }

    private Expr write(SheetBuilder sheet, int row) {
        sheet.section(row, "Other inputs of the plan, besides prices, packs and quantities");
        Placed<Input> placed = TABLE.at(sheet, row + 1, inputs).write();
        sheet.hint(
                placed.next(),
                "Not covered here: added rows, filled blanks, days typed as text, the day of a quote and how long it is"
                        + " valid. Run perkilo order again after such a change.");
        return placed.sum(CHANGED);
    }
}
