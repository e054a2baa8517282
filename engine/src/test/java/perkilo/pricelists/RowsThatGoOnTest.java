package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows that go on with the item above say only what differs; nothing else may get lost, or be taken over unasked. */
final class RowsThatGoOnTest {

    private static final String BREAKS = """
                        Prices as of 2026-10-05
                        Article;Pack;From kg;EUR/100 kg;Discount
                        Citric acid;25 kg;25;169,00;2 %
                        ;;500;148,00;
                        Xanthan;25 kg;25;1.120,00;-
                        ;;100;1.045,00;
                        """;

    @TempDir
    private Path folder = Path.of("");

    private Intake intake = new Intake(Path.of(""), "Fen & Moor");

    @BeforeEach
    void begin() {
        intake = new Intake(folder, "Fen & Moor");
    }

    private void answerAbove() throws IOException {
        intake.take("list.csv", BREAKS);
        intake.answer("no item", "as above");
        intake.answer("\"Discount\" seems", "discount %");
    }

    @Test
    void they_take_the_pack_over_and_the_discount_as_a_person_says() throws IOException {
        answerAbove();
        TakenIn asked = intake.take("list.csv", BREAKS);
        assertThat(Intake.asked(asked))
                .containsExactly(
                        "In the column \"Discount\" the cell is blank below \"2 %\", in a row that goes on with the"
                                + " item above. Does the same hold there (as above), or nothing (none)?");
        intake.answer("cell is blank below", "as above");

        assertThat(LayoutsProperties.rows(intake.take("list.csv", BREAKS)))
                .containsExactly(
                        "Citric acid|25|kg||1.6562|kg|EUR",
                        "Citric acid|25|kg|500|1.4504|kg|EUR",
                        "Xanthan|25|kg||11.2|kg|EUR",
                        "Xanthan|25|kg|100|10.45|kg|EUR");
    }

    @Test
    void a_discount_of_the_first_row_alone_is_possible() throws IOException {
        answerAbove();
        intake.take("list.csv", BREAKS);
        intake.answer("cell is blank below", "none");

        assertThat(LayoutsProperties.rows(intake.take("list.csv", BREAKS)))
                .contains("Citric acid|25|kg||1.6562|kg|EUR", "Citric acid|25|kg|500|1.48|kg|EUR");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"\"\"\"", "ditto", "dito", "wie oben", "idem", "come sopra", "ídem", "ci-dessus", "″"})
    void a_ditto_mark_means_the_cell_above(String ditto) throws IOException {
        TakenIn taken = intake.take(
                "list.csv",
                "Prices as of 2026-10-05\nArticle;Pack;Unit;From kg;Price/kg;Currency\nCitric acid;25;kg;25;1,69;EUR\n"
                        + ditto + ";" + ditto + ";" + ditto + ";500;1,48;" + ditto + "\n");

        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("Citric acid|25|kg||1.69|kg|EUR", "Citric acid|25|kg|500|1.48|kg|EUR");
    }

    @Test
    void below_an_item_with_a_ditto_mark_blank_cells_say_the_same() throws IOException {
        TakenIn taken = intake.take(
                "list.csv",
                "Prices as of 2026-10-05\nArticle;Pack;From kg;EUR/kg\nCitric acid;25 kg;25;1,69\nditto;;500;1,48\n");

        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("Citric acid|25|kg||1.69|kg|EUR", "Citric acid|25|kg|500|1.48|kg|EUR");
    }
}
