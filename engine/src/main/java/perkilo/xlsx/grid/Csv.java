package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Delimited text as records. Fields are quoted as in RFC 4180; other ways are read if a file uses them.
 *
 * <p>A quotation mark inside a quoted field that is neither doubled nor before a delimiter breaks that rule. Such a
 * record is read again by {@link QuoteRepair}.
 */
public final class Csv {

    private final String text;
    private final Dialect dialect;
    private final char first;
    private final boolean single;
    private final int usual;
    private int at;
    private int line = 1;
    private int lastCount;
    private boolean odd;
    private int wasted;
    private final List<Integer> oddLines = new ArrayList<>();

    /**
     * A reader at the beginning of a text.
     *
     * @param usual the number of fields that most records have; zero if unknown
     */
    Csv(String text, Dialect dialect, int usual) {
        this.text = text;
        this.dialect = dialect;
        this.first = dialect.delimiter().charAt(0);
        this.single = dialect.delimiter().length() == 1;
        this.usual = usual;
    }

    /** All records of a text, blank lines included. */
    public static List<Line> read(String text, char delimiter) {
        List<Line> lines = new ArrayList<>();
        new Csv(text, Dialect.of(delimiter), 0).read(lines::add);
        return lines;
    }

    /** Passes each record to a consumer, blank lines included. */
    void read(Consumer<Line> take) {
        while (at < text.length()) {
            take.accept(line());
        }
    }

    /** The first lines of the records in which a quotation mark was out of place. */
    List<Integer> oddLines() {
        return oddLines;
    }

    private Line line() {
        int startsAt = line;
        int start = at;
        odd = false;
        List<Field> fields = new ArrayList<>(Math.max(lastCount, 4));
        fields.add(field());
        while (isDelimiter(at)) {
            at += dialect.delimiter().length();
            fields.add(field());
        }
        if (odd) {
            fields = repaired(start, startsAt, fields);
        }
        if (fields.size() > 1) {
            lastCount = fields.size();
        }
        endOfLine();
        return new Line(startsAt, fields);
    }

    /** The fields of a record with a quotation mark out of place, read so that they are as many as usual. */
    private List<Field> repaired(int start, int startsAt, List<Field> fields) {
        oddLines.add(startsAt);
        wasted += at - start;
        QuoteRepair repair = new QuoteRepair(text, dialect, start);
        if (!repair.fits(fields, at, lastCount) && !repair.fits(fields, at, usual)) {
            repair.oneLine();
        }
        at = repair.end();
        line = startsAt + breaks(start, at);
        return repair.fields();
    }

    private int breaks(int from, int to) {
        int breaks = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !(i + 1 < to && text.charAt(i + 1) == '\n'))) {
                breaks++;
            }
        }
        return breaks;
    }

    private void endOfLine() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
            if (at < text.length() && text.charAt(at) == '\n') {
                at++;
            }
        } else if (at < text.length()) {
            at++;
        }
        line++;
    }

    private boolean isDelimiter(int position) {
        return position < text.length()
                && text.charAt(position) == first
                && (single || text.startsWith(dialect.delimiter(), position));
    }

    private Field field() {
        int begins = dialect.afterSpaces(text, at);
        if (begins < text.length() && text.charAt(begins) == dialect.quote()) {
            at = begins + 1;
            return quoted();
        }
        int start = at;
        if (!dialect.backslash()) {
            at = plainEnd(at);
            return new Field(text.substring(start, at), false);
        }
        boolean escaped = false;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (Dialect.isBreak(c) || (c == first && isDelimiter(at))) {
                break;
            }
            if (c == '\\' && at + 1 < text.length() && !Dialect.isBreak(text.charAt(at + 1))) {
                escaped = true;
                at++;
            }
            at++;
        }
        String value = text.substring(start, at);
        return new Field(escaped ? QuoteRepair.unescaped(value, dialect) : value, false);
    }

    private int plainEnd(int from) {
        int end = from;
        while (end < text.length()) {
            char c = text.charAt(end);
            if (c == '\n' || c == '\r' || (c == first && isDelimiter(end))) {
                break;
            }
            end++;
        }
        return end;
    }

    /** A quoted field without another mark, a backslash or a line break inside; null for every other. */
    private @Nullable Field simplyQuoted() {
        for (int end = at; end < text.length(); end++) {
            char c = text.charAt(end);
            if (c == dialect.quote()) {
                boolean closes =
                        end + 1 >= text.length() || isDelimiter(end + 1) || Dialect.isBreak(text.charAt(end + 1));
                if (!closes) {
                    return null;
                }
                Field field = new Field(text.substring(at, end), true);
                at = end + 1;
                return field;
            }
            if (c == '\n' || c == '\r' || (c == '\\' && dialect.backslash())) {
                return null;
            }
        }
        return null;
    }

    private Field quoted() {
        Field simple = simplyQuoted();
        if (simple != null) {
            return simple;
        }
        StringBuilder value = new StringBuilder();
        int limit = wasted > text.length() ? Math.min(text.length(), at + QuoteRepair.SHORT) : text.length();
        while (at < limit) {
            char c = text.charAt(at++);
            if (c == dialect.quote()) {
                if (at < text.length() && text.charAt(at) == dialect.quote()) {
                    at++;
                } else {
                    int after = dialect.afterSpaces(text, at);
                    if (after >= text.length() || Dialect.isBreak(text.charAt(after)) || isDelimiter(after)) {
                        at = after;
                        return new Field(value.toString(), true);
                    }
                    odd = true;
                }
            } else if (c == '\\' && dialect.backslash() && at < limit && isEscapable(text.charAt(at))) {
                c = text.charAt(at++);
            } else if (c == '\n' || (c == '\r' && !(at < limit && text.charAt(at) == '\n'))) {
                line++;
            }
            value.append(c);
        }
        odd = true;
        return new Field(value.toString(), true);
    }

    private boolean isEscapable(char c) {
        return c == dialect.quote() || c == '\\' || c == first;
    }

    /**
     * One record.
     *
     * @param number the line that it starts at, from one
     * @param fields in order, at least one
     */
    public record Line(int number, List<Field> fields) {}

    /**
     * One field.
     *
     * @param text without its quotation marks
     * @param quoted whether it was in quotation marks
     */
    public record Field(String text, boolean quoted) {}
}
