package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;
import perkilo.swaps.facts.Polarity;
import perkilo.swaps.trial.Portion;

/** The table of emollients at one run size: their traits, and what they cost. */
final class EmollientTable {

    /**
     * An emollient.
     *
     * @param material what it is
     * @param portion its line in the formula; null if the formula does not have it
     * @param perKg landed, in home currency; null if it is not bought
     */
    record Entry(
            Material material,
            @Nullable Portion portion,
            @Nullable BigDecimal perKg) {}

    private final Table<Entry> table;

    EmollientTable(RunCost run) {
        NumberFormat money = NumberFormat.money(run.home().getCurrencyCode(), 4);
        Column<Entry> level = Column.<Entry>of("level", "Level")
                .formula(row -> level(row.entry()))
                .format(NumberFormat.PERCENT)
                .width(14);
        Column<Entry> perKg = Column.<Entry>of("perKg", "Landed per kg")
                .value(Entry::perKg)
                .format(money)
                .width(16);
        Column<Entry> inBulk = Column.<Entry>of("inBulk", "Cost in 1 kg of bulk")
                .formula(
                        row -> row.has(level) && row.has(perKg) ? row.ref(level).times(row.ref(perKg)) : null)
                .format(money)
                .width(16);
        table = Table.of(
                TraitColumn.name(Entry::material).width(36),
                TraitColumn.spreadingClass(Entry::material).width(16),
                trait("Spreading value, mm²/10 min", NumberFormat.WHOLE, Traits::spreadingValue)
                        .width(17),
                trait("Viscosity, mPa·s", NumberFormat.WHOLE, Traits::viscosity).width(16),
                Column.<Entry>of("polarity", "Polarity")
                        .words(row -> Polarity.of(row.material().inci())
                                .map(Polarity::words)
                                .orElse(TraitColumn.UNKNOWN))
                        .width(28),
                trait("Use from", NumberFormat.PERCENT, Traits::useMin).width(11),
                trait("Use to", NumberFormat.PERCENT, Traits::useMax).width(11),
                level,
                perKg,
                inBulk,
                Column.<Entry>of("share", "Share of raw materials")
                        .formula(row -> share(row, inBulk, run.rawMaterialPerKg()))
                        .format(NumberFormat.PERCENT)
                        .look(Look.KEY)
                        .width(16));
    }

    private static Column<Entry> trait(String heading, NumberFormat format, Function<Traits, @Nullable Figure> trait) {
        return TraitColumn.figure(heading, format, Entry::material, trait);
    }

    private static @Nullable Expr level(Entry entry) {
        Portion portion = entry.portion();
        if (portion == null) {
            return null;
        }
        Figure typed = portion.line().level();
        return typed == null ? Expr.of(portion.level()) : Expr.input(typed);
    }

    private static @Nullable Expr share(Row<Entry> row, Column<Entry> inBulk, BigDecimal rawMaterialPerKg) {
        return row.has(inBulk) && rawMaterialPerKg.signum() > 0
                ? row.ref(inBulk).over(Expr.of(rawMaterialPerKg))
                : null;
    }

    /** The table on a sheet. */
    Placed<Entry> at(SheetBuilder sheet, int headRow, List<Entry> rows) {
        return table.at(sheet, headRow, rows);
    }
}
