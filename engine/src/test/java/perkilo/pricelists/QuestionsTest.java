package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

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
import perkilo.review.Asked;
import perkilo.review.prices.FilledReview;
import perkilo.review.prices.PriceReview;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** What a list does not say is asked for, once, and the answer is kept for the supplier's next list. */
final class QuestionsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 2);

    @TempDir
    Path folder = Path.of("");

    private TakenIn take(String text, List<Grid> known) throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), text);
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), known, Set.of());
        TakenIn taken = takeIn.take(list, new TakeIn.Said("Fen & Moor", DAY, null), PriceReview.read(review()))
                .get(0);
        new PriceReview(List.of(taken), takeIn.knownItems()).write(review(), true);
        return taken;
    }

    private Path review() {
        return folder.resolve(PriceReview.FILE);
    }

    private void answer(TakenIn asked, String field, String words) throws IOException {
        Question question = asked.questions().stream()
                .filter(one -> one.field().equals(field) || one.key().equals(field))
                .findFirst()
                .orElseThrow();
        Asked open = asked.seen().asked().stream()
                .filter(one -> one.isOpen() && one.text().equals(question.text()))
                .findFirst()
                .orElseThrow();
        assertThat(open.where()).isEqualTo(question.where());
        try (FilledReview review = FilledReview.open(review())) {
            review.fill("Questions", open.key(), "Answer", words);
        }
    }

    private void change(String question, String words) throws IOException {
        try (FilledReview review = FilledReview.open(review())) {
            review.answer(question, words);
        }
    }

    private void asks(String list, String field, String words, String row) throws IOException {
        TakenIn asked = take(list, List.of());
        assertThat(asked.isKept()).isFalse();
        assertThat(asked.questions()).extracting(Question::field).containsExactly(field);
        assertThat(folder.resolve("kept"))
                .satisfiesAnyOf(
                        kept -> assertThat(kept).doesNotExist(),
                        kept -> assertThat(kept).isEmptyDirectory());
        answer(asked, field, words);
        assertThat(LayoutsProperties.rows(take(list, List.of()))).contains(row);
        Files.delete(review());
        assertThat(LayoutsProperties.rows(take(list, List.of())))
                .as("the answer is remembered")
                .contains(row);
    }

    @Test
    void a_number_that_can_be_two_is_asked_about() throws IOException {
        asks("Product;Pack;EUR/kg\nA;25 kg;1.250\n", "decimals", "comma", "A|25|kg||1250|kg|EUR");
    }

    @Test
    void the_unit_of_bare_packs_is_asked_once_for_the_column() throws IOException {
        String list = "Product;Pack;EUR/kg\nA;25;4.50\nB;200;3.90\nC;500 g;6.20\n";

        asks(list, "unit of packs", "lb", "A|25|lb||4.5|kg|EUR");

        assertThat(LayoutsProperties.rows(take(list, List.of())))
                .contains("B|200|lb||3.9|kg|EUR", "C|500|g||6.2|kg|EUR");
    }

    @Test
    void a_column_that_speaks_of_cost_is_asked_about_in_one_place() throws IOException {
        TakenIn asked = take("Product;Pack;EUR/kg;Energy surcharge\nA;25 kg;4.50;0.20\n", List.of());

        assertThat(asked.questions()).extracting(Question::key).containsExactly("Energy surcharge");
        assertThat(asked.seen().columns())
                .extracting(column -> column.heading())
                .containsExactly("Product", "Pack", "EUR/kg");
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
    void gallons_are_asked_about_unless_the_prices_are_in_us_dollars() throws IOException {
        String list = "Product;Pack;GBP/gal\nA;5 gal;12.50\nB;5 gal;on request\n";
        assertThat(take(list, List.of()).questions())
                .extracting(Question::text)
                .containsExactly(
                        "Is the gallon of this list a US one (3.785411784 L) or an imperial one (4.54609 L)? 1 gal "
                                + "= 3.785 L (US) or 4.546 L (imperial).");
        asks(list, "gallons", "imperial", "A|5|imp gal||12.5|imp gal|GBP");
        assertThat(LayoutsProperties.rows(take(list, List.of()))).anyMatch(row -> row.startsWith("B|5|imp gal|"));
        change("Is the gallon", "US");
        assertThat(LayoutsProperties.rows(take(list, List.of()))).contains("A|5|US gal||12.5|US gal|GBP");
    }

    @Test
    void gallons_of_a_list_in_us_dollars_are_us_gallons() throws IOException {
        assertThat(LayoutsProperties.rows(take("Product;Pack;USD/gal\nA;5 gallons;12.50\n", List.of())))
                .contains("A|5|US gal||12.5|US gal|USD");
    }

    @Test
    void gallons_that_say_whose_they_are_need_no_answer() throws IOException {
        String list = "Product;Pack;Price EUR;Per\nA;5 gal (US);12.50;US gal\nB;5 imp gal;12.50;imperial gallon\n";
        assertThat(LayoutsProperties.rows(take(list, List.of())))
                .contains("A|5|US gal||12.5|US gal|EUR", "B|5|imp gal||12.5|imp gal|EUR");
    }

    @Test
    void a_minimum_in_gallons_is_asked_about_as_well() throws IOException {
        String list = "Product;Pack;EUR/L;Minimum order\nA;20 L;12.50;10 gal\n";
        assertThat(take(list, List.of()).questions())
                .extracting(Question::field)
                .containsExactly("gallons");
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
                .contains("The row says \"per lb\" but the list says otherwise. As you answered, the row applies.");
        change("The row says", "list");
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
    void columns_headed_by_bare_quantities_are_breaks_or_packs_and_are_asked_about_once() throws IOException {
        String list = "Product;25 kg;100 kg;Currency\nA;40.50;250.00;EUR\n";
        asksBoth(list, "packs", "A|25|kg||40.5|pack|EUR", "A|100|kg||250|pack|EUR");
    }

    private void asksBoth(String list, String columns, String... rows) throws IOException {
        TakenIn asked = take(list, List.of());
        assertThat(asked.questions()).extracting(Question::field).containsOnlyOnce("columns of quantities");
        answer(asked, "columns of quantities", columns);
        if (asked.questions().stream().noneMatch(question -> question.field().equals("price per"))) {
            asked = take(list, List.of());
        }
        answer(asked, "price per", "pack");
        assertThat(LayoutsProperties.rows(take(list, List.of()))).containsExactly(rows);
    }

    @Test
    void columns_beside_packs_are_breaks_if_a_person_says_so() throws IOException {
        asks(
                "Product;Pack;25 kg (EUR/kg);100 kg (EUR/kg)\nA;25 kg;4.50;4.10\n",
                "columns of quantities",
                "breaks",
                "A|25|kg|100|4.1|kg|EUR");
    }

    @Test
    void a_drum_among_the_sizes_shows_that_columns_are_packs() throws IOException {
        TakenIn taken = take("Product;5 kg;25 kg;190 kg;Per;Currency\nA;4.50;4.10;3.90;kg;EUR\n", List.of());

        assertThat(LayoutsProperties.rows(taken))
                .contains("A|5|kg||4.5|kg|EUR", "A|25|kg||4.1|kg|EUR", "A|190|kg||3.9|kg|EUR");
    }

    @Test
    void a_size_that_no_drum_holds_leaves_it_open() throws IOException {
        TakenIn taken = take("Product;190 kg;760 kg;Per;Currency\nA;4.50;4.10;kg;EUR\n", List.of());

        assertThat(taken.questions()).extracting(Question::field).containsExactly("columns of quantities");
    }

    @Test
    void names_that_hold_packs_leave_it_open() throws IOException {
        TakenIn taken = take("Product;25 kg;190 kg;Per;Currency\nA 5 kg;4.50;4.10;kg;EUR\n", List.of());

        assertThat(taken.questions()).extracting(Question::field).contains("columns of quantities");
    }

    @Test
    void prices_that_grow_with_the_size_are_those_of_packs() throws IOException {
        String list = "Product;10 kg;100 kg;Currency\nA;40.50;350.00;EUR\nB;31.00;280.00;EUR\n";
        asks(list, "price per", "pack", "B|100|kg||280|pack|EUR");
    }

    @Test
    void a_comma_in_a_list_with_german_headers_is_a_decimal_comma() throws IOException {
        TakenIn taken = take("Artikel;Gebinde;Preis je 100 g (EUR)\nA;25 kg;1,250\n", List.of());

        assertThat(LayoutsProperties.rows(taken)).contains("A|25|kg||12.5|kg|EUR");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Artikel;Gebinde;EUR/kg\nA;25 kg;1.250\n",
                "Artikel;Gebinde;EUR/kg\nA;25 kg;1.250\nB;25 kg;1,250\n",
                "Artikel;Gebinde;Preis EUR/kg;Manufacturer\nA;25 kg;1,250;C\n",
                "Artículo;Envase;Precio EUR/kg\nA;25 kg;1,250\n",
                "Product;Pack;Price EUR/kg\nA;25 kg;1,250\n"
            })
    void headers_do_not_settle_other_figures(String list) throws IOException {
        assertThat(take(list, List.of()).questions())
                .extracting(Question::field)
                .containsExactly("decimals");
    }

    @Test
    void a_day_in_rows_that_wait_for_an_answer_is_not_asked_for() throws IOException {
        Path file = Files.writeString(
                folder.resolve("list.csv"), "Product;Pack;EUR per case;Date\nA;5 x 5 kg;100.50;2026-11-02\n");
        TakenIn taken = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of())
                .take(file, new TakeIn.Said("Fen & Moor", null, null), PriceReview.read(review()))
                .get(0);

        assertThat(taken.questions()).extracting(Question::field).containsExactly("multi-packs");
    }

    @Test
    void a_break_below_a_pack_in_any_pair_of_columns_counts_packs() throws IOException {
        TakenIn taken = take(
                "Product;Pack;Qty 1;Price 1 (EUR/kg);Qty 2;Price 2 (EUR/kg)\nA;25 kg;1;4.50;30;4.10\nB;190 kg;1;4.00;30;3.80\n",
                List.of());

        assertThat(LayoutsProperties.rows(taken)).contains("A|25|kg|750|4.1|kg|EUR", "B|190|kg|5700|3.8|kg|EUR");
    }

    @Test
    void a_break_below_a_pack_in_any_price_cell_counts_packs() throws IOException {
        TakenIn taken = take(
                "Product;Pack;EUR/kg\nA;25 kg;1–29: 4.50 / 30+: 4.10\nB;190 kg;1–29: 4.00 / 30+: 3.80\n", List.of());

        assertThat(LayoutsProperties.rows(taken)).contains("A|25|kg|750|4.1|kg|EUR", "B|190|kg|5700|3.8|kg|EUR");
    }

    @Test
    void the_name_before_a_dash_is_offered_as_the_supplier() throws IOException {
        Path list = Files.writeString(
                folder.resolve("list.csv"),
                "Fen & Moor – Price list 2026-11-02;;\nProduct;Pack;EUR/kg\nA;25 kg;1.25\n");

        TakenIn taken = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of())
                .take(list, new TakeIn.Said(null, null, null));

        assertThat(taken.questions())
                .singleElement()
                .satisfies(question -> assertThat(question.choices()).containsExactly("Fen & Moor"));
    }

    @Test
    void a_point_beside_quoted_decimal_commas_parts_thousands() throws IOException {
        TakenIn taken = take("""
                Artikel,Gebinde,Menge 1 (kg),Preis 1 (EUR/kg),Menge 2 (kg),Preis 2 (EUR/kg)
                A,25 kg,1,"37,13",1.200,"35,90"
                """, List.of());

        assertThat(LayoutsProperties.rows(taken)).contains("A|25|kg|1200|35.9|kg|EUR");
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
                Citric acidd;;;190 kg;1.75
                Glусerin;;;200 kg;1.10
                Something else;;;1 kg;9.99
                """;

        List<Grid> known = Grids.ofPriceFile(materials).sheets();
        TakenIn asked = take(list, known);

        assertThat(asked.isKept()).isFalse();
        assertThat(asked.questions())
                .extracting(Question::text)
                .containsExactly(
                        "\"Citric acidd\" resembles your item \"Citric acid\". Is it the same?",
                        "\"Glусerin\" only looks like \"Glycerin\": some letters are from another alphabet or invisible."
                                + " Is it the same item?");
        assertThat(asked.seen().prices())
                .extracting(PriceLine::how)
                .containsExactly(
                        "same INCI name",
                        "same CAS number",
                        "known synonym",
                        "resembles it",
                        "only looks the same",
                        "not among your items");
        answer(asked, "Citric acidd", "Citric acid");
        answer(asked, "Glусerin", "keep their own name");
        TakenIn taken = take(list, known);
        assertThat(LayoutsProperties.rows(taken))
                .extracting(row -> row.substring(0, row.indexOf('|')))
                .containsExactly(
                        "Shea butter refined", "Citric acid", "Glycerin", "Citric acid", "Glусerin", "Something else");

        Files.delete(review());
        Files.delete(folder.resolve("kept/fen-moor-2026-11-02.csv"));
        String next = "Product;Pack;EUR/kg\nE 330;25 kg;1.55\nCitric acidd;200 kg;1.45\n";
        assertThat(LayoutsProperties.rows(take(next, known)))
                .as("what was found by CAS number and what was answered is remembered")
                .contains("Citric acid|25|kg||1.55|kg|EUR", "Citric acid|200|kg||1.45|kg|EUR");
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

        assertThat(takeIn.take(list, new TakeIn.Said(null, DAY, null)).questions())
                .extracting(Question::text)
                .containsExactly("The list does not say which supplier it is from. Who is it from?");
        assertThat(takeIn.take(list, new TakeIn.Said("Fen & Moor", null, null)).questions())
                .extracting(Question::text)
                .containsExactly(
                        "The list has no date. From which day do its prices apply? Type a date, such as 2026-11-15.");
    }

    @Test
    void all_that_a_list_does_not_say_is_asked_in_one_go() throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), "Product;Pack;Price EUR\nA;25 kg;1.50\n");
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());

        TakenIn taken = takeIn.take(list, new TakeIn.Said(null, null, null));
        assertThat(taken.questions())
                .extracting(Question::field)
                .containsExactlyInAnyOrder("supplier", "quoted on", "price per");
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
                                + " Possible answers: point or comma.",
                        "Does the price break at \"50\" count packs, or the unit of the pack (such as kg)?"
                                + " Possible answers: packs, pack unit or a unit such as kg.");
        assertThat(sentences("Product;Pack;EUR/kg;Min. order\nA;25 kg;1.25;60\n"))
                .containsExactly("Does the minimum order \"60\" count packs, or the unit of the pack (such as kg)?"
                        + " Possible answers: packs, pack unit or a unit such as kg.");
    }

    @Test
    void the_question_for_the_pack_names_the_columns_that_are_not_used() throws IOException {
        assertThat(sentences("Product;Box;Remarks;EUR/kg\nA;25 kg;new;1.25\n"))
                .containsExactly("Which column holds the pack size: \"Box\" or \"Remarks\"?"
                        + " If none does and all packs are alike, answer with the pack, such as 25 kg."
                        + " Possible answers: Box or Remarks.");
        assertThat(sentences("Product;EUR/kg\nA;1.25\n"))
                .containsExactly("No column seems to hold the pack size."
                        + " If all packs are alike, answer with the pack, such as 25 kg."
                        + " Otherwise add a column to the list.");
    }

    @Test
    void a_list_of_several_suppliers_or_with_a_title_says_so_when_its_supplier_is_not_known() throws IOException {
        assertThat(withoutSupplier("Supplier;Product;Pack;EUR/kg\nA Ltd;A;25 kg;1.25\nB GmbH;B;25 kg;1.25\n"))
                .contains("The list is from 2 suppliers: A Ltd, B GmbH. Take it in for each of them, or for one?");
        assertThat(withoutSupplier("Nadelhorst Tenside;;\n;;\nProduct;Pack;EUR/kg\nA;25 kg;1.25\n"))
                .contains("The list does not say which supplier it is from; its first line is \"Nadelhorst Tenside\"."
                        + " Who is it from?");
    }

    private List<String> withoutSupplier(String text) throws IOException {
        Path list = Files.writeString(folder.resolve("list.csv"), text);
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());
        return takeIn.take(list, new TakeIn.Said(null, DAY, null)).questions().stream()
                .map(Question::text)
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

    @Test
    void one_pack_can_be_the_answer_for_all_items() throws IOException {
        asks("Product;EUR/kg\nA;1.25\n", "pack column", "25 kg", "A|25|kg||1.25|kg|EUR");
    }

    @Test
    void the_column_of_packs_can_be_named() throws IOException {
        asks("Product;Box;EUR/kg\nA;25 kg;1.25\n", "pack column", "box", "A|25|kg||1.25|kg|EUR");
    }

    @Test
    void an_answer_that_is_not_understood_is_asked_for_again_with_a_remark() throws IOException {
        TakenIn asked = take("Product;Pack;EUR/kg\nA;25 kg;1.250\n", List.of());
        answer(asked, "decimals", "kommma");

        TakenIn again = take("Product;Pack;EUR/kg\nA;25 kg;1.250\n", List.of());

        assertThat(again.isKept()).isFalse();
        assertThat(again.seen().asked()).singleElement().satisfies(one -> {
            assertThat(one.isOpen()).isTrue();
            assertThat(one.remark()).isEqualTo("The answer \"kommma\" does not settle it.");
        });
    }

    @Test
    void what_an_earlier_version_kept_is_carried_over_once() throws IOException {
        Path kept = Files.createDirectories(folder.resolve("kept"));
        Path mapping = Files.writeString(kept.resolve("fen-moor.mapping.json"), """
                {"about": "…", "supplier": "Fen & Moor", "decimals": "comma", "dates": null,
                 "columns": {"Was": "nothing"},
                 "names": [{"on the list": "Kakao", "is": "Cocoa butter", "by": "INCI"},
                           {"on the list": "Wachs", "is": null, "perhaps": "Wax", "likeness": 0.8}]}
                """);
        String list = "Product;Pack;EUR/kg;Was\nKakao;25 kg;1.250;x\n";

        TakenIn taken = take(list, List.of());

        assertThat(LayoutsProperties.rows(taken)).containsExactly("Cocoa butter|25|kg||1250|kg|EUR");
        assertThat(taken.findings())
                .extracting(Finding::text)
                .contains("The answers in " + mapping + " were carried over to "
                        + kept.resolve("fen-moor-answers.csv")
                        + ". The old file is no longer used, so you can delete it.");
        Files.delete(mapping);
        TakenIn next = take(list.replace("1.250", "1.350"), List.of());
        assertThat(next.seen().asked())
                .filteredOn(one -> one.answer().equals("comma"))
                .singleElement()
                .satisfies(one -> assertThat(one.remark()).isEqualTo("as last time"));
        assertThat(next.findings()).extracting(Finding::text).noneMatch(text -> text.contains("carried over"));
    }
}
