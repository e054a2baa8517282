package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.pricelists.TakeIn;
import perkilo.review.prices.PriceReview;

/** Taking price lists in, and what changed from one to the next. */
final class TakeInPricesTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_list_is_kept_and_one_with_a_question_is_not() throws IOException {
        Path clear = list("clear.csv", "12.50");
        Path doubtful = Files.writeString(folder.resolve("doubtful.csv"), "Product;Pack;Price\nShea;25 kg;1.250\n");
        Seen watch = Seen.all();

        TakeInAnswer answer = take(LocalDate.of(2026, 11, 1), watch, clear, doubtful);

        assertThat(answer.allKept()).isFalse();
        assertThat(answer.lists()).extracting(list -> list.isKept()).containsExactly(true, false);
        assertThat(answer.lists().get(0).prices()).isEqualTo(1);
        assertThat(answer.lists().get(1).questions()).isNotEmpty();
        assertThat(answer.notBegun()).isEmpty();
        assertThat(watch.of(Stage.TAKING_IN)).containsExactly("0 of 2", "1 of 2", "2 of 2");
    }

    @Test
    void a_list_that_is_not_begun_when_it_is_cancelled_is_named() throws IOException {
        Path first = list("first.csv", "12.50");
        Path second = list("second.csv", "13.50");

        TakeInAnswer answer = take(LocalDate.of(2026, 11, 1), Seen.cancelAfter(1), first, second);

        assertThat(answer.lists()).hasSize(1);
        assertThat(answer.notBegun()).containsExactly(second);
        assertThat(answer.allKept()).isFalse();
    }

    @Test
    void what_rose_since_the_last_list_is_shown() throws IOException {
        take(LocalDate.of(2026, 10, 1), Watch.NONE, list("october.csv", "12.50"));
        take(LocalDate.of(2026, 11, 1), Watch.NONE, list("november.csv", "15.00"));

        PriceChangesAnswer answer = new ShowPriceChanges()
                .show(
                        new PriceChangesRequest(
                                kept(), null, null, Templates.DAY, RunSizes.OF_THE_BOOK, LocalDate.of(2030, 1, 1)),
                        Watch.NONE);

        assertThat(answer).isInstanceOfSatisfying(PriceChangesAnswer.Changed.class, changed -> {
            assertThat(changed.changes().changed())
                    .singleElement()
                    .satisfies(change ->
                            assertThat(change.fraction().orElseThrow()).isEqualByComparingTo("0.2"));
            assertThat(changed.effect()).isNull();
            assertThat(changed.report().sheets()).isNotEmpty();
        });
    }

    @Test
    void what_that_does_to_a_workbook_is_costed_and_counted() throws IOException {
        take(LocalDate.of(2026, 11, 1), Watch.NONE, list("november.csv", "15.00"));
        Path book = Templates.book(folder, Template.MINIMAL);
        Seen watch = Seen.all();

        PriceChangesAnswer answer = new ShowPriceChanges()
                .show(
                        new PriceChangesRequest(
                                kept(), book, null, Templates.DAY, RunSizes.ofUnits(500), Templates.DAY),
                        watch);

        assertThat(answer)
                .isInstanceOfSatisfying(
                        PriceChangesAnswer.Changed.class,
                        changed -> assertThat(changed.effect())
                                .isNotNull()
                                .satisfies(effect -> assertThat(effect.runs()).hasSize(1)));
        assertThat(watch.of(Stage.COSTING)).isNotEmpty();
    }

    private TakeInAnswer take(LocalDate quoted, Watch watch, Path... lists) throws IOException {
        TakeIn.Said said = new TakeIn.Said("Wending Supplies", quoted, null);
        return new TakeInPrices()
                .take(new TakeInRequest(List.of(lists), kept(), null, said, kept().resolve(PriceReview.FILE)), watch);
    }

    private Path kept() {
        return folder.resolve("prices");
    }

    private Path list(String name, String price) throws IOException {
        return Files.writeString(
                folder.resolve(name), "Product,Pack,Price (EUR/kg)\nInvented wax,25 kg," + price + "\n");
    }
}
