package perkilo.reading;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.reading.TestBook.value;

import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Reading;

/** What the cells of a workbook may hold, and what is said of those that cannot be used. */
final class CellsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"6,50 €|6.50", "€ 6.50|6.5", "EUR 6.5|6.5", "6.50 EUR/kg|6.5", "1.250,00|1250", "1 250,5|1250.5"})
    void a_price_may_be_text(String text, String expected) {
        Figure price = price(TestBook.sound().set("Offers", "F2", text));

        assertThat(price.value()).isEqualByComparingTo(expected);
        assertThat(price.held()).isEqualTo(Figure.Held.WORDS);
    }

    @Test
    void a_typed_number_can_be_referred_to() {
        Figure price = price(TestBook.sound());

        assertThat(price.origin().where()).isEqualTo("Offers!F2");
        assertThat(price.perCell()).isEqualByComparingTo("1");
    }

    @Test
    void a_pack_size_may_carry_its_unit() {
        Offer offer = offer(TestBook.sound().set("Offers", "C2", "25 kg").set("Offers", "D2", ""));

        assertThat(offer.pack()).isEqualTo("25 kg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "F2|12,5O|Offers!F2: Price is \"12,5O\", which is not a number. Type the figure alone, such as 1.74.",
                "F2|on request|Offers!F2: Price is \"on request\", which is not a number. Type the figure alone, such as 1.74.",
                "F2|1,250|Offers!F2: Price is \"1,250\", which can mean 1250 or 1.25. Type the one that you mean.",
                "F2|-3|Offers!F2: Price is \"-3\". It must be zero or more.",
                "F2||Offers!F2: Price is missing. Type an amount, such as 1.74.",
                "C2|0|Offers!C2: Pack size is \"0\". It must be above zero.",
                "C2|25 lb|Offers!C2: Pack size is in lb, but Pack unit says kg. Correct one of them.",
                "D2|barrel|Offers!D2: Pack unit is \"barrel\", which is not a known unit. Use kg, g, lb, oz, L, mL, US gal, imp gal or each.",
                "D2||Offers!D2: Pack unit is missing. Type a unit such as kg, L or each.",
                "G2|crate|Offers!G2: Price per is \"crate\", which is not recognised. Use pack, kg, 100 g, g, lb, oz, L, US gal, imp gal or each.",
                "G2||Offers!G2: Is 6.5 the price of one pack or of 1 kg? Type pack or kg in a column Price per.",
                "G2|each|Offers!G2: The price is per each, but the pack is measured in kg. Correct one of them.",
                "H2|EURO2|Offers!H2: Currency is \"EURO2\", which is not a known currency. Type an ISO 4217 code such as EUR.",
                "F2|$ 7|Offers!F2: Price is in $, but Currency says EUR. Correct one of them.",
                "F2|7 USD/lb|Offers!F2: Price is per lb, but Price per says kg. Correct one of them."
            })
    void an_offer_that_cannot_be_used(String cell, String text, String expected) {
        assertThat(TestBook.sound()
                        .set("Offers", cell, text == null ? "" : text)
                        .findings())
                .contains("error " + expected);
    }

    @Test
    void a_date_where_a_number_should_be() {
        assertThat(TestBook.sound()
                        .set("Offers", "F2", LocalDate.of(2026, 5, 3))
                        .findings())
                .contains("error Offers!F2: Price is the date 2026-05-03. Format the cell as a number, and type the "
                        + "number again.");
    }

    @Test
    void a_formula_counts_with_its_saved_value_or_is_computed() {
        assertThat(price(TestBook.sound().set("Offers", "F2", "=13/2")).value()).isEqualByComparingTo("6.5");
        assertThat(price(TestBook.sound().set("Offers", "F2", "=13/2").with(book -> {
                            XSSFCell cell = book.getSheet("Offers").getRow(1).getCell(5);
                            cell.getCTCell().setV("7.25");
                        }))
                        .value())
                .isEqualByComparingTo("7.25");
    }

    @Test
    void an_error_value_is_an_error() {
        assertThat(TestBook.sound().set("Offers", "F2", "=1/0").findings())
                .contains("error Offers!F2: Price is #DIV/0!, an error value.");
        assertThat(TestBook.sound()
                        .with(book -> {
                            XSSFCell cell = book.getSheet("Offers").getRow(1).getCell(5);
                            cell.setCellErrorValue(org.apache.poi.ss.usermodel.FormulaError.NA);
                        })
                        .findings())
                .contains("error Offers!F2: Price is #N/A, an error value.");
    }

    @Test
    void a_formula_that_refers_to_itself_is_an_error() {
        assertThat(TestBook.sound()
                        .set("Offers", "F2", "=F3")
                        .set("Offers", "F3", "=F2")
                        .findings())
                .contains("error Offers!F2: Price is a formula that refers to itself.");
    }

    @Test
    void a_formula_that_cannot_be_computed_is_an_error() {
        assertThat(TestBook.sound().set("Offers", "F2", "=NoSuchFunction(1)").findings())
                .anySatisfy(line -> assertThat(line).startsWith("error Offers!F2: Price is "));
    }

    @Test
    void a_link_to_another_workbook_counts_with_its_saved_value_and_a_warning() {
        TestBook book = TestBook.sound().with(workbook -> {
            workbook.getCTWorkbook()
                    .addNewExternalReferences()
                    .addNewExternalReference()
                    .setId("rId99");
            workbook.getSheet("Offers")
                    .getRow(1)
                    .getCell(5)
                    .getCTCell()
                    .addNewF()
                    .setStringValue("[1]Prices!B2");
        });

        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!F2: The formula refers to another workbook, so its last saved value is used. "
                                + "Check that it is up to date.");
        assertThat(price(book).value()).isEqualByComparingTo("6.5");
    }

    @Test
    void a_number_too_large_is_an_error() {
        assertThat(TestBook.sound()
                        .with(book -> book.getSheet("Offers")
                                .getRow(1)
                                .getCell(5)
                                .getCTCell()
                                .setV("1E400"))
                        .findings())
                .contains("error Offers!F2: Price is a number too large to be meant.");
    }

    @Test
    void a_reference_to_a_text_that_is_not_there_is_an_error() {
        assertThat(TestBook.sound()
                        .with(book -> book.getSheet("Offers")
                                .getRow(1)
                                .getCell(1)
                                .getCTCell()
                                .setV("9999"))
                        .findings())
                .contains(
                        "error Offers!B2: Item is a reference to a text that is missing in the workbook, so the file is damaged; type the text again.");
    }

    @Test
    void percentages_mean_the_same_typed_or_formatted_or_as_text() {
        TestBook book = TestBook.sound()
                .sheet(
                        "Components",
                        List.of("Product", "Component", "Units per product", "Loss %"),
                        List.of("Balm 30", "Jar", 1, 2.5),
                        List.of("Balm 30", "Jar", 1, 0),
                        List.of("Balm 30", "Jar", 1, "2,5 %"))
                .set("Components", "D3", 0.025, "0.0%");
        var components = book.read().value().product("Balm 30").orElseThrow().components();

        assertThat(components)
                .extracting(each -> each.loss().value())
                .allSatisfy(loss -> assertThat(loss).isEqualByComparingTo("0.025"));
        assertThat(components.get(0).loss().perCell()).isEqualByComparingTo("0.01");
        assertThat(components.get(1).loss().perCell()).isEqualByComparingTo("1");
        assertThat(components.get(2).loss().perCell())
                .as("a number in its place, unless its format is one of per cents")
                .isEqualByComparingTo("0.01");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[$€-407] #,##0.00|EUR",
                "#,##0.00 [$USD]|USD",
                "\"$\"#,##0.00|USD",
                "[$$-1009]#,##0.00|CAD",
                "#,##0.00 \"€\"|EUR",
                "_-£* #,##0.00|GBP"
            })
    void the_number_format_may_tell_the_currency(String format, String code) {
        Reading<perkilo.model.Book> reading = TestBook.sound()
                .drop("Suppliers")
                .sheet("Settings", List.of("Setting", "Value"), List.of("Home currency", code))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per"),
                        List.of("Fen", "Shea butter", 25, "kg", 6.5, "kg"))
                .set("Offers", "E2", 6.5, format)
                .read();

        assertThat(reading.value().offers().get(0).currency().getCurrencyCode()).isEqualTo(code);
    }

    @Test
    void a_sign_of_several_currencies_needs_settling() {
        TestBook yen = TestBook.sound().set("Offers", "H2", "¥");
        assertThat(yen.findings()).contains("error Offers!F2: \"¥\" can mean JPY or CNY. Fill Currency with the code.");

        TestBook dollar = TestBook.sound()
                .drop("Suppliers")
                .sheet("Settings", List.of("Setting", "Value"), List.of("Home currency", "USD"))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per"),
                        List.of("Fen", "Shea butter", 25, "kg", "$6.50", "kg"));
        assertThat(dollar.findings())
                .contains("warning Offers!E2: \"$\" is assumed to mean US dollars. Type USD to be clear.");

        TestBook canadian = TestBook.sound()
                .sheet("Settings", List.of("Setting", "Value"), List.of("Home currency", "CAD"))
                .sheet("Suppliers", List.of("Supplier", "Currency"), List.of("Fen", "CAD"))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per"),
                        List.of("Fen", "Shea butter", 25, "kg", "$6.50", "kg"));
        assertThat(canadian.read().value().offers().get(0).currency().getCurrencyCode())
                .isEqualTo("CAD");
    }

    @Test
    void a_number_format_that_contradicts_the_currency_is_a_warning() {
        assertThat(TestBook.sound().set("Offers", "F2", 6.5, "\"$\"#,##0.00").findings())
                .contains(
                        "warning Offers!F2: Price is formatted in $, but Currency says EUR. The number format is ignored.");
    }

    @Test
    void days_count_from_1904_where_the_workbook_says_so() {
        TestBook book = TestBook.sound().set("Settings", "B3", LocalDate.of(2026, 11, 20));
        book.with(workbook -> {
            workbook.getCTWorkbook().getWorkbookPr().setDate1904(true);
            workbook.getSheet("Settings").getRow(2).getCell(1).getCTCell().setV("44884");
        });

        assertThat(book.read().value().settings().costingDate()).isEqualTo(LocalDate.of(2026, 11, 20));
    }

    @Test
    void a_date_that_can_be_two_days_is_an_error() {
        assertThat(TestBook.sound().set("Settings", "B3", "03/04/2026").findings())
                .contains("error Settings!B3: Costing date is \"03/04/2026\", which can mean 2026-04-03 or 2026-03-04. "
                        + "Type the one that you mean.");
        assertThat(TestBook.sound().set("Settings", "B3", 46346).findings())
                .contains(
                        "error Settings!B3: Costing date is \"46346\", which is not a date. Type it as year-month-day, "
                                + "such as 2027-01-31.");
        assertThat(TestBook.sound()
                        .set("Settings", "B3", "3 Apr 2026")
                        .read()
                        .value()
                        .settings()
                        .costingDate())
                .isEqualTo(LocalDate.of(2026, 4, 3));
    }

    @Test
    void hidden_rows_and_sheets_are_not_read_and_said_so_once() {
        List<String> findings = TestBook.sound()
                .sheet("Old prices", List.of("Supplier", "Item", "Price"), List.of("A", "B", 1))
                .with(book -> {
                    book.getSheet("Offers").getRow(1).setZeroHeight(true);
                    book.setSheetHidden(book.getSheetIndex("Old prices"), true);
                })
                .findings();

        assertThat(findings)
                .contains(
                        "warning Offers: Row 2 is hidden, perhaps by a filter, so it is not read. Show all rows if it counts.",
                        "warning Old prices: This sheet is hidden, so it is not read. Unhide it if it counts.");
    }

    @Test
    void a_dash_is_blank() {
        assertThat(TestBook.sound().set("Offers", "E2", "-").findings()).isEmpty();
        assertThat(TestBook.sound().set("Offers", "E2", "n/a").findings()).isEmpty();
    }

    @Test
    void blank_cells_with_a_style_are_blank() {
        assertThat(TestBook.sound()
                        .with(book -> book.getSheet("Offers").createRow(40).createCell(2, CellType.BLANK))
                        .findings())
                .isEmpty();
    }

    private static Figure price(TestBook book) {
        return offer(book).breaks().get(0).price();
    }

    private static Offer offer(TestBook book) {
        Reading<perkilo.model.Book> reading = book.read();
        assertThat(reading.findings()).filteredOn(Finding::isError).isEmpty();
        return requireNonNull(reading.value().offersFor("Shea butter").get(0));
    }

    @Test
    void a_minimum_in_another_unit_is_converted() {
        assertThat(value(offer(TestBook.sound()
                                .sheet(
                                        "Offers",
                                        List.of(
                                                "Supplier",
                                                "Item",
                                                "Pack size",
                                                "Pack unit",
                                                "Price",
                                                "Price per",
                                                "Currency",
                                                "Minimum order"),
                                        List.of("Tarnholt Oleo", "Shea butter", 500, "g", 4, "pack", "EUR", "2 kg"),
                                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", 3.2, "kg", "EUR", ""),
                                        List.of("Jarrowglass", "Jar", 100, "each", 0.62, "each", "EUR", "")))
                        .minimumOrder()))
                .isEqualByComparingTo("2000");
    }
}
