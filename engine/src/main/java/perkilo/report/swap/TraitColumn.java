package perkilo.report.swap;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;

/** Columns of traits of materials, as typed on the materials sheet, or as unknown. */
final class TraitColumn {

    /** The text for a trait that is not known. */
    static final String UNKNOWN = "unknown";

    private TraitColumn() {}

    /** The name of a material; a click leads to its row on the materials sheet. */
    static <R> Column<R> name(Function<R, Material> material) {
        return Column.<R>of("material", "Material")
                .words(row -> material.apply(row).name())
                .link(row -> material.apply(row).origin())
                .look(Look.LABEL);
    }

    /** A figure, live and with a link to its cell. */
    static <R> Column<R> figure(
            String heading,
            NumberFormat format,
            Function<R, Material> material,
            Function<Traits, @Nullable Figure> trait) {
        return figure("trait", heading, format, material, trait);
    }

    /**
     * A figure, live and with a link to its cell.
     *
     * @param key of the column
     */
    static <R> Column<R> figure(
            String key,
            String heading,
            NumberFormat format,
            Function<R, Material> material,
            Function<Traits, @Nullable Figure> trait) {
        Function<R, @Nullable Figure> typed =
                row -> trait.apply(material.apply(row).traits());
        return Column.<R>of(key, heading)
                .formula(row -> {
                    Figure figure = typed.apply(row.entry());
                    return figure == null ? null : Expr.input(figure);
                })
                .link(row -> {
                    Figure figure = typed.apply(row);
                    return figure == null ? Origin.NONE : figure.origin();
                })
                .words(row -> UNKNOWN)
                .wordsLook(Look.HINT)
                .format(format);
    }

    /** How a material spreads, in a word. */
    static <R> Column<R> spreadingClass(Function<R, Material> material) {
        return Column.<R>of("spreadingClass", "Spreading class")
                .words(row -> {
                    String spreading = material.apply(row).traits().spreadingClass();
                    return spreading.isBlank() ? UNKNOWN : spreading;
                })
                .look(row -> material.apply(row).traits().spreadingClass().isBlank() ? Look.HINT : Look.PLAIN);
    }
}
