package perkilo.pricelists;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.layouts.Question;
import perkilo.origin.Finding;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** What a list does not say is asked for, once, and the answer is kept for the supplier's next list. */
final class QuestionsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 2);
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder = Path.of("");

    private TakenIn take(String text, List<Grid> known) throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), text);
        return new TakeIn(new ListFolder(folder.resolve("kept")), known, Set.of())
                .take(list, new TakeIn.Said("Fen & Moor", DAY, null));
    }

    private Path mapping() {
        return new ListFolder(folder.resolve("kept")).mapping("Fen & Moor");
    }

    private ObjectNode json() throws IOException {
        return (ObjectNode) JSON.readTree(mapping().toFile());
    }

    private void answer(String field, String words) throws IOException {
        ObjectNode json = json();
        assertThat(json.has(field)).as("the mapping asks for " + field).isTrue();
        assertThat(json.get(field).isNull()).isTrue();
        JSON.writeValue(mapping().toFile(), json.put(field, words));
    }

    private void asks(String list, String field, String words, String row) throws IOException {
        TakenIn asked = take(list, List.of());
        assertThat(asked.isKept()).isFalse();
        assertThat(asked.questions()).extracting(Question::field).containsExactly(field);
        assertThat(folder.resolve("kept")).isDirectoryNotContaining("glob:**.csv");
        answer(field, words);
        assertThat(LayoutsProperties.rows(take(list, List.of()))).contains(row);
    }

    @Test
    void a_number_that_can_be_two_is_asked_about() throws IOException {
        asks("Product;Pack;EUR/kg\nA;25 kg;1.250\n", "decimals", "comma", "A|25|kg||1250|kg|EUR");
    }

    @Test
    void another_price_of_the_list_can_settle_it() throws IOException {
        TakenIn taken = take("Product;Pack;EUR/kg\nA;25 kg;1.250\nB;25 kg;12,50\n", List.of());

        assertThat(LayoutsProperties.rows(taken)).contains("A|25|kg||1250|kg|EUR");
    }

    @Test
    void prices_that_contradict_each_other_settle_nothing() throws IOException {
        TakenIn taken = take("Product;Pack;EUR/kg\nA;25 kg;1.250\nB;25 kg;12,50\nC;25 kg;12.50\n", List.of());

        assertThat(taken.questions()).extracting(Question::field).containsExactly("decimals");
    }

    @Test
    void a_missing_currency_is_asked_about() throws IOException {
        asks("Product;Pack;Price per kg\nA;25 kg;1,50\n", "currency", "CHF", "A|25|kg||1.5|kg|CHF");
    }

    @Test
    void a_dollar_sign_is_asked_about() throws IOException {
        asks("Product;Pack;Price $/kg\nA;25 kg;1.50\n", "currency", "CAD", "A|25|kg||1.5|kg|CAD");
    }

    @Test
    void what_prices_are_for_is_asked_about() throws IOException {
        asks("Product;Pack;Price EUR\nA;25 kg;1.50\n", "price per", "100 g", "A|25|kg||15|kg|EUR");
    }

    @Test
    void a_row_that_says_otherwise_than_the_list_is_asked_about() throws IOException {
        String list = "Product;Pack;EUR/kg;Remarks\nA;25 lb;4.10;per lb\nB;25 kg;1.50;new pack\n";
        asks(list, "basis in rows", "row", "A|25|lb||4.1|lb|EUR");
        assertThat(take(list, List.of()).findings())
                .extracting(Finding::text)
                .contains(
                        "The row says \"per lb\" but the list says otherwise. As set in the mapping, the row applies.");
        JSON.writeValue(mapping().toFile(), json().put("basis in rows", "list"));
        assertThat(LayoutsProperties.rows(take(list, List.of())))
                .contains("A|25|lb||4.1|kg|EUR", "B|25|kg||1.5|kg|EUR");
    }

    @Test
    void a_row_is_asked_about_only_once_it_is_known_what_the_list_says() throws IOException {
        asks("Product;Pack;Price EUR;Remarks\nA;25 kg;4.10;per kg\n", "price per", "kg", "A|25|kg||4.1|kg|EUR");
    }

    @Test
    void each_beside_a_pack_by_weight_means_the_pack() throws IOException {
        asks("Product;Pack;EUR/kg;Remarks\nA;25 kg;41.50;each\n", "basis in rows", "row", "A|25|kg||41.5|pack|EUR");
    }

    @Test
    void a_row_that_says_the_same_as_the_list_asks_nothing() throws IOException {
        assertThat(take("Product;Pack;EUR/kg;Remarks\nA;25 kg;4.10;per kg\n", List.of())
                        .isKept())
                .isTrue();
    }

    @Test
    void whether_breaks_count_packs_is_asked_about_where_both_make_sense() throws IOException {
        asks("Product;Pack;EUR/kg;50+ (EUR/kg)\nA;25 kg;2.50;1.50\n", "breaks in", "packs", "A|25|kg|1250|1.5|kg|EUR");
    }

    @Test
    void a_break_below_one_pack_counts_packs() throws IOException {
        TakenIn taken = take("Product;Pack;EUR/kg;5+ (EUR/kg)\nA;25 kg;2.50;1.50\n", List.of());

        assertThat(LayoutsProperties.rows(taken)).contains("A|25|kg|125|1.5|kg|EUR");
    }

    @Test
    void the_price_of_a_case_is_asked_about() throws IOException {
        asks("Product;Pack;EUR per case\nA;5 x 5 kg;100.50\n", "multi-packs", "piece", "A|25|kg||502.5|pack|EUR");
    }

    @Test
    void an_item_that_is_not_repeated_is_asked_about() throws IOException {
        asks("Product;Pack;EUR/kg\nA;25 kg;1.50\n;190 kg;1.20\n", "blank items", "as above", "A|190|kg||1.2|kg|EUR");
    }

    @Test
    void a_bare_quantity_as_header_is_a_break_or_a_pack() throws IOException {
        String list = "Product;25 kg;190 kg;Currency\nA;40.50;250.00;EUR\n";
        TakenIn asked = take(list, List.of());
        assertThat(asked.questions()).extracting(Question::key).contains("25 kg", "190 kg");

        ObjectNode json = json();
        ((ObjectNode) json.get("columns")).put("25 kg", "price of 25 kg").put("190 kg", "price of 190 kg");
        JSON.writeValue(mapping().toFile(), json.put("price per", "pack"));

        assertThat(LayoutsProperties.rows(take(list, List.of())))
                .containsExactly("A|25|kg||40.5|pack|EUR", "A|190|kg||250|pack|EUR");
    }

    @Test
    void names_are_found_by_inci_cas_and_synonym_and_others_are_proposed() throws IOException {
        Path materials = Files.writeString(folder.resolve("materials.csv"), """
                Material,INCI name,CAS
                Shea butter refined,Butyrospermum Parkii Butter,194043-92-0
                Citric acid,Citric Acid,77-92-9
                Glycerin,Glycerin,56-81-5
                """);
        String list = """
                Product;INCI;CAS;Pack;EUR/kg
                Karitébutter raffiniert;Butyrospermum Parkii Butter;;25 kg;6.50
                E 330;;77-92-9;25 kg;1.50
                Glycérine;;;25 kg;2.50
                Citric acidd;;;25 kg;1.75
                Glусerin;;;200 kg;1.10
                Something else;;;1 kg;9.99
                """;

        TakenIn taken = take(list, Grids.ofPriceFile(materials).sheets());

        assertThat(LayoutsProperties.rows(taken))
                .extracting(row -> row.substring(0, row.indexOf('|')))
                .containsExactly(
                        "Shea butter refined", "Citric acid", "Glycerin", "Citric acidd", "Glусerin", "Something else");
        assertThat(taken.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.startsWith("\"Glусerin\" only looks like \"Glycerin\""))
                .anyMatch(text -> text.contains("Citric acidd (perhaps Citric acid, 92 %)"));
        String kept = Files.readString(mapping());
        assertThat(kept)
                .contains("\"by\" : \"CAS\"", "\"by\" : \"INCI\"", "\"by\" : \"synonym\"", "\"likeness\" : 0.92");

        Files.writeString(mapping(), confirmed("Citric acidd", "Citric acid"));
        String next = list.replace("E 330;;77-92-9;25 kg;1.50\n", "");
        assertThat(LayoutsProperties.rows(
                        take(next, Grids.ofPriceFile(materials).sheets())))
                .anyMatch(row -> row.equals("Citric acid|25|kg||1.75|kg|EUR"));
    }

    private String confirmed(String listed, String name) throws IOException {
        ObjectNode json = json();
        json.get("names").forEach(one -> {
            if (one.get("on the list").asText().equals(listed)) {
                ((ObjectNode) one).put("is", name);
            }
        });
        return JSON.writeValueAsString(json);
    }

    @Test
    void dates_and_validity_are_read_from_the_title() throws IOException {
        Path list = Files.writeString(folder.resolve("moor.csv"), """
                Fen & Moor;
                Preisliste gültig ab 1. Dezember 2026 bis 31.03.2027;
                Alle Preise in EUR/kg;
                Artikel;Gebinde;Preis
                A;25 kg;1,50
                """);

        TakenIn taken = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of("Fen & Moor"))
                .take(list, new TakeIn.Said(null, null, null));

        assertThat(taken.supplier()).isEqualTo("Fen & Moor");
        assertThat(taken.quotedOn()).isEqualTo(LocalDate.of(2026, 12, 1));
        assertThat(taken.validUntil()).isEqualTo(LocalDate.of(2027, 3, 31));
        assertThat(LayoutsProperties.rows(taken)).containsExactly("A|25|kg||1.5|kg|EUR");
    }

    @Test
    void a_list_without_a_date_or_a_supplier_is_not_taken_in() throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), "Product;Pack;EUR/kg\nA;25 kg;1.50\n");
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());

        assertThat(takeIn.take(list, new TakeIn.Said(null, DAY, null)).findings())
                .extracting(Finding::text)
                .containsExactly("The list does not say which supplier it is from. Name the supplier with --supplier.");
        assertThat(takeIn.take(list, new TakeIn.Said("Fen & Moor", null, null)).findings())
                .extracting(Finding::text)
                .containsExactly("The list has no date. Give the day that it applies from with --quoted YYYY-MM-DD.");
    }

    @Test
    void all_that_a_list_does_not_say_is_asked_in_one_go() throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), "Product;Pack;Price EUR\nA;25 kg;1.50\n");
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());

        TakenIn taken = takeIn.take(list, new TakeIn.Said(null, null, null));
        assertThat(taken.findings())
                .extracting(Finding::text)
                .containsExactlyInAnyOrder(
                        "The list does not say which supplier it is from. Name the supplier with --supplier.",
                        "The list has no date. Give the day that it applies from with --quoted YYYY-MM-DD.");
        assertThat(taken.questions()).extracting(Question::field).containsExactly("price per");
    }

    private List<String> sentences(String list) throws IOException {
        return take(list, List.of()).questions().stream()
                .map(Question::sentence)
                .toList();
    }

    @Test
    void a_question_names_what_it_is_about_and_its_answers() throws IOException {
        assertThat(sentences("Product;Pack;EUR/kg;50+ (EUR/kg)\nA;25 kg;1.250;1.150\n"))
                .containsExactly(
                        "Does \"1.250\" mean 1.25 (decimal point) or 1250 (decimal comma)?"
                                + " Answer in the mapping under \"decimals\": point or comma.",
                        "Does the price break at \"50\" count packs, or the unit of the pack (such as kg)?"
                                + " Answer in the mapping under \"breaks in\": packs, pack unit or a unit such as kg.");
        assertThat(sentences("Product;Pack;EUR/kg;Min. order\nA;25 kg;1.25;60\n"))
                .containsExactly("Does the minimum order \"60\" count packs, or the unit of the pack (such as kg)?"
                        + " Answer in the mapping under \"minimums in\": packs, pack unit or a unit such as kg.");
        assertThat(json().get("open").get(0).asText())
                .isEqualTo(
                        "list.csv line 2: Does the minimum order \"60\" count packs, or the unit of the pack (such as"
                                + " kg)? Possible answers: packs, pack unit or a unit such as kg.");
    }

    @Test
    void the_question_for_the_pack_names_the_columns_that_are_not_used() throws IOException {
        assertThat(sentences("Product;Box;Remarks;EUR/kg\nA;25 kg;new;1.25\n"))
                .containsExactly("Which column holds the pack size: \"Box\" or \"Remarks\"?"
                        + " If none does, give the one pack of all items, such as 25 kg."
                        + " Answer in the mapping under \"pack column\": Box, Remarks or one pack such as 25 kg.");
        assertThat(sentences("Product;EUR/kg\nA;1.25\n"))
                .containsExactly("No column seems to hold the pack size."
                        + " What is the one pack of all items, such as 25 kg?"
                        + " Answer in the mapping under \"pack column\": one pack such as 25 kg.");
    }

    @Test
    void a_list_of_several_suppliers_or_with_a_title_says_so_when_its_supplier_is_not_known() throws IOException {
        assertThat(withoutSupplier("Supplier;Product;Pack;EUR/kg\nA Ltd;A;25 kg;1.25\nB GmbH;B;25 kg;1.25\n"))
                .contains(
                        "The list is from 2 suppliers: A Ltd, B GmbH." + " Take it in once for each, with --supplier.");
        assertThat(withoutSupplier("Nadelhorst Tenside;;\n;;\nProduct;Pack;EUR/kg\nA;25 kg;1.25\n"))
                .contains("The list does not say which supplier it is from; its first line is \"Nadelhorst Tenside\"."
                        + " Name the supplier with --supplier.");
    }

    private List<String> withoutSupplier(String text) throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), text);
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());
        return takeIn.take(list, new TakeIn.Said(null, DAY, null)).findings().stream()
                .map(Finding::text)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Supplier: Havre Chimie", "Fournisseur : Havre Chimie", "Lieferant:  Havre Chimie "})
    void a_new_supplier_may_be_named_in_the_title(String title) throws IOException {
        Path list = Files.writeString(
                folder.resolve("list.csv"), title + "\n\nProduct;Pack;EUR/kg;Quoted\nA;25 kg;1.50;2026-11-20\n");
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());

        TakenIn taken = takeIn.take(list, new TakeIn.Said(null, null, null));
        assertThat(taken.findings()).filteredOn(Finding::isError).isEmpty();
        assertThat(taken.supplier()).isEqualTo("Havre Chimie");
        assertThat(taken.quotedOn()).isEqualTo(LocalDate.of(2026, 11, 20));
    }

    private static ListFolder.Kept.How how(TakenIn taken) {
        return requireNonNull(taken.kept()).how();
    }

    @Test
    void another_list_of_the_same_day_replaces_the_first_which_stays_as_a_backup() throws IOException {
        assertThat(how(take("Product;Pack;EUR/kg\nA;25 kg;1.50\n", List.of()))).isEqualTo(ListFolder.Kept.How.NEW);
        assertThat(how(take("Product;Pack;EUR/kg\nA;25 kg;1.50\n", List.of())))
                .isEqualTo(ListFolder.Kept.How.THERE_ALREADY);
        TakenIn replaced = take("Product;Pack;EUR/kg\nA;25 kg;1.60\n", List.of());
        assertThat(how(replaced)).isEqualTo(ListFolder.Kept.How.REPLACED);
        assertThat(Files.readString(folder.resolve("kept/fen-moor-2026-11-02.csv.bak")))
                .contains(",1.5,");
    }
}
