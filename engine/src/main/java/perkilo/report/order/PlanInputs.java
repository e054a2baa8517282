package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Material;
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

/**
 * What a plan rests on besides prices, packs and quantities: days and limits that no amount on the sheets shows. Each
 * is set beside what it was when the plan was made.
 */
final class PlanInputs {

    private static final int NOW = 1;
    private static final int PLANNED = 2;
    private static final int CHANGED = 3;

    private final Book book;
    private final OrderOutcome.Planned planned;
    private final List<Input> inputs = new ArrayList<>();

    private PlanInputs(OrderOutcome.Planned planned) {
        this.planned = planned;
        this.book = planned.book();
    }

    private record Input(String name, Origin origin, Expr now, Expr then, NumberFormat format) {}

    /**
     * Writes them, and returns how many have changed.
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
        for (HorizonItem item : planned.plan().basis().items()) {
            for (StockOnHand stock : item.stock()) {
                add(item.name() + ": expires", stock.lot().expires());
                add(item.name() + ": expected on", stock.lot().expected());
            }
            Material material = item.item().material();
            add(item.name() + ": shelf life months", material == null ? null : material.shelfLifeMonths());
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

    /** Keeps what a person can change in the workbook. */
    private void add(Input input) {
        if (input.now().isLive()) {
            inputs.add(input);
        }
    }

    private Expr write(SheetBuilder sheet, int row) {
        sheet.text(row, 0, "What the plan rests on besides prices, packs and quantities", Look.SECTION);
        String[] heads = {"Input", "Now", "When it was planned", "Changed"};
        for (int column = 0; column < heads.length; column++) {
            sheet.text(row + 1, column, heads[column], Look.HEADER);
        }
        int first = row + 2;
        int next = first;
        for (Input input : inputs) {
            sheet.text(next, 0, input.name(), Look.LABEL, input.origin());
            Expr now = sheet.value(next, NOW, input.now(), input.format(), Look.PLAIN);
            Expr then = sheet.value(next, PLANNED, input.then(), input.format(), Look.PLAIN);
            sheet.checked(next, CHANGED, Expr.differs(now, then), BigDecimal.ZERO, NumberFormat.WHOLE, Look.PLAIN);
            next++;
        }
        sheet.highlight(first, CHANGED, next - 1, CHANGED, ResultSheet.Condition.ABOVE_ZERO, Look.WARNING);
        sheet.text(
                next,
                0,
                "Not seen here: rows that were added, blanks that were filled, days typed as words, when a price was quoted and how"
                        + " long it holds. Run perkilo order again after such a change.",
                Look.HINT);
        return sheet.sumOfColumn(CHANGED, first, next - 1);
    }
}
