package perkilo.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.reading.table.Amount;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.reading.table.UnitText;
import perkilo.schema.InputColumn;
import perkilo.schema.ValueKind;
import perkilo.units.Measure;

/**
 * Asks about gallons of which a row does not say whose. Such a gallon is a US gallon only of a supplier who invoices in
 * US dollars; an imperial gallon holds a fifth more.
 */
final class Gallons {

    private Gallons() {}

    /**
     * Where a row says gallon alone: the question, and the place of the first such cell, or of its header.
     *
     * @param origin the place
     * @param question in words
     */
    record Asked(Origin origin, String question) {

        /** Reports the question as an error. */
        void report(TableRow row) {
            row.findings().error(origin, question);
        }
    }

    /**
     * The question about the gallons of a row; null if there are none, or if the row says whose they are.
     *
     * @param unitColumn the unit of the row's main quantity; if it says whose, so does the row
     * @param quantity the main quantity
     * @param others other columns where a unit can be typed
     */
    static @Nullable Asked of(TableRow row, InputColumn unitColumn, InputColumn quantity, InputColumn... others) {
        String unit = row.text(unitColumn);
        boolean clear = !unit.isEmpty() && !Measure.isBareGallon(unit);
        if (clear && Measure.parse(unit).orElse(null) == Measure.US_GAL) {
            return null;
        }
        List<InputColumn> columns = new ArrayList<>(clear ? List.of() : List.of(unitColumn, quantity));
        columns.addAll(List.of(others));
        List<InputColumn> bare = new ArrayList<>();
        for (InputColumn column : columns) {
            if (!words(row, column).isEmpty()) {
                bare.add(column);
            }
        }
        if (bare.isEmpty()) {
            return null;
        }
        InputColumn first = bare.get(0);
        boolean inHeader = isNumber(first) && !beside(row, first).bareGallon() && isInHeader(row, first);
        Amount amount = List.of(unitColumn, quantity).contains(first) ? row.amount(quantity) : null;
        BigDecimal shown = amount == null || inHeader ? null : amount.figure().value();
        List<String> also =
                bare.stream().skip(1).map(InputColumn::bareHeader).distinct().toList();
        return new Asked(
                inHeader ? row.table().header(first) : row.origin(first),
                QuantityMessages.whichGallon(first.bareHeader(), words(row, first), shown, also));
    }

    /** The words of a bare gallon in a column; empty if there are none. */
    private static String words(TableRow row, InputColumn column) {
        if (!isNumber(column)) {
            String text = row.text(column);
            boolean bare = Measure.isBareGallon(text) || unit(text).bareGallon();
            return bare ? text : "";
        }
        Amount amount = row.amount(column);
        if (amount == null || !amount.isBareGallon()) {
            return "";
        }
        return amount.beside().bareGallon()
                ? amount.beside().words()
                : amount.header().words();
    }

    private static UnitText beside(TableRow row, InputColumn column) {
        Amount amount = row.amount(column);
        return amount == null ? UnitText.NONE : amount.beside();
    }

    /** Whether the header says it, and not the number format of the cell. */
    private static boolean isInHeader(TableRow row, InputColumn column) {
        FoundTable.Place place = row.table().columns().get(column);
        return place != null && unit(place.unit()).bareGallon();
    }

    private static UnitText unit(String text) {
        return UnitText.parse(text).or(() -> UnitText.parse("per " + text)).orElse(UnitText.NONE);
    }

    private static boolean isNumber(InputColumn column) {
        return column.kind() == ValueKind.QUANTITY || column.kind() == ValueKind.MONEY;
    }
}
