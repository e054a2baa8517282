package perkilo.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import javax.money.MonetaryAmount;
import javax.money.convert.ConversionQueryBuilder;
import javax.money.convert.CurrencyConversionException;
import javax.money.convert.ExchangeRate;
import javax.money.convert.ExchangeRateProvider;
import org.junit.jupiter.api.Test;

/**
 * A table of rates, used through the interfaces of JSR 354.
 *
 * <p>Rates: euro foreign exchange reference rates of the European Central Bank ({@code ecb-reference-rates.csv}).
 */
final class TableRateProviderTest {

    private static final LocalDate FEBRUARY = LocalDate.of(2023, 2, 21);

    private final ExchangeRateProvider provider =
            new TableRateProvider(PublishedRates.ofTheEuropeanCentralBank(), FEBRUARY);

    @Test
    void the_factor_is_the_rate_of_the_usual_date() {
        ExchangeRate rate = provider.getExchangeRate("EUR", "USD");

        assertThat(decimal(rate)).isEqualByComparingTo("1.0664");
        assertThat(rate.getBaseCurrency().getCurrencyCode()).isEqualTo("EUR");
        assertThat(rate.getCurrency().getCurrencyCode()).isEqualTo("USD");
        assertThat(rate.getExchangeRateChain()).containsExactly(rate);
    }

    @Test
    void a_query_may_name_another_date() {
        ExchangeRate rate = provider.getExchangeRate(ConversionQueryBuilder.of()
                .setBaseCurrency("EUR")
                .setTermCurrency("CNY")
                .set(LocalDate.of(2022, 12, 30))
                .build());

        assertThat(decimal(rate)).isEqualByComparingTo("7.3582");
        assertThat(rate.getContext().get(LocalDate.class)).isEqualTo(LocalDate.of(2022, 12, 30));
    }

    @Test
    void a_cross_shows_the_rates_it_rests_on_in_the_direction_they_are_used() {
        ExchangeRate rate = provider.getExchangeRate("USD", "JPY");

        // 1 / 1.0664, and 143.76
        assertThat(rate.getExchangeRateChain()).hasSize(2);
        ExchangeRate first = rate.getExchangeRateChain().get(0);
        ExchangeRate second = rate.getExchangeRateChain().get(1);
        assertThat(first.getBaseCurrency().getCurrencyCode()).isEqualTo("USD");
        assertThat(first.getCurrency().getCurrencyCode()).isEqualTo("EUR");
        assertThat(decimal(first).multiply(new BigDecimal("1.0664")))
                .isCloseTo(BigDecimal.ONE, within(new BigDecimal("1e-32")));
        assertThat(second.getBaseCurrency().getCurrencyCode()).isEqualTo("EUR");
        assertThat(second.getCurrency().getCurrencyCode()).isEqualTo("JPY");
        assertThat(decimal(second)).isEqualByComparingTo("143.76");
    }

    @Test
    void an_amount_is_converted_unrounded() {
        MonetaryAmount dollars = Currencies.money(new BigDecimal("100"), Currencies.of("USD"));

        MonetaryAmount yen = dollars.with(provider.getCurrencyConversion("JPY"));

        assertThat(yen.getCurrency().getCurrencyCode()).isEqualTo("JPY");
        // 100 / 1.0664 × 143.76
        assertThat(yen.getNumber().numberValue(BigDecimal.class))
                .isCloseTo(new BigDecimal("13480.8702175544"), within(new BigDecimal("1e-9")));
    }

    @Test
    void an_amount_in_its_own_currency_stays_as_it_is() {
        MonetaryAmount euros = Currencies.money(new BigDecimal("12.345"), Currencies.of("EUR"));

        assertThat(euros.with(provider.getCurrencyConversion("EUR"))).isEqualTo(euros);
    }

    @Test
    void a_rate_that_nobody_lists_is_an_exception_that_names_the_day() {
        assertThatThrownBy(() -> provider.getExchangeRate("EUR", "KWD"))
                .isInstanceOf(CurrencyConversionException.class)
                .hasMessageContaining("EUR")
                .hasMessageContaining("KWD")
                .hasMessageContaining("no rate on or before 2023-02-21");
    }

    private static BigDecimal decimal(ExchangeRate rate) {
        return rate.getFactor().numberValue(BigDecimal.class);
    }
}
