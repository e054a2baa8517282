package perkilo.report.send;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A reader of calendar files by the grammar of RFC 5545, independent of the writer: content lines end with CR LF (3.1),
 * a line that begins with a space goes on with the one before (3.1), a name may have parameters (3.2), and {@code \\ \;
 * \, \n} are escapes in text (3.3.11). Anything else is refused.
 *
 * @param properties of the calendar
 * @param events their properties, in order
 */
public record Calendar(Map<String, String> properties, List<Map<String, String>> events) {

    /** Reads the bytes of a file. */
    public static Calendar read(byte[] bytes) {
        List<String> physical = new ArrayList<>();
        int start = 0;
        for (int at = 0; at < bytes.length; at++) {
            check(bytes[at] != '\n' || (at > 0 && bytes[at - 1] == '\r'), "a line feed alone");
            check(bytes[at] != '\r' || (at + 1 < bytes.length && bytes[at + 1] == '\n'), "a carriage return alone");
            if (bytes[at] == '\n') {
                check(at - 1 - start <= 75, "a line of " + (at - 1 - start) + " octets");
                byte[] line = java.util.Arrays.copyOfRange(bytes, start, at - 1);
                String text = new String(line, StandardCharsets.UTF_8);
                check(!text.contains("\uFFFD"), "a torn character in " + text);
                physical.add(text);
                start = at + 1;
            }
        }
        check(start == bytes.length, "no end of the last line");
        return lines(unfolded(physical));
    }

    private static List<String> unfolded(List<String> physical) {
        List<String> lines = new ArrayList<>();
        for (String line : physical) {
            if (line.startsWith(" ") || line.startsWith("\t")) {
                lines.add(lines.remove(lines.size() - 1) + line.substring(1));
            } else {
                lines.add(line);
            }
        }
        return lines;
    }

    private static Calendar lines(List<String> lines) {
        check(lines.get(0).equals("BEGIN:VCALENDAR"), "no beginning");
        check(lines.get(lines.size() - 1).equals("END:VCALENDAR"), "no end");
        Map<String, String> properties = new LinkedHashMap<>();
        List<Map<String, String>> events = new ArrayList<>();
        Map<String, String> into = properties;
        for (String line : lines.subList(1, lines.size() - 1)) {
            if (line.equals("BEGIN:VEVENT")) {
                check(into == properties, "an event in an event");
                into = new LinkedHashMap<>();
                events.add(into);
            } else if (line.equals("END:VEVENT")) {
                into = properties;
            } else {
                int colon = line.indexOf(':');
                check(colon > 0, "no colon in " + line);
                String name = line.substring(0, colon);
                check(name.matches("[A-Z-]+(;[A-Z-]+=[A-Za-z-]+)*"), "a strange name " + name);
                String before = into.put(name, unescaped(line.substring(colon + 1)));
                check(before == null, name + " twice");
            }
        }
        return new Calendar(properties, events);
    }

    private static String unescaped(String text) {
        StringBuilder plain = new StringBuilder();
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            check(c != ';' && c != ',', "not escaped in " + text);
            if (c != '\\') {
                plain.append(c);
                continue;
            }
            char next = text.charAt(++at);
            check("\\;,nN".indexOf(next) >= 0, "a strange escape in " + text);
            plain.append(next == 'n' || next == 'N' ? '\n' : next);
        }
        return plain.toString();
    }

    private static void check(boolean holds, String fault) {
        if (!holds) {
            throw new IllegalArgumentException(fault);
        }
    }
}
