package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.purchasing.Problems.d;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies on the shelf, on examples that can be followed by hand. */
final class ShelfTest {

    /** 10 kg left that can be used for 9 months at 0.8 kg a month: 7.2 kg are used, 2.8 kg expire in the ninth. */
    @Test
    void what_is_not_used_by_its_last_month_expires() {
        Shelf shelf =
                Shelf.of(need(Collections.nCopies(12, d("0.8")), List.of(new Need.Lot(d("10"), 9)), Need.UNLIMITED));

        assertThat(shelf.expired().get(8)).isEqualByComparingTo("2.8");
        assertThat(shelf.expired().stream().reduce(BigDecimal.ZERO, BigDecimal::add))
                .isEqualByComparingTo("2.8");
        assertThat(shelf.uncovered().subList(0, 9)).allMatch(missing -> missing.signum() == 0);
        assertThat(shelf.uncovered().subList(9, 12)).allMatch(missing -> missing.compareTo(d("0.8")) == 0);
        assertThat(shelf.left()).isEmpty();
    }

    @Test
    void a_purchase_that_expires_sooner_goes_before_older_stock() {
        Need need = need(List.of(d("5"), d("5")), List.of(new Need.Lot(d("5"), 6)), 1);

        Shelf shelf = Shelf.of(need, List.of(d("5"), d("0")));

        assertThat(shelf.uncovered()).allMatch(missing -> missing.signum() == 0);
        assertThat(shelf.expired()).allMatch(gone -> gone.signum() == 0);
    }

    @Test
    void what_has_expired_already_is_used_no_more() {
        Need need = need(List.of(d("5")), List.of(new Need.Lot(d("8"), 0)), Need.UNLIMITED);

        Shelf shelf = Shelf.of(need);

        assertThat(shelf.uncovered()).containsExactly(d("5"));
        assertThat(shelf.expired().get(0)).isEqualByComparingTo("8");
        assertThat(need.net()).containsExactly(d("5"));
    }

    @Test
    void stock_without_a_known_shelf_life_is_left_without_one() {
        Need need = need(List.of(d("5")), List.of(new Need.Lot(d("8"), Need.UNLIMITED)), Need.UNLIMITED);

        Shelf shelf = Shelf.of(need, List.of(d("2")));

        assertThat(shelf.left())
                .containsExactly(
                        new Shelf.Left(d("3"), Need.UNLIMITED, false), new Shelf.Left(d("2"), Need.UNLIMITED, true));
    }

    /** 6 kg come for the third of four months of 4 kg: months 1 and 2 go without, 2 kg of month 4 are missing. */
    @Test
    void goods_on_order_are_used_from_their_arrival_on() {
        Need need = need(Collections.nCopies(4, d("4")), List.of(new Need.Lot(d("6"), 2, 9)), Need.UNLIMITED);

        Shelf shelf = Shelf.of(need);

        assertThat(shelf.uncovered())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(d("4"), d("4"), d("0"), d("2"));
        assertThat(shelf.closing())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(d("0"), d("0"), d("2"), d("0"));
    }

    @Test
    void goods_that_come_after_the_last_month_are_not_on_the_shelf() {
        Need need = need(List.of(d("4"), d("4")), List.of(new Need.Lot(d("6"), 2, Need.UNLIMITED)), Need.UNLIMITED);

        Shelf shelf = Shelf.of(need);

        assertThat(shelf.uncovered()).containsExactly(d("4"), d("4"));
        assertThat(shelf.left()).isEmpty();
    }

    @Test
    void goods_that_have_expired_on_arrival_are_given_up_in_the_month_they_come() {
        Need need = need(List.of(d("4"), d("4")), List.of(new Need.Lot(d("6"), 1, 0)), Need.UNLIMITED);

        Shelf shelf = Shelf.of(need);

        assertThat(shelf.uncovered()).containsExactly(d("4"), d("4"));
        assertThat(shelf.expired())
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(d("0"), d("6"));
    }

    /**
     * Both keep for ever: 5 kg on order for month 2 go before the 8 kg that were bought for month 1, of which 3 are
     * needed.
     */
    @Test
    void of_equal_ones_what_is_on_order_goes_before_what_is_bought() {
        Need need = need(List.of(d("3"), d("5")), List.of(new Need.Lot(d("5"), 1, Need.UNLIMITED)), Need.UNLIMITED);

        Shelf shelf = Shelf.of(need, List.of(d("8"), d("0")));

        assertThat(shelf.left()).containsExactly(new Shelf.Left(d("5"), Need.UNLIMITED, true));
    }

    @Test
    void a_shelf_life_longer_than_anybody_plans_is_no_mistake() {
        Need need = need(Collections.nCopies(4, d("5")), List.of(), Need.UNLIMITED - 1);

        assertThat(Shelf.of(need, Collections.nCopies(4, d("5"))).uncovered())
                .allMatch(missing -> missing.signum() == 0);
    }

    private static Need need(List<BigDecimal> wanted, List<Need.Lot> stock, int usable) {
        return new Need("oil", wanted, stock, usable, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);
    }
}
