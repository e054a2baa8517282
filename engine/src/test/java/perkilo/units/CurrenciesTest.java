package perkilo.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.money.CurrencyUnit;
import javax.money.Monetary;
import javax.money.MonetaryAmount;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Currencies by their codes, and amounts that keep every digit. */
final class CurrenciesTest {

    private static final CurrencyUnit EUR = Currencies.of("EUR");

    /**
     * Minor units as the JDK ships them from ISO 4217 ({@code iso4217-minor-units.csv}). The engine uses the same
     * source, so this test shows that no digit changes on the way, and it fails if a later JDK differs. It does not
     * prove that the JDK is right.
     */
    @Test
    void minor_units_are_those_of_iso_4217() {
        PublishedRates.rows("iso4217-minor-units.csv")
                .forEach(row -> assertThat(Currencies.minorDigits(Currencies.of(row[0])))
                        .as(row[0])
                        .isEqualTo(Integer.parseInt(row[1])));
    }

    /** The standard's registry, which the engine does not use, has the same currencies. */
    @Test
    void the_registry_of_the_standard_agrees() {
        assertThat(Monetary.getCurrencies()).hasSizeGreaterThan(150).allSatisfy(registered -> {
            CurrencyUnit found = Currencies.of(registered.getCurrencyCode());
            assertThat(found).isEqualTo(registered);
            assertThat(registered).isEqualTo(found);
            assertThat(found.getDefaultFractionDigits()).isEqualTo(registered.getDefaultFractionDigits());
        });
    }

    /** 1,234.5675 in currencies with zero, two, three and four decimals. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"JPY, 1235", "EUR, 1234.57", "KWD, 1234.568", "CLF, 1234.5675"})
    void an_invoice_is_rounded_to_the_minor_unit(String currency, String invoiced) {
        assertThat(Currencies.invoiced(new BigDecimal("1234.5675"), Currencies.of(currency)))
                .isEqualTo(new BigDecimal(invoiced));
    }

    /** Gold (XAU) has no minor unit in ISO 4217: it is rounded to whole units, never to tens. */
    @Test
    void what_has_no_minor_unit_is_rounded_to_whole_units() {
        assertThat(Currencies.minorDigits(Currencies.of("XAU"))).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"eur", " EUR ", "Eur"})
    void a_code_is_found_in_any_case(String code) {
        assertThat(Currencies.find(code)).contains(EUR);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "EURO", "€", "QQQ", "E"})
    void what_is_no_code_is_not_found(String code) {
        assertThat(Currencies.find(code)).isEmpty();
    }

    @Test
    void an_amount_keeps_34_digits() {
        BigDecimal third = BigDecimal.ONE.divide(BigDecimal.valueOf(3), MathContext.DECIMAL128);

        assertThat(decimal(Currencies.money(third, EUR))).isEqualByComparingTo("0." + "3".repeat(34));
    }

    @Test
    void large_amounts_keep_their_cents_and_what_is_below_them() {
        BigDecimal amount = new BigDecimal("123456789012345678.0123456789");

        assertThat(decimal(Currencies.money(amount, EUR))).isEqualByComparingTo(amount);
    }

    /** 34 digits and a five: half up gives …35, half even would give …34. */
    @Test
    void the_digit_after_the_last_is_rounded_half_up() {
        BigDecimal amount = new BigDecimal("1." + "0".repeat(31) + "345");

        MonetaryAmount money = Currencies.money(amount, EUR);

        assertThat(decimal(money)).isEqualByComparingTo(amount.round(new MathContext(34, RoundingMode.HALF_UP)));
        assertThat(decimal(money)).isEqualByComparingTo("1." + "0".repeat(31) + "35");
    }

    @Test
    void sums_and_products_of_amounts_are_not_cut_to_the_minor_unit() {
        MonetaryAmount price = Currencies.money(new BigDecimal("0.0123456789"), EUR);

        assertThat(decimal(price.multiply(3))).isEqualByComparingTo("0.0370370367");
        assertThat(decimal(price.add(price))).isEqualByComparingTo("0.0246913578");
    }

    private static BigDecimal decimal(MonetaryAmount amount) {
        return amount.getNumber().numberValueExact(BigDecimal.class);
    }
}
