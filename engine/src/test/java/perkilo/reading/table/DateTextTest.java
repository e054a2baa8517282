package perkilo.reading.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Days in text. */
final class DateTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-04-03 | 2026-04-03",
                "2026/4/3 | 2026-04-03",
                "3 Apr 2026 | 2026-04-03",
                "3-Apr-2026 | 2026-04-03",
                "3. April 2026 | 2026-04-03",
                "Sept 3, 2026 | 2026-09-03",
                "Apr 3, 2026 | 2026-04-03",
                "19 November 2026 | 2026-11-19",
                "25/04/2026 | 2026-04-25",
                "04/25/2026 | 2026-04-25",
                "4.4.2026 | 2026-04-04",
                "3 Apr 26 | 2026-04-03",
                "03.04.2026 | 2026-04-03",
                "3.4.26 | 2026-04-03",
                "15 nov. 2026 | 2026-11-15",
                "1er avril 2026 | 2026-04-01",
                "12. März 2026 | 2026-03-12",
                "3 de mayo de 2026 | 2026-05-03",
                "9 gennaio 2027 | 2027-01-09",
                "2026-04-03T00:00:00 | 2026-04-03"
            })
    void a_day_that_can_only_be_one(String text, LocalDate day) {
        assertThat(DateText.parse(text)).isEqualTo(new DateText.Parsed(day));
    }

    @Test
    void day_and_month_that_can_be_either() {
        assertThat(DateText.parse("03/04/2026"))
                .isEqualTo(new DateText.Ambiguous(LocalDate.of(2026, 4, 3), LocalDate.of(2026, 3, 4)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-02-30", "31 Feb 2026", "soon", "46000", "13/13/2026", "3 Foo 2026", ""})
    void no_day(String text) {
        assertThat(DateText.parse(text)).isEqualTo(new DateText.NotADate());
    }
}
