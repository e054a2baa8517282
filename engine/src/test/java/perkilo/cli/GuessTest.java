package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be meant by a word that is not known. */
final class GuessTest {

    private static final List<String> KNOWN = List.of("check", "cost", "order", "swap", "prices", "rates", "new");

    @ParameterizedTest
    @CsvSource({
        "csot, cost", // two letters exchanged are one slip
        "COST, cost",
        "ordr, order",
        "swpa, swap",
        "orders, order",
        "costing, cost",
        "price, prices",
        "rate, rates",
        "prise, prices",
        "--cost, cost",
        "ch, check"
    })
    void one_is_near(String typed, String meant) {
        assertThat(Guess.near(typed, KNOWN)).containsExactly(meant);
    }

    @ParameterizedTest
    @CsvSource({"frob", "c", "list", "''", "x"})
    void none_is_near(String typed) {
        assertThat(Guess.near(typed, KNOWN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"pr, prices;product", "cat, cut;cot"})
    void several_are_as_near(String typed, String meant) {
        assertThat(Guess.near(typed, List.of("prices", "product", "cut", "cot", "order")))
                .containsExactlyElementsOf(Arrays.asList(meant.split(";")));
    }

    @ParameterizedTest
    @CsvSource({"'', '', 0", "a, '', 1", "ab, ba, 1", "kitten, sitting, 3", "ca, abc, 3", "abcd, acbd, 1"})
    void slips_are_counted(String one, String other, int slips) {
        assertThat(Guess.slips(one, other)).isEqualTo(slips);
        assertThat(Guess.slips(other, one)).isEqualTo(slips);
    }
}
