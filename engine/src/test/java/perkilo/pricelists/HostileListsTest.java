package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.origin.Finding;
import perkilo.xlsx.grid.Csv;

/** Lists that are odd, damaged or meant to do harm. */
final class HostileListsTest {

    private static final TakeIn.Said SAID = new TakeIn.Said("Fen & Moor", LocalDate.of(2026, 11, 2), null);
    private static final String HEADER = "Product;Pack;Price (EUR/kg)\n";

    @TempDir
    Path folder = Path.of("");

    private TakenIn take(byte[] bytes) throws IOException {
        Path list = Files.write(folder.resolve("list.csv"), bytes);
        return new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of()).take(list, SAID);
    }

    private TakenIn take(String text) throws IOException {
        return take(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void quotes_delimiters_and_line_breaks_inside_quotes_belong_to_the_name() throws IOException {
        TakenIn taken = take(HEADER + "\"Öl \"\"fein\"\"; kalt\ngepresst\";25 kg;12,50\n");

        assertThat(LayoutsProperties.rows(taken)).containsExactly("Öl \"fein\"; kalt gepresst|25|kg||12.5|kg|EUR");
    }

    @Test
    void every_usual_encoding_is_read() throws IOException {
        String text = HEADER + "Öl – süß;25 kg;12,50\n";
        for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE, StandardCharsets.UTF_8)) {
            TakenIn taken = take(("\uFEFF" + text).getBytes(charset));
            assertThat(LayoutsProperties.rows(taken)).as(charset.name()).containsExactly("Öl – süß|25|kg||12.5|kg|EUR");
        }
        TakenIn windows = take(text.getBytes(Charset.forName("windows-1252")));
        assertThat(LayoutsProperties.rows(windows)).containsExactly("Öl – süß|25|kg||12.5|kg|EUR");
    }

    @Test
    void a_million_characters_in_a_cell_are_an_error_with_its_place() throws IOException {
        TakenIn taken =
                take(HEADER + "x".repeat(1_000_000) + ";25 kg;12,50\nGood;25 kg;" + "9".repeat(1_000_000) + "\n");

        assertThat(taken.isKept()).isFalse();
        assertThat(taken.findings())
                .extracting(Finding::toString)
                .anyMatch(text -> text.contains("line 2: The item is a text of 1,000,000 characters"))
                .anyMatch(text -> text.contains("line 3: The price is a text of 1,000,000 characters"));
    }

    @Test
    void what_a_spreadsheet_would_take_for_a_formula_is_kept_as_text() throws IOException {
        String evil = "=HYPERLINK(\"http://example.invalid\")";
        TakenIn taken = take(HEADER + "\"" + evil.replace("\"", "\"\"") + "\";25 kg;12,50\n@SUM(A1);25 kg;1,00\n");

        var kept = taken.kept();
        assertThat(kept).isNotNull();
        String text = Files.readString(kept.file());
        for (Csv.Line line : Csv.read(text, ',')) {
            assertThat(line.fields())
                    .allSatisfy(field ->
                            assertThat(field.text()).doesNotStartWith("=").doesNotStartWith("@"));
        }
        assertThat(LayoutsProperties.rows(taken).get(0).strip()).startsWith(evil);
    }

    @Test
    void every_wrong_price_and_pack_is_reported_in_one_go_and_nothing_is_kept() throws IOException {
        TakenIn taken = take(HEADER + "A;25 kg;zwölf\nB;a sack;1,50\nC;25 kg;1,5O\nD;;3,00\nE;25 kg;4,00 USD\n");

        assertThat(taken.isKept()).isFalse();
        assertThat(folder.resolve("kept")).doesNotExist();
        assertThat(taken.findings().stream().filter(Finding::isError).map(Finding::toString))
                .anyMatch(text -> text.contains("line 2: The price \"zwölf\" is not understood"))
                .anyMatch(text -> text.contains("line 3: The pack \"a sack\" is not understood"))
                .anyMatch(text -> text.contains("line 4: The price \"1,5O\" is not understood"))
                .anyMatch(text -> text.contains("line 5: The row gives no pack size"))
                .hasSize(4);
    }

    @Test
    void what_has_no_price_is_named_and_kept_without_one() throws IOException {
        TakenIn taken = take(HEADER + "A;25 kg;0\nB;25 kg;auf Anfrage\nC;25 kg;1,50\nD;25 kg;\nE;25 kg;0,00 €\n");

        assertThat(LayoutsProperties.rows(taken))
                .containsExactly(
                        "C|25|kg||1.5|kg|EUR",
                        "A|25|kg||no price||",
                        "B|25|kg||no price||",
                        "D|25|kg||no price||",
                        "E|25|kg||no price||");
        assertThat(taken.prices()).isEqualTo(1);
        assertThat(taken.findings())
                .extracting(Finding::toString)
                .contains(
                        "warning list.csv line 2: \"A\" in packs of 25 kg has no price (0). An older price is no longer"
                                + " used. Ask the supplier for a new one.",
                        "warning list.csv line 3: \"B\" in packs of 25 kg has no price (auf Anfrage). An older price is"
                                + " no longer used. Ask the supplier for a new one.",
                        "warning list.csv line 5: \"D\" in packs of 25 kg has no price (the cell is blank). An older price"
                                + " is no longer used. Ask the supplier for a new one.");
    }

    @Test
    void a_pack_whose_price_stands_in_another_row_has_one() throws IOException {
        TakenIn taken = take(HEADER + "A;25 kg;\nA;25 kg;1,50\n");

        assertThat(LayoutsProperties.rows(taken)).containsExactly("A|25|kg||1.5|kg|EUR");
        assertThat(taken.findings()).extracting(Finding::text).noneMatch(text -> text.contains("has no price"));
    }

    @Test
    void totals_and_notes_are_left_out_by_name_and_offers_without_a_pack_are_not() throws IOException {
        TakenIn taken = take(HEADER + "A;25 kg;1,50\nTotal;;1,50\n;;1,50\n");

        assertThat(LayoutsProperties.rows(taken)).containsExactly("A|25|kg||1.5|kg|EUR");
        assertThat(taken.findings())
                .extracting(Finding::toString)
                .contains(
                        "warning list.csv line 3: \"Total 1,50\" looks like a total or a note, so the row is left out."
                                + " If it is an offer, give it an item and a pack.",
                        "warning list.csv line 4: \"1,50\" looks like a total or a note, so the row is left out."
                                + " If it is an offer, give it an item and a pack.");
        assertThat(take(HEADER + "A;25 kg;1,50\nTotal care oil;;1,50\n").isKept())
                .isFalse();
        Files.delete(folder.resolve("kept/fen-moor-2026-11-02.csv"));
        assertThat(LayoutsProperties.rows(take(HEADER + "Total;25 kg;1,50\n")))
                .containsExactly("Total|25|kg||1.5|kg|EUR");
    }

    @Test
    void a_price_with_the_remark_that_it_is_discontinued_is_used_with_a_warning() throws IOException {
        TakenIn taken = take(HEADER.strip() + ";Hinweis\nA;25 kg;1,50;discontinued\n");

        assertThat(LayoutsProperties.rows(taken)).containsExactly("A|25|kg||1.5|kg|EUR");
        assertThat(taken.findings())
                .extracting(Finding::text)
                .contains("\"A\" has a price and the remark \"discontinued\". The price is used."
                        + " Ask the supplier whether it is valid.");
    }

    @Test
    void prices_that_remarks_speak_against_are_named_in_one_warning() throws IOException {
        TakenIn taken =
                take(HEADER.strip() + ";Hinweis\nA;25 kg;1,50;discontinued\nB;25 kg;1,50;-\nC;25 kg;2;Auf Anfrage\n");

        assertThat(taken.findings())
                .extracting(Finding::toString)
                .filteredOn(text -> text.contains("remark"))
                .containsExactly(
                        "warning list.csv line 2: 2 prices have a remark that speaks against them: \"A\" in line 2"
                                + " (discontinued), \"C\" in line 4 (Auf Anfrage). They are used. Ask the supplier whether they are valid.");
    }

    @Test
    void a_dash_beside_a_price_is_no_remark() throws IOException {
        TakenIn taken = take(HEADER.strip() + ";Kosher;Hinweis\nA;25 kg;1,50;n/a;-\nB;25 kg;1,50;na;–\nC;25 kg;–;;\n");

        assertThat(taken.findings()).extracting(Finding::text).noneMatch(text -> text.contains("remark"));
        assertThat(LayoutsProperties.rows(taken))
                .as("in place of a price it is none")
                .contains("C|25|kg||no price||");
        assertThat(taken.prices() + " of " + taken.items()).isEqualTo("2 of 2");
    }

    @Test
    void two_prices_for_the_same_are_asked_about() throws IOException {
        TakenIn taken = take(HEADER + "A;25 kg;1,50\na ;25 kg;1,60\n");

        assertThat(taken.isKept()).isFalse();
        assertThat(taken.questions()).singleElement().satisfies(question -> {
            assertThat(question.text())
                    .isEqualTo("There are 2 prices for A, 25 kg: 1.5 EUR/kg (line 2); 1.6 EUR/kg (line 3)."
                            + " Which one holds?");
            assertThat(question.choices()).containsExactly("1.5 EUR/kg (line 2)", "1.6 EUR/kg (line 3)");
        });
    }
}
