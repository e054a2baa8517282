package perkilo.reading.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in text, in the spellings of several countries. */
final class NumberTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12,50 €   | 12.50   | €",
                "1.250,00  | 1250.00 | ''",
                "1,250.00  | 1250.00 | ''",
                "25 kg     | 25      | kg",
                "$ 12.50   | 12.50   | $",
                "$12.50/kg | 12.50   | $/kg",
                "1 250,00  | 1250.00 | ''",
                "1'250.00  | 1250.00 | ''",
                "1.250.000 | 1250000 | ''",
                "0,125     | 0.125   | ''",
                "0.125     | 0.125   | ''",
                "1250,000  | 1250.000| ''",
                ".5        | 0.5     | ''",
                "-3,2      | -3.2    | ''",
                "−3        | -3      | ''",
                "-$3.10    | -3.10   | $",
                "2.5 %     | 2.5     | %",
                "EUR 7     | 7       | EUR",
                "1.5E-3    | 0.0015  | ''",
                "180 l     | 180     | l",
                "180l      | 180     | l"
            })
    void a_number_with_what_stands_beside_it(String text, BigDecimal value, String words) {
        NumberText parsed = NumberText.parse(text);

        assertThat(parsed).isInstanceOf(NumberText.Parsed.class);
        NumberText.Parsed number = (NumberText.Parsed) parsed;
        assertThat(number.value()).isEqualByComparingTo(value);
        assertThat(number.words()).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"'1,250', 1250, 1.250", "1.250, 1250, 1.250", "'12,500 kg', 12500, 12.500", "-1.250, -1250, -1.250"})
    void three_digits_after_a_single_mark_can_mean_two_numbers(String text, BigDecimal large, BigDecimal small) {
        assertThat(NumberText.parse(text))
                .isEqualTo(new NumberText.Ambiguous(large, small, text.contains("kg") ? "kg" : ""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "12,5O",
                "on request",
                "",
                "-",
                "1.2.3",
                "12 50",
                "1,25,000",
                "5-10",
                "3 x 5 kg",
                "1.25,00,0",
                "€"
            })
    void anything_else_is_no_number(String text) {
        assertThat(NumberText.parse(text)).isEqualTo(new NumberText.NotANumber());
    }

    @Test
    void no_break_spaces_part_thousands_too() {
        assertThat(NumberText.parse("1\u00A0250\u202F000,5 €"))
                .isEqualTo(new NumberText.Parsed(new BigDecimal("1250000.5"), "€"));
    }
}
