package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the dialect of a text file from its beginning, its middle and its end: the one under which rows are most alike
 * and cells look most like values.
 *
 * <p>The score is the pattern score times the square of the type score of G. J. J. van den Burg, A. Nazábal and C.
 * Sutton, "Wrangling messy CSV files by detecting row and type patterns", Data Mining and Knowledge Discovery 33
 * (2019). The square and the conditions for spaces, colons, apostrophes and backslashes are choices of this class; a
 * file that keeps to RFC 4180 in all rows is never read by one of them.
 */
final class DialectFinder {

    private static final int BEGINNING = 24 << 10;
    private static final int PART = 8 << 10;

    /** Delimiters that hardly occur for another reason. Of two that score alike the first is taken. */
    private static final List<String> DELIMITERS = List.of(",", ";", "\t", "|", "~", "^", "¦", "::");

    /** Delimiters that are frequent in plain words, dates and times. */
    private static final List<String> WEAK = List.of(" ", ":");

    /** A line must have a delimiter in this part of all lines. */
    private static final double LEAST_LINES = 0.05;

    /** A score that reaches this part of the best makes the choice doubtful. */
    private static final double DOUBTFUL = 0.7;

    private static final double MOST_WORDS = 0.9;
    private static final double FEW_ROWS = 0.5;
    private static final double MOST_CELLS = 0.8;

    /** Apostrophes are marks if they raise the score by this factor, backslashes if they raise it at all. */
    private static final double BETTER = 1.02;

    private static final double BARELY_BETTER = 1.001;

    private final List<String> parts;

    private DialectFinder(List<String> parts) {
        this.parts = parts;
    }

    /**
     * What was found.
     *
     * @param usual the number of fields that most rows have; one if no delimiter was found
     * @param other another delimiter that is nearly as likely, or null
     * @param otherUsual the number of fields under that delimiter
     * @param weak whether the delimiter is one that is frequent in plain words
     */
    record Found(Dialect dialect, int usual, @Nullable String other, int otherUsual, boolean weak) {}

    /** The dialect of a text. */
    static Found find(String text) {
        return new DialectFinder(parts(text)).find();
    }

    private static List<String> parts(String text) {
        if (text.length() <= BEGINNING + 2 * PART) {
            return List.of(text);
        }
        List<String> parts = new ArrayList<>();
        int end = lastBreak(text, BEGINNING);
        parts.add(text.substring(0, end > 0 ? end : BEGINNING));
        addPart(parts, text, text.length() / 2);
        addPart(parts, text, text.length() - PART);
        return parts;
    }

    private static void addPart(List<String> parts, String text, int from) {
        int start = nextBreak(text, from);
        int end = start + PART >= text.length() ? text.length() : lastBreak(text, start + PART);
        if (end > start) {
            parts.add(text.substring(start, end));
        }
    }

    private static int lastBreak(String text, int before) {
        return Math.max(text.lastIndexOf('\n', before), text.lastIndexOf('\r', before)) + 1;
    }

    private static int nextBreak(String text, int from) {
        int at = from;
        while (at < text.length() && !Dialect.isBreak(text.charAt(at))) {
            at++;
        }
        return Math.min(at + 1, text.length());
    }

    private Found find() {
        Sample best = null;
        Sample second = null;
        for (String delimiter : DELIMITERS) {
            Sample sample = candidate(delimiter);
            if (sample != null && (best == null || sample.score() > best.score())) {
                second = best;
                best = sample;
            } else if (sample != null && (second == null || sample.score() > second.score())) {
                second = sample;
            }
        }
        if (best == null || best.shareAlike() < FEW_ROWS) {
            double toBeat = best == null ? 0 : best.score();
            for (String delimiter : WEAK) {
                Sample weak = candidate(delimiter);
                if (weak != null && weak.isTableOfNumbers() && weak.score() > toBeat) {
                    return new Found(weak.dialect, weak.usual(), null, 0, true);
                }
            }
        }
        if (best == null) {
            return new Found(Dialect.COMMA, 1, null, 0, false);
        }
        if (second == null || second.score() <= DOUBTFUL * best.score()) {
            return new Found(best.dialect, best.usual(), null, 0, false);
        }
        return new Found(best.dialect, best.usual(), second.dialect.delimiter(), second.usual(), false);
    }

    /** The best way to quote with a delimiter; null if the delimiter separates nothing. */
    private @Nullable Sample candidate(String single) {
        if (!mentions(single)) {
            return null;
        }
        String delimiter = doubled(single) ? single + single : single;
        if (!isFrequent(delimiter)) {
            return null;
        }
        Sample best = sample(new Dialect(delimiter, '"', false));
        if (best.apostrophes > 0 && best.quoted * 10 <= best.apostrophes) {
            Sample other = sample(new Dialect(delimiter, '\'', false));
            boolean alike = !best.isRegular() && other.score() > best.score() * BETTER;
            boolean everywhere = other.score() * BETTER >= best.score() && best.isQuotedByApostrophes();
            best = alike || everywhere ? other : best;
        }
        if (!best.isRegular() && (mentions("\\" + best.dialect.quote()) || mentions("\\" + delimiter))) {
            Sample other = sample(new Dialect(delimiter, best.dialect.quote(), true));
            boolean fewer = other.score() >= best.score() && other.odd < best.odd;
            best = fewer || other.score() > best.score() * BARELY_BETTER ? other : best;
        }
        return best.usual() > 1 ? best : null;
    }

    private boolean mentions(String words) {
        for (String part : parts) {
            if (part.contains(words)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a character always comes in twos, so that the two are the delimiter. */
    private boolean doubled(String delimiter) {
        if (delimiter.length() > 1 || ",; ".contains(delimiter)) {
            return false;
        }
        char wanted = delimiter.charAt(0);
        boolean any = false;
        for (String part : parts) {
            int run = 0;
            for (int i = 0; i <= part.length(); i++) {
                if (i < part.length() && part.charAt(i) == wanted) {
                    run++;
                } else if (run == 1 || run == 3) {
                    return false;
                } else if (run > 0) {
                    any = true;
                    run = 0;
                }
            }
        }
        return any;
    }

    private boolean isFrequent(String delimiter) {
        int lines = 0;
        int with = 0;
        for (String part : parts) {
            int start = 0;
            while (start < part.length()) {
                int end = nextBreak(part, start);
                int at = part.indexOf(delimiter, start);
                if (at < 0) {
                    at = part.length();
                }
                if (end - start > 1) {
                    lines++;
                    with += at < end ? 1 : 0;
                }
                start = end;
            }
        }
        return with > 0 && with >= LEAST_LINES * lines;
    }

    private Sample sample(Dialect dialect) {
        Sample sample = new Sample(dialect);
        for (String part : parts) {
            Csv csv = new Csv(part, dialect, 0);
            csv.read(line -> sample.add(line.fields()));
            sample.odd += csv.oddLines().size();
        }
        return sample;
    }

    /** The rows of the parts under one dialect. */
    private static final class Sample {

        private final Dialect dialect;
        private int[] rowsByCount = new int[16];
        private int[] figuresByColumn = new int[16];
        private int rows;
        private int cells;
        private int values;
        private int quoted;
        private int apostrophes;
        private int enclosed;
        private int needed;
        private int words;
        private int odd;

        Sample(Dialect dialect) {
            this.dialect = dialect;
        }

        void add(List<Csv.Field> fields) {
            int count = fields.size();
            if (count == 1 && fields.get(0).text().isBlank()) {
                return;
            }
            if (count >= rowsByCount.length) {
                rowsByCount = Arrays.copyOf(rowsByCount, 2 * count);
                figuresByColumn = Arrays.copyOf(figuresByColumn, 2 * count);
            }
            rows++;
            rowsByCount[count]++;
            for (int column = 0; column < count; column++) {
                add(column, fields.get(column));
            }
        }

        private void add(int column, Csv.Field field) {
            String text = field.text().strip();
            boolean figure = FieldLook.isFigure(text);
            cells++;
            values += field.quoted() || figure || FieldLook.isValue(text) ? 1 : 0;
            quoted += field.quoted() ? 1 : 0;
            if (figure) {
                figuresByColumn[column]++;
            } else if (!text.isEmpty()) {
                words++;
                boolean starts = !field.quoted() && text.charAt(0) == '\'';
                boolean ends = starts && text.length() > 1 && text.endsWith("'");
                apostrophes += starts ? 1 : 0;
                enclosed += ends ? 1 : 0;
                needed += ends && text.indexOf('\'', 1) < text.length() - 1 ? 1 : 0;
            }
        }

        /** The number of fields that most rows with more than one have; one if there are none. */
        int usual() {
            int usual = 1;
            for (int count = 2; count < rowsByCount.length; count++) {
                boolean more = rowsByCount[count] > 0 && (usual == 1 || rowsByCount[count] >= rowsByCount[usual]);
                usual = more ? count : usual;
            }
            return usual;
        }

        /** The part of all rows that have the usual number of fields. */
        double shareAlike() {
            return usual() > 1 ? rowsByCount[usual()] / (double) rows : 0;
        }

        /** Whether all rows have as many fields, and no mark is out of place. */
        boolean isRegular() {
            return odd == 0 && usual() > 1 && rowsByCount[usual()] == rows;
        }

        /**
         * Whether the apostrophes around fields are quotation marks: nearly all words have them, or all fields that
         * begin with one also end with one and have another inside.
         */
        boolean isQuotedByApostrophes() {
            boolean nearlyAll = words > 1 && enclosed >= MOST_WORDS * words;
            return nearlyAll || (enclosed > 1 && enclosed == apostrophes && needed == enclosed);
        }

        /** Whether most rows have the usual number of fields, and some columns, but not all, hold figures. */
        boolean isTableOfNumbers() {
            int usual = usual();
            int least = dialect.delimiter().equals(" ") ? 3 : 2;
            int figures = 0;
            for (int count : figuresByColumn) {
                figures += count >= MOST_CELLS * (rows - 1) ? 1 : 0;
            }
            return rows > 2 && usual >= least && shareAlike() >= MOST_CELLS && figures > 0 && figures < usual;
        }

        double score() {
            double pattern = 0;
            int patterns = 0;
            for (int count = 2; count < rowsByCount.length; count++) {
                if (rowsByCount[count] > 0) {
                    patterns++;
                    pattern += rowsByCount[count] * (count - 1.0) / count;
                }
            }
            double type = values / (double) Math.max(1, cells);
            return pattern / Math.max(1, patterns) * type * type;
        }
    }
}
