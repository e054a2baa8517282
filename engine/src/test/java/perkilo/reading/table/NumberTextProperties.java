package perkilo.reading.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** A number comes back the same from every spelling that it is allowed. */
final class NumberTextProperties {

    private static final String[] BESIDE = {"", " kg", " €", "€", "/kg", " %"};

    @Property
    void written_with_any_marks_a_number_reads_back_the_same(
            @ForAll @BigRange(min = "0", max = "99999999") @Scale(2) BigDecimal number,
            @ForAll @IntRange(min = 0, max = 5) int marks,
            @ForAll @IntRange(min = 0, max = 5) int beside) {
        String text = format(number, ".,,. '".charAt(marks), ",.".charAt(marks % 2)) + BESIDE[beside];

        NumberText parsed = NumberText.parse(text);

        assertThat(parsed).as(text).isInstanceOf(NumberText.Parsed.class);
        assertThat(((NumberText.Parsed) parsed).value()).as(text).isEqualByComparingTo(number);
        assertThat(((NumberText.Parsed) parsed).words()).isEqualTo(BESIDE[beside].strip());
    }

    @Property
    void no_text_is_read_as_two_numbers_and_one(@ForAll @IntRange(min = 1, max = 999) int whole) {
        assertThat(NumberText.parse(whole + ",250")).isInstanceOf(NumberText.Ambiguous.class);
        assertThat(NumberText.parse(whole + ".250")).isInstanceOf(NumberText.Ambiguous.class);
    }

    private static String format(BigDecimal number, char grouping, char decimal) {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setGroupingSeparator(grouping);
        symbols.setDecimalSeparator(grouping == decimal ? (decimal == ',' ? '.' : ',') : decimal);
        return new DecimalFormat("#,##0.00", symbols).format(number);
    }
}
