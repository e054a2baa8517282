package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person types on the sheet of what is not read is used; what they cannot mean is told. */
final class TypedCellsTest {

    private static final String PACKS = """
                        Prices as of 2026-10-05
                        Article;Pack;EUR/kg
                        A;standard xy;9,00
                        B;standard xy;14,00
                        C;25 kg;3,00
                        D;;4,00
                        """;

    @TempDir
    private Path folder = Path.of("");

    private Intake intake = new Intake(Path.of(""), "Fen & Moor");

    @BeforeEach
    void begin() {
        intake = new Intake(folder, "Fen & Moor");
    }

    @Test
    void it_holds_for_all_cells_of_the_column_with_the_same_text() throws IOException {
        intake.take("list.csv", PACKS);
        intake.fill("Not read", "\"standard xy\"", "It is the …", "10 kg");
        intake.fill("Not read", "gives no pack size", "It is the …", "as above");

        TakenIn taken = intake.take("list.csv", PACKS);
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("A|10|kg||9|kg|EUR", "B|10|kg||14|kg|EUR", "C|25|kg||3|kg|EUR", "D|25|kg||4|kg|EUR");
        assertThat(taken.seen().notRead())
                .hasSize(2)
                .allMatch(row -> row.remark().startsWith("Read as you typed"));
    }

    @Test
    void what_does_not_help_is_told() throws IOException {
        intake.take("list.csv", PACKS);
        intake.fill("Not read", "\"standard xy\"", "It is the …", "as usual");

        TakenIn taken = intake.take("list.csv", PACKS);
        assertThat(taken.isKept()).isFalse();
        assertThat(taken.seen().notRead()).anySatisfy(row -> {
            assertThat(row.remark()).isEqualTo("The answer \"as usual\" does not settle it.");
            assertThat(row.isOpen()).isTrue();
        });
        intake.fill("Not read", "\"as usual\"", "It is the …", "10 kg");
        intake.fill("Not read", "gives no pack size", "It is the …", "ignore");

        assertThat(LayoutsProperties.rows(intake.take("list.csv", PACKS)))
                .containsExactly("A|10|kg||9|kg|EUR", "B|10|kg||14|kg|EUR", "C|25|kg||3|kg|EUR");
    }

    @Test
    void a_minimum_order_that_is_not_understood_costs_no_price() throws IOException {
        String list = """
                        Prices as of 2026-10-05
                        Article;Pack;EUR/kg;Minimum order
                        A;25 kg;9,00;1 layer
                        B;25 kg;14,00;2 Geb.
                        C;20 L;3,00;10 kg
                        """;
        TakenIn asked = intake.take("list.csv", list.replace("EUR/kg", "EUR/pack"));
        assertThat(Intake.asked(asked))
                .containsExactly(
                        "The minimum order \"1 layer\" is not understood. What is it? Answer with a quantity such as 100 kg or"
                                + " 5 packs, or with none.",
                        "The minimum order \"10 kg\" does not fit a pack in L. What is it? Answer with a quantity such as 5"
                                + " packs, or with none.");
        assertThat(asked.seen().notRead()).isEmpty();
        intake.answer("1 layer", "8 packs");
        intake.answer("10 kg", "none");

        TakenIn taken = intake.take("list.csv", list.replace("EUR/kg", "EUR/pack"));
        assertThat(taken.isKept()).isTrue();
        assertThat(taken.seen().prices()).hasSize(3);
        assertThat(java.nio.file.Files.readString(
                        java.util.Objects.requireNonNull(taken.kept()).file()))
                .contains("A,25,kg,,9,pack,EUR,200,", "B,25,kg,,14,pack,EUR,50,", "C,20,L,,3,pack,EUR,,");
    }
}
