package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.RunCost;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;

/** Costing one book. */
final class CostBookTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_runs_of_the_book_are_costed_and_counted() throws IOException {
        Path book = Templates.book(folder, Template.LAUNCH);
        Seen watch = Seen.all();
        CostAnswer answer = cost(book, RunSizes.OF_THE_BOOK, watch);

        assertThat(answer).isInstanceOfSatisfying(CostAnswer.Costed.class, costed -> {
            assertThat(costed.costed().runs()).hasSize(9); // three products at three sizes
            assertThat(costed.costed().runs()).allMatch(run -> run.purchase().proven());
            assertThat(costed.report().sheets()).isNotEmpty();
        });
        assertThat(answer.findings()).isNotEmpty().noneMatch(Finding::isError);
        assertThat(watch.of(Stage.COSTING))
                .hasSize(9)
                .startsWith("1 of 9", "2 of 9")
                .endsWith("9 of 9");
    }

    @Test
    void other_sizes_take_the_place_of_the_sheet() throws IOException {
        Path book = Templates.book(folder, Template.MINIMAL);
        CostAnswer answer = cost(book, RunSizes.ofUnits(500, 700), Watch.NONE);

        assertThat(((CostAnswer.Costed) answer).costed().runs())
                .extracting(run -> run.needs().title())
                .containsExactly("500 × Simple balm 30 g", "700 × Simple balm 30 g");
    }

    /** The quick ways are not cut short; what only a longer search could prove is left unproven. */
    @Test
    void a_cancelled_costing_still_costs_every_run() throws IOException {
        Path book = Templates.book(folder, Template.LAUNCH);
        List<RunCost> stopped = runs(cost(book, RunSizes.OF_THE_BOOK, Seen.cancelAfter(0)));
        List<RunCost> whole = runs(cost(book, RunSizes.OF_THE_BOOK, Watch.NONE));

        assertThat(stopped).hasSameSizeAs(whole);
        for (int run = 0; run < whole.size(); run++) {
            assertThat(stopped.get(run).purchase().cost().objective())
                    .isGreaterThanOrEqualTo(whole.get(run).purchase().bound());
        }
    }

    @Test
    void without_a_run_there_is_nothing_to_cost() throws IOException {
        Path file = Templates.book(folder, Template.MINIMAL);
        Book book = new CheckBook()
                .check(Templates.alone(file), Templates.DAY, Watch.NONE)
                .book()
                .withRuns(List.of());
        CostAnswer answer = new CostBook().cost(file, new Reading<>(book, List.of()), RunSizes.OF_THE_BOOK, Watch.NONE);

        assertThat(answer instanceof CostAnswer.BadInput).isTrue();
        assertThat(answer.findings())
                .singleElement()
                .extracting(Finding::text)
                .asString()
                .startsWith("There is no run to cost.");
    }

    @Test
    void a_file_that_is_no_workbook_is_a_sentence() throws IOException {
        Path file = Files.writeString(folder.resolve("words.xlsx"), "words");

        assertThatThrownBy(() -> cost(file, RunSizes.OF_THE_BOOK, Watch.NONE))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("words.xlsx is a text file");
    }

    @Test
    void the_report_goes_where_it_is_asked_to() throws IOException {
        Path book = Templates.book(folder, Template.MINIMAL);
        CostAnswer.Costed costed = (CostAnswer.Costed) cost(book, RunSizes.OF_THE_BOOK, Watch.NONE);
        Path other = folder.resolve("other.xlsx");

        Written usual = Destination.USUAL.write(FileStamp.of(book), Destination.COSTED, costed.report(), Templates.DAY);
        Written asked = new Destination(other, false, true)
                .write(FileStamp.of(book), Destination.COSTED, costed.report(), Templates.DAY);
        Written inPlace = new Destination(null, true, false)
                .write(FileStamp.of(book), Destination.COSTED, costed.report(), Templates.DAY);

        assertThat(usual.file())
                .isEqualTo(folder.resolve("minimal-costed.xlsx"))
                .exists();
        assertThat(asked.file()).isEqualTo(other).exists();
        assertThat(inPlace.file()).isEqualTo(book);
        assertThat(inPlace.backup()).isEqualTo(folder.resolve("minimal.backup-2026-11-20-1.xlsx"));
    }

    private static List<RunCost> runs(CostAnswer answer) {
        return ((CostAnswer.Costed) answer).costed().runs();
    }

    private static CostAnswer cost(Path book, RunSizes sizes, Watch watch) throws IOException {
        return new CostBook().cost(new CostRequest(Templates.alone(book), sizes, Templates.DAY), watch);
    }
}
