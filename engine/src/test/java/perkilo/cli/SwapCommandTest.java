package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the search for cheaper materials says where it could not look. */
final class SwapCommandTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void where_nothing_can_be_compared_it_does_not_say_that_nothing_is_cheaper() throws IOException {
        Path book = Files.write(folder.resolve("book.xlsx"), RawBook.sound().bytes());
        CommandLineRun swap = CommandLineRun.of("swap", book);
        assertThat(swap.exit()).isEqualTo(Exit.DONE);
        assertThat(swap.out()).contains("Nothing was compared").doesNotContain("is cheaper at any run size");
        assertThat(swap.err()).contains("warning").contains("Nothing was compared");
    }

    @Test
    void a_name_from_the_ingredient_list_leads_to_the_materials_that_have_it() {
        Path book = folder.resolve("emollients.xlsx");
        assertThat(CommandLineRun.of("new", "emollients", book).exit()).isEqualTo(Exit.DONE);
        CommandLineRun swap = CommandLineRun.of("swap", book, "--material", "Squalane");
        assertThat(swap.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(swap.err()).contains("There is no material \"Squalane\", but it is the INCI name of ");
    }

    @Test
    void a_misspelt_function_is_helped() {
        Path book = folder.resolve("emollients.xlsx");
        assertThat(CommandLineRun.of("new", "emollients", book).exit()).isEqualTo(Exit.DONE);
        CommandLineRun swap = CommandLineRun.of("swap", book, "--function", "emolient");
        assertThat(swap.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(swap.err()).contains("No material has the function \"emolient\". Did you mean emollient?");
    }
}
