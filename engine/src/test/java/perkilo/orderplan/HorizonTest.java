package perkilo.orderplan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Finding;

/** Which months are planned for, when an order has to be placed, and how long a lot may be used. */
final class HorizonTest {

    @ParameterizedTest(name = "today {0}, {1} days on the way: there for {2}")
    @CsvSource({
        // today is the first of a month and nothing takes time: the month itself
        "2027-03-01, 0, 2027-03",
        "2027-03-02, 0, 2027-04",
        // 4 March + 28 days = 1 April exactly; a day more is too late
        "2027-03-04, 28, 2027-04",
        "2027-03-04, 29, 2027-05",
        // 31 January + 30 days is 1 March in a leap year, and 2 March in others
        "2028-01-31, 30, 2028-03",
        "2028-01-31, 31, 2028-04",
        "2027-01-31, 29, 2027-03",
        "2027-01-31, 30, 2027-04",
        "2028-02-29, 1, 2028-03",
        "2027-12-31, 1, 2028-01",
        "2026-11-25, 40, 2027-02",
    })
    void the_first_month_that_goods_can_be_there_for(LocalDate today, int days, String month) {
        Horizon horizon = from(today, 6);
        int period = horizon.firstPeriod(days);
        assertThat(YearMonth.from(horizon.firstDay(period))).isEqualTo(YearMonth.parse(month));
        assertThat(horizon.firstDay(period).minusDays(days)).isAfterOrEqualTo(today);
    }

    @ParameterizedTest(name = "planned from {0}, usable until {1}: {2} months")
    @CsvSource({
        "2027-01-15, 2026-12-31, 0",
        // it expires in the first month: not to be used at all, but on its last day
        "2027-01-15, 2027-01-30, 0",
        "2027-01-15, 2027-01-31, 1",
        "2027-01-15, 2027-02-27, 1",
        "2027-01-15, 2027-02-28, 2",
        "2028-01-15, 2028-02-28, 1",
        "2028-01-15, 2028-02-29, 2",
        "2027-11-01, 2028-03-30, 4",
        "2027-11-01, 2020-01-01, 0",
    })
    void a_lot_may_be_used_in_the_months_that_end_on_or_before_its_last_day(
            LocalDate today, LocalDate lastDay, int months) {
        assertThat(from(today, 6).usablePeriods(lastDay)).isEqualTo(months);
    }

    @Test
    void it_goes_from_the_month_of_the_costing_date_to_the_last_month_of_the_demand() {
        Horizon horizon = Horizon.of(new Trade("2026-11-25")
                .demand("Balm", "10", "2027-02-01")
                .demand("Balm", "10", "2026-12-31")
                .book());
        assertThat(horizon.months()).hasToString("[2026-11, 2026-12, 2027-01, 2027-02]");
        assertThat(horizon.periodOf(LocalDate.parse("2027-01-31"))).isEqualTo(2);
        assertThat(horizon.name(2)).isEqualTo("January 2027");
    }

    @Test
    void demand_in_the_past_or_more_than_a_year_away_is_named_by_its_row() {
        List<Finding> problems = Horizon.problems(new Trade("2026-11-25")
                .demand("Balm", "10", "2026-11-24")
                .demand("Balm", "10", "2026-11-25")
                .demand("Lotion", "10", "2027-10-31")
                .demand("Lotion", "10", "2027-11-01")
                .book());
        assertThat(problems)
                .extracting(Finding::toString)
                .containsExactly(
                        "error Demand!A2: \"Balm\" is needed by 2026-11-24, before the costing date of 2026-11-25. Correct"
                                + " the date, or plan from an earlier costing date.",
                        "error Demand!A5: \"Lotion\" is needed by 2027-11-01, but orders are planned for 12 months, to the"
                                + " end of October 2027. Remove the row for now.");
    }

    @Test
    void without_demand_there_is_nothing_to_plan_for() {
        assertThat(Horizon.problems(new Trade("2026-11-25").book()))
                .extracting(Finding::text)
                .containsExactly(
                        "There is no demand to plan for. Add a sheet Demand with the columns Product, Units and Needed by.");
    }

    private static Horizon from(LocalDate today, int months) {
        return new Horizon(
                today,
                Stream.iterate(YearMonth.from(today), month -> month.plusMonths(1))
                        .limit(months)
                        .toList());
    }
}
