package perkilo.report.swap;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;

/** The table of blends: all materials of one function at once, with what that saves and the new ingredient list. */
public final class BlendTable {

    private final Table<Numbered<Blend>> table;
    private final List<Numbered<Blend>> rows;

    /** The blends of an answer. */
    public BlendTable(SwapOutcome.Found found) {
        rows = Numbered.all(found.blends());
        String currency = found.book().settings().home().getCurrencyCode();
        ChangeColumns<Numbered<Blend>> changes = new ChangeColumns<>(
                row -> row.entry().runs(), row -> row.entry().atBestRun(), currency);
        table = Table.of(
                Column.<Numbered<Blend>>of("number", "Blend no.")
                        .value(Numbered::figure)
                        .format(NumberFormat.WHOLE)
                        .width(10)
                        .json(Numbered::number)
                        .terminal("No.", row -> "blend " + row.number()),
                Column.<Numbered<Blend>>of("formula", "Formula")
                        .words(row -> row.entry().formula().name())
                        .width(44)
                        .json()
                        .terminal(row -> row.entry().formula().name()),
                inJson("phase", row -> row.entry().phase()),
                Column.<Numbered<Blend>>of("function", "Blend of")
                        .words(row -> row.entry().function())
                        .width(34)
                        .json()
                        .terminal(row -> row.entry().function()),
                inJson("pricedAt", row -> row.entry().pricedAt()),
                inJson("straightLinePerKgBefore", row -> row.entry().straightLineBefore()),
                inJson("straightLinePerKgAfter", row -> row.entry().straightLineAfter()),
                inJson("parts", row -> new PartTable(row.entry(), currency).inJson()),
                inJson("provenAtStraightLinePrices", row -> row.entry().proven()),
                changes.perKg,
                changes.perKgs,
                changes.unitCosts,
                changes.outlays,
                changes.proven,
                ChangeColumns.label(row -> row.entry().label()),
                inJson("cautions", row -> row.entry().cautions()),
                changes.run,
                changes.perUnit,
                changes.outlay,
                Column.<Numbered<Blend>>of("", "").width(12),
                Column.<Numbered<Blend>>of("ingredients", "New ingredient list")
                        .words(row -> row.entry().label().after().text())
                        .width(100));
    }

    private static Column<Numbered<Blend>> inJson(String key, Function<Numbered<Blend>, @Nullable Object> answer) {
        return Column.<Numbered<Blend>>of(key, "").notOnSheet().json(answer);
    }

    /** The table on a sheet. */
    Placed<Numbered<Blend>> at(SheetBuilder sheet, int headRow) {
        return table.at(sheet, headRow, rows);
    }

    /** The table for JSON and the terminal. */
    public Table.Filled<?> filled() {
        return table.with(rows);
    }
}
