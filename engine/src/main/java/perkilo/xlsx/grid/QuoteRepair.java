package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a record again in which a quotation mark is out of place: not doubled inside a field, or without its partner.
 *
 * <p>Of the ways to pair the marks that give the record as many fields as it should have, it takes the one with the
 * fewest marks out of place, first within one line, then within several. Each mark before a delimiter may end a field,
 * and each field may have a mark that belongs to its text.
 */
final class QuoteRepair {

    /** The farthest that a mark may be from its partner in a file with many marks out of place. */
    static final int SHORT = 4096;

    private static final int MOST_STEPS = 500;

    private static final int MOST_LINES = 30;

    private static final int MOST_FAULTS = 4;

    private final String text;
    private final Dialect dialect;
    private final int start;
    private final List<Csv.Field> found = new ArrayList<>();
    private List<Csv.Field> fields = List.of();
    private int end;
    private int window;
    private int wanted;
    private int steps;

    QuoteRepair(String text, Dialect dialect, int start) {
        this.text = text;
        this.dialect = dialect;
        this.start = start;
        this.end = start;
    }

    /** The fields of the record. */
    List<Csv.Field> fields() {
        return fields;
    }

    /** The position after the last field. */
    int end() {
        return end;
    }

    /**
     * Whether the record can have so many fields; then they are kept.
     *
     * @param asRead the fields as they were read first
     * @param readTo the position after them
     * @param count how many the record should have; less than two if unknown
     */
    boolean fits(List<Csv.Field> asRead, int readTo, int count) {
        if (count < 2) {
            return false;
        }
        int lineEnd = lineEnd(start);
        if (asRead.size() == count && readTo <= lineEnd) {
            return take(asRead, readTo);
        }
        wanted = count;
        window = lineEnd;
        if (search()) {
            return take(found, end);
        }
        if (asRead.size() == count) {
            return take(asRead, readTo);
        }
        for (int i = 1; i < MOST_LINES && window < text.length() && window - start < SHORT; i++) {
            window = lineEnd(window + 1);
        }
        return readTo > lineEnd && search() && take(found, end);
    }

    /** Reads the first line alone; a mark without its partner on the line belongs to its field. */
    void oneLine() {
        window = lineEnd(start);
        List<Csv.Field> line = new ArrayList<>();
        int at = start;
        while (true) {
            List<Mark> ends = ends(at);
            int fieldEnd = ends.isEmpty() ? plainEnd(at) : after(ends.get(0).at());
            line.add(
                    ends.isEmpty()
                            ? plain(at, fieldEnd)
                            : quoted(at, ends.get(0).at()));
            at = fieldEnd;
            if (at >= window) {
                take(line, at);
                return;
            }
            at += dialect.delimiter().length();
        }
    }

    private boolean take(List<Csv.Field> all, int to) {
        fields = List.copyOf(all);
        end = to;
        return true;
    }

    private boolean search() {
        steps = 0;
        for (int faults = 0; faults <= MOST_FAULTS; faults++) {
            found.clear();
            if (search(start, faults)) {
                return true;
            }
        }
        return false;
    }

    /** Reads on from a field's beginning with so many marks out of place at most. */
    private boolean search(int at, int faults) {
        if (++steps > MOST_STEPS) {
            return false;
        }
        List<Mark> ends = ends(at);
        for (Mark mark : ends) {
            if (mark.faults() <= faults && next(quoted(at, mark.at()), after(mark.at()), faults - mark.faults())) {
                return true;
            }
        }
        int left = opens(at) ? faults - 1 : faults;
        int plainEnd = plainEnd(at);
        return left >= 0 && next(plain(at, plainEnd), plainEnd, left);
    }

    private boolean next(Csv.Field field, int to, int faults) {
        found.add(field);
        boolean atDelimiter = to < window && dialect.delimits(text, to);
        if (!atDelimiter && found.size() == wanted) {
            end = to;
            return true;
        }
        if (atDelimiter
                && found.size() < wanted
                && search(to + dialect.delimiter().length(), faults)) {
            return true;
        }
        found.remove(found.size() - 1);
        return false;
    }

    private boolean opens(int at) {
        int first = dialect.afterSpaces(text, at);
        return first < window && text.charAt(first) == dialect.quote();
    }

    /** The marks that may end a quoted field, each with the marks out of place that the field then has. */
    private List<Mark> ends(int at) {
        if (!opens(at)) {
            return List.of();
        }
        List<Mark> ends = new ArrayList<>();
        int faults = 0;
        int i = dialect.afterSpaces(text, at) + 1;
        while (i < window) {
            char c = text.charAt(i);
            if (c == '\\' && dialect.backslash()) {
                i++;
            } else if (c == dialect.quote()) {
                int run = i;
                while (run < window && text.charAt(run) == dialect.quote()) {
                    run++;
                }
                int last = run - 1;
                boolean odd = (run - i) % 2 == 1;
                int after = after(last);
                if (after >= window || dialect.endsField(text, after)) {
                    ends.add(new Mark(last, odd ? faults : faults + 1));
                }
                faults += odd ? 1 : 0;
                i = last;
            }
            i++;
        }
        return ends;
    }

    /**
     * A mark that may end a field.
     *
     * @param faults how many marks inside are not doubled
     */
    private record Mark(int at, int faults) {}

    private int after(int mark) {
        return dialect.afterSpaces(text, mark + 1);
    }

    private Csv.Field quoted(int at, int mark) {
        String inside = text.substring(dialect.afterSpaces(text, at) + 1, mark);
        String quote = String.valueOf(dialect.quote());
        String single = inside.replace(quote + quote, quote);
        return new Csv.Field(dialect.backslash() ? unescaped(single, dialect) : single, true);
    }

    private Csv.Field plain(int at, int to) {
        String value = text.substring(at, to);
        return new Csv.Field(dialect.backslash() ? unescaped(value, dialect) : value, false);
    }

    private int plainEnd(int from) {
        int at = from;
        while (at < window && !dialect.endsField(text, at)) {
            at++;
        }
        return at;
    }

    private int lineEnd(int from) {
        int at = from;
        while (at < text.length() && !Dialect.isBreak(text.charAt(at))) {
            at++;
        }
        return at;
    }

    /** The text without the backslashes that escape a mark, a delimiter or a backslash. */
    static String unescaped(String value, Dialect dialect) {
        StringBuilder plain = new StringBuilder(value.length());
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            boolean last = i + 1 >= value.length();
            if (c == '\\' && !last) {
                char next = value.charAt(i + 1);
                if (next == '\\'
                        || next == dialect.quote()
                        || next == dialect.delimiter().charAt(0)) {
                    c = next;
                    i++;
                }
            }
            plain.append(c);
        }
        return plain.toString();
    }
}
