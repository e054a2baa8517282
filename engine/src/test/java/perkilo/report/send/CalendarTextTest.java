package perkilo.report.send;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Calendars are read back by a reader of their own, and keep the rules of RFC 5545. */
final class CalendarTextTest {

    private static final Instant NOW = Instant.parse("2026-12-01T09:30:05Z");
    private static final LocalDate DAY = LocalDate.of(2026, 12, 31);

    @Test
    void an_event_lasts_a_day() {
        Calendar calendar = Calendar.read(bytes("Order", "two\nlines", NOW));

        assertThat(calendar.properties()).containsEntry("VERSION", "2.0").containsKey("PRODID");
        assertThat(calendar.events())
                .containsExactly(Map.of(
                        "UID", "1@perkilo",
                        "DTSTAMP", "20261201T093005Z",
                        "DTSTART;VALUE=DATE", "20261231",
                        "DTEND;VALUE=DATE", "20270101",
                        "SUMMARY", "Order",
                        "DESCRIPTION", "two\nlines",
                        "TRANSP", "TRANSPARENT"));
    }

    @Test
    void special_characters_come_back() {
        String odd =
                "Ö & Söhne, \"GmbH\"; a\\b, 3 × 25 kg — 🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴🧴, end\\n";
        Calendar calendar = Calendar.read(bytes(odd, odd + "\n" + odd, NOW));

        assertThat(calendar.events().get(0))
                .containsEntry("SUMMARY", odd)
                .containsEntry("DESCRIPTION", odd + "\n" + odd);
    }

    @Property
    void any_words_come_back(@ForAll String words) {
        String clean = words.codePoints()
                .filter(c -> !Character.isISOControl(c) && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFD)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        assertThat(Calendar.read(bytes(clean, "", NOW)).events().get(0)).containsEntry("SUMMARY", clean);
    }

    @Test
    void a_calendar_that_was_not_changed_is_known_again() {
        byte[] first = bytes("Order", "Glycerin", NOW);
        String changed = new String(first, StandardCharsets.UTF_8).replace("Glycerin", "Glycerol");

        assertThat(CalendarText.isUntouched(first)).isTrue();
        assertThat(CalendarText.isUntouched(bytes("Order", "Glycerin", NOW.plusSeconds(60))))
                .isTrue();
        assertThat(CalendarText.isUntouched(changed.getBytes(StandardCharsets.UTF_8)))
                .isFalse();
        assertThat(CalendarText.isUntouched("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n".getBytes(StandardCharsets.UTF_8)))
                .isFalse();
    }

    private static byte[] bytes(String summary, String description, Instant made) {
        CalendarText.Event event = new CalendarText.Event("1@perkilo", DAY, summary, description);
        return new CalendarText(List.of(event), made).bytes();
    }
}
