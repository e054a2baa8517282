package perkilo.report.order;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Market;
import perkilo.offers.Offer;
import perkilo.orderplan.HorizonItem;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.SupplierOrder;
import perkilo.report.part.LandedColumns;
import perkilo.report.part.Landing;
import perkilo.report.part.PurchaseLine;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The columns of an order's lines, on the sheet and in JSON. */
final class OrderLines {

    private static final Landing.OrderCells NO_ORDER =
            new Landing.OrderCells(Expr.of(0), Expr.of(0), Expr.of(0), Expr.of(0), Expr.of(1), 1);

    final Column<PurchaseLine> item = Column.<PurchaseLine>of("item", "Item")
            .words(line -> offer(line).item())
            .look(Look.LABEL)
            .width(34);
    final Column<PurchaseLine> pack = Column.<PurchaseLine>of("pack", "Pack")
            .words(line -> offer(line).pack())
            .link(line -> offer(line).origin())
            .width(14);
    final LandedColumns landed;
    final Column<PurchaseLine> quotedOn;
    final Column<PurchaseLine> validUntil;

    /**
     * The columns.
     *
     * @param home code of the home currency
     * @param dates what the dates of quotes are compared with
     * @param orderOf the order of a line
     */
    OrderLines(String home, QuoteDates dates, Function<PurchaseLine, Landing.OrderCells> orderOf) {
        landed = new LandedColumns(home, orderOf);
        quotedOn = dates.<PurchaseLine>quotedOn(
                        "quotedOn", "Quoted on", line -> offer(line).quotedOn())
                .width(12);
        validUntil = dates.<PurchaseLine>validUntil(
                        "validUntil", "Valid until", line -> offer(line).validUntil())
                .width(12);
        landed.packs.width(9);
        landed.quantity.width(14);
        landed.price.width(15);
        landed.invoiced.width(16);
        landed.insurance.width(14);
        landed.freight.width(15);
        landed.duty.width(14);
        landed.alone.width(15);
        landed.dutyOnShare.width(16);
        landed.share.width(16);
        landed.landed.width(16);
    }

    /** The lines of an order. */
    static List<PurchaseLine> of(Market market, SupplierOrder order) {
        Landing landing = new Landing(market, order.supplier());
        List<PurchaseLine> lines = new ArrayList<>();
        for (int index = 0; index < order.listings().size(); index++) {
            lines.add(new PurchaseLine(
                    order.cost().lines().get(index), order.listings().get(index), landing));
        }
        return lines;
    }

    /** The table on the sheet. */
    Table<PurchaseLine> onSheet() {
        List<Column<PurchaseLine>> columns = new ArrayList<>(List.of(item, pack));
        columns.addAll(landed.all());
        columns.addAll(List.of(quotedOn, validUntil));
        return new Table<>(columns);
    }

    /** Sets the widths of a sheet's columns if there is no order. */
    static void setWidths(SheetBuilder sheet, QuoteDates dates) {
        new OrderLines("", dates, line -> NO_ORDER)
                .onSheet()
                .at(sheet, 0, List.of())
                .widen();
    }

    /** The table in JSON. */
    static Table<PurchaseLine> inJson(OrderPlan plan, String home) {
        LandedColumns landed = new LandedColumns(home, line -> NO_ORDER);
        return Table.of(
                only("item", line -> itemOf(plan, line).name()),
                only("packSize", line -> offer(line).packSize().value()),
                only("packUnit", line -> offer(line).packUnit().symbol()),
                landed.packs,
                landed.quantity,
                only("unit", line -> itemOf(plan, line).item().unit()),
                only("price", line -> price(line).price().value()),
                only("pricePer", OrderLines::pricePer),
                only("currency", line -> offer(line).currency().getCurrencyCode()),
                Column.<PurchaseLine>of("quotedOn", "")
                        .json(line -> offer(line).quotedOn())
                        .notOnSheet(),
                landed.invoiced,
                landed.landed);
    }

    private static Column<PurchaseLine> only(String key, Function<PurchaseLine, @Nullable Object> answer) {
        return Column.<PurchaseLine>of(key, "").json(answer).notOnSheet();
    }

    private static HorizonItem itemOf(OrderPlan plan, PurchaseLine line) {
        int item =
                plan.basis().problem().quotes().get(line.cost().line().quote()).item();
        return plan.basis().items().get(item);
    }

    private static Offer offer(PurchaseLine line) {
        return line.listing().offer();
    }

    private static Offer.PriceBreak price(PurchaseLine line) {
        return offer(line).breaks().get(line.cost().tier());
    }

    private static String pricePer(PurchaseLine line) {
        Offer.PriceBreak price = price(line);
        return price.per() == null ? "pack" : price.per().symbol();
    }
}
