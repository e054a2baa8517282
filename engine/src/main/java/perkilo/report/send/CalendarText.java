package perkilo.report.send;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.zip.CRC32;

/**
 * A calendar file with events that last a day, by RFC 5545 (iCalendar): lines end with CR LF and are folded after 75
 * octets (3.1); backslash, semicolon, comma and line break are escaped in text (3.3.11); an event has UID and DTSTAMP
 * (3.6.1), and a day without a time is a DATE whose end is the day after (3.6.1).
 *
 * <p>The last property of the calendar is a sum over all events but the moment they were made, so that a file which
 * nobody has changed is known again.
 *
 * @param events in order
 * @param made when the file is made
 */
public record CalendarText(List<Event> events, Instant made) {

    private static final String BREAK = "\r\n";
    private static final int LONGEST_LINE = 75;
    private static final String SUM = "X-PERKILO-SUM:";
    private static final String STAMP = "DTSTAMP:";
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    public CalendarText {
        events = List.copyOf(events);
    }

    /**
     * An event that lasts a day.
     *
     * @param uid tells it apart from all other events, and is the same each time the file is made
     * @param summary in one line
     * @param description may have several lines
     */
    public record Event(String uid, LocalDate day, String summary, String description) {}

    /** The bytes of the file, in UTF-8. */
    public byte[] bytes() {
        StringBuilder body = new StringBuilder();
        String stamp = UTC.format(made);
        for (Event event : events) {
            line("BEGIN:VEVENT", body);
            line("UID:" + escaped(event.uid()), body);
            line(STAMP + stamp, body);
            line("DTSTART;VALUE=DATE:" + date(event.day()), body);
            line("DTEND;VALUE=DATE:" + date(event.day().plusDays(1)), body);
            line("SUMMARY:" + escaped(event.summary()), body);
            line("DESCRIPTION:" + escaped(event.description()), body);
            line("TRANSP:TRANSPARENT", body);
            line("END:VEVENT", body);
        }
        StringBuilder text = new StringBuilder();
        line("BEGIN:VCALENDAR", text);
        line("VERSION:2.0", text);
        line("PRODID:-//Perkilo//Orders//EN", text);
        line("CALSCALE:GREGORIAN", text);
        line(SUM + sum(body.toString()), text);
        text.append(body);
        line("END:VCALENDAR", text);
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Whether these are the bytes of a calendar of ours that was not changed since. */
    public static boolean isUntouched(byte[] file) {
        String text = new String(file, StandardCharsets.UTF_8);
        int at = text.indexOf(BREAK + SUM);
        int from = at < 0 ? -1 : text.indexOf(BREAK, at + BREAK.length());
        int to = text.indexOf("END:VCALENDAR" + BREAK);
        if (from < 0 || to < from || !text.endsWith("END:VCALENDAR" + BREAK)) {
            return false;
        }
        String told = text.substring(at + BREAK.length() + SUM.length(), from);
        return told.equals(sum(text.substring(from + BREAK.length(), to)));
    }

    private static String sum(String body) {
        CRC32 sum = new CRC32();
        body.lines()
                .filter(line -> !line.startsWith(STAMP))
                .forEach(line -> sum.update((line + "\n").getBytes(StandardCharsets.UTF_8)));
        return Long.toHexString(sum.getValue());
    }

    private static String date(LocalDate day) {
        return day.format(DateTimeFormatter.BASIC_ISO_DATE);
    }

    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.replace(BREAK, "\n").replace('\r', '\n').codePoints().forEach(c -> {
            switch (c) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(c);
                case '\n' -> escaped.append("\\n");
                default -> {
                    if (!Character.isISOControl(c)) {
                        escaped.appendCodePoint(c);
                    }
                }
            }
        });
        return escaped.toString();
    }

    /** Adds a line, folded so that no line has more than 75 octets; a character is never torn. */
    private static void line(String line, StringBuilder text) {
        int octets = 0;
        for (int at = 0; at < line.length(); ) {
            int c = line.codePointAt(at);
            int more = Character.toString(c).getBytes(StandardCharsets.UTF_8).length;
            if (octets + more > LONGEST_LINE) {
                text.append(BREAK).append(' ');
                octets = 1;
            }
            text.appendCodePoint(c);
            octets += more;
            at += Character.charCount(c);
        }
        text.append(BREAK);
    }
}
