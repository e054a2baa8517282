package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Comma-, semicolon- or tab-separated text, quoted as in RFC 4180. */
public final class Csv {

    private static final char QUOTE = '"';

    private final String text;
    private final char delimiter;
    private int at;
    private int line = 1;

    private Csv(String text, char delimiter) {
        this.text = text;
        this.delimiter = delimiter;
    }

    /** All records of a text, blank lines included. */
    public static List<Line> read(String text, char delimiter) {
        List<Line> lines = new ArrayList<>();
        read(text, delimiter, lines::add);
        return lines;
    }

    /** Passes each record of a text to a consumer, blank lines included. */
    static void read(String text, char delimiter, Consumer<Line> take) {
        Csv csv = new Csv(text, delimiter);
        while (csv.at < text.length()) {
            take.accept(csv.line());
        }
    }

    /**
     * The delimiter that occurs most often outside quotation marks, in the first line that has any; a comma if none
     * has.
     */
    static char delimiter(String text) {
        int[] seen = new int[3];
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == QUOTE) {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r')) {
                if (seen[0] + seen[1] + seen[2] > 0) {
                    break;
                }
            } else if (!quoted) {
                int which = ",;\t".indexOf(c);
                if (which >= 0) {
                    seen[which]++;
                }
            }
        }
        if (seen[2] > 0 && seen[2] >= seen[1]) {
            return '\t';
        }
        return seen[1] > 0 ? ';' : ',';
    }

    private Line line() {
        int startsAt = line;
        List<Field> fields = new ArrayList<>();
        fields.add(field());
        while (at < text.length() && text.charAt(at) == delimiter) {
            at++;
            fields.add(field());
        }
        endOfLine();
        return new Line(startsAt, fields);
    }

    private void endOfLine() {
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
    }

    private Field field() {
        if (at < text.length() && text.charAt(at) == QUOTE) {
            return quoted();
        }
        int start = at;
        while (at < text.length() && !endsField(text.charAt(at))) {
            at++;
        }
        return new Field(text.substring(start, at), false);
    }

    private Field quoted() {
        StringBuilder value = new StringBuilder();
        at++;
        while (at < text.length()) {
            char c = text.charAt(at++);
            if (c == QUOTE) {
                if (at < text.length() && text.charAt(at) == QUOTE) {
                    at++;
                } else {
                    break;
                }
            } else if (c == '\n') {
                line++;
            }
            value.append(c);
        }
        while (at < text.length() && !endsField(text.charAt(at))) {
            value.append(text.charAt(at++));
        }
        return new Field(value.toString(), true);
    }

    private boolean endsField(char c) {
        return c == delimiter || c == '\n' || c == '\r';
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
