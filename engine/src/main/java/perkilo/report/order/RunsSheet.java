package perkilo.report.order;

import java.util.IdentityHashMap;
import java.util.Objects;
import perkilo.costing.Item;
import perkilo.model.Material;
import perkilo.orderplan.Horizon;
import perkilo.orderplan.OrderOutcome;
import perkilo.orderplan.PlannedRun;
import perkilo.report.part.Lines;
import perkilo.report.part.MakingPart;
import perkilo.report.part.NeedFormulas;
import perkilo.report.part.RunTitle;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/**
 * Runs planned: what each row of the demand makes and needs.
 *
 * @param sheet the sheet
 * @param needs the cell of each need, by the very item of the run that needs it
 */
record RunsSheet(ResultSheet sheet, IdentityHashMap<Item, Expr> needs) {

    static RunsSheet of(OrderOutcome.Planned planned) {
        return new Writer(planned).write();
    }

    private static final class Writer {
        private static final String NAME = "Runs planned";

        private final OrderOutcome.Planned planned;
        private final SheetBuilder sheet = new SheetBuilder(NAME).widths(40, 16, 14, 14, 44);
        private final Lines rows = new Lines(sheet, 3);
        private final IdentityHashMap<Item, Expr> needs = new IdentityHashMap<>();

        Writer(OrderOutcome.Planned planned) {
            this.planned = planned;
        }

        RunsSheet write() {
            sheet.text(0, 0, NAME, Look.TITLE);
            sheet.text(
                    1,
                    0,
                    "Each row of the demand is a run in its month. What it needs is taken from stock, or ordered.",
                    Look.HINT);
            sheet.freeze(2, 1);
            for (PlannedRun run : planned.plan().basis().runs()) {
                write(run);
                rows.skip(2);
            }
            return new RunsSheet(sheet.build(), needs);
        }

        private void write(PlannedRun run) {
            Horizon horizon = planned.plan().basis().horizon();
            int title = rows.next();
            rows.skip(1);
            MakingPart making = MakingPart.write(rows, run.needs());
            sheet.sentence(
                    title,
                    0,
                    Look.ANSWER,
                    run.demand().origin(),
                    RunTitle.of(run.needs(), making, " in " + horizon.name(run.period())));
            rows.skip(1);
            rows.section("Needed");
            rows.heads("Item", "Share of the bulk", "Needed", "Unit");
            for (Item item : run.needs().items()) {
                write(run, making, item, rows.next());
                rows.skip(1);
            }
        }

        private void write(PlannedRun run, MakingPart making, Item item, int row) {
            sheet.text(row, 0, item.name(), Look.LABEL, item.origin());
            sheet.text(row, 3, item.unit(), Look.PLAIN);
            Material material = item.material();
            Expr needed = material == null
                    ? NeedFormulas.pieces(item, Objects.requireNonNull(making.units()))
                    : NeedFormulas.kilograms(material, making.charged(), share(run, item, row));
            NumberFormat format = material == null ? NumberFormat.WHOLE : NumberFormat.QUANTITY;
            needs.put(item, sheet.checked(row, 2, needed, item.needed(), format, Look.PLAIN));
            if (planned.market().housePrice(item).isPresent()) {
                sheet.text(row, 4, "never ordered", Look.HINT);
            }
        }

        private Expr share(PlannedRun run, Item item, int row) {
            return sheet.checked(
                    row,
                    1,
                    NeedFormulas.share(run.needs().formula(), item),
                    item.share(),
                    NumberFormat.PERCENT,
                    Look.PLAIN);
        }
    }
}
