package perkilo.swaps.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;

/** Levels by active matter: w' = w · A / A'. */
final class DosingTest {

    private static final Material WATER = Kit.catalogued("Water");
    private static final Material LAURETH = Kit.catalogued("Sodium laureth sulfate 70 %");
    private static final Material COCO = Kit.catalogued("Sodium coco-sulfate");

    /** 10 % × 70 / 92 = 7.608696 %; the water takes the 2.391304 % that are left. */
    @Test
    void the_balance_takes_the_difference() {
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "10", LAURETH)
                .trial(1, COCO);

        assertThat(trial.dose().to().movePointRight(2).doubleValue()).isEqualTo(7.608695652173913);
        assertThat(trial.after().portions().get(0).level().movePointRight(2).doubleValue())
                .isCloseTo(92.3913043478261, within(1e-12));
        assertThat(trial.after().formula().lines().get(0).isBalance()).isTrue();
        assertThat(trial.dose().cautions()).isEmpty();
    }

    @Test
    void without_a_balance_line_process_water_takes_it() {
        Trial trial = new Kit()
                .line("A", "", "90", WATER)
                .line("A", "", "10", LAURETH)
                .trial(1, COCO);
        Formula after = trial.after().formula();

        assertThat(trial.dose().balanced()).isTrue();
        assertThat(after.stated().doubleValue()).isEqualTo(1);
        assertThat(trial.dose().cautions())
                .as("a typed level changes")
                .containsExactly("No line takes the balance (q.s.), so Water goes from 90 % to 92.3913 %.");
    }

    @Test
    void a_balance_that_has_too_little_to_give_is_reported() {
        Material weak = Kit.catalogued("Ammonium lauryl sulfate solution");
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "60", LAURETH)
                .trial(1, weak);

        assertThat(trial.dose().balanced()).isFalse();
        assertThat(trial.dose().why()).startsWith("Water has only 40 % to give, but ");
    }

    @Test
    void active_matter_that_is_not_known_keeps_the_level_and_is_a_caution() {
        Trial trial = new Kit()
                .line("A", "", "q.s.", WATER)
                .line("A", "", "10", LAURETH)
                .trial(1, Varied.trait(Kit.catalogued("Sodium lauroyl methyl isethionate"), "active", null));

        assertThat(trial.dose().to()).isEqualByComparingTo("0.1");
        assertThat(trial.dose().cautions())
                .containsExactly(
                        "The active matter of Sodium lauroyl methyl isethionate is not known, so the level stays the same.");
    }
}
