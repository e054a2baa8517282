package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import perkilo.Ratio;

/** What lies on the shelf, against a ledger kept in another way. */
final class ShelfProperties {

    @Provide
    Arbitrary<Need> needs() {
        return Problems.needs();
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    void what_expires_first_is_used_first(
            @ForAll("needs") Need need,
            @ForAll @Size(3) List<@BigRange(min = "0", max = "90") @Scale(3) BigDecimal> bought) {
        List<BigDecimal> arriving = bought.subList(0, need.perPeriod().size());
        Shelf shelf = Shelf.of(need, arriving);
        Ledger ledger = new Ledger(need, arriving);

        assertThat(fractions(shelf.uncovered())).isEqualTo(ledger.uncovered());
        assertThat(fractions(shelf.closing())).isEqualTo(ledger.closing());
        assertThat(fractions(shelf.expired())).isEqualTo(ledger.expired());
        assertThat(Ratio.sum(shelf.left().stream().map(left -> Ratio.of(left.quantity()))))
                .isEqualTo(ledger.left());
        assertThat(Ratio.of(shelf.leftFromPurchases())).isEqualTo(ledger.leftFromPurchases());
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    void nothing_is_lost(
            @ForAll("needs") Need need,
            @ForAll @Size(3) List<@BigRange(min = "0", max = "90") @Scale(3) BigDecimal> bought) {
        List<BigDecimal> arriving = bought.subList(0, need.perPeriod().size());
        Shelf shelf = Shelf.of(need, arriving);

        BigDecimal in = need.stock().stream()
                .filter(lot -> lot.arrival() < need.perPeriod().size())
                .map(Need.Lot::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .add(arriving.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        BigDecimal used = need.total().subtract(shelf.uncovered().stream().reduce(BigDecimal.ZERO, BigDecimal::add));
        BigDecimal expired = shelf.expired().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal left = shelf.left().stream().map(Shelf.Left::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);

        assertThat(used.add(expired).add(left)).isEqualByComparingTo(in);
    }

    private static List<Ratio> fractions(List<BigDecimal> decimals) {
        return decimals.stream().map(Ratio::of).toList();
    }
}
