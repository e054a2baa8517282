package perkilo.units;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import perkilo.Ratio;
import perkilo.origin.Figure;

/** Rules of conversion that hold at any rate. */
final class RatesProperties {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 10);

    @Property(tries = 500)
    void there_and_back_returns_the_amount(
            @ForAll @BigRange(min = "0.01", max = "1000000") @Scale(2) BigDecimal amount,
            @ForAll @BigRange(min = "0.0001", max = "20000") @Scale(4) BigDecimal perEuro,
            @ForAll @BigRange(min = "0.0001", max = "20000") @Scale(4) BigDecimal otherPerEuro) {
        ExchangeRates table = new ExchangeRates(List.of(rate("USD", perEuro), rate("JPY", otherPerEuro)));

        BigDecimal there = conversion(table, "USD", "JPY").convert(amount);
        BigDecimal back = conversion(table, "JPY", "USD").convert(there);

        Ratio.of(amount).assertIs(back, "there and back");
    }

    @Property(tries = 500)
    void a_cross_is_the_quotient_of_its_rates(
            @ForAll @BigRange(min = "0.01", max = "1000000") @Scale(2) BigDecimal amount,
            @ForAll @BigRange(min = "0.0001", max = "20000") @Scale(4) BigDecimal perEuro,
            @ForAll @BigRange(min = "0.0001", max = "20000") @Scale(4) BigDecimal otherPerEuro) {
        ExchangeRates table = new ExchangeRates(List.of(rate("USD", perEuro), rate("JPY", otherPerEuro)));

        Ratio expected = Ratio.of(amount).times(Ratio.of(otherPerEuro)).by(Ratio.of(perEuro));

        expected.assertIs(conversion(table, "USD", "JPY").convert(amount), "USD to JPY");
    }

    private static Conversion conversion(ExchangeRates table, String from, String to) {
        return table.on(DAY, Currencies.of(from), Currencies.of(to)).orElseThrow();
    }

    private static DatedRate rate(String currency, BigDecimal perEuro) {
        return new DatedRate(Currencies.of("EUR"), Currencies.of(currency), Figure.of(perEuro), DAY, "random");
    }
}
