package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Reading;

/** The workbooks that come along are read without a problem, alone and with the price lists that come along. */
final class TemplatesTest {

    private static final Path PRICES = Path.of("..", "prices");

    @ParameterizedTest
    @ValueSource(strings = {"launch", "emollients", "orders", "minimal"})
    void a_template_has_nothing_wrong(String template) {
        Reading<Book> reading = TemplateFolder.book(template).read();

        assertThat(reading.findings())
                .filteredOn(finding -> finding.level() != Level.NOTE)
                .isEmpty();
    }

    @Test
    void the_launch_workbook_is_read_in_full() {
        Book book = TemplateFolder.book("launch").read().value();

        assertThat(book.suppliers()).hasSize(8);
        assertThat(book.formulas().keySet()).containsExactlyInAnyOrder("body lotion", "face oil", "hand balm");
        assertThat(book.products()).hasSize(3);
        assertThat(book.runs()).hasSize(9);
        assertThat(book.product("Hand balm").orElseThrow().components()).hasSize(5);
        assertThat(book.settings().reportCurrencies())
                .extracting(Object::toString)
                .containsExactly("GBP", "USD");
    }

    @ParameterizedTest
    @ValueSource(strings = {"launch", "emollients", "orders", "minimal"})
    void price_lists_in_a_folder_add_to_a_template(String template) {
        Path rates = PRICES.resolve("rates-2026-11-19.csv");
        Reading<Book> reading =
                TestBook.read(new Sources(TemplateFolder.book(template).save(), List.of(PRICES), rates, null));

        assertThat(reading.findings()).filteredOn(Finding::isError).isEmpty();
        assertThat(reading.value().offersFor("Propanediol")).isNotEmpty();
    }
}
