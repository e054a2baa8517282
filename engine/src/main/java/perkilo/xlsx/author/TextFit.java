package perkilo.xlsx.author;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;

/** Finds words that need several lines in their column, and the height of their rows. */
final class TextFit {

    /** The height of a row with one line. */
    static final float USUAL_POINTS = 17;

    /** The width of a column without a width of its own, in characters. */
    static final int USUAL_WIDTH = 8;

    private static final float LINE_POINTS = 15;
    private static final float LINE_PADDING_POINTS = 2;
    private static final float HEADER_PADDING_POINTS = 7;
    private static final float TITLE_POINTS = 30;
    private static final float SECTION_POINTS = 24;
    private static final float ANSWER_POINTS = 21;

    /** How much wider bold words are than a column's count of characters. */
    static final double BOLD_WIDTH = 1.1;

    private final ResultSheet sheet;

    TextFit(ResultSheet sheet) {
        this.sheet = sheet;
    }

    /**
     * Whether a cell's words are broken into lines: true for heads of columns, and for words that the next cell would
     * cut off.
     */
    boolean isWrapped(int row, int column) {
        Cell cell = cell(row, column);
        return cell != null
                && switch (cell.look()) {
                    case HEADER -> words(cell) != null;
                    case TITLE, ANSWER, SECTION, HINT, LETTER -> false;
                    default -> needsLines(row, column, words(cell));
                };
    }

    private boolean needsLines(int row, int column, @Nullable String words) {
        return words != null && (words.contains("\n") || (lines(words, column, 1) > 1 && !standsAlone(row, column)));
    }

    /** Whether the row has no other filled cell, so that the words may run on over the next columns. */
    private boolean standsAlone(int row, int column) {
        return row(row).entrySet().stream()
                .allMatch(entry -> entry.getKey() == column || entry.getValue().content() instanceof ResultSheet.Blank);
    }

    /** The height that a row needs, in points; empty for the usual height. */
    Optional<Float> height(int row) {
        float height = USUAL_POINTS;
        for (Map.Entry<Integer, Cell> entry : row(row).entrySet()) {
            height = Math.max(height, height(row, entry.getKey(), entry.getValue()));
        }
        return height > USUAL_POINTS ? Optional.of(height) : Optional.empty();
    }

    private float height(int row, int column, Cell cell) {
        boolean header = cell.look() == Look.HEADER;
        String words = isWrapped(row, column) ? words(cell) : null;
        if (words != null) {
            int lines = lines(words, column, header ? BOLD_WIDTH : 1);
            return lines * LINE_POINTS + (header ? HEADER_PADDING_POINTS : LINE_PADDING_POINTS);
        }
        return switch (cell.look()) {
            case TITLE -> TITLE_POINTS;
            case SECTION -> SECTION_POINTS;
            case ANSWER -> ANSWER_POINTS;
            default -> USUAL_POINTS;
        };
    }

    /** How many lines a text takes, broken between words where possible. */
    private int lines(String text, int column, double widthPerCharacter) {
        int width = sheet.columnWidths().getOrDefault(column, USUAL_WIDTH);
        return WrappedWords.lines(text, (int) (width / widthPerCharacter));
    }

    /** Whether the first thing below a column's head is a number. */
    boolean standsOverNumbers(int row, int column) {
        for (SortedMap<Integer, Cell> below : sheet.cells().tailMap(row + 1).values()) {
            Cell cell = below.get(column);
            if (cell == null || cell.content() instanceof ResultSheet.Blank) {
                continue;
            }
            return cell.content() instanceof ResultSheet.Value && cell.look() != Look.LABEL;
        }
        return false;
    }

    /** Whether the cell on the left holds a number, or the head over numbers, so that the words would touch it. */
    boolean followsNumber(int row, int column) {
        Cell before = cell(row, column - 1);
        return before != null
                && (before.content() instanceof ResultSheet.Value
                        || (before.look() == Look.HEADER && standsOverNumbers(row, column - 1)));
    }

    private static @Nullable String words(Cell cell) {
        if (cell.content() instanceof ResultSheet.Text text) {
            return text.text();
        }
        return cell.content() instanceof ResultSheet.Sentence sentence ? sentence.text() : null;
    }

    private @Nullable Cell cell(int row, int column) {
        return row(row).get(column);
    }

    private SortedMap<Integer, Cell> row(int row) {
        SortedMap<Integer, Cell> cells = sheet.cells().get(row);
        return cells == null ? new TreeMap<>() : cells;
    }
}
