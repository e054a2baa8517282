package perkilo.report.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Listing;
import perkilo.costing.Market;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.orderplan.HorizonProblem;
import perkilo.orderplan.SupplierOrder;
import perkilo.origin.Origin;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.OrderCost;
import perkilo.report.part.LandedLine;
import perkilo.report.part.Landing;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** One order on the sheet of supplier orders: its lines, what is charged on top, and what it costs once it is here. */
final class OrderBlock {

    private static final int PACK = 1;
    private static final int PACKS = 2;
    private static final int GOODS = 5;
    private static final int INSURANCE = 6;
    private static final int FREIGHT = 7;
    private static final int DUTY = 8;
    private static final int LANDED = 11;
    private static final int DATES = 12;

    private final SheetBuilder sheet;
    private final SupplierOrder order;
    private final OrderCost cost;
    private final Landing landing;
    private final QuoteDates dates;
    private final NumberFormat money;
    private final NumberFormat inHome;
    private final String currency;
    private final String home;
    private final int first;
    private int next;

    OrderBlock(SheetBuilder sheet, Market market, SupplierOrder order, QuoteDates dates, int row) {
        this.sheet = sheet;
        this.order = order;
        this.cost = order.cost();
        this.landing = new Landing(market, order.supplier());
        this.currency = order.supplier().currency().getCurrencyCode();
        this.home = market.book().settings().home().getCurrencyCode();
        this.money = NumberFormat.money(currency, 2);
        this.inHome = NumberFormat.money(home, 2);
        this.dates = dates.seenOn(SheetNames.absolute(row + 1, DATES + 1));
        this.first = row;
        this.next = row;
    }

    /** The row after the block, from zero. */
    int next() {
        return next;
    }

    /** Writes the block, and puts the cells of its lines into {@code cells}. */
    SupplierOrdersSheet.OrderCells write(IdentityHashMap<LineCost, SupplierOrdersSheet.LineCells> cells) {
        heads();
        int firstLine = next;
        List<LandedLine> lines = new ArrayList<>();
        for (int index = 0; index < cost.lines().size(); index++) {
            lines.add(goods(cost.lines().get(index), order.listings().get(index), next++));
        }
        int lastLine = next - 1;
        dates.mark(firstLine, lastLine, DATES);
        Expr goods =
                figure("Goods", Expr.sum(lines.stream().map(LandedLine::goods).toList()), cost.goods(), Origin.NONE);
        Expr charges = charges(goods, firstLine, lastLine);
        for (LandedLine line : lines) {
            cells.put(line.cost(), landed(line, Landing.share(charges, line.goods(), goods, lines.size())));
        }
        Expr landed = sheet.sumOfColumn(LANDED, firstLine, lastLine);
        sheet.text(next, 0, "Landed, " + home, Look.TOTAL);
        Expr total = sheet.checked(next++, GOODS, landed, cost.landed(), inHome, Look.KEY);
        return new SupplierOrdersSheet.OrderCells(goods, total, first);
    }

    private void heads() {
        Supplier supplier = order.supplier();
        sheet.text(
                next++,
                0,
                "%s: order by %s, here by %s".formatted(supplier.name(), order.orderBy(), order.neededBy()),
                Look.SECTION,
                supplier.origin());
        sheet.text(next, DATES, "ordered by", Look.HINT);
        sheet.value(next, DATES + 1, Expr.day(order.orderBy()), NumberFormat.DATE, Look.PLAIN);
        DeliveryTerm terms = supplier.terms();
        sheet.text(
                next++,
                0,
                "In %s%s; %s."
                        .formatted(
                                currency,
                                terms == null ? "" : ", delivery term " + terms.name(),
                                supplier.leadTimeDays() == null
                                        ? "lead time not known, taken as delivered on the day it is ordered"
                                        : HorizonProblem.leadDays(supplier) + " days from order to arrival"),
                Look.HINT);
        List<String> heads = new ArrayList<>(List.of("Item", "Pack"));
        heads.addAll(LandedLine.heads(home));
        heads.addAll(QuoteDates.HEADS);
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(next, column, heads.get(column), Look.HEADER);
        }
        next++;
    }

    private LandedLine goods(LineCost line, Listing listing, int row) {
        Offer offer = listing.offer();
        sheet.text(row, 0, offer.item(), Look.LABEL);
        sheet.text(row, PACK, offer.pack(), Look.PLAIN, offer.origin());
        dates.write(row, DATES, offer);
        return LandedLine.write(sheet, row, PACKS, landing, line, listing, home);
    }

    /** Writes what comes on top of the goods, and returns what of it is charged for the order as a whole. */
    private Expr charges(Expr goods, int firstLine, int lastLine) {
        Market.Charges rates = landing.charges();
        Expr small = smallOrder(goods);
        Expr insurance = figure(
                "Insurance",
                sheet.sumOfColumn(INSURANCE, firstLine, lastLine),
                cost.insurance(),
                rates.insurance().origin());
        Expr perOrder = figure(
                "Freight for the order",
                landing.freightPerOrder(),
                null,
                rates.freightPerOrder().origin());
        Expr byWeight = sheet.sumOfColumn(FREIGHT, firstLine, lastLine);
        Expr freight = figure("Freight in all", perOrder.plus(byWeight), cost.freight(), Origin.NONE);
        figure(
                "Goods and charges, " + currency,
                goods.plus(small).plus(insurance).plus(freight),
                cost.goods().add(cost.charges()),
                Origin.NONE);
        Expr onCharges = figure(
                "Duty on charges",
                landing.dutyOnCharges(perOrder, small),
                null,
                rates.duty().origin());
        figure("Duty in all", sheet.sumOfColumn(DUTY, firstLine, lastLine).plus(onCharges), cost.duty(), Origin.NONE);
        sheet.text(next, 0, "Rate to " + home, Look.LABEL);
        Expr rate = sheet.value(next++, GOODS, landing.rate(), NumberFormat.FACTOR, Look.PLAIN, landing.rateOrigin());
        return landing.orderCharges(perOrder, small, onCharges, rate);
    }

    private Expr smallOrder(Expr goods) {
        if (order.supplier().minimumOrderValue() == null) {
            return Expr.of(0);
        }
        Origin origin =
                Objects.requireNonNull(order.supplier().minimumOrderValue()).origin();
        Expr minimum = figure("Minimum order value", landing.minimumOrderValue(), null, origin);
        return figure(
                "Small-order charge",
                landing.smallOrderCharge(goods, minimum),
                cost.smallOrderCharge(),
                order.supplier().origin());
    }

    private Expr figure(String name, Expr expr, @Nullable BigDecimal engine, Origin link) {
        sheet.text(next, 0, name, Look.LABEL, link);
        int row = next++;
        return engine == null
                ? sheet.value(row, GOODS, expr, money, Look.PLAIN)
                : sheet.checked(row, GOODS, expr, engine, money, Look.PLAIN);
    }

    private SupplierOrdersSheet.LineCells landed(LandedLine line, Expr share) {
        return new SupplierOrdersSheet.LineCells(line.packs(), line.quantity(), line.writeShare(sheet, share, home));
    }
}
