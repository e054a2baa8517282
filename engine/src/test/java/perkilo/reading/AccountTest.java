package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.origin.Account;
import perkilo.origin.Account.Fate;
import perkilo.origin.Account.Subject;

/**
 * What was read, what is not needed and what is not understood: all of it is said, and what may change costs is asked.
 */
final class AccountTest {

    @Test
    void rows_are_counted_and_those_left_out_are_named_with_their_reason() {
        Account account = TestBook.sound()
                .set("Offers", "A5", "Total")
                .set("Offers", "F5", 10.32)
                .set("Offers", "A6", "a note about nothing")
                .with(book -> {
                    Row hidden = book.getSheet("Offers").createRow(7);
                    hidden.createCell(0).setCellValue("hidden");
                    hidden.setZeroHeight(true);
                })
                .read()
                .account();

        Account.Group offers = group(account, "Offers");
        assertThat(offers.whole().as()).isEqualTo("Offers");
        assertThat(offers.whole().rows()).isEqualTo(3);
        assertThat(offers.parts().stream().filter(part -> part.subject() == Subject.ROWS))
                .extracting(Account.Entry::text, Account.Entry::rows, Account.Entry::why)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("5", 1, "Totals are not read."),
                        org.assertj.core.groups.Tuple.tuple(
                                "6", 1, "The name is blank, so it is not a row of the table."),
                        org.assertj.core.groups.Tuple.tuple(
                                "8", 1, "It is hidden, perhaps by a filter. Show all rows if it counts."));
    }

    @Test
    void each_column_is_named_with_what_it_was_read_as() {
        Account.Group offers = group(
                TestBook.sound()
                        .set("Offers", "A1", "Lieferant")
                        .set("Offers", "I1", "Contact")
                        .set("Offers", "I2", "Kim")
                        .read()
                        .account(),
                "Offers");
        assertThat(offers.parts())
                .filteredOn(part -> part.text().equals("Lieferant"))
                .singleElement()
                .matches(part -> part.isRead() && part.as().equals("Supplier"));
        assertThat(offers.columnsNotRead()).containsExactly("Contact");
    }

    @Test
    void sheets_are_not_needed_or_not_understood_with_a_reason() {
        Account account = TestBook.sound()
                .sheet("Ideas", List.of("Try a lighter oil"), List.of("Ask for samples"))
                .sheet("plan 2027", List.of("Jan", "Feb", "Mar"), List.of(1, 2, 3))
                .sheet("Blank")
                .sheet("Price changes", List.of("mine"))
                .read()
                .account();
        assertThat(group(account, "Ideas").whole().fate()).isEqualTo(Fate.NOT_NEEDED);
        assertThat(group(account, "Blank").whole().why()).isEqualTo("It is empty.");
        assertThat(group(account, "Price changes").whole().fate()).isEqualTo(Fate.NOT_NEEDED);
        assertThat(group(account, "plan 2027").whole().fate()).isEqualTo(Fate.NOT_UNDERSTOOD);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Freight",
                "Shipping (EUR)",
                "Delivery cost",
                "Customs",
                "Fuel surcharge",
                "Handling fee",
                "Deposit per drum",
                "Tooling",
                "Fracht",
                "Mautzuschlag",
                "Mindermengenzuschlag netto",
                "Pfand",
                "Gebühr",
                "Frais de port",
                "Consigne",
                "Droits",
                "Escompte",
                "Trasporto",
                "Cauzione",
                "Portes",
                "Recargo",
                "Skonto",
                "Minimum value",
                "Gültigkeit",
                "Prices valid"
            })
    void a_column_that_may_change_costs_is_an_error_until_it_is_named(String header) {
        TestBook book = TestBook.sound().set("Offers", "I1", header).set("Offers", "I2", 12);
        assertThat(book.findings())
                .anyMatch(text ->
                        text.startsWith("error Offers!I1: The column \"" + header + "\" may change costs, but"));
        assertThat(book.set("Offers", "I1", header + " (not needed)").findings())
                .isEmpty();
        assertThat(book.set("Offers", "I1", header).set("Offers", "I2", 0).findings())
                .as("zero changes nothing")
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Customs code", "VAT number", "Zolltarifnummer Nr", "Shipping weight", "Port code", "Colour"})
    void a_number_that_nothing_is_paid_by_is_left_alone(String header) {
        assertThat(TestBook.sound()
                        .set("Offers", "I1", header)
                        .set("Offers", "I2", 330499)
                        .findings())
                .isEmpty();
    }

    @Test
    void a_remark_with_a_charge_is_pointed_out_once() {
        assertThat(TestBook.sound()
                        .set("Offers", "I1", "Remarks")
                        .set("Offers", "I2", "good")
                        .set("Offers", "I3", "plus freight 35 EUR")
                        .set("Offers", "I4", "plus freight 40 EUR")
                        .findings())
                .containsExactly(
                        "warning Offers!I3: The column \"Remarks\" is not read, but it says \"plus freight 35 EUR\". "
                                + "If that changes costs, type it into a column of the table, such as Freight per order.");
    }

    @ParameterizedTest
    @CsvSource({"Prices in USD per lb,USD,LB", "Alle Preise in CHF pro kg,CHF,KG", "Prix en EUR / kg,EUR,KG"})
    void a_line_above_says_what_prices_are_in(String line, String currency, perkilo.units.Measure per) {
        var offers = TestBook.sound()
                .sheet("Settings", List.of("Setting", "Value"), List.of("Home currency", currency))
                .drop("Suppliers")
                .drop("Products")
                .drop("Components")
                .drop("Runs")
                .sheet(
                        "Offers",
                        List.of(line),
                        List.of(),
                        List.of("Supplier", "Item", "Pack size", "Price"),
                        List.of("Fen", "Shea butter", "25 kg", 6.5),
                        List.of("Fen", "Sunflower oil", "20 kg", 3.2))
                .read()
                .value()
                .offers();
        assertThat(offers).hasSize(2);
        assertThat(offers.get(0).currency().getCurrencyCode()).isEqualTo(currency);
        assertThat(offers.get(0).breaks().get(0).per()).isEqualTo(per);
    }

    @Test
    void a_line_between_rows_says_what_the_prices_below_are_in() {
        var offers = TestBook.sound()
                .sheet(
                        "Rates",
                        List.of("From", "To", "Rate", "Date"),
                        List.of("EUR", "USD", 1.1, LocalDate.of(2026, 11, 19)))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Price"),
                        List.of("Prices in EUR per kg"),
                        List.of("Tarnholt Oleo", "Shea butter", "25 kg", 6.5),
                        List.of("Tarnholt Oleo", "Sunflower oil", "20 kg", 3.2),
                        List.of("Prices in USD per each"),
                        List.of("Jarrowglass", "Jar", "100 each", 0.62))
                .read()
                .value()
                .offers();
        assertThat(offers)
                .extracting(offer -> offer.currency().getCurrencyCode())
                .containsExactly("EUR", "EUR", "USD");
    }

    @Test
    void other_lines_about_prices_are_one_warning() {
        assertThat(TestBook.sound()
                        .set("Offers", "A7", "All prices valid until 31.12.2027")
                        .set("Offers", "A8", "5 % off from 1000 EUR")
                        .set("Offers", "A9", "Thank you")
                        .findings())
                .containsExactly(
                        "warning Offers!A7: Beside the table is text that may say something about prices, and it is "
                                + "not read: \"All prices valid until 31.12.2027\" in A7, \"5 % off from 1000 EUR\" in A8. If it "
                                + "counts, type it into a column, such as Currency, Price per or Valid until.");
    }

    @Test
    void a_row_that_is_struck_through_is_not_used_and_that_is_said() {
        var reading = TestBook.sound()
                .set("Offers", "A5", "Tarnholt Oleo")
                .set("Offers", "B5", "Shea butter")
                .set("Offers", "C5", 5)
                .set("Offers", "D5", "kg")
                .set("Offers", "F5", 1)
                .set("Offers", "G5", "kg")
                .with(book -> strike(book, "Offers", 4, 5))
                .read();
        assertThat(reading.value().offersFor("Shea butter")).hasSize(1);
        assertThat(reading.findings())
                .singleElement()
                .hasToString(
                        "warning Offers!F5: Row 5 is struck through, so it is not read. Remove the line through it if "
                                + "it counts.");
    }

    @Test
    void a_sheet_that_looks_like_a_table_is_proposed_by_what_is_in_it() {
        assertThat(TestBook.sound()
                        .sheet(
                                "prices from mails",
                                List.of("seller co", "thing", "comes in", "€ each kilo"),
                                List.of("Tarnholt Oleo", "Shea butter", "50 kg", "5,90 €"),
                                List.of("Tarnholt Oleo", "Sunflower oil", "200 kg", "2,80 €"))
                        .findings())
                .containsExactly("warning prices from mails: This sheet looks like Offers by what is in its columns: "
                        + "\"seller co\" → Supplier, \"thing\" → Item, \"comes in\" → Pack size, \"€ each kilo\" → Price. "
                        + "Rename the headers and it is read.");
    }

    @ParameterizedTest
    @CsvSource({"how many, true", "batches planned, false", "Ansätze, false", "number of lots, false"})
    void batches_are_no_units(String header, boolean units) {
        List<String> findings = TestBook.sound()
                .drop("Runs")
                .sheet("Plan", List.of("what", header), List.of("Balm 30", 4), List.of("Balm 30", 3))
                .findings();
        assertThat(findings.stream().anyMatch(text -> text.contains("→ Units"))).isEqualTo(units);
    }

    @Test
    void usual_headers_of_packaging_and_of_the_fill_are_known() {
        assertThat(TestBook.sound()
                        .drop("Components")
                        .sheet(
                                "Packaging per product",
                                List.of("Product", "Packaging item", "Pieces"),
                                List.of("Balm 30", "Jar", 1))
                        .set("Products", "C1", "Filling")
                        .findings())
                .isEmpty();
    }

    @Test
    void a_book_without_offers_names_the_sheets_that_were_not_recognised() {
        assertThat(TestBook.sound()
                        .drop("Offers")
                        .sheet("Mails", List.of("a", "b", "c"), List.of(1, 2, 3))
                        .findings())
                .anyMatch(text -> text.contains("No price sheet was recognised")
                        && text.endsWith("These sheets were not recognised: \"Mails\"."));
    }

    @Test
    void suppliers_are_recognised_by_any_charge() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Who we buy from",
                                List.of("Supplier", "Delivery cost"),
                                List.of("Tarnholt Oleo", 40),
                                List.of("Jarrowglass", 12))
                        .drop("Suppliers")
                        .read()
                        .value()
                        .supplier("Jarrowglass")
                        .orElseThrow()
                        .freightPerOrder()
                        .value())
                .isEqualByComparingTo("12");
    }

    @Test
    void columns_of_sheets_in_their_own_layout_have_the_headers_that_the_person_typed() {
        Account account = TestBook.sound()
                .set("Offers", "A1", "who")
                .set("Offers", "I1", "surcharge of theirs")
                .set("Offers", "I2", 3)
                .sheet(
                        "Reading",
                        List.of("Sheet", "Cell", "What is there", "Looks like", "Read as"),
                        List.of("Offers", "A1", "who", "", "Supplier"),
                        List.of("Offers", "I1", "surcharge of theirs", "", "ignore"))
                .read()
                .account();

        Account.Group offers = group(account, "Offers");
        assertThat(offers.parts())
                .filteredOn(part -> part.text().equals("who"))
                .singleElement()
                .matches(part -> part.isRead() && part.as().equals("Supplier"));
        assertThat(offers.parts())
                .filteredOn(part -> part.text().equals("surcharge of theirs"))
                .singleElement()
                .satisfies(part -> {
                    assertThat(part.fate()).isEqualTo(Fate.NOT_NEEDED);
                    assertThat(part.why()).isEqualTo("The sheet Reading says to leave it out.");
                });
    }

    @Test
    void a_price_list_in_its_own_layout_has_the_headers_that_the_person_typed() {
        Account account = TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("who", "Item", "handling", "Pack", "1-4", "5+", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 2, "25 kg", 6.5, 6.1, "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 3, "20 kg", 3.2, 3.1, "EUR"),
                        List.of("Jarrowglass", "Jar", 4, "100 each", 0.62, 0.6, "EUR"))
                .sheet(
                        "Reading",
                        List.of("Sheet", "Cell", "What is there", "Looks like", "Read as"),
                        List.of("Offers", "A1", "who", "", "Supplier"),
                        List.of("Offers", "C1", "handling", "", "ignore"))
                .read()
                .account();

        Account.Group offers = group(account, "Offers");
        assertThat(offers.parts())
                .filteredOn(Account.Entry::isRead)
                .extracting(Account.Entry::text)
                .contains("who");
        assertThat(offers.parts())
                .filteredOn(part -> part.text().equals("handling"))
                .singleElement()
                .matches(part -> part.why().equals("The sheet Reading says to leave it out."));
    }

    @Test
    void settings_without_headers_are_read_and_keep_their_cells() {
        var reading = TestBook.sound()
                .sheet(
                        "Settings",
                        List.of("Home currency", "EUR"),
                        List.of("Costing date", "2026-11-19"),
                        List.of("Overhead %", 20),
                        List.of("VAT %", 20))
                .read();
        assertThat(reading.value().settings().costingDate()).isEqualTo(LocalDate.of(2026, 11, 19));
        assertThat(reading.findings().stream().map(Object::toString))
                .anyMatch(text -> text.contains("Settings!A4") && text.contains("VAT %"));
        Account.Group settings = group(reading.account(), "Settings");
        assertThat(settings.whole().as()).isEqualTo("Settings");
        assertThat(settings.whole().rows()).isEqualTo(4);
    }

    @Test
    void a_freight_table_beside_offers_is_an_error_like_a_column_of_charges() {
        TestBook book = TestBook.sound()
                .set("Offers", "K2", "Zone")
                .set("Offers", "L2", "Freight")
                .set("Offers", "K3", "North")
                .set("Offers", "L3", 45);
        assertThat(book.findings())
                .contains(
                        "error Offers!L2: \"Freight\" is beside the table and may change costs, but it is not read. Type "
                                + "it into a column of the table or of Suppliers, or add \"(not needed)\" to it.");
        assertThat(book.set("Offers", "L2", "Freight (not needed)").findings())
                .noneMatch(finding -> finding.startsWith("error"));
    }

    @Test
    void a_note_with_figures_says_which_cells_would_take_them() {
        var reading = TestBook.sound()
                .set("Products", "C3", "fill 50 g, 3 % fill loss")
                .read();
        assertThat(reading.findings()).noneMatch(perkilo.origin.Finding::isError);
        assertThat(reading.findings().stream().map(Object::toString))
                .contains("note Products!C3: It is a note without a name, so its figures are not read. If they count, "
                        + "type them into \"Fill\" (column C), a new column \"Fill loss %\", in the row that they are "
                        + "about.");
        assertThat(group(reading.account(), "Products").parts())
                .filteredOn(part -> part.subject() == Subject.ROWS)
                .singleElement()
                .matches(part -> part.fate() == Fate.NOT_NEEDED && part.why().startsWith("It is a note"));
    }

    private static Account.Group group(Account account, String sheet) {
        return account.groups().stream()
                .filter(group -> group.whole().place().sheet().equals(sheet))
                .findFirst()
                .orElseThrow();
    }

    private static void strike(XSSFWorkbook book, String sheet, int row, int column) {
        XSSFCellStyle style = book.createCellStyle();
        XSSFFont font = book.createFont();
        font.setStrikeout(true);
        style.setFont(font);
        book.getSheet(sheet).getRow(row).getCell(column).setCellStyle(style);
    }
}
