package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What decides between plans that cost the same, one thing after another. */
final class PreferenceTest {

    @Test
    void each_thing_counts_for_more_than_all_that_follow() {
        List<Preference> fromTheBest = List.of(
                of(1, 2, 2, "9", 100, 0),
                of(2, 1, 1, "9", 100, 0),
                of(2, 2, 0, "9", 100, 0),
                of(2, 2, 1, "9", 40, 60),
                of(2, 2, 1, "8", 50, 50),
                of(2, 2, 1, "9", 50, 50));
        for (int better = 0; better < fromTheBest.size(); better++) {
            for (int worse = 0; worse < fromTheBest.size(); worse++) {
                assertThat(fromTheBest.get(better).isBetterThan(fromTheBest.get(worse)))
                        .as("%s before %s", better, worse)
                        .isEqualTo(better < worse);
            }
        }
    }

    private static Preference of(int orders, int lines, int unheld, String bought, int... outlay) {
        return new Preference(
                orders,
                lines,
                unheld,
                Arrays.stream(outlay).mapToObj(BigDecimal::valueOf).toList(),
                new BigDecimal(bought));
    }
}
