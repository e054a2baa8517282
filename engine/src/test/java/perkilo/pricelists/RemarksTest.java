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
    @ValueSource(
            strings = {
                "ab 4 Fass billiger",
                "from 4 drums cheaper on request",
                "ab 4 Fass auf Anfrage",
                "Mengenrabatt auf Anfrage",
                "à partir de 4 fûts nous consulter",
                "moins cher à partir de 4 fûts",
                "sconto quantità su richiesta",
                "más barato desde 760 kg",
                "volume discount",
            })
    void a_price_break_without_a_price_is_told_and_the_rest_is_kept(String remark) throws IOException {
        TakenIn taken = take("Conditions", remark, "fresh");
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("A|190|kg||1235.5|pack|EUR", "B|190|kg||1235.5|pack|EUR");
        assertThat(taken.findings())
                .extracting(Object::toString)
                .contains(
                        "warning list.csv line 3: The list says that more costs less, but not how much: \"" + remark
                                + "\" (line 3). It is not used. Ask the supplier for the price and the quantity that it begins at.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"from 4 weeks", "ab 2027", "made from 3 plants", "ab Werk", "mind. 380 kg", "ab 4 Fass 6,20 €/kg"
            })
    void other_remarks_are_no_such_breaks(String remark) throws IOException {
        assertThat(Intake.said(take("Conditions", remark, "fresh"))).doesNotContain("not how much");
    }

    @Test
    void a_line_below_the_list_with_a_break_without_a_price_is_told() throws IOException {
        TakenIn taken = intake.take(
                "list.csv",
                "Prices as of 2026-10-05\nArticle;Pack;EUR/pack\nA;190 kg;1.235,50\n\nAb 4 Fass günstiger\n");
        assertThat(taken.findings())
                .extracting(Object::toString)
                .contains("warning list.csv line 5: The list says that more costs less, but not how much: \"Ab 4 Fass"
                        + " günstiger\". It is not used. Ask the supplier for the price and the quantity that it begins"
                        + " at.");
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
