package perkilo.report.order;

import java.time.LocalDate;
import java.util.IdentityHashMap;
import java.util.Objects;
import perkilo.costing.Item;
import perkilo.model.Material;
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
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/**
 * The sheet Runs planned: what each row of the demand makes and needs.
 *
 * @param sheet the sheet
 * @param needs the cell of each need, by the identity of the item in the run
 */
record PlannedRunsSheet(ResultSheet sheet, IdentityHashMap<Item, Expr> needs) {

    static PlannedRunsSheet of(OrderOutcome.Planned planned) {
        return new Writer(planned).write();
    }

    private static final class Writer {
        private static final String NAME = "Runs planned";

        private final OrderOutcome.Planned planned;
        private final SheetBuilder sheet = new SheetBuilder(NAME);
        private final Lines lines = new Lines(sheet, 3);
        private final IdentityHashMap<Item, Expr> needs = new IdentityHashMap<>();

        Writer(OrderOutcome.Planned planned) {
            this.planned = planned;
        }

        PlannedRunsSheet write() {
            sheet.title(0, NAME);
            sheet.hint(
                    1,
                    "Each row of the demand is a run. What it needs comes from stock or is ordered, for the day on which"
                            + " making begins.");
            sheet.freeze(2, 1);
            for (PlannedRun run : planned.plan().basis().runs()) {
                write(run);
                lines.skip(2);
            }
            return new PlannedRunsSheet(sheet.build(), needs);
        }

        private void write(PlannedRun run) {
            int title = lines.next();
            lines.skip(1);
            MakingPart making = MakingPart.write(lines, run.needs());
            sheet.answer(title, run.demand().origin(), RunTitle.of(run.needs(), making, when(run)));
            lines.skip(1);
            lines.section("Needed");
            writeNeeds(run, making);
        }

        private static String when(PlannedRun run) {
            LocalDate units = run.demand().neededBy().date();
            return units.equals(run.goodsNeeded())
                    ? " for " + units
                    : " for " + units + ", goods needed by " + run.goodsNeeded();
        }

        private void writeNeeds(PlannedRun run, MakingPart making) {
            Column<Item> share = Column.<Item>of("share", "Share of the bulk")
                    .value(item -> item.isMaterial() ? item.share() : null)
                    .formula(row -> row.entry().isMaterial()
                            ? NeedFormulas.share(run.needs().formula(), row.entry())
                            : null)
                    .format(NumberFormat.PERCENT)
                    .width(16);
            Column<Item> needed = Column.<Item>of("needed", "Needed")
                    .value(Item::needed)
                    .formula(row -> {
                        Material material = row.entry().material();
                        return material == null
                                ? NeedFormulas.pieces(row.entry(), Objects.requireNonNull(making.units()))
                                : NeedFormulas.kilograms(material, making.charged(), row.ref(share));
                    })
                    .format(item -> item.isMaterial() ? NumberFormat.QUANTITY : NumberFormat.WHOLE)
                    .width(14);
            Table<Item> table = Table.of(
                    Column.<Item>of("item", "Item")
                            .words(Item::name)
                            .look(Look.LABEL)
                            .link(Item::origin)
                            .width(40),
                    share,
                    needed,
                    Column.<Item>of("unit", "Unit").words(Item::unit).width(14),
                    Column.<Item>of("remark", "")
                            .withoutHeading()
                            .words(item -> isOrdered(item) ? null : "never ordered")
                            .look(Look.HINT)
                            .width(44));
            Placed<Item> placed = lines.write(lines.place(table, run.needs().items()));
            for (Item item : placed.rows()) {
                needs.put(item, placed.ref(item, needed));
            }
        }

        private boolean isOrdered(Item item) {
            return planned.market().housePrice(item).isEmpty();
        }
    }
}
