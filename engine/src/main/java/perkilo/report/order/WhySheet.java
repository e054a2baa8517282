package perkilo.report.order;

import java.util.List;
import java.util.stream.Collectors;
import perkilo.orderplan.Difference;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Reasons;
import perkilo.orderplan.SupplierOrder;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Why these orders: what else could have been done, and what that would cost. Values, as no formula can plan. */
final class WhySheet {

    private static final String NAME = "Why these orders";

    private final OrderPlan plan;
    private final Reasons reasons;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private final String home;
    private final NumberFormat money;
    private int next = 3;

    private WhySheet(OrderOutcome.Planned planned, Reasons reasons) {
        this.plan = planned.plan();
        this.reasons = reasons;
        this.home = planned.book().settings().home().getCurrencyCode();
        this.money = NumberFormat.money(home, 2);
    }

    static ResultSheet of(OrderOutcome.Planned planned, Reasons reasons) {
        return new WhySheet(planned, reasons).write();
    }

    private ResultSheet write() {
        sheet.widths(44, 50, 40, 16, 16, 44).freeze(2, 1).landscape();
        sheet.text(0, 0, NAME, Look.TITLE);
        sheet.text(
                1,
                0,
                "Values of the day they were computed, not formulas: they compare with plans that were not chosen. Above zero: it"
                        + " would cost more.",
                Look.HINT);
        items();
        suppliers();
        minimums();
        shifts();
        morePacks();
        if (reasons.leftOut() > 0) {
            String rest =
                    "%d more questions, about things that cost less, were not asked.".formatted(reasons.leftOut());
            sheet.text(next, 0, rest, Look.HINT);
        }
        return sheet.build();
    }

    private void items() {
        section("The next best offer: a new plan without an offer that was chosen");
        heads("Item", "Chosen", "Instead", "Costs more", "More cash", "");
        for (Reasons.NextBest best : reasons.items()) {
            row(
                    plan.basis().items().get(best.item()).name(),
                    best.chosen().words(),
                    words(best.instead()),
                    best.difference());
        }
        end(reasons.items());
    }

    private void suppliers() {
        section("What each supplier is worth: a new plan without it");
        heads("Supplier", "Orders", "Its orders, landed, " + home, "Costs more", "More cash", "");
        for (Reasons.Without without : reasons.suppliers()) {
            sheet.value(next, 1, Expr.of(without.orders()), NumberFormat.WHOLE, Look.PLAIN);
            sheet.value(next, 2, Expr.of(without.landed()), money, Look.PLAIN);
            sheet.text(
                    next,
                    0,
                    without.supplier().name(),
                    Look.LABEL,
                    without.supplier().origin());
            difference(without.difference());
        }
        end(reasons.suppliers());
    }

    private void minimums() {
        section("Which minimum hurts most: a new plan without it");
        heads("Supplier", "What", "Offer", "Costs you", "Cash tied up", "");
        for (Reasons.Minimum minimum : reasons.minimums()) {
            var listing = minimum.listing();
            sheet.text(
                    next,
                    0,
                    minimum.supplier().name(),
                    Look.LABEL,
                    minimum.supplier().origin());
            sheet.text(next, 1, "%s: %s".formatted(minimum.kind().words(), minimum.stated()), Look.PLAIN);
            if (listing != null) {
                String offer = "%s, %s"
                        .formatted(listing.offer().item(), listing.offer().pack());
                sheet.text(next, 2, offer, Look.PLAIN, listing.offer().origin());
            }
            sheet.value(next, 3, Expr.of(minimum.saves()), money, Look.KEY);
            sheet.value(next, 4, Expr.of(minimum.cash()), money, Look.PLAIN);
            sheet.text(next, 5, unproven(minimum.proven()), Look.HINT);
            next++;
        }
        end(reasons.minimums());
    }

    private void shifts() {
        section("An order a month earlier or later: the same plan with that order moved");
        heads("Order", "Moved", "", "Costs more", "More cash", "");
        for (Reasons.Shift shift : reasons.shifts()) {
            SupplierOrder order = plan.orders().get(shift.order());
            String moved = (shift.months() < 0 ? "a month earlier" : "a month later")
                    + (shift.joins() ? ", joined with the order that is there" : "");
            row(title(order), moved, "", shift.difference());
        }
        end(reasons.shifts());
    }

    private void morePacks() {
        section("More of a line: the same plan with more packs");
        heads("Order", "Line", "Would be", "Costs more", "More cash", "");
        for (Reasons.MorePacks more : reasons.lines()) {
            SupplierOrder order = plan.orders().get(more.order());
            String pack = more.listing().offer().pack();
            row(
                    title(order),
                    "%s: %d × %s"
                            .formatted(
                                    more.listing().offer().item(),
                                    more.line().line().packs(),
                                    pack),
                    "%d × %s%s".formatted(more.packs(), pack, more.toNextBreak() ? ", the next price break" : ""),
                    more.difference());
        }
        end(reasons.lines());
    }

    private static String title(SupplierOrder order) {
        return "%s, here by %s".formatted(order.supplier().name(), order.neededBy());
    }

    private static String words(List<Reasons.Packs> packs) {
        return packs.stream().map(Reasons.Packs::words).collect(Collectors.joining(" + "));
    }

    private void row(String first, String second, String third, Difference difference) {
        sheet.text(next, 0, first, Look.LABEL);
        sheet.text(next, 1, second, Look.PLAIN);
        sheet.text(next, 2, third, Look.PLAIN);
        difference(difference);
    }

    /** Writes what a plan would come to, and ends the row. */
    private void difference(Difference difference) {
        if (difference instanceof Difference.Costs costs) {
            sheet.value(next, 3, Expr.of(costs.cost()), money, Look.KEY);
            sheet.value(next, 4, Expr.of(costs.cash()), money, Look.PLAIN);
            sheet.text(next, 5, unproven(costs.proven()), Look.HINT);
        } else if (difference instanceof Difference.NotPossible not) {
            sheet.text(next, 3, "not possible", Look.PLAIN);
            sheet.text(next, 5, not.why(), Look.HINT);
        } else {
            sheet.text(next, 3, "not known", Look.PLAIN);
            sheet.text(next, 5, "no answer in the time allowed", Look.HINT);
        }
        next++;
    }

    private static String unproven(boolean proven) {
        return proven ? "" : "at most: the other plan is the best found in the time allowed";
    }

    private void section(String title) {
        sheet.text(next++, 0, title, Look.SECTION);
    }

    private void heads(String... heads) {
        for (int column = 0; column < heads.length; column++) {
            sheet.text(next, column, heads[column], Look.HEADER);
        }
        next++;
    }

    private void end(List<?> rows) {
        if (rows.isEmpty()) {
            sheet.text(next++, 0, "Nothing to say.", Look.HINT);
        }
        next++;
    }
}
