package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Finding;
import perkilo.swaps.SwapOptions;

/** Looking for cheaper materials, and carrying one swap out. */
final class FindSwapsTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void swaps_are_found_and_the_candidates_are_counted() throws IOException {
        Seen watch = Seen.all();
        SwapAnswer.Found found = (SwapAnswer.Found) find(new SwapRequest.Only("Face cream", null, null), null, watch);

        assertThat(found.found().swaps()).isNotEmpty();
        assertThat(found.added()).isEmpty();
        assertThat(found.report().sheets()).isNotEmpty();
        int all = found.found().swaps().size() + found.found().rejected().size();
        assertThat(watch.of(Stage.COMPARING)).hasSize(all).contains(all + " of " + all);
    }

    @Test
    void one_of_them_is_carried_out() throws IOException {
        SwapAnswer.Found found = (SwapAnswer.Found)
                find(new SwapRequest.Only("Face cream", null, null), new Choice(false, OptionalInt.of(1)), Watch.NONE);

        assertThat(found.added())
                .hasValueSatisfying(formula -> assertThat(formula.name()).isEqualTo("Face cream swap 1"));
    }

    @Test
    void what_was_not_found_cannot_be_carried_out() throws IOException {
        Choice choice = new Choice(false, OptionalInt.of(9999));
        SwapAnswer answer = find(new SwapRequest.Only("Face cream", null, null), choice, Watch.NONE);

        assertThat(answer).isInstanceOfSatisfying(SwapAnswer.NoSuchChoice.class, missing -> {
            assertThat(missing.choice()).isEqualTo(choice);
            assertThat(missing.count()).isPositive();
        });
    }

    @ParameterizedTest
    @CsvSource({"0", "5"})
    void a_cancelled_search_gives_no_part_of_an_answer(int asked) throws IOException {
        assertThat(find(SwapRequest.Only.ALL, null, Seen.cancelAfter(asked))).isInstanceOf(SwapAnswer.Stopped.class);
    }

    @ParameterizedTest
    @CsvSource({
        "emolient, Did you mean emollient?",
        "Emulsifyer, Did you mean emulsifier?",
        "frobbing, The Materials sheet has: "
    })
    void a_misspelt_function_is_helped(String typed, String help) throws IOException {
        SwapAnswer answer = find(new SwapRequest.Only(null, null, typed), null, Watch.NONE);

        assertThat(answer).isInstanceOf(SwapAnswer.BadInput.class);
        assertThat(answer.findings())
                .filteredOn(Finding::isError)
                .singleElement()
                .extracting(Finding::text)
                .asString()
                .startsWith("No material has the function \"" + typed + "\". " + help);
    }

    private SwapAnswer find(SwapRequest.Only only, @Nullable Choice apply, Watch watch) throws IOException {
        Path book = Templates.book(folder, Template.EMOLLIENTS);
        SwapRequest request = new SwapRequest(
                Templates.alone(book),
                RunSizes.OF_THE_BOOK,
                only,
                SwapRequest.USUALLY_CHANGED,
                SwapOptions.USUAL_CLOSENESS,
                false,
                false,
                apply,
                null,
                Templates.DAY);
        return new FindSwaps().find(request, watch);
    }
}
