package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Book;
import perkilo.offers.Offer;
import perkilo.origin.Reading;

/** Of price lists, only what a book names need be read to cost it. */
final class NamedItemsTest {

    private static final String HEADERS =
            "Supplier,Item,INCI name,Pack size,Pack unit,Price,Price per,Currency,Quoted on,Valid until\n";

    @TempDir
    private Path folder = Path.of("");

    /** Whatever the lists hold, the offers of what the book names are the same as if every row were read. */
    @ParameterizedTest
    @ValueSource(strings = {"launch", "minimal", "emollients", "orders"})
    void offers_of_named_items_are_those_of_a_whole_reading(String template) {
        Path book = Path.of("..", "workbook-templates", template + ".xlsx");
        Sources sources = new Sources(book, List.of(Path.of("..", "prices")), null, TestBook.TODAY);
        Reading<Book> whole = read(sources, PricesRead.ALL);
        Reading<Book> named = read(sources, PricesRead.OF_NAMED_ITEMS);

        assertThat(used(named.value())).isNotEmpty().isEqualTo(used(whole.value()));
        assertThat(named.value().offers().size())
                .isLessThan(whole.value().offers().size());
        assertThat(named.value().gaps().gaps()).isEqualTo(whole.value().gaps().gaps());
    }

    @Test
    void rows_that_are_passed_over_are_counted() throws IOException {
        Path list = list("house.csv", """
                Wending,Shea butter,,25,kg,4.10,kg,EUR,2026-11-01,
                Wending,Invented wax,,25,kg,4.10,kg,EUR,2026-11-01,
                Wending,Other wax,,25,kg,no,kg,EUR,2026-11-01,
                """);

        assertThat(texts(PricesRead.OF_NAMED_ITEMS, list))
                .contains("note book.xlsx: 2 rows of the price lists are of items that this workbook does not name, so"
                        + " they were not checked. perkilo check reads all rows.")
                .noneMatch(text -> text.contains("house.csv line 4"));
        assertThat(texts(PricesRead.ALL, list))
                .anyMatch(text -> text.startsWith("error house.csv line 4"))
                .noneMatch(text -> text.contains("not checked"));
    }

    @Test
    void one_row_that_is_passed_over_is_one_row() throws IOException {
        Path list = list("house.csv", "Wending,Invented wax,,25,kg,4.10,kg,EUR,2026-11-01,\n");

        assertThat(texts(PricesRead.OF_NAMED_ITEMS, list))
                .contains("note book.xlsx: 1 row of the price lists is of items that this workbook does not name, so it"
                        + " was not checked. perkilo check reads all rows.");
    }

    /** Nothing is said of quotes that the book does not use, not even of those on its own sheet. */
    @Test
    void an_old_quote_of_an_item_that_is_not_used_is_not_told() {
        TestBook book = TestBook.sound()
                .sheet(
                        "More offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Quoted on"),
                        List.of("Tarnholt Oleo", "Invented wax", 25, "kg", 4, "kg", LocalDate.of(2024, 1, 5)),
                        List.of("Tarnholt Oleo", "Shea butter", 7, "kg", 4, "kg", LocalDate.of(2024, 1, 5)));
        Sources sources = Sources.of(book.save());

        assertThat(texts(read(sources, PricesRead.OF_NAMED_ITEMS)))
                .noneMatch(text -> text.contains("More offers!G2"))
                .anyMatch(text -> text.contains("More offers!G3") && text.contains("days older"));
        assertThat(texts(read(sources, PricesRead.ALL))).anyMatch(text -> text.contains("More offers!G2"));
    }

    /** A newer list takes the place of an older one by what both hold, even if the book names one item of them. */
    @Test
    void a_pack_that_a_newer_list_lacks_is_still_told() throws IOException {
        Path old = list("house-1.csv", """
                Wending,Shea butter,,11,kg,4.10,kg,EUR,2026-10-01,
                Wending,First wax,,25,kg,4.10,kg,EUR,2026-10-01,
                Wending,Second wax,,25,kg,4.10,kg,EUR,2026-10-01,
                """);
        Path newer = list("house-2.csv", """
                Wending,First wax,,25,kg,4.20,kg,EUR,2026-11-01,
                Wending,Second wax,,25,kg,4.20,kg,EUR,2026-11-01,
                """);
        Path part = list("house-2.csv.part", "Wending,First wax,,25,kg,4.20,kg,EUR,2026-11-01,\n");
        Path partial = Files.move(part, folder.resolve("house-3.csv"));

        assertThat(texts(PricesRead.OF_NAMED_ITEMS, old, newer))
                .anyMatch(text -> text.contains("house-1.csv line 2") && text.contains("house-2.csv"))
                .containsAll(texts(PricesRead.ALL, old, newer).stream()
                        .filter(text -> text.contains("house-1.csv line 2"))
                        .toList());
        assertThat(texts(PricesRead.OF_NAMED_ITEMS, old, partial)).noneMatch(text -> text.contains("house-3.csv"));
    }

    /** The line's own name is unknown; a row with its INCI name says what it means, and another list has it cheaper. */
    @Test
    void what_an_inci_name_means_is_read_from_every_list() throws IOException {
        TestBook book = TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("Trade name", "INCI", "%"),
                        List.of("Karitane", "Cera Alba", 40),
                        List.of("Sunflower oil", "", 60));
        Path one = list("one.csv", "Wending,Beeswax,Cera Alba,25,kg,9.10,kg,EUR,2026-11-01,\n");
        Path two = list("two.csv", "Other House,Beeswax,,25,kg,8.10,kg,EUR,2026-11-01,\n");

        Book named = read(new Sources(book.save(), List.of(one, two), null, null), PricesRead.OF_NAMED_ITEMS)
                .value();

        assertThat(named.offers())
                .filteredOn(offer -> offer.item().equals("Beeswax"))
                .hasSize(2);
        assertThat(named.formulas().values())
                .anySatisfy(
                        formula -> assertThat(formula.lines().get(0).material()).isEqualTo("Beeswax"));
    }

    /** A name typed wrong is still compared with everything that the lists hold. */
    @Test
    void the_nearest_name_is_proposed_from_rows_that_are_not_read() throws IOException {
        TestBook book = TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("Material", "% w/w"),
                        List.of("Candelila wax", 40),
                        List.of("Sunflower oil", 60));
        Path list = list("house.csv", "Wending,Candelilla wax,,25,kg,4.10,kg,EUR,2026-11-01,\n");

        assertThat(texts(read(new Sources(book.save(), List.of(list), null, null), PricesRead.OF_NAMED_ITEMS)))
                .anyMatch(text -> text.contains("\"Candelila wax\"") && text.contains("\"Candelilla wax\""));
    }

    private List<String> texts(PricesRead prices, Path... lists) {
        return texts(read(new Sources(TestBook.sound().save(), List.of(lists), null, null), prices));
    }

    private static List<String> texts(Reading<Book> read) {
        return read.findings().stream().map(Object::toString).toList();
    }

    private static Reading<Book> read(Sources sources, PricesRead prices) {
        try {
            return new BookReader().read(sources, prices, TestBook.TODAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Offer> used(Book book) {
        BookChecks.Items items = BookChecks.Items.of(book);
        return book.offers().stream().filter(items::isUsed).toList();
    }

    private Path list(String name, String rows) throws IOException {
        return Files.writeString(folder.resolve(name), HEADERS + rows);
    }
}
