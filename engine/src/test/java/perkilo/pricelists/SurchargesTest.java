package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a list adds to its prices: for as much as the prices, for a pack, for an order, for some items. */
final class SurchargesTest {

    private static final String FREIGHT = """
                        Preise vom 05.10.2026
                        Artikel;Gebinde;EUR/100 kg;Fracht
                        Natriumbenzoat;25 kg;342,00;4,50
                        Xanthan;25 kg;1.120,00;frei
                        """;

    @TempDir
    private Path folder = Path.of("");

    private Intake intake = new Intake(Path.of(""), "Fen & Moor");

    @BeforeEach
    void begin() {
        intake = new Intake(folder, "Fen & Moor");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "surcharge per 100 kg, like the price | 3.465",
                "surcharge, like the price | 3.465",
                "surcharge per kg | 7.92",
                "surcharge per pack | 3.6",
                "surcharge per order (not in the price) | 3.42",
            })
    void a_column_of_charges_is_for_what_a_person_says(String answer, String price) throws IOException {
        TakenIn asked = intake.take("list.csv", FREIGHT);
        assertThat(Intake.choices(asked, "Fracht"))
                .contains(
                        "surcharge per 100 kg, like the price",
                        "surcharge per kg",
                        "surcharge per pack",
                        "surcharge per order (not in the price)");
        intake.answer("Fracht", answer);

        TakenIn taken = intake.take("list.csv", FREIGHT);
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("Natriumbenzoat|25|kg||" + price + "|kg|EUR", "Xanthan|25|kg||11.2|kg|EUR");
        if (answer.contains("order")) {
            assertThat(Intake.said(taken))
                    .contains(
                            "The column \"Fracht\" holds 1 charge per order, such as 4,50. The prices are without them."
                                    + " Add them to your workbook, on the sheet Suppliers, as \"Freight per order\".");
        }
    }

    @Test
    void a_cell_may_say_itself_what_its_charge_is_for() throws IOException {
        String list = """
                        Prices as of 2026-10-05
                        Article;Pack;EUR/kg;Freight
                        A;25 kg;3,10;€ 18 per order
                        B;25 kg;3,10;2,50 per pack
                        C;25 kg;3,10;included
                        D;25 kg;3,10;3 %
                        """;
        intake.take("list.csv", list);
        intake.answer("Freight", "surcharge per kg");

        TakenIn taken = intake.take("list.csv", list);
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly(
                        "A|25|kg||3.1|kg|EUR", "B|25|kg||3.2|kg|EUR", "C|25|kg||3.1|kg|EUR", "D|25|kg||3.193|kg|EUR");
        assertThat(Intake.said(taken))
                .contains("\"€ 18 per order\" is a charge per order, so the price is without it.");
    }

    private TakenIn note(String line) throws IOException {
        return intake.take(
                "list.csv",
                "Prices as of 2026-10-05\nArticle;Pack;EUR/kg\nRefined oils;;\nAlmond oil;Drum 190 kg;9,00\n"
                        + "Waxes;;\nBeeswax;Bag 25 kg;14,00\n" + line + "\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Gefahrgutzuschlag 15,00 EUR je Sendung | 15.00 per order (not in the price)",
                "Orders below £250 attract a £25 handling charge | 25 for orders below 250 (not in the price)",
                "Anbruchzuschlag 12,00 € bei weniger als 1 VPE | 12.00 for small orders (not in the price)",
                "Frais de dossier 8 € par commande | 8 per order (not in the price)",
                "Recargo de 10 € para pedidos inferiores a 200 € | 10 for orders below 200 (not in the price)",
                "Handling charge 1,50 € per drum | add 1.50 per pack only to drum",
                "Energy surcharge 0,12 €/kg on all refined oils | add 0.12 per kg only to refin",
            })
    void a_line_offers_what_it_says(String line, String answer) throws IOException {
        TakenIn asked = note(line);
        assertThat(Intake.choices(asked, line)).contains(answer).noneMatch(choice -> choice.contains("3 %"));
        intake.answer(line, answer);

        TakenIn taken = note(line);
        String almond = answer.contains("drum") ? "9.0078947368" : answer.contains("refin") ? "9.12" : "9";
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("Almond oil|190|kg||" + almond + "|kg|EUR", "Beeswax|25|kg||14|kg|EUR");
        if (answer.contains("not in the price")) {
            assertThat(Intake.said(taken)).contains("As you answered, the prices are without it.");
        }
    }

    @Test
    void items_that_are_not_on_the_list_are_asked_about_again() throws IOException {
        note("Energy surcharge 0,12 €/kg on some oils");
        intake.answer("Energy surcharge", "add 0.12 per kg only to Jojoba");

        TakenIn taken = note("Energy surcharge 0,12 €/kg on some oils");
        assertThat(taken.isKept()).isFalse();
        assertThat(taken.seen().asked())
                .anySatisfy(asked -> assertThat(asked.remark())
                        .isEqualTo("The answer \"add 0.12 per kg only to Jojoba\" does not settle it."));
    }

    @Test
    void the_whole_line_is_shown() throws IOException {
        String line =
                "Energy surcharge until further notice because of the prices of gas: 0,12 €/kg on all refined oils";
        assertThat(Intake.asked(note(line))).anyMatch(text -> text.contains(line));
    }

    @Test
    void free_delivery_is_no_surcharge() throws IOException {
        TakenIn taken = note("Frei Haus ab 800 € Warenwert");
        assertThat(taken.isKept()).isTrue();
        assertThat(Intake.said(taken))
                .contains("1 line beside the prices speaks of money and is not used: \"Frei Haus ab 800 € Warenwert\""
                        + " (line 7).");
    }
}
