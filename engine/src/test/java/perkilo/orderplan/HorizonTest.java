package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Finding;
import perkilo.purchasing.Need;

/** Which days are planned for, what can serve them, and on which days orders are placed. */
final class HorizonTest {

    private final Horizon horizon = Horizon.of(
            LocalDate.parse("2027-01-15"),
            List.of(LocalDate.parse("2027-02-10"), LocalDate.parse("2027-01-20"), LocalDate.parse("2027-02-01")));

    @ParameterizedTest(name = "there on {0}: serves need {1}")
    @CsvSource({"2027-01-15, 0", "2027-01-20, 0", "2027-01-21, 1", "2027-02-01, 1", "2027-02-10, 2", "2027-02-11, 3"})
    void what_arrives_serves_the_first_need_from_that_day_on(LocalDate day, int period) {
        assertThat(horizon.periodFrom(day)).isEqualTo(period);
    }

    @ParameterizedTest(name = "good until {0}: serves needs until {1}")
    @CsvSource({
        "2027-01-19, -1",
        // the last day of use counts
        "2027-01-20, 0",
        "2027-01-31, 0",
        "2027-02-01, 1",
        "2027-02-10, 2",
        // after the end, later is more: 11 February is a day later, 10 March 28
        "2027-02-11, 3",
        "2027-03-10, 30",
    })
    void what_expires_serves_needs_until_its_last_day(LocalDate day, int period) {
        assertThat(horizon.lastUse(day)).isEqualTo(period);
    }

    @Test
    void what_has_no_end_serves_all() {
        assertThat(horizon.lastUse(null)).isEqualTo(Need.UNLIMITED);
    }

    @Test
    void its_days_are_those_of_the_needs() {
        assertThat(horizon.days()).hasToString("[2027-01-20, 2027-02-01, 2027-02-10]");
        assertThat(horizon.lengths()).containsExactly(12, 9, 0);
        assertThat(horizon.months()).isEqualTo(2);
    }

    @ParameterizedTest(name = "arrives on {0}, keeps {1} months {2} days: until {3}")
    @CsvSource({
        "2027-01-15, 2, 0, 2027-03-14",
        // the day of the month is kept, or else the month's last
        "2027-12-31, 2, 0, 2028-02-28",
        "2027-01-31, 1, 0, 2027-02-27",
        "2027-01-15, 0, 15, 2027-01-29",
        "2027-01-15, 1, 15, 2027-03-01",
    })
    void goods_keep_for_their_shelf_life(LocalDate arrival, int months, int days, LocalDate last) {
        assertThat(new ShelfLife(months, days).lastDay(arrival)).isEqualTo(last);
    }

    @Test
    void orders_are_placed_on_working_days() {
        // 25 December 2026 is a Friday
        WorkDays days = new WorkDays(Set.of(LocalDate.parse("2026-12-25")));
        assertThat(days.onOrBefore(LocalDate.parse("2026-12-27"))).isEqualTo("2026-12-24");
        assertThat(days.onOrAfter(LocalDate.parse("2026-12-25"))).isEqualTo("2026-12-28");
        assertThat(days.onOrAfter(LocalDate.parse("2026-12-24"))).isEqualTo("2026-12-24");
    }

    @Test
    void demand_in_the_past_is_named_by_its_row() {
        List<Finding> problems = Horizon.problems(new Trade("2026-11-25")
                .demand("Balm", "10", "2026-11-24")
                .demand("Balm", "10", "2026-11-25")
                .demand("Lotion", "10", "2029-10-31")
                .book());
        assertThat(problems)
                .extracting(Finding::toString)
                .containsExactly(
                        "error Demand!A2: \"Balm\" is needed by 2026-11-24, before the costing date of 2026-11-25. Correct"
                                + " the date, or plan from an earlier costing date.");
    }

    @Test
    void so_many_days_are_planned_for_and_no_more() {
        Trade trade = new Trade("2026-11-25");
        LocalDate first = LocalDate.parse("2026-12-01");
        IntStream.range(0, Horizon.MOST + 1)
                .forEach(day -> trade.demand("Balm", "10", first.plusDays(day).toString()));
        assertThat(Horizon.problems(trade.book()))
                .extracting(Finding::text)
                .containsExactly(
                        "\"Balm\" is needed by 2027-03-31, but orders are planned for 120 days with needs, the last of them"
                                + " 2027-03-30. Remove the row for now.");
    }

    @Test
    void without_demand_there_is_nothing_to_plan_for() {
        assertThat(Horizon.problems(new Trade("2026-11-25").book()))
                .extracting(Finding::text)
                .containsExactly(
                        "There is no demand to plan for. Add a sheet Demand with the columns Product, Units and Needed by.");
    }
}
