package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.origin.Finding;

/** Costing many books. */
final class CostPortfolioTest {

    @TempDir
    private Path folder = Path.of("");

    @BeforeEach
    void books() throws IOException {
        Templates.book(folder, Template.LAUNCH);
        Templates.book(folder, Template.MINIMAL);
        Files.writeString(folder.resolve("words.xlsx"), "words");
    }

    @Test
    void a_view_of_each_costed_book_is_kept_and_the_books_are_counted() throws IOException {
        Seen watch = Seen.all();
        PortfolioAnswer.Done<Integer> done = done(new CostPortfolio()
                .cost(request(null), (book, costed) -> costed.costed().runs().size(), watch));

        assertThat(done.books())
                .extracting(book -> book.shown().name())
                .containsExactly("launch.xlsx", "minimal.xlsx", "words.xlsx");
        assertThat(done.books()).extracting(CostedBook::view).containsExactly(3, 1, null);
        assertThat(done.books()).noneMatch(CostedBook::isFaulty);
        assertThat(done.books().get(2).findings()).singleElement().matches(Finding::isError);
        assertThat(done.summary().file())
                .isEqualTo(folder.resolve("portfolio-costed.xlsx"))
                .exists();
        assertThat(watch.of(Stage.BOOKS)).containsExactly("1 of 3", "2 of 3", "3 of 3");
        assertThat(watch.of(Stage.COSTING)).isEmpty();
    }

    @Test
    void a_fault_in_one_book_is_told_apart_from_errors_and_stops_no_other() throws IOException {
        PortfolioAnswer.Done<String> done = done(new CostPortfolio()
                .cost(
                        request(null),
                        (book, costed) -> {
                            if (book.endsWith("launch.xlsx")) {
                                throw new IllegalStateException("no such case");
                            }
                            return "fine";
                        },
                        Watch.NONE));

        assertThat(done.books()).extracting(CostedBook::isFaulty).containsExactly(true, false, false);
        assertThat(done.books()).extracting(CostedBook::isCosted).containsExactly(false, true, false);
        assertThat(done.books().get(0).findings())
                .filteredOn(Finding::isError)
                .singleElement()
                .extracting(Finding::text)
                .asString()
                .contains(
                        "This is a fault in Perkilo, not in your file",
                        "no such case",
                        "Cost this workbook alone with --debug");
    }

    @Test
    void books_that_are_not_begun_when_it_is_cancelled_are_left_out_and_said_to_be() throws IOException {
        PortfolioAnswer.Done<String> done =
                done(new CostPortfolio().cost(request(null), (book, costed) -> "fine", Seen.cancelAfter(0)));

        assertThat(done.books())
                .hasSize(3)
                .allSatisfy(book -> assertThat(book.findings())
                        .singleElement()
                        .extracting(Finding::text)
                        .isEqualTo("The work was stopped before this workbook was costed. Run it again."));
        assertThat(folder.resolve("launch-costed.xlsx")).doesNotExist();
    }

    @Test
    void a_workbook_is_no_folder_for_results() throws IOException {
        Path out = folder.resolve("all.xlsx");

        assertThat(new CostPortfolio().<String>cost(request(out), (book, costed) -> "fine", Watch.NONE))
                .isEqualTo(new PortfolioAnswer.NoFolder<String>(out));
    }

    @Test
    void two_results_for_one_place_are_named() throws IOException {
        Path other = Files.createDirectory(folder.resolve("other"));
        Path twin = Templates.book(other, Template.LAUNCH);
        Path out = folder.resolve("results");
        Path book = folder.resolve("launch.xlsx");
        PortfolioRequest request = new PortfolioRequest(
                List.of(book, twin),
                List.of(),
                null,
                Templates.DAY,
                RunSizes.ofUnits(500),
                new Destination(out, false, false),
                Templates.DAY);

        assertThat(new CostPortfolio().<String>cost(request, (file, costed) -> "fine", Watch.NONE))
                .isEqualTo(new PortfolioAnswer.SamePlace<String>(book, twin, out.resolve("launch-costed.xlsx")));
        assertThat(out).doesNotExist();
    }

    private PortfolioRequest request(@Nullable Path out) {
        return new PortfolioRequest(
                List.of(folder),
                List.of(),
                null,
                Templates.DAY,
                RunSizes.ofUnits(500),
                new Destination(out, false, false),
                Templates.DAY);
    }

    private static <T> PortfolioAnswer.Done<T> done(PortfolioAnswer<T> answer) {
        assertThat(answer).isInstanceOf(PortfolioAnswer.Done.class);
        return (PortfolioAnswer.Done<T>) answer;
    }
}
