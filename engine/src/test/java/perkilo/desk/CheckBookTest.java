package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import perkilo.origin.Level;
import perkilo.reading.Sources;

/** Looking a workbook through. */
final class CheckBookTest {

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @EnumSource(Template.class)
    void the_templates_have_no_errors(Template template) throws IOException {
        Seen watch = Seen.all();
        Checked checked = new CheckBook()
                .check(Templates.alone(Templates.book(folder, template)), LocalDate.of(2030, 1, 1), watch);

        assertThat(checked.hasErrors()).isFalse();
        assertThat(checked.book().formulas()).isNotEmpty();
        assertThat(checked.book().settings().costingDate()).isEqualTo(Templates.DAY);
        assertThat(watch.of(Stage.READING)).containsExactly("0 of 1", "1 of 1");
    }

    /** Months after the day that it is made for, the template's demand lies in the past. */
    @Test
    void demand_is_looked_at_and_is_no_fault_of_the_reading() throws IOException {
        Path book = Templates.book(folder, Template.ORDERS);
        Checked checked = new CheckBook()
                .check(new Sources(book, List.of(), null, LocalDate.of(2028, 1, 1)), Templates.DAY, Watch.NONE);

        assertThat(checked.hasErrors()).isTrue();
        assertThat(checked.count(Level.ERROR)).isPositive();
        assertThat(checked.reading().hasErrors()).isFalse();
    }
}
