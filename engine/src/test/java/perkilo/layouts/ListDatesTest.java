package perkilo.layouts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates as people write them in five languages. */
final class ListDatesTest {

    private static final ListDates DATES = new ListDates(Optional.empty());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // figures alone
                "2026-11-15                | 2026-11-15",
                "2026/11/15                | 2026-11-15",
                "2026.11.15                | 2026-11-15",
                "2026-11-15T08:30          | 2026-11-15",
                "2026-11-15 08:30:00       | 2026-11-15",
                "15.11.2026                | 2026-11-15",
                "15.11.26                  | 2026-11-15",
                "15. 11. 2026              | 2026-11-15",
                "1.2.2027                  | 2027-02-01",
                "01.02.27                  | 2027-02-01",
                "15/11/2026                | 2026-11-15",
                "15/11/26                  | 2026-11-15",
                "11/15/2026                | 2026-11-15",
                "11/15/26                  | 2026-11-15",
                "15-11-2026                | 2026-11-15",
                "15-11-26                  | 2026-11-15",
                "03/03/2027                | 2027-03-03",
                "3/3/27                    | 2027-03-03",
                // English
                "15 November 2026          | 2026-11-15",
                "15 Nov 2026               | 2026-11-15",
                "15 Nov. 2026              | 2026-11-15",
                "15 nov 26                 | 2026-11-15",
                "15-Nov-2026               | 2026-11-15",
                "15-Nov-26                 | 2026-11-15",
                "15Nov2026                 | 2026-11-15",
                "15 Nov '26                | 2026-11-15",
                "15th November 2026        | 2026-11-15",
                "1st of January 2027       | 2027-01-01",
                "2nd February, 2027        | 2027-02-02",
                "3rd Mar 2027              | 2027-03-03",
                "November 15, 2026         | 2026-11-15",
                "Nov 15, 2026              | 2026-11-15",
                "Nov. 15 2026              | 2026-11-15",
                "November 15th, 2026       | 2026-11-15",
                "Sept 1, 2026              | 2026-09-01",
                "end of March 2027         | 2027-03-31",
                "end Feb 2028              | 2028-02-29",
                "Jan 27                    | 2027-01-01..2027-01-31",
                "January 2027              | 2027-01-01..2027-01-31",
                "Dec-26                    | 2026-12-01..2026-12-31",
                "Feb 2028                  | 2028-02-01..2028-02-29",
                "Q1 2027                   | 2027-01-01..2027-03-31",
                "Q4/26                     | 2026-10-01..2026-12-31",
                "2027 Q2                   | 2027-04-01..2027-06-30",
                "2027-Q3                   | 2027-07-01..2027-09-30",
                "1st quarter 2027          | 2027-01-01..2027-03-31",
                "H1 2027                   | 2027-01-01..2027-06-30",
                "H2/2026                   | 2026-07-01..2026-12-31",
                "2026-W48                  | 2026-11-23..2026-11-29",
                "2026W48                   | 2026-11-23..2026-11-29",
                "week 1 2027               | 2027-01-04..2027-01-10",
                "CW 53/2026                | 2026-12-28..2027-01-03",
                "W48 2026                  | 2026-11-23..2026-11-29",
                "11/2026                   | 2026-11-01..2026-11-30",
                "2026-11                   | 2026-11-01..2026-11-30",
                // German
                "15. November 2026         | 2026-11-15",
                "15. Nov. 26               | 2026-11-15",
                "15.Nov.2026               | 2026-11-15",
                "1. Jänner 2027            | 2027-01-01",
                "1. Jaenner 2027           | 2027-01-01",
                "1. Januar 2027            | 2027-01-01",
                "1. Feber 2027             | 2027-02-01",
                "28. Februar 2027          | 2027-02-28",
                "3. März 2027              | 2027-03-03",
                "3. Maerz 2027             | 2027-03-03",
                "3. Mrz. 2027              | 2027-03-03",
                "30. April 2027            | 2027-04-30",
                "1. Mai 2027               | 2027-05-01",
                "1. Juni 2027              | 2027-06-01",
                "1. Juli 2027              | 2027-07-01",
                "31. August 2027           | 2027-08-31",
                "1. Okt. 2026              | 2026-10-01",
                "3. Oktober 26             | 2026-10-03",
                "24. Dez. 2026             | 2026-12-24",
                "31. Dezember 2026         | 2026-12-31",
                "Ende März 2027            | 2027-03-31",
                "März 2027                 | 2027-03-01..2027-03-31",
                "Dez. 26                   | 2026-12-01..2026-12-31",
                "KW 48/2026                | 2026-11-23..2026-11-29",
                "KW48 2026                 | 2026-11-23..2026-11-29",
                "KW 48/26                  | 2026-11-23..2026-11-29",
                "48. KW 2026               | 2026-11-23..2026-11-29",
                "Kalenderwoche 2 2027      | 2027-01-11..2027-01-17",
                "1. Quartal 2027           | 2027-01-01..2027-03-31",
                "2. Halbjahr 2026          | 2026-07-01..2026-12-31",
                // French
                "15 novembre 2026          | 2026-11-15",
                "15 nov. 2026              | 2026-11-15",
                "1er janvier 2027          | 2027-01-01",
                "1er janv. 27              | 2027-01-01",
                "2 février 2027            | 2027-02-02",
                "2 fevr. 2027              | 2027-02-02",
                "15 févr. 2027             | 2027-02-15",
                "8 mars 2027               | 2027-03-08",
                "1er avril 2027            | 2027-04-01",
                "1er avr. 2027             | 2027-04-01",
                "8 mai 2027                | 2027-05-08",
                "21 juin 2027              | 2027-06-21",
                "14 juillet 2027           | 2027-07-14",
                "14 juil. 2027             | 2027-07-14",
                "15 août 2027              | 2027-08-15",
                "15 aout 27                | 2027-08-15",
                "1er septembre 2026        | 2026-09-01",
                "31 octobre 2026           | 2026-10-31",
                "31 décembre 2026          | 2026-12-31",
                "31 déc. 2026              | 2026-12-31",
                "fin mars 2027             | 2027-03-31",
                "fin de décembre 2026      | 2026-12-31",
                "décembre 2026             | 2026-12-01..2026-12-31",
                "semaine 48 2026           | 2026-11-23..2026-11-29",
                "1er trimestre 2027        | 2027-01-01..2027-03-31",
                "T4 2026                   | 2026-10-01..2026-12-31",
                "2e semestre 2026          | 2026-07-01..2026-12-31",
                // Italian
                "1° gennaio 2027           | 2027-01-01",
                "1º gennaio 2027           | 2027-01-01",
                "15 gen. 2027              | 2027-01-15",
                "28 febbraio 2027          | 2027-02-28",
                "15 marzo 2027             | 2027-03-15",
                "30 aprile 2027            | 2027-04-30",
                "15 maggio 2027            | 2027-05-15",
                "2 giugno 2027             | 2027-06-02",
                "31 luglio 2027            | 2027-07-31",
                "15 agosto 2027            | 2027-08-15",
                "15 settembre 2026         | 2026-09-15",
                "15 sett. 26               | 2026-09-15",
                "15 ottobre 2026           | 2026-10-15",
                "15 ott 2026               | 2026-10-15",
                "1 novembre 2026           | 2026-11-01",
                "31 dicembre 2026          | 2026-12-31",
                "31 dic. 26                | 2026-12-31",
                "fine marzo 2027           | 2027-03-31",
                "settimana 48/2026         | 2026-11-23..2026-11-29",
                "1° trimestre 2027         | 2027-01-01..2027-03-31",
                // Spanish
                "15 de noviembre de 2026   | 2026-11-15",
                "15 noviembre 2026         | 2026-11-15",
                "1 de enero de 2027        | 2027-01-01",
                "1º de enero de 2027       | 2027-01-01",
                "15 ene. 2027              | 2027-01-15",
                "28 de febrero del 2027    | 2027-02-28",
                "15 de marzo de 2027       | 2027-03-15",
                "15 abr 2027               | 2027-04-15",
                "1 de mayo de 2027         | 2027-05-01",
                "1 de junio de 2027        | 2027-06-01",
                "1 de julio de 2027        | 2027-07-01",
                "31 de agosto de 2027      | 2027-08-31",
                "15 de septiembre de 2026  | 2026-09-15",
                "15 de setiembre de 2026   | 2026-09-15",
                "31 de octubre de 2026     | 2026-10-31",
                "31 de diciembre de 2026   | 2026-12-31",
                "diciembre de 2026         | 2026-12-01..2026-12-31",
                "semana 48/2026            | 2026-11-23..2026-11-29",
                "1º trimestre de 2027      | 2027-01-01..2027-03-31",
                "finales de marzo de 2027  | 2027-03-31",
            })
    void a_date_is_read_as_people_write_it(String text, String days) {
        assertThat(DATES.one(text)).as(text).isPresent();
        assertThat(said(DATES.one(text).orElseThrow())).as(text).isEqualTo(days);
        assertThat(DATES.all(text)).as("\"%s\" in a longer text", text).hasSize(1);
    }

    private static String said(ListDates.Read read) {
        return read.isRough() ? read.day() + ".." + read.last() : Objects.toString(read.day());
    }

    @ParameterizedTest
    @ValueSource(strings = {"01/02/2027", "1/2/27", "03-04-2026", "11/12/26", "10-11-12"})
    void a_date_that_can_be_two_days_is_neither(String text) {
        ListDates.Read read = DATES.one(text).orElseThrow();
        assertThat(read.ambiguous()).isTrue();
        assertThat(read.day()).isNull();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "31.02.2027",
                "2026-13-01",
                "32/13/2026",
                "15 Foo 2026",
                "Jan 5",
                "01.02.27.33.44",
                "12.50",
                "KW 60/2026",
                "1.250,00",
                "Marzipan 27",
                "Jan 27 %",
                "Q5 2027",
                "15.11.1926",
                "May 10.50",
                "25 kg"
            })
    void what_is_no_date_is_not_read_as_one(String text) {
        assertThat(DATES.one(text)).isEmpty();
    }

    @Test
    void other_dates_of_the_list_decide_the_order() {
        assertThat(DATES.shownBy(() -> List.of("x 25/11/2026"))
                        .one("01/02/2027")
                        .orElseThrow()
                        .day())
                .hasToString("2027-02-01");
        assertThat(DATES.shownBy(() -> List.of("11/25/2026"))
                        .one("01/02/2027")
                        .orElseThrow()
                        .day())
                .hasToString("2027-01-02");
        assertThat(DATES.shownBy(() -> List.of("11/25/2026", "25/11/2026"))
                        .one("01/02/2027")
                        .orElseThrow()
                        .ambiguous())
                .isTrue();
        assertThat(DATES.shownBy(() -> List.of("25.11.2026"))
                        .one("01/02/2027")
                        .orElseThrow()
                        .ambiguous())
                .as("dates with points say nothing of dates with slashes")
                .isTrue();
    }

    @Test
    void dates_in_a_line_are_found_from_left_to_right_with_what_is_before_them() {
        assertThat(DATES.all("Preisliste Nr. 3 vom 15.11.2026, gültig bis 31. Dez. 26 (Tel. 01.02.27.33.44)"))
                .extracting(date -> date.before() + "#" + date.text())
                .containsExactly("Preisliste Nr. 3 vom #15.11.2026", ", gültig bis #31. Dez. 26");
    }
}
