package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.model.Book;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.origin.Reading;

/** Price lists beside the workbook: CSV, JSON and XLSX. */
final class PriceFilesTest {

    private static final String HEADERS = "Supplier,Item,Pack size,Pack unit,Price,Price per,Currency,Quoted on\n";

    @TempDir
    Path folder = Path.of("");

    @Test
    void offers_of_both_are_joined() throws IOException {
        Path file = write("fen.csv", HEADERS + "Tarnholt Oleo,Shea butter,10,kg,7.125,kg,EUR,2026-11-01\n");
        Book book = sound(TestBook.sound().readWith(file));

        assertThat(book.offersFor("Shea butter")).hasSize(2);
        Offer offer = book.offersFor("Shea butter").get(1);
        assertThat(offer.origin().where()).isEqualTo("fen.csv line 2");
        assertThat(offer.breaks().get(0).price().value()).isEqualByComparingTo("7.125");
        assertThat(offer.breaks().get(0).price().perCell())
                .as("no formula can refer to another file")
                .isNull();
    }

    @Test
    void the_newest_quote_is_used_wherever_it_is() throws IOException {
        Path file = write("fen.csv", HEADERS + "Tarnholt Oleo,Shea butter,25,kg,6.1,kg,EUR,2026-11-01\n");
        Reading<Book> reading = TestBook.sound()
                .set("Offers", "I1", "Quoted on")
                .set("Offers", "I2", "2026-10-01")
                .readWith(file);

        assertThat(sound(reading).offersFor("Shea butter"))
                .singleElement()
                .satisfies(offer ->
                        assertThat(offer.breaks().get(0).price().value()).isEqualByComparingTo("6.1"));
        assertThat(reading.findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "note Offers!A2: The newer quote of 2026-11-01 in fen.csv line 2 is used instead of this one.");
    }

    @Test
    void what_holds_for_many_quotes_of_a_list_is_said_once() throws IOException {
        String two = "Tarnholt Oleo,Shea butter,5,kg,6.1,kg,EUR,DAY\nTarnholt Oleo,Sunflower oil,5,kg,3.1,kg,EUR,DAY\n";
        Path old = write("october.csv", HEADERS + two.replace("DAY", "2026-10-01"));
        Path now = write("november.csv", HEADERS + two.replace("DAY", "2026-11-01"));

        assertThat(TestBook.sound().readWith(old, now).findings())
                .extracting(Finding::toString)
                .filteredOn(text -> text.contains("used instead"))
                .containsExactly(
                        "note october.csv line 2: The newer quote of 2026-11-01 in november.csv line 2 is used instead "
                                + "of this one. The same holds for 1 more quote of this list.");
    }

    @Test
    void the_workbook_wins_for_suppliers_and_materials() throws IOException {
        Path suppliers =
                write("s.csv", "Supplier,Currency,Terms,Lead time days\nTarnholt Oleo,GBP,EXW,99\nFen,EUR,EXW,7\n");
        Path materials = write(
                "m.csv", "Material,INCI name,Density g/mL\nShea butter,Wrong,9\nSunflower oil,Helianthus,1.053\n");
        Book book = sound(TestBook.sound().readWith(suppliers, materials));

        assertThat(book.supplier("Tarnholt Oleo").orElseThrow().currency().getCurrencyCode())
                .isEqualTo("EUR");
        assertThat(TestBook.value(book.supplier("Fen").orElseThrow().leadTimeDays()))
                .isEqualByComparingTo("7");
        assertThat(book.material("Shea butter").orElseThrow().inci()).isEqualTo("Butyrospermum Parkii Butter");
        assertThat(TestBook.value(book.material("Sunflower oil").orElseThrow().density()))
                .isEqualByComparingTo("1.053");
    }

    @Test
    void semicolons_tabs_quotes_and_byte_order_marks_are_understood() throws IOException {
        String semicolons = "\uFEFFSupplier;Item;Pack size;Pack unit;Price;Price per;Currency\r\n"
                + "\"Fen; Marsh & \"\"Co\"\"\";Shea butter;10;kg;\"1.207,50\";kg;EUR\r\n";
        Book one = sound(TestBook.sound().drop("Suppliers").readWith(write("a.csv", semicolons)));
        assertThat(one.offers().get(3).supplier()).isEqualTo("Fen; Marsh & \"Co\"");
        assertThat(one.offers().get(3).breaks().get(0).price().value()).isEqualByComparingTo("1207.5");

        Book two = sound(TestBook.sound()
                .readWith(write(
                        "b.tsv",
                        HEADERS.replace(',', '\t')
                                + "Tarnholt Oleo\tShea butter\t10\tkg\t7,25\tkg\tEUR\t2026-11-01\n")));
        assertThat(two.offers()).hasSize(4);

        Path wide = folder.resolve("c.csv");
        Files.write(
                wide,
                ("\uFEFF" + HEADERS + "Tarnholt Oleo,Shea butter,10,kg,7.2,kg,EUR,\n")
                        .getBytes(StandardCharsets.UTF_16LE));
        assertThat(sound(TestBook.sound().readWith(wide)).offers()).hasSize(4);
    }

    @Test
    void a_line_is_counted_as_an_editor_counts_it() throws IOException {
        Path file = write(
                "fen.csv",
                HEADERS + "\n\"Tarnholt\nOleo\",Shea butter,10,kg,7.2,kg,EUR,\nTarnholt Oleo,Jar,1,each,x,each,EUR,\n");

        assertThat(TestBook.sound().readWith(file).findings())
                .extracting(Finding::toString)
                .contains(
                        "error fen.csv line 5: Price is \"x\", which is not a number. Type the figure alone, such as 1.74.");
    }

    @Test
    void in_a_file_with_semicolons_a_single_mark_can_mean_two_numbers() throws IOException {
        Path file = write("fen.csv", HEADERS.replace(',', ';') + "Tarnholt Oleo;Shea butter;10;kg;1.250;kg;EUR;\n");

        assertThat(TestBook.sound().readWith(file).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "error fen.csv line 2: Price is \"1.250\", which can mean 1250 or 1.25. Type the one that you mean.");
    }

    @Test
    void json_is_an_array_of_objects_or_named_arrays() throws IOException {
        Path array = write("a.json", """
                [{"Supplier": "Tarnholt Oleo", "Item": "Shea butter", "Pack size": 10, "Pack unit": "kg",
                  "Price": 7.25, "Price per": "kg", "Currency": "EUR"}]
                """);
        assertThat(sound(TestBook.sound().readWith(array)).offersFor("Shea butter"))
                .hasSize(2);

        Path named = write("b.json", """
                {"offers": [
                   {"Supplier": "Fen", "Item": "Shea butter", "Pack size": 10, "Pack unit": "kg",
                    "Price": "7,25 €", "Price per": "kg"}],
                 "suppliers": [{"Supplier": "Fen", "Currency": "EUR", "Lead time days": 9}],
                 "materials": [{"Material": "Sunflower oil", "Functions": ["emollient", "solvent"], "Density g/mL": 0.92}]}
                """);
        Book book = sound(TestBook.sound().readWith(named));
        assertThat(book.offersFor("Shea butter").get(1).origin().where()).isEqualTo("b.json line 2");
        assertThat(book.material("Sunflower oil").orElseThrow().functions()).containsExactly("emollient", "solvent");
        assertThat(TestBook.value(book.supplier("Fen").orElseThrow().leadTimeDays()))
                .isEqualByComparingTo("9");
    }

    @Test
    void a_workbook_may_be_a_price_list() {
        Path file = TestBook.empty()
                .sheet(
                        "Fen",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 10, "kg", 7.2, "kg", "EUR"))
                .save();
        Book book = sound(TestBook.sound().readWith(file));

        assertThat(book.offersFor("Shea butter").get(1).breaks().get(0).price().perCell())
                .isNull();
    }

    @Test
    void a_file_without_a_price_list_is_an_error_if_it_was_named_and_a_note_in_a_folder() throws IOException {
        Path file = write("words.csv", "Some,words\nand,more\n");

        assertThat(TestBook.sound().readWith(file).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "error words.csv: No price list was recognised in this file. It needs a table with columns such "
                                + "as Supplier, Item, Pack size and Price.");
        assertThat(TestBook.sound().readWith(folder).findings())
                .extracting(Finding::toString)
                .containsExactly("note words.csv: This file holds no price list, so it is ignored.");
    }

    @Test
    void a_pack_that_the_newest_list_lacks_is_named_and_may_still_be_bought() throws IOException {
        Path old = write(
                "october.csv",
                HEADERS + "Tarnholt Oleo,Shea butter,10,kg,5,kg,EUR,2026-10-01\n"
                        + "Tarnholt Oleo,Argan oil,10,kg,9,kg,EUR,2026-10-01\n");
        Path now = write("november.csv", HEADERS + "Tarnholt Oleo,Shea butter,190,kg,4,kg,EUR,2026-11-01\n");
        Reading<Book> reading = TestBook.sound().readWith(old, now);

        assertThat(reading.findings())
                .extracting(Finding::toString)
                .filteredOn(text -> text.contains("newest list"))
                .containsExactly(
                        "warning october.csv line 2: \"Shea butter\" in packs of 10 kg is not on Tarnholt Oleo's newest "
                                + "list, november.csv of 2026-11-01. The price of 2026-10-01 is still used, because a list may be "
                                + "partial. Ask the supplier whether the pack is still sold.");
        assertThat(reading.value().offersFor("Shea butter"))
                .extracting(Offer::pack)
                .contains("10 kg");
        assertThat(TestBook.sound().readWith(now).findings())
                .extracting(Finding::text)
                .noneMatch(text -> text.contains("newest list"));
    }

    @Test
    void lists_of_one_supplier_belong_together_however_the_name_is_written() throws IOException {
        Path old = write(
                "october.csv",
                HEADERS + "Fen,Shea butter,10,kg,5,kg,EUR,2026-10-01\nFen,Argan oil,10,kg,9,kg,EUR,2026-10-01\n");
        Path now = write("november.csv", HEADERS + "FEN,Argan oil,10,kg,8,kg,EUR,2026-11-01\n");

        assertThat(newestList(old, now)).singleElement().asString().startsWith("warning october.csv line 2: ");
    }

    /** Half of the older list's items is enough to be its successor, less than half is not. */
    @Test
    void a_newer_list_of_other_items_withdraws_nothing() throws IOException {
        Path shea = write("shea.csv", HEADERS + "Fen,Shea butter,10,kg,5,kg,EUR,2026-10-01\n");
        Path sun = write("sun.csv", HEADERS + "Fen,Sunflower oil,10,kg,5,kg,EUR,2026-10-15\n");
        Path three = write(
                "three.csv",
                HEADERS + "Fen,Shea butter,10,kg,5,kg,EUR,2026-09-01\nFen,Clay,10,kg,9,kg,EUR,2026-09-01\n"
                        + "Fen,Argan oil,10,kg,9,kg,EUR,2026-09-01\n");
        Path one = write("one.csv", HEADERS + "Fen,Clay,10,kg,9,kg,EUR,2026-11-01\n");
        Path two = write(
                "two.csv", HEADERS + "Fen,Clay,10,kg,9,kg,EUR,2026-11-01\nFen,Argan oil,10,kg,9,kg,EUR,2026-11-01\n");

        assertThat(newestList(shea, sun)).isEmpty();
        assertThat(newestList(three, one)).isEmpty();
        assertThat(newestList(three, two)).singleElement().asString().contains("two.csv of 2026-11-01");
        Path last = write("last.csv", HEADERS + "Fen,Sunflower oil,10,kg,5,kg,EUR,2026-11-10\n");
        assertThat(newestList(three, two, last))
                .as("a list of something else after it changes nothing")
                .singleElement()
                .asString()
                .contains("two.csv of 2026-11-01");
        Path elsewhere = write("last.csv", HEADERS + "Fen,Shea butter,10,kg,5,kg,EUR,2026-11-10\n");
        assertThat(newestList(three, two, elsewhere))
                .as("it is on a newer list")
                .isEmpty();
    }

    @Test
    void many_packs_that_the_newest_list_lacks_are_named_in_one_warning() throws IOException {
        StringBuilder packs = new StringBuilder(HEADERS);
        for (int size = 1; size <= 4; size++) {
            packs.append("Fen,Shea butter,").append(size).append(",kg,5,kg,EUR,2026-10-01\n");
        }
        Path old = write("october.csv", packs.toString());
        Path now = write("november.csv", HEADERS + "Fen,Shea butter,190,kg,4,kg,EUR,2026-11-01\n");

        assertThat(newestList(old, now))
                .containsExactly(
                        "warning october.csv line 2: 4 packs of this list are not on Fen's newest list, november.csv of "
                                + "2026-11-01: \"Shea butter\" in packs of 1 kg, \"Shea butter\" in packs of 2 kg, \"Shea "
                                + "butter\" in packs of 3 kg, \"Shea butter\" in packs of 4 kg. Their older prices are still "
                                + "used, because a list may be partial. Ask the supplier whether the packs are still sold.");
    }

    private List<String> newestList(Path... files) {
        return TestBook.sound().readWith(files).findings().stream()
                .map(Finding::toString)
                .filter(text -> text.contains("newest list"))
                .toList();
    }

    @Test
    void an_older_price_of_what_a_list_has_no_price_for_is_not_used() throws IOException {
        Path list = write("fen.csv", HEADERS + "Tarnholt Oleo,Shea butter,25,kg,no price,,,2026-11-01\n");
        Reading<Book> reading = TestBook.sound().readWith(list);

        assertThat(reading.findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "warning fen.csv line 2: \"Shea butter\" in packs of 25 kg has no price on Tarnholt Oleo's list "
                                + "of 2026-11-01, so the older price in Offers!A2 is ignored. Ask the supplier, and add the answer as an "
                                + "offer with a later \"Quoted on\".");
        assertThat(reading.value().offersFor("Shea butter")).isEmpty();
        Path later = write("moor.csv", HEADERS + "Tarnholt Oleo,Shea butter,25,kg,6.2,kg,EUR,2026-11-02\n");
        assertThat(TestBook.sound().readWith(list, later).value().offersFor("Shea butter"))
                .hasSize(1);
        Path coming = write("fen.csv", HEADERS + "Tarnholt Oleo,Shea butter,25,kg,no price,,,2026-12-01\n");
        Reading<Book> before = TestBook.sound().readWith(coming);
        assertThat(before.findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "warning fen.csv line 2: \"Shea butter\" in packs of 25 kg has no price on Tarnholt Oleo's list "
                                + "of 2026-12-01, which is after the costing date 2026-11-20. The price in Offers!A2 is assumed "
                                + "to end on 2026-11-30.");
        assertThat(before.value().offersFor("Shea butter"))
                .singleElement()
                .extracting(Offer::validUntil)
                .isEqualTo(LocalDate.of(2026, 11, 30));
    }

    @Test
    void a_price_that_another_one_follows_is_not_ended_by_a_list_without_one() throws IOException {
        Path list = write(
                "fen.csv",
                HEADERS
                        + "Tarnholt Oleo,Shea butter,25,kg,6.2,kg,EUR,2026-12-01\n"
                        + "Tarnholt Oleo,Shea butter,25,kg,no price,,,2027-01-01\n");
        assertThat(TestBook.sound().readWith(list).value().offersFor("Shea butter"))
                .extracting(Offer::validUntil)
                .containsExactly(null, LocalDate.of(2026, 12, 31));
    }

    @Test
    void a_price_that_ends_before_it_begins_follows_no_other() throws IOException {
        Path list = write(
                "fen.csv",
                HEADERS.strip() + ",Valid until\n"
                        + "Tarnholt Oleo,Shea butter,25,kg,6.2,kg,EUR,2026-12-01,2026-06-30\n"
                        + "Tarnholt Oleo,Shea butter,25,kg,no price,,,2027-01-01,\n");
        assertThat(TestBook.sound().readWith(list).value().offersFor("Shea butter"))
                .filteredOn(offer -> offer.quotedOn() == null)
                .extracting(Offer::validUntil)
                .containsExactly(LocalDate.of(2026, 12, 31));
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Book sound(Reading<Book> reading) {
        assertThat(reading.findings()).filteredOn(Finding::isError).isEmpty();
        return reading.value();
    }
}
