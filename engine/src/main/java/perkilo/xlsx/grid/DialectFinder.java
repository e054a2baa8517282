package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    private static final double MOST_ROWS = 0.9;
    private static final double FEW_ROWS = 0.5;
    private static final double MOST_CELLS = 0.8;

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
        List<Sample> strong = new ArrayList<>();
        for (String delimiter : DELIMITERS) {
            candidate(delimiter).ifPresent(strong::add);
        }
        strong.sort(Comparator.comparingDouble(Sample::score).reversed());
        if (strong.isEmpty() || strong.get(0).shareAlike() < FEW_ROWS) {
            double toBeat = strong.isEmpty() ? 0 : strong.get(0).score();
            for (String delimiter : WEAK) {
                Optional<Sample> weak =
                        candidate(delimiter).filter(sample -> sample.isTableOfNumbers() && sample.score() > toBeat);
                if (weak.isPresent()) {
                    return new Found(weak.get().dialect, weak.get().usual(), null, 0, true);
                }
            }
        }
        if (strong.isEmpty()) {
            return new Found(Dialect.COMMA, 1, null, 0, false);
        }
        Sample best = strong.get(0);
        boolean doubtful = strong.size() > 1 && strong.get(1).score() > DOUBTFUL * best.score();
        Sample second = strong.get(doubtful ? 1 : 0);
        return new Found(
                best.dialect, best.usual(), doubtful ? second.dialect.delimiter() : null, second.usual(), false);
    }

    /** The best way to quote with a delimiter; empty if the delimiter separates nothing. */
    private Optional<Sample> candidate(String single) {
        if (parts.stream().noneMatch(part -> part.contains(single))) {
            return Optional.empty();
        }
        String delimiter = doubled(single) ? single + single : single;
        if (!isFrequent(delimiter)) {
            return Optional.empty();
        }
        Sample best = sample(new Dialect(delimiter, '"', false));
        if (best.apostrophes > 0 && best.quoted * 10 <= best.apostrophes) {
            Sample other = sample(new Dialect(delimiter, '\'', false));
            boolean alike = !best.isRegular() && other.score() > best.score() * 1.02;
            boolean everywhere = other.score() >= best.score() * 0.98 && best.isQuotedByApostrophes();
            best = alike || everywhere ? other : best;
        }
        if (!best.isRegular() && mentions("\\" + best.dialect.quote(), "\\" + delimiter)) {
            Sample other = sample(new Dialect(delimiter, best.dialect.quote(), true));
            boolean better = other.score() > best.score() * 1.001;
            best = better || (other.score() >= best.score() && other.odd < best.odd) ? other : best;
        }
        return Optional.of(best).filter(sample -> sample.usual() > 1);
    }

    private boolean mentions(String one, String other) {
        return parts.stream().anyMatch(part -> part.contains(one) || part.contains(other));
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
        private final Map<Integer, Integer> rowsByCount = new HashMap<>();
        private final Map<Integer, Integer> figuresByColumn = new HashMap<>();
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
            if (fields.size() == 1 && fields.get(0).text().isBlank()) {
                return;
            }
            rows++;
            rowsByCount.merge(fields.size(), 1, Integer::sum);
            for (int column = 0; column < fields.size(); column++) {
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
                figuresByColumn.merge(column, 1, Integer::sum);
            } else if (!text.isEmpty()) {
                words++;
                boolean starts = !field.quoted() && text.charAt(0) == '\'';
                apostrophes += starts ? 1 : 0;
                boolean ends = starts && text.length() > 1 && text.endsWith("'");
                enclosed += ends ? 1 : 0;
                needed += ends && text.indexOf('\'', 1) < text.length() - 1 ? 1 : 0;
            }
        }

        /** The number of fields that most rows with more than one have; one if there are none. */
        int usual() {
            return rowsByCount.entrySet().stream()
                    .filter(entry -> entry.getKey() > 1)
                    .max(Map.Entry.<Integer, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                    .map(Map.Entry::getKey)
                    .orElse(1);
        }

        /** The part of all rows that have the usual number of fields. */
        double shareAlike() {
            return usual() > 1 ? rowsByCount.getOrDefault(usual(), 0) / (double) rows : 0;
        }

        /** Whether all rows have as many fields, and no mark is out of place. */
        boolean isRegular() {
            return odd == 0 && rowsByCount.size() == 1 && usual() > 1;
        }

        /**
         * Whether the apostrophes around fields are quotation marks: nearly all words have them, or all fields that
         * begin with one also end with one and have another inside.
         */
        boolean isQuotedByApostrophes() {
            boolean nearlyAll = words > 1 && enclosed >= MOST_ROWS * words;
            return nearlyAll || (enclosed > 1 && enclosed == apostrophes && needed == enclosed);
        }

        boolean isTableOfNumbers() {
            int usual = usual();
            int least = dialect.delimiter().equals(" ") ? 3 : 2;
            long figures = figuresByColumn.values().stream()
                    .filter(count -> count >= MOST_CELLS * (rows - 1))
                    .count();
            return rows > 2 && usual >= least && shareAlike() >= MOST_CELLS && figures > 0 && figures < usual;
        }

        double score() {
            double pattern = 0;
            int patterns = 0;
            for (Map.Entry<Integer, Integer> entry : rowsByCount.entrySet()) {
                int count = entry.getKey();
                if (count > 1) {
                    patterns++;
                    pattern += entry.getValue() * (count - 1.0) / count;
                }
            }
            double type = values / (double) Math.max(1, cells);
            return pattern / Math.max(1, patterns) * type * type;
        }
    }
}
