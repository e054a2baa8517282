package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.OwnColumn;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.ChangedLine;

/**
 * The sheet of a new formula as a person types it: phase, material, level in per cent or q.s., temperature; beside it
 * how it is made, so that it takes the same work and the same vessel as the original.
 *
 * <p>The columns of the person's own sheet of the formula go along, so that remarks, codes and INCI names are not lost.
 * Each row has the formula's name: the name of the tab may differ, because it is short and lacks some characters.
 */
final class AppliedFormulaSheet {

    /** The heading of what changed in a line. */
    static final String CHANGED = "Changed";

    private static final int LONGEST_TAB = 31;

    private AppliedFormulaSheet() {}

    static ResultSheet of(AppliedSwap applied, List<OwnColumn> own) {
        Formula formula = applied.formula();
        SheetBuilder sheet = new SheetBuilder(tab(formula.name())).freeze(1, 0).landscape();
        Placed<ChangedLine> lines =
                lines(applied, own).at(sheet, 0, applied.lines()).write();
        if (!formula.batching().equals(Batching.ANY)) {
            int afterBlank = lines.nextColumn() + 1;
            batches(formula.name())
                    .at(sheet, 0, afterBlank, List.of(formula.batching()))
                    .write();
        }
        return sheet.build();
    }

    /** The name of the tab; the end of the formula's name says which swap it is, and stays. */
    static String tab(String name) {
        String allowed = name.replaceAll("[\\[\\]:*?/\\\\]", "-").replace('\'', '’');
        int tooLong = allowed.length() - LONGEST_TAB;
        if (tooLong <= 0) {
            return allowed;
        }
        int end = Math.max(allowed.lastIndexOf(" swap "), allowed.lastIndexOf(" blend "));
        return allowed.substring(0, end - tooLong - 1) + "…" + allowed.substring(end);
    }

    private static Table<ChangedLine> lines(AppliedSwap applied, List<OwnColumn> own) {
        List<Column<ChangedLine>> columns = new ArrayList<>(List.of(
                Column.<ChangedLine>of("phase", "Phase")
                        .words(row -> row.line().phase())
                        .width(8),
                Column.<ChangedLine>of("material", "Material")
                        .words(row -> row.line().material())
                        .look(row -> row.isChanged() ? Look.LABEL : Look.PLAIN)
                        .width(38),
                Column.<ChangedLine>of("percent", "% w/w")
                        .value(row -> percent(row.line()))
                        .words(row -> "q.s.")
                        .look(row -> row.isChanged() ? Look.LABEL : Look.PLAIN)
                        .width(12),
                AppliedFormulaSheet.<ChangedLine>figure(
                                "Phase °C", row -> row.line().phaseC())
                        .width(12),
                name(applied.formula().name())));
        if (own.stream().noneMatch(column -> column.kind() == OwnColumn.Kind.INCI)) {
            columns.add(Column.<ChangedLine>of("inci", "INCI name")
                    .words(row -> inci(applied, row))
                    .width(38));
        }
        addWishes(applied, columns);
        own.forEach(column -> columns.add(own(applied, column)));
        columns.add(Column.<ChangedLine>of("changed", CHANGED)
                .words(ChangedLine::change)
                .look(Look.NOTICE)
                .width(44));
        return new Table<>(columns);
    }

    /** A column of the person's; what speaks of a material that went out is left blank. */
    private static Column<ChangedLine> own(AppliedSwap applied, OwnColumn column) {
        return Column.<ChangedLine>of("own", column.heading())
                .value(row -> typed(column, row).number())
                .words(row -> {
                    boolean isNew = row.from() < 0;
                    return isNew && column.kind() == OwnColumn.Kind.INCI
                            ? inci(applied, row)
                            : typed(column, row).text();
                })
                .width(column.kind() == OwnColumn.Kind.INCI ? 38 : 20);
    }

    private static OwnColumn.Typed typed(OwnColumn column, ChangedLine row) {
        int line = row.from() < 0 && column.kind() == OwnColumn.Kind.LINE ? row.replaced() : row.from();
        return line < 0 ? OwnColumn.Typed.NOTHING : column.cells().get(line);
    }

    private static String inci(AppliedSwap applied, ChangedLine row) {
        String key = Names.key(row.line().material());
        return applied.materials().stream()
                .filter(material -> Names.key(material.name()).equals(key))
                .map(Material::inci)
                .findFirst()
                .orElse("");
    }

    /** What is said of the lines for swaps, where anything is. */
    private static void addWishes(AppliedSwap applied, List<Column<ChangedLine>> columns) {
        if (applied.formula().lines().stream()
                .anyMatch(line -> !line.wish().role().isEmpty())) {
            columns.add(Column.<ChangedLine>of("role", "Role")
                    .words(row -> row.line().wish().role())
                    .width(22));
        }
        if (applied.formula().lines().stream().anyMatch(line -> line.wish().keep() != null)) {
            columns.add(Column.<ChangedLine>of("keep", "Keep")
                    .words(row -> keep(row.line().wish().keep()))
                    .width(7));
        }
    }

    private static String keep(@Nullable Boolean wish) {
        return wish == null ? "" : wish ? "yes" : "no";
    }

    private static Table<Batching> batches(String formula) {
        return Table.of(
                name(formula),
                ofBatches("Vessel max kg", Batching::vesselMax),
                ofBatches("Vessel min kg", Batching::vesselMin),
                ofBatches("Hold-up kg", Batching::holdUp),
                ofBatches("Hours per batch", Batching::hoursPerBatch),
                ofBatches("Hours per kg", Batching::hoursPerKg),
                ofBatches("Quality control per batch", Batching::qualityControlPerBatch),
                ofBatches("Final pH", Batching::finalPh),
                Column.<Batching>of("kind", "Kind")
                        .words(made -> made.kind().words())
                        .width(14));
    }

    private static @Nullable BigDecimal percent(Formula.Line line) {
        Figure level = line.level();
        return level == null ? null : level.value().movePointRight(2);
    }

    private static <R> Column<R> name(String formula) {
        return Column.<R>of("formula", "Formula").words(row -> formula).width(34);
    }

    private static Column<Batching> ofBatches(String heading, Function<Batching, @Nullable Figure> figure) {
        return AppliedFormulaSheet.<Batching>figure(heading, figure).width(14);
    }

    private static <R> Column<R> figure(String heading, Function<R, @Nullable Figure> figure) {
        return Column.<R>of(heading, heading).value(row -> {
            Figure typed = figure.apply(row);
            return typed == null ? null : typed.value();
        });
    }
}
