package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.Cautions;

/** What the sheets about swaps have in common: a title, hints, the cautions, heads of columns. */
final class Page {

    private final SheetBuilder sheet;
    private int next;

    Page(SheetBuilder sheet) {
        this.sheet = sheet;
    }

    /** The row that will be written next, from zero. */
    int next() {
        return next;
    }

    /** Takes the next row. */
    int take() {
        return next++;
    }

    /** Leaves rows empty. */
    void skip(int rows) {
        next += rows;
    }

    void title(String title, String hint) {
        title(title, Integer.MAX_VALUE, hint);
    }

    /** A title whose hint takes as many rows as it needs. */
    void title(String title, int width, String hint) {
        sheet.text(next++, 0, title, Look.TITLE);
        paragraph(0, width, hint, Look.HINT);
    }

    /** What holds for every swap. */
    void cautions() {
        for (String caution : Cautions.ALWAYS) {
            sheet.text(next++, 0, caution, Look.HINT);
        }
        next++;
    }

    /** A text that is too long for one row of a printed page, in as many rows as it takes. */
    void paragraph(int column, int width, String text, Look look) {
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                sheet.text(next++, column, line.toString(), look);
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        sheet.text(next++, column, line.toString(), look);
    }

    void section(String title) {
        sheet.text(next++, 0, title, Look.SECTION);
    }

    void heads(List<String> heads) {
        for (int column = 0; column < heads.size(); column++) {
            sheet.text(next, column, heads.get(column), Look.HEADER);
        }
        next++;
    }

    /** Writes what a person typed, live; nothing where it is not known. */
    void typed(int row, int column, @Nullable Figure figure, NumberFormat format) {
        if (figure == null) {
            sheet.text(row, column, "unknown", Look.HINT);
        } else {
            sheet.value(row, column, Expr.input(figure), format, Look.PLAIN, figure.origin());
        }
    }

    /** Writes a figure of the engine's. */
    Expr number(int row, int column, BigDecimal value, NumberFormat format) {
        return sheet.value(row, column, Expr.of(value), format, Look.PLAIN);
    }
}
