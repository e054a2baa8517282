package perkilo.workbook.write;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.report.Look;
import perkilo.report.ResultSheet;
import perkilo.report.ResultSheet.Cell;

/** Which words need several lines in their column, and how high their rows are then. */
final class TextFit {

    private static final int USUAL_WIDTH = 8;
    private static final float LINE_POINTS = 15;
    private static final float HEADER_PADDING_POINTS = 5;

    /** Bold words are wider than a column's count of characters says. */
    private static final double BOLD_WIDTH = 1.1;

    private final ResultSheet sheet;

    TextFit(ResultSheet sheet) {
        this.sheet = sheet;
    }

    /** Whether a cell's words run over several lines: heads of columns, and words that the next cell would cut off. */
    boolean isWrapped(int row, int column) {
        Cell cell = cell(row, column);
        if (cell == null || !(cell.content() instanceof ResultSheet.Text text)) {
            return false;
        }
        return switch (cell.look()) {
            case HEADER -> true;
            case TITLE, ANSWER, SECTION -> false;
            default -> text.text().contains("\n") || (lines(text.text(), column, 1) > 1 && isCutOff(row, column));
        };
    }

    private boolean isCutOff(int row, int column) {
        Cell next = cell(row, column + 1);
        return next != null && !(next.content() instanceof ResultSheet.Blank);
    }

    /** How high a row must be in points; empty for the usual height. */
    Optional<Float> height(int row) {
        int lines = 1;
        boolean header = false;
        for (Map.Entry<Integer, Cell> entry : row(row).entrySet()) {
            Cell cell = entry.getValue();
            header |= cell.look() == Look.HEADER;
            if (isWrapped(row, entry.getKey()) && cell.content() instanceof ResultSheet.Text text) {
                double width = cell.look() == Look.HEADER ? BOLD_WIDTH : 1;
                lines = Math.max(lines, lines(text.text(), entry.getKey(), width));
            }
        }
        float height = lines * LINE_POINTS + (header ? HEADER_PADDING_POINTS : 0);
        return height > LINE_POINTS ? Optional.of(height) : Optional.empty();
    }

    /** How many lines words take, broken between words where they can be. */
    private int lines(String text, int column, double widthPerCharacter) {
        int width = sheet.columnWidths().getOrDefault(column, USUAL_WIDTH);
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            lines += linesOfParagraph(paragraph, Math.max(1, (int) (width / widthPerCharacter)));
        }
        return lines;
    }

    private static int linesOfParagraph(String paragraph, int width) {
        int lines = 1;
        int filled = 0;
        for (String word : paragraph.split(" ", -1)) {
            int needed = filled == 0 ? word.length() : filled + 1 + word.length();
            if (needed > width && filled > 0) {
                lines++;
                needed = word.length();
            }
            lines += Math.max(0, (needed - 1) / width);
            filled = needed > width ? needed % width : needed;
        }
        return lines;
    }

    /** Whether the first thing below a column's head is a number. */
    boolean standsOverNumbers(int row, int column) {
        for (SortedMap<Integer, Cell> below : sheet.cells().tailMap(row + 1).values()) {
            Cell cell = below.get(column);
            if (cell == null || cell.content() instanceof ResultSheet.Blank) {
                continue;
            }
            return cell.content() instanceof ResultSheet.Value;
        }
        return false;
    }

    private @Nullable Cell cell(int row, int column) {
        return row(row).get(column);
    }

    private SortedMap<Integer, Cell> row(int row) {
        SortedMap<Integer, Cell> cells = sheet.cells().get(row);
        return cells == null ? new TreeMap<>() : cells;
    }
}
