package perkilo.report.send;

import java.util.ArrayList;
import java.util.List;

/** Words in lines of a letter. */
final class Letters {

    private Letters() {}

    /**
     * The lines of an address. Without line breaks of its own, it is broken at its commas.
     *
     * @param longest the most characters of a line
     */
    static List<String> address(String text, int longest) {
        return lines(text.contains("\n") ? text : text.replace(", ", ",\n"), longest).stream()
                .map(line -> line.endsWith(",") ? line.substring(0, line.length() - 1) : line)
                .toList();
    }

    /** The lines of a text with line breaks. */
    static List<String> lines(String text, int longest) {
        List<String> lines = new ArrayList<>();
        text.lines().map(String::strip).forEach(line -> lines.addAll(wrapped(line, longest)));
        return lines;
    }

    /** Adds a text with words before it, unless it is blank. */
    static void add(List<String> lines, String before, String text, int longest) {
        if (!text.isEmpty()) {
            lines.addAll(wrapped(before + text, longest));
        }
    }

    /** The lines of one line that may be too long, broken between words; a longer word stays whole. */
    static List<String> wrapped(String text, int longest) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : List.of(text.split(" "))) {
            if (line.length() > 0 && line.length() + 1 + word.length() > longest) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }
}
