package perkilo.report.order;

import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.Reasons;
import perkilo.origin.Counted;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Table;

/** The sheet Why these orders: what else could have been done, and what that would cost. */
final class WhySheet {

    private static final String NAME = "Why these orders";

    private final WhyTables why;
    private final SheetBuilder sheet = new SheetBuilder(NAME);
    private int next = 3;

    private WhySheet(WhyTables why) {
        this.why = why;
    }

    static ResultSheet of(OrderOutcome.Planned planned, Reasons reasons) {
        return new WhySheet(new WhyTables(planned, reasons)).write();
    }

    private ResultSheet write() {
        sheet.freeze(2, 1).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "Fixed values of the day of the plan, not formulas, because they compare with plans that were not chosen."
                        + " Above zero means that it would cost more.");
        part("The next best offer: a new plan without an offer that was chosen", why.nextBest());
        part("What each supplier is worth: a new plan without them", why.withoutSupplier());
        part("Which minimum costs most: a new plan without it", why.minimums());
        part("An order for the day with needs before or after: the same plan with that order moved", why.shifts());
        part("More of a line: the same plan with more packs", why.morePacks());
        if (why.notAsked() > 0) {
            sheet.hint(
                    next, "Not computed: " + Counted.of(why.notAsked(), "more alternative") + " with smaller amounts.");
        }
        return sheet.build();
    }

    private <R> void part(String title, Table.Filled<R> part) {
        sheet.section(next, title);
        next = part.table().at(sheet, next + 1, part.rows()).write().next();
        if (part.rows().isEmpty()) {
            sheet.hint(next++, "Nothing found.");
        }
        next++;
    }
}
