package perkilo.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.reading.table.Amount;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;
import perkilo.units.Measure;

/** Quantities whose unit is in a column of its own, beside the number, or in the header. */
final class QuantityCells {

    private QuantityCells() {}

    /** The unit of a quantity: from its own column, else beside the number or in the header; null if reported. */
    static @Nullable Measure unit(TableRow row, InputColumn unitColumn, InputColumn column, @Nullable Amount amount) {
        if (row.isBlank(unitColumn)) {
            return beside(row, unitColumn, column, amount);
        }
        Measure typed = row.measure(unitColumn);
        Measure beside = amount == null ? null : amount.beside().measure();
        if (typed != null && beside != null && typed != beside) {
            row.findings()
                    .error(
                            row.origin(column),
                            QuantityMessages.twoUnits(
                                    column.header(), beside.symbol(), unitColumn.header(), typed.symbol()));
            return null;
        }
        return typed;
    }

    private static @Nullable Measure beside(
            TableRow row, InputColumn unitColumn, InputColumn column, @Nullable Amount amount) {
        Measure said = amount == null ? null : amount.measure().orElse(null);
        if (said == null && amount != null) {
            row.findings()
                    .error(
                            row.table().has(unitColumn) ? row.origin(unitColumn) : row.origin(column),
                            QuantityMessages.noUnit(unitColumn.header()));
        }
        return said;
    }

    /**
     * A quantity in a unit.
     *
     * @param unit the unit of the result, and of a number without a unit; null if it was reported
     * @return null where the cell is blank or was reported
     */
    static @Nullable Figure in(TableRow row, InputColumn column, @Nullable Measure unit) {
        Amount amount = row.amount(column);
        if (amount == null || unit == null) {
            return null;
        }
        Measure said = amount.measure().orElse(unit);
        if (said.kind() != unit.kind()) {
            row.findings()
                    .error(
                            row.origin(column),
                            QuantityMessages.otherUnit(column.header(), said.symbol(), unit.symbol()));
            return null;
        }
        Measure header = amount.header().measure();
        return converted(amount.figure(), said, header == null ? unit : header, unit);
    }

    /**
     * A quantity in the unit that {@link #unit} has found for it. It is a constant if a number typed over its words
     * would be in another unit.
     */
    static Figure in(TableRow row, InputColumn unitColumn, Amount amount, Measure unit) {
        Measure header = amount.header().measure();
        boolean otherUnit = row.isBlank(unitColumn) && header != null && header != unit;
        return otherUnit ? amount.figure().asConstant() : amount.figure();
    }

    /**
     * The same quantity in another unit.
     *
     * @param said its unit
     * @param plain the unit of a number without words
     */
    private static Figure converted(Figure figure, Measure said, Measure plain, Measure to) {
        if (said == to && plain == to) {
            return figure;
        }
        BigDecimal perCell = figure.perCell();
        return new Figure(
                said == to ? figure.value() : figure.value().multiply(factor(said, to)),
                figure.origin(),
                perCell == null || plain.kind() != to.kind() ? null : perCell.multiply(factor(plain, to)),
                figure.held());
    }

    private static BigDecimal factor(Measure from, Measure to) {
        return from.inBase().divide(to.inBase(), MathContext.DECIMAL128);
    }
}
