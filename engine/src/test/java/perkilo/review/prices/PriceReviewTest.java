package perkilo.review.prices;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.desk.TakeInAnswer;
import perkilo.desk.TakeInPrices;
import perkilo.desk.TakeInRequest;
import perkilo.desk.Watch;
import perkilo.json.ListsJson;
import perkilo.layouts.Question;
import perkilo.origin.Finding;
import perkilo.pricelists.ListFolder.Kept.How;
import perkilo.pricelists.TakeIn;
import perkilo.pricelists.TakenIn;
import perkilo.review.Asked;
import perkilo.review.SavedByOffice;

/** Price lists from their arrival to the folder, as a person answers on the review. */
final class PriceReviewTest {

    private static final String NOVEMBER = "Supplier: Alpha\nPrices of 2026-11-02\n\n";
    private static final String DECEMBER = "Supplier: Alpha\nPrices of 2026-12-01\n\n";
    private static final String HEADINGS = "Product;Pack;EUR/kg\n";

    @TempDir
    private Path folder = Path.of("");

    private Path arrived(String name, String text) throws IOException {
        Path lists = Files.createDirectories(folder.resolve("arrived"));
        return Files.writeString(lists.resolve(name), text);
    }

    private Path kept() {
        return folder.resolve("prices");
    }

    private Path review() {
        return kept().resolve(PriceReview.FILE);
    }

    private TakeInAnswer take(Path... named) throws IOException {
        return new TakeInPrices()
                .take(
                        new TakeInRequest(List.of(named), kept(), null, new TakeIn.Said(null, null, null), review()),
                        Watch.NONE);
    }

    private FilledReview filling() throws IOException {
        return FilledReview.open(review());
    }

    /** The rows of a kept list: item, pack, price, day and file. */
    private List<String> rows(String list) throws IOException {
        List<String> rows = new ArrayList<>();
        for (String line : Files.readAllLines(kept().resolve(list), StandardCharsets.UTF_8)) {
            String[] fields = line.replace("\"", "").split(",", -1);
            rows.add(String.join("|", fields[1], fields[2], fields[5], fields[7], fields[11], fields[14]));
        }
        return rows.subList(1, rows.size());
    }

    private static List<String> texts(TakeInAnswer answer) {
        return answer.lists().stream()
                .flatMap(list -> list.questions().stream())
                .map(Question::text)
                .toList();
    }

    private static How how(TakenIn list) {
        var kept = list.kept();
        assertThat(kept).as(list.findings() + " " + list.questions()).isNotNull();
        return kept.how();
    }

    @Test
    void a_clear_list_goes_in_at_once_and_is_on_the_review() throws IOException {
        TakeInAnswer answer = take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\n"));

        assertThat(answer.allKept()).isTrue();
        assertThat(rows("alpha-2026-11-02.csv")).containsExactly("Wax|25|4.5|EUR|2026-11-02|a.csv");
        try (FilledReview review = filling()) {
            assertThat(review.rows("Questions")).isZero();
            assertThat(review.under(review.row("Prices", "Wax"::equals), "Price"))
                    .isEqualTo("4.50");
            assertThat(review.under(review.row("Lists", "a.csv"::equals), "State"))
                    .isEqualTo("Taken in: 1 price of 1 item");
        }
    }

    @Test
    void a_whole_folder_is_taken_in_without_lock_files_own_files_and_kept_lists() throws IOException {
        arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\n");
        arrived("~$b.csv", "x");
        arrived("alpha-answers.csv", "x");
        arrived("old.mapping.json", "{}");
        arrived("prices-review.xlsx", "x");
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\n"));
        Files.copy(kept().resolve("alpha-2026-11-02.csv"), folder.resolve("arrived/alpha-2026-11-02.csv"));
        arrived("scan.pdf", "%PDF-1.4");

        TakeInAnswer answer = take(folder.resolve("arrived"));

        assertThat(answer.lists())
                .extracting(list -> list.source().getFileName().toString())
                .containsExactly("a.csv", "scan.pdf");
        assertThat(how(answer.lists().get(0))).isEqualTo(How.THERE_ALREADY);
        assertThat(answer.lists().get(1).findings())
                .singleElement()
                .satisfies(why -> assertThat(why.text()).contains("is a PDF"));
        assertThat(take(kept()).lists())
                .as("the folder of lists holds none that arrived")
                .hasSize(1);
    }

    @Test
    void lists_that_wait_are_tried_again_without_being_named() throws IOException {
        Path list = arrived("b.csv", "Product;Pack;Price per kg\nWax;25 kg;1.250\n");
        TakeInAnswer asked = take(list);

        assertThat(asked.anyKept()).isFalse();
        assertThat(asked.waitsFor()).isEqualTo(4);
        try (Stream<Path> files = Files.list(kept())) {
            assertThat(files).as("nothing is kept before its answers").containsExactly(review());
        }
        try (FilledReview review = filling()) {
            review.answer("Who is it from?", "Boreal")
                    .answer("From which day", "3 November 2026")
                    .answer("Which currency", "CHF");
        }
        TakeInAnswer more = take(arrived("c.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\n"));
        assertThat(more.lists()).extracting(TakenIn::isKept).containsExactly(true, false);
        assertThat(texts(more)).containsExactly("Does \"1.250\" mean 1.25 (decimal point) or 1250 (decimal comma)?");
        try (FilledReview review = filling()) {
            assertThat(review.under(review.row("Questions", "Which currency are the prices in?"::equals), "Answer"))
                    .isEqualTo("CHF");
            review.answer("Does \"1.250\" mean", "Point");
        }

        TakeInAnswer all = take();

        assertThat(all.lists()).extracting(TakenIn::isKept).containsExactly(true);
        assertThat(rows("boreal-2026-11-03.csv")).containsExactly("Wax|25|1.25|CHF|2026-11-03|b.csv");
    }

    @Test
    void answers_are_remembered_for_the_same_headings_and_shown_as_last_time() throws IOException {
        String headings = "Product;Pack;Price per kg\n";
        take(arrived("a.csv", NOVEMBER + headings + "Wax;25 kg;1.50\n"));
        try (FilledReview review = filling()) {
            review.answer("Which currency", "CHF");
        }
        assertThat(take().allKept()).isTrue();
        Files.delete(review());

        TakeInAnswer next = take(arrived("b.csv", DECEMBER + headings + "Wax;25 kg;1.60\n"));

        assertThat(rows("alpha-2026-12-01.csv")).containsExactly("Wax|25|1.6|CHF|2026-12-01|b.csv");
        assertThat(next.lists().get(0).seen().asked()).singleElement().satisfies(asked -> {
            assertThat(asked.answer()).isEqualTo("CHF");
            assertThat(asked.remark()).isEqualTo(Asked.AS_LAST_TIME);
        });
        String others = "Item;Pack;Price per kg\n";
        assertThat(texts(take(arrived("c.csv", DECEMBER.replace("12-01", "12-02") + others + "Wax;25 kg;1.60\n"))))
                .as("other headings may mean another currency")
                .containsExactly("Which currency are the prices in?");
    }

    @Test
    void an_answer_can_be_changed_after_a_list_went_in() throws IOException {
        Path list = arrived("a.csv", NOVEMBER + "Product;Pack;Price per kg\nWax;25 kg;1.50\n");
        take(list);
        try (FilledReview review = filling()) {
            review.answer("Which currency", "CHF");
        }
        take();
        try (FilledReview review = filling()) {
            review.answer("Which currency", "SEK").fill("Lists", "a.csv", "Valid from", "2026-11-05");
        }

        TakeInAnswer changed = take();

        assertThat(changed.allKept()).isTrue();
        assertThat(rows("alpha-2026-11-05.csv")).containsExactly("Wax|25|1.5|SEK|2026-11-05|a.csv");
        assertThat(kept().resolve("alpha-2026-11-02.csv"))
                .as("the list is kept once, for its corrected day")
                .doesNotExist();
    }

    @Test
    void two_files_of_one_day_are_united_and_what_contradicts_is_asked() throws IOException {
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\nOil;25 kg;2.00\n"));
        Path second = arrived("b.csv", NOVEMBER + "Product;Pack;EUR/25 kg\nOil;25 kg;50.00\nClay;20 kg;1.00\n");

        assertThat(how(take(second).lists().get(0))).isEqualTo(How.MERGED);
        List<String> united = List.of("Wax|25|4.5|EUR|2026-11-02|a.csv", "Oil|25|2|EUR|2026-11-02|a.csv; b.csv");
        assertThat(rows("alpha-2026-11-02.csv")).containsAll(united).hasSize(3);

        TakeInAnswer third = take(arrived("c.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.80\nClay;5 kg;2.00\n"));
        assertThat(texts(third))
                .containsExactly("There are 2 prices for Wax, 25 kg: 4.5 EUR/kg (a.csv); 4.8 EUR/kg (line 5)."
                        + " Which one holds?");
        assertThat(rows("alpha-2026-11-02.csv")).as("nothing is overwritten").hasSize(3);
        try (FilledReview review = filling()) {
            review.answer("There are 2 prices for Wax", "4.8 EUR/kg (line 5)");
        }
        assertThat(how(take().lists().get(0))).isEqualTo(How.MERGED);
        assertThat(rows("alpha-2026-11-02.csv"))
                .contains("Wax|25|4.8|EUR|2026-11-02|c.csv", united.get(1))
                .hasSize(4);
        assertThat(kept().resolve("alpha-2026-11-02.csv.bak")).content().contains("4.5");

        TakeInAnswer again = take(folder.resolve("arrived"));
        assertThat(again.lists()).extracting(PriceReviewTest::how).containsOnly(How.THERE_ALREADY);
        assertThat(rows("alpha-2026-11-02.csv")).contains("Wax|25|4.8|EUR|2026-11-02|c.csv");
    }

    @Test
    void a_corrected_file_replaces_what_it_brought_if_the_person_says_so() throws IOException {
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\nOil;25 kg;2.00\n"));
        take(arrived("b.csv", NOVEMBER + HEADINGS + "Clay;20 kg;1.00\n"));

        TakeInAnswer corrected = take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.60\nSoap;5 kg;3.00\n"));

        assertThat(texts(corrected))
                .containsExactly("This file was taken in before and has changed since: 1 price differ, 1 line new,"
                        + " 1 line gone. Does it replace what was taken in?");
        try (FilledReview review = filling()) {
            review.answer("has changed since", "it replaces the earlier one");
        }
        take();
        assertThat(rows("alpha-2026-11-02.csv"))
                .containsExactlyInAnyOrder(
                        "Clay|20|1|EUR|2026-11-02|b.csv",
                        "Wax|25|4.6|EUR|2026-11-02|a.csv",
                        "Soap|5|3|EUR|2026-11-02|a.csv");
    }

    @Test
    void a_price_that_changed_by_more_than_half_is_asked_about() throws IOException {
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\nOil;25 kg;2.00\nClay;20 kg;1.00\n"));
        Path next = arrived("b.csv", DECEMBER + HEADINGS + "Wax;25 kg;45.00\nOil;25 kg;3.00\nClay;20 kg;0.49\n");

        assertThat(texts(take(next)))
                .containsExactly(
                        "The price of Wax, 25 kg went from 4.5 to 45 EUR/kg (+900 %). Is it right?",
                        "The price of Clay, 20 kg went from 1 to 0.49 EUR/kg (-51 %). Is it right?");
        try (FilledReview review = filling()) {
            assertThat(review.under(review.row("Prices", "Oil"::equals), "Change"))
                    .isEqualTo("50.00%");
            review.answer("The price of Wax", "leave it out").answer("The price of Clay", "it is right");
        }
        assertThat(take().allKept()).isTrue();
        assertThat(rows("alpha-2026-12-01.csv"))
                .containsExactly("Oil|25|3|EUR|2026-12-01|b.csv", "Clay|20|0.49|EUR|2026-12-01|b.csv");
    }

    @Test
    void a_supplier_with_nearly_the_name_of_a_known_one_is_asked_about_once() throws IOException {
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\n"));
        String other = DECEMBER.replace("Alpha", "Alpha Chemie") + HEADINGS + "Wax;25 kg;4.60\n";

        assertThat(texts(take(arrived("b.csv", other))))
                .containsExactly("The list is from \"Alpha Chemie\". Is that the supplier \"Alpha\" that you know?");
        try (FilledReview review = filling()) {
            review.answer("Is that the supplier", "Alpha");
        }
        take();
        assertThat(rows("alpha-2026-12-01.csv")).hasSize(1);
        assertThat(take(arrived("c.csv", other.replace("12-01", "12-08"))).allKept())
                .as("it is known from now on")
                .isTrue();
    }

    @Test
    void a_list_of_several_suppliers_is_taken_in_for_each() throws IOException {
        Path list = arrived("both.csv", """
                        Supplier;Product;Pack;EUR/kg;Quoted on
                        Dale;Wax;25 kg;4.50;2026-11-02
                        Fern;Wax;25 kg;4.40;2026-11-03
                        """);
        assertThat(texts(take(list))).hasSize(1);
        try (FilledReview review = filling()) {
            review.answer("The list is from 2 suppliers", "each of them");
        }

        assertThat(take().allKept()).isTrue();
        assertThat(rows("dale-2026-11-02.csv")).hasSize(1);
        assertThat(rows("fern-2026-11-03.csv")).hasSize(1);
        Files.delete(review());
        assertThat(take(list).lists())
                .hasSize(2)
                .extracting(PriceReviewTest::how)
                .containsOnly(How.THERE_ALREADY);
    }

    @Test
    void columns_can_be_assigned_where_no_heading_is_understood_and_are_remembered() throws IOException {
        String table = "Zzz;Geb.;Xy;Qq\nWax;25 kg;4,50;a\nOil;190 kg;2,00;b\n";
        take(arrived("odd.csv", NOVEMBER + table));
        try (FilledReview review = filling()) {
            assertThat(review.under(review.row("Not read", "column \"Xy\""::equals), "Holds, for example"))
                    .isEqualTo("4,50 | 2,00");
            review.fill("Not read", "column \"Zzz\"", "It is the …", "the item")
                    .fill("Not read", "column \"Geb.\"", "It is the …", "pack")
                    .fill("Not read", "column \"Xy\"", "It is the …", "price")
                    .fill("Not read", "column \"Qq\"", "It is the …", "ignore");
        }
        TakeInAnswer assigned = take();
        assertThat(texts(assigned)).hasSize(2).anyMatch(text -> text.contains("currency"));
        try (FilledReview review = filling()) {
            review.answer("Which currency", "EUR").answer("Are the prices for", "kg");
        }
        assertThat(take().allKept()).isTrue();
        assertThat(rows("alpha-2026-11-02.csv"))
                .containsExactly("Wax|25|4.5|EUR|2026-11-02|odd.csv", "Oil|190|2|EUR|2026-11-02|odd.csv");

        Files.delete(review());
        assertThat(take(arrived("next.csv", DECEMBER + table.replace("4,50", "4,70")))
                        .allKept())
                .isTrue();
        assertThat(rows("alpha-2026-12-01.csv")).contains("Wax|25|4.7|EUR|2026-12-01|next.csv");
    }

    @Test
    void a_table_without_headings_can_be_read() throws IOException {
        take(arrived("bare.csv", "Wax;25 kg;4,50 EUR/kg\nOil;190 kg;2,00 EUR/kg\n"));
        try (FilledReview review = filling()) {
            review.answer("No price table was recognised", "none")
                    .answer("Who is it from", "Bare")
                    .answer("From which day", "2026-11-02");
        }
        take();
        try (FilledReview review = filling()) {
            review.fill("Not read", "column \"Column A\"", "It is the …", "item")
                    .fill("Not read", "column \"Column B\"", "It is the …", "pack")
                    .fill("Not read", "column \"Column C\"", "It is the …", "price");
        }

        TakeInAnswer answer = take();

        assertThat(answer.allKept()).as(texts(answer).toString()).isTrue();
        assertThat(rows("bare-2026-11-02.csv"))
                .containsExactly("Wax|25|4.5|EUR|2026-11-02|bare.csv", "Oil|190|2|EUR|2026-11-02|bare.csv");
    }

    @Test
    void a_row_with_an_error_can_be_left_out() throws IOException {
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\nOil;a box;2.00\n"));
        assertThat(kept().resolve("alpha-2026-11-02.csv")).doesNotExist();
        try (FilledReview review = filling()) {
            review.fill("Not read", "The pack \"a box\" is not understood", "It is the …", "ignore");
        }

        assertThat(take().allKept()).isTrue();
        assertThat(rows("alpha-2026-11-02.csv")).containsExactly("Wax|25|4.5|EUR|2026-11-02|a.csv");
    }

    @Test
    void a_list_of_which_every_row_is_left_out_is_not_taken_in() throws IOException {
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Oil;a box;2.00\n"));
        try (FilledReview review = filling()) {
            review.fill("Not read", "The pack \"a box\" is not understood", "It is the …", "ignore");
        }

        TakenIn none = take().lists().get(0);

        assertThat(none.isKept()).isFalse();
        assertThat(none.findings())
                .extracting(Finding::text)
                .contains("The list holds no prices. Check that its price column is filled.");
    }

    @Test
    void a_misread_column_can_be_corrected() throws IOException {
        take(arrived("a.csv", NOVEMBER + "Product;Kind;Pack;EUR/kg\nW-1;Wax;25 kg;4.50\n"));
        try (FilledReview review = filling()) {
            review.fill("Read as", "column \"Product\"", "It is the …", "code")
                    .fill("Not read", "column \"Kind\"", "It is the …", "item");
        }

        take();

        assertThat(rows("alpha-2026-11-02.csv")).containsExactly("Wax|25|4.5|EUR|2026-11-02|a.csv");
    }

    @Test
    void an_item_can_be_chosen_for_a_name() throws IOException {
        Files.createDirectories(kept());
        Files.writeString(kept().resolve("materials.csv"), "Material,INCI name\nBeeswax,Cera Alba\nClay,Kaolin\n");
        take(arrived("a.csv", NOVEMBER + HEADINGS + "Yellow one;25 kg;4.50\n"));
        try (FilledReview review = filling()) {
            review.fill("Prices", "Yellow one", "Your item", "Beeswaks");
        }
        assertThat(texts(take()))
                .containsExactly("You answered that \"Yellow one\" is \"Beeswaks\", which is not among your items."
                        + " Is the name right?");
        try (FilledReview review = filling()) {
            review.answer("which is not among your items", "Beeswax");
        }

        assertThat(take().allKept()).isTrue();
        assertThat(rows("alpha-2026-11-02.csv")).containsExactly("Beeswax|25|4.5|EUR|2026-11-02|a.csv");
    }

    @Test
    void two_files_of_the_same_name_are_two_files() throws IOException {
        Path one = arrived("list.csv", HEADINGS + "Wax;25 kg;4.50\n");
        Path other = Files.writeString(
                Files.createDirectories(folder.resolve("others")).resolve("list.csv"), HEADINGS + "Oil;25 kg;2.50\n");

        TakeInAnswer answer = take(one, other);

        assertThat(answer.lists().stream()
                        .flatMap(list -> list.seen().asked().stream())
                        .map(Asked::key))
                .hasSize(4)
                .doesNotHaveDuplicates();
    }

    @Test
    @Tag("office")
    void answers_come_back_from_a_review_that_libreoffice_saved() throws Exception {
        take(arrived("b.csv", "Product;Pack;Price per kg\nWax;25 kg;1.250\n"));
        try (FilledReview review = filling()) {
            review.answer("Who is it from?", "Boreal")
                    .answer("From which day", "2026-11-03")
                    .answer("Does \"1.250\" mean", "comma")
                    .answer("Which currency", "CHF");
        }
        Files.copy(SavedByOffice.of(review()), review(), StandardCopyOption.REPLACE_EXISTING);

        assertThat(take().allKept()).isTrue();
        assertThat(rows("boreal-2026-11-03.csv")).containsExactly("Wax|25|1250|CHF|2026-11-03|b.csv");
    }

    @Test
    void json_has_what_the_review_has() throws IOException {
        TakeInAnswer answer = take(
                arrived("a.csv", NOVEMBER + HEADINGS + "Wax;25 kg;4.50\n"),
                arrived("b.csv", "Product;Pack;Price per kg;Zz\nWax;25 kg;1.250;q\n"));

        ObjectNode json = ListsJson.of(answer.lists(), answer.review());

        assertThat(json.get("review").asText()).isEqualTo(review().toString());
        assertThat(json.get("lists")).hasSize(2);
        assertThat(json.get("lists").get(0).get("keptIn").asText()).endsWith("alpha-2026-11-02.csv");
        assertThat(json.get("questions")).hasSize(4);
        assertThat(json.get("questions").get(0).get("key").asText()).startsWith("k");
        assertThat(json.get("questions").get(0).get("file").asText()).isEqualTo("b.csv");
        assertThat(json.get("questions").get(0).get("answer").isNull()).isTrue();
        assertThat(json.get("prices").get(0).get("price").asText()).isEqualTo("4.5");
        assertThat(json.get("notRead").get(0).get("text").asText()).isEqualTo("Zz");
        assertThat(json.get("notRead").get(0).get("samples").get(0).asText()).isEqualTo("q");
    }
}
