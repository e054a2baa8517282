package perkilo.purchasing;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** The short way to a quotient leads to the same digits as the long one. */
final class QuotientProperties {

    @Property
    void short_quotients_are_those_of_the_long_way(
            @ForAll @BigRange(min = "-1000000000", max = "1000000000") @Scale(4) BigDecimal dividend,
            @ForAll @IntRange(min = 1, max = 5000) int divisor,
            @ForAll @IntRange(max = 3) int decimals) {
        BigDecimal by = BigDecimal.valueOf(divisor, decimals);

        assertThat(Quotient.of(dividend, by)).isEqualTo(dividend.divide(by, MathContext.DECIMAL128));
    }

    @Property
    void long_numbers_are_divided_to_34_digits(
            @ForAll @BigRange(min = "1", max = "1000000000000000000000000000000") @Scale(20) BigDecimal dividend,
            @ForAll @BigRange(min = "0.001", max = "100000000000000000000") @Scale(3) BigDecimal divisor) {
        assertThat(Quotient.of(dividend, divisor)).isEqualTo(dividend.divide(divisor, MathContext.DECIMAL128));
    }
}
