package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.function.Function;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.blend.Blend;

/** The table of the materials of a blend: their levels now and then, and what they cost at straight-line prices. */
final class PartTable {

    private final Blend blend;
    private final Table<Blend.Part> table;

    /**
     * The table of a blend.
     *
     * @param currency the home currency
     */
    PartTable(Blend blend, String currency) {
        this.blend = blend;
        NumberFormat money = NumberFormat.money(currency, 4);
        Column<Blend.Part> now =
                level("percent", "Level now", Blend.Part::before).width(14);
        Column<Blend.Part> then = level("newPercent", "Level then", Blend.Part::after)
                .look(Look.CHOICE)
                .width(16);
        Column<Blend.Part> price = Column.<Blend.Part>of("straightLinePerKg", "Straight-line price per kg")
                .value(Blend.Part::perKg)
                .format(money)
                .width(16)
                .json();
        table = Table.of(
                TraitColumn.name(Blend.Part::material)
                        .totalWords("Together, for one kilogram of bulk")
                        .width(34)
                        .json(),
                now,
                then,
                price,
                ShownTrait.of(blend).column(Blend.Part::material).width(16),
                Column.<Blend.Part>of("costNow", "Cost now")
                        .formula(row -> row.ref(now).times(row.ref(price)))
                        .format(money)
                        .sum(blend.straightLineBefore())
                        .width(16),
                Column.<Blend.Part>of("costThen", "Cost then")
                        .formula(row -> row.ref(then).times(row.ref(price)))
                        .format(money)
                        .sum(blend.straightLineAfter())
                        .width(16));
    }

    private static Column<Blend.Part> level(String key, String heading, Function<Blend.Part, BigDecimal> level) {
        return Column.<Blend.Part>of(key, heading)
                .value(level)
                .format(NumberFormat.PERCENT)
                .sum()
                .json(part -> level.apply(part).movePointRight(2));
    }

    /** The table on a sheet. */
    Placed<Blend.Part> at(SheetBuilder sheet, int headRow) {
        return table.at(sheet, headRow, blend.parts());
    }

    /** The table for JSON. */
    Table.Filled<Blend.Part> inJson() {
        return table.with(blend.parts());
    }
}
