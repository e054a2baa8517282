package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Columns of remarks are read cell by cell: price breaks and minimum orders in words, and prices that are not clear.
 */
final class RemarksTest {

    @TempDir
    private Path folder = Path.of("");

    private Intake intake = new Intake(Path.of(""), "Fen & Moor");

    @BeforeEach
    void begin() {
        intake = new Intake(folder, "Fen & Moor");
    }

    private TakenIn take(String header, String... remarks) throws IOException {
        StringBuilder list = new StringBuilder("Prices as of 2026-10-05\nArticle;Pack;EUR/pack;" + header + "\n");
        for (int at = 0; at < remarks.length; at++) {
            list.append((char) ('A' + at))
                    .append(";190 kg;1.235,50;")
                    .append(remarks[at])
                    .append('\n');
        }
        return intake.take("list.csv", list.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a partir de 4 bidones: 1.180,00 €/bidón | 760 | 1180 | pack",
                "ab 4 Fass 6,20 €/kg | 760 | 6.2 | kg",
                "from 4 drums: 1180.00 EUR/drum | 760 | 1180 | pack",
                "dès 4 fûts : 1 180,00 € | 760 | 1180 | pack",
                "da 4 fusti: 1.180,00 € | 760 | 1180 | pack",
            })
    void a_price_break_in_words_is_read(String remark, String from, String price, String per) throws IOException {
        TakenIn taken = take("Conditions", remark, "while stocks last");
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly(
                        "A|190|kg||1235.5|pack|EUR",
                        "A|190|kg|" + from + "|" + price + "|" + per + "|EUR",
                        "B|190|kg||1235.5|pack|EUR");
        assertThat(Intake.said(taken)).contains("\"" + remark + "\" is read as a price break of its row.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"mín. 2 garrafas", "min. 2 drums", "mind. 380 kg", "mindestens 2 Fass", "al menos 2 latas"})
    void a_minimum_order_in_words_is_read(String remark) throws IOException {
        TakenIn taken = take("Conditions", remark, "ab 4 Fass 6,20 €/kg");
        assertThat(Files.readString(Objects.requireNonNull(taken.kept()).file()))
                .contains("A,190,kg,,1235.5,pack,EUR,380,", "B,190,kg,760,6.2,kg,EUR,,");
    }

    @Test
    void the_same_holds_in_a_column_of_minimum_orders() throws IOException {
        TakenIn taken = take("Minimum order", "mín. 2 garrafas", "ab 4 Fass 6,20 €/kg", "2");
        assertThat(taken.seen().notRead()).isEmpty();
        assertThat(taken.questions()).extracting(one -> one.field()).doesNotContain("minimum order");
    }

    @Test
    void a_price_that_is_not_understood_is_asked_about() throws IOException {
        TakenIn asked = take("Conditions", "neighbour price 7,00 EUR", "fresh");
        assertThat(asked.isKept()).isFalse();
        assertThat(Intake.asked(asked))
                .containsExactly("The column \"Conditions\" holds texts that look like prices and are not understood:"
                        + " \"neighbour price 7,00 EUR\" (line 3). Leave them out? Or say on the sheet \"Not read\" what"
                        + " the column is.");
        intake.answer("Conditions", "leave these texts out");

        TakenIn taken = take("Conditions", "neighbour price 7,00 EUR", "fresh");
        assertThat(taken.isKept()).isTrue();
        assertThat(Intake.said(taken))
                .contains("Texts in the column \"Conditions\" look like prices. As you answered, they are left out:"
                        + " \"neighbour price 7,00 EUR\" (line 3).");
    }
}
