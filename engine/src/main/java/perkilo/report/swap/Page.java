package perkilo.report.swap;

import perkilo.sheet.Look;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Placed;
import perkilo.swaps.Cautions;

/** A sheet about swaps while it is written: a title, hints, the cautions, and tables one below the other. */
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
        line(title, Look.TITLE);
        paragraph(width, hint, Look.HINT);
    }

    /** The cautions for every swap. */
    void cautions() {
        for (String caution : Cautions.ALWAYS) {
            line(caution, Look.HINT);
        }
        next++;
    }

    void section(String title) {
        line(title, Look.SECTION);
    }

    void line(String text, Look look) {
        sheet.text(next++, SheetBuilder.FIRST_COLUMN, text, look);
    }

    /** A text that may be too long for one row of a printed page, in as many rows as it needs. */
    void paragraph(int width, String text, Look look) {
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                line(line.toString(), look);
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        line(line.toString(), look);
    }

    /** Writes a table that is placed in the next row, and continues below. */
    <R> Placed<R> table(Placed<R> placed) {
        placed.write();
        next = placed.next();
        return placed;
    }
}
