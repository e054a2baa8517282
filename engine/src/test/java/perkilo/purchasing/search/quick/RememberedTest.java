package perkilo.purchasing.search.quick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A memory that stays small and never mixes things up. */
final class RememberedTest {

    private final List<Integer> workedOut = new ArrayList<>();
    private final Remembered<Integer, Integer> squares = new Remembered<>(3);

    private int square(int number) {
        return squares.of(number, asked -> {
            workedOut.add(asked);
            return asked * asked;
        });
    }

    @Test
    void what_is_known_is_not_worked_out_again() {
        assertThat(List.of(square(2), square(3), square(2))).containsExactly(4, 9, 4);
        assertThat(workedOut).containsExactly(2, 3);
    }

    @Test
    void when_it_is_full_it_starts_anew() {
        assertThat(List.of(square(1), square(2), square(3), square(4), square(1)))
                .containsExactly(1, 4, 9, 16, 1);
        assertThat(workedOut).containsExactly(1, 2, 3, 4, 1);
    }
}
