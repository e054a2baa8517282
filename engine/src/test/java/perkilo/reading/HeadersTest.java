package perkilo.reading;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.reading.TestBook.value;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.model.Book;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Reading;
import perkilo.units.Measure;

/** Tables are found by their headers, wherever they are and however their headers are spelt. */
final class HeadersTest {

    @Test
    void the_words_of_the_trade_are_understood() {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Price list",
                        List.of("Vendor", "Raw material", "PACK-SIZE", "UoM", "MOQ", "Unit price", "Per", "Curr."),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 50, 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", "", 3.2, "kg", "EUR"),
                        List.of("Jarrowglass", "Jar", 100, "pcs", "", 0.62, "pc", "EUR"))
                .drop("Offers"));

        Offer offer = book.offersFor("Shea butter").get(0);
        assertThat(value(offer.minimumOrder())).isEqualByComparingTo("50");
        assertThat(offer.breaks().get(0).per()).isEqualTo(Measure.KG);
        assertThat(book.offersFor("Jar").get(0).packUnit()).isEqualTo(Measure.EACH);
    }

    @ParameterizedTest
    @CsvSource({
        "Price (USD/kg)",
        "Price USD/kg",
        "Unit price [USD per kg]",
        "PRICE in USD/kg",
        "Cost ($/kg)",
        "Price per kg (USD)",
        "Price / kg [USD]",
        "Price per kg USD"
    })
    void a_unit_in_the_header_counts(String price) {
        Book book = sound(TestBook.sound()
                .sheet("Settings", List.of("Setting", "Value"), List.of("Home currency", "USD"))
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size (kg)", price),
                        List.of("Fen", "Shea butter", 25, 6.5),
                        List.of("Fen", "Sunflower oil", 20, 3.2))
                .drop("Suppliers")
                .drop("Products")
                .drop("Components")
                .drop("Runs"));

        Offer offer = book.offersFor("Shea butter").get(0);
        assertThat(offer.currency().getCurrencyCode()).isEqualTo("USD");
        assertThat(offer.packUnit()).isEqualTo(Measure.KG);
        assertThat(offer.breaks().get(0).per()).isEqualTo(Measure.KG);
    }

    @ParameterizedTest
    @CsvSource({"Freight/kg", "Freight €/kg", "Freight per kg (EUR)", "Shipping EUR per kg"})
    void an_amount_per_kilogram_is_not_one_per_order(String freight) {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Freight", freight),
                        List.of("Tarnholt Oleo", "EUR", 85, 0.28),
                        List.of("Jarrowglass", "EUR", "", "")));

        Supplier supplier = book.supplier("Tarnholt Oleo").orElseThrow();
        assertThat(supplier.freightPerKg().value()).isEqualByComparingTo("0.28");
        assertThat(supplier.freightPerOrder().value()).isEqualByComparingTo("85");
    }

    @Test
    void headers_may_take_two_rows_without_merged_cells() {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack", "", "Price", "", "Currency"),
                        List.of("", "", "size", "unit", "", "per", ""),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 6.5, "kg", "EUR"),
                        List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", 3.2, "kg", "EUR"),
                        List.of("Jarrowglass", "Jar", 100, "each", 0.62, "each", "EUR")));

        assertThat(book.offers()).hasSize(3);
        assertThat(book.offersFor("Jar").get(0).packUnit()).isEqualTo(Measure.EACH);
        assertThat(value(book.offersFor("Shea butter").get(0).packSize())).isEqualByComparingTo("25");
    }

    @Test
    void a_header_that_resembles_a_column_is_reported() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Suppliers",
                                List.of("Supplier", "Currency", "Terms", "Frieght per order", "Contact"),
                                List.of("Tarnholt Oleo", "EUR", "FCA", 10, "Kim"),
                                List.of("Jarrowglass", "EUR", "DAP", "", "Lou"))
                        .sheet(
                                "Batches",
                                List.of("Formula", "Vessel max pallets", "Hold-up kg"),
                                List.of("Balm", 4, 0.5))
                        .findings())
                .containsExactlyInAnyOrder(
                        "warning Suppliers!D1: The column \"Frieght per order\" is not read. If you mean \"Freight per "
                                + "order\" (freight for each order, at any weight), rename it.",
                        "warning Batches!B1: The column \"Vessel max pallets\" is not read. If you mean \"Vessel max "
                                + "kg\" (the largest batch that the vessel takes), rename it.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Freight terms", "Bank account", "Units per case", "Our buyer", "Phone"})
    void ordinary_headers_of_ones_own_are_left_alone(String header) {
        assertThat(TestBook.sound()
                        .sheet(
                                "Suppliers",
                                List.of("Supplier", "Currency", header),
                                List.of("Tarnholt Oleo", "EUR", "x"),
                                List.of("Jarrowglass", "EUR", "y"))
                        .findings())
                .isEmpty();
    }

    @Test
    void a_header_that_is_like_a_column_which_is_there_is_a_persons_own() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Suppliers",
                                List.of("Supplier", "Supplier code", "Currency", "Terms"),
                                List.of("Tarnholt Oleo", "TO-1", "EUR", "FCA"),
                                List.of("Jarrowglass", "JG-7", "EUR", "DAP"))
                        .findings())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"Fill (mL),ML", "Fill [g],G", "Fill in oz,OZ", "Net content mL,ML"})
    void the_fill_may_have_its_unit_in_the_header(String fill, Measure unit) {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Products",
                        List.of("Product", "Formula", fill, "Density (g/mL)"),
                        List.of("Balm 30", "Balm", 30, 0.92)));

        assertThat(book.product("Balm 30").orElseThrow().fillUnit()).isEqualTo(unit);
    }

    @Test
    void another_unit_in_the_header_is_converted_and_a_formula_can_do_the_same() {
        Book book = sound(TestBook.sound()
                .sheet("Batches", List.of("Formula", "Vessel max (lb)"), List.of("Balm", 100))
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Lead time (weeks)"),
                        List.of("Tarnholt Oleo", "EUR", 2),
                        List.of("Jarrowglass", "EUR", "10 days")));

        Figure vessel =
                requireNonNull(book.formula("Balm").orElseThrow().batching().vesselMax());
        assertThat(vessel.value()).isEqualByComparingTo("45.359237");
        assertThat(vessel.perCell()).isEqualByComparingTo("0.45359237");
        assertThat(TestBook.value(book.supplier("Tarnholt Oleo").orElseThrow().leadTimeDays()))
                .isEqualByComparingTo("14");
        assertThat(TestBook.value(book.supplier("Jarrowglass").orElseThrow().leadTimeDays()))
                .isEqualByComparingTo("10");
    }

    @Test
    void a_unit_that_is_not_understood_is_an_error() {
        assertThat(TestBook.sound()
                        .sheet("Batches", List.of("Formula", "Vessel max (barrels)"), List.of("Balm", 100))
                        .findings())
                .containsExactly(
                        "error Batches!B1: The unit \"barrels\" of Vessel max is not recognised. Use kg.",
                        "error Batches!B2: Vessel max kg is in \"barrels\". Type it in kg.");
    }

    @Test
    void a_table_may_start_anywhere_with_blank_rows_and_unknown_columns() {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Balm",
                        List.of("", "Our best balm"),
                        List.of(),
                        List.of("", "", "% w/w", "Supplier's remark", "Material"),
                        List.of("", "", 40, "nice", "Shea butter"),
                        List.of(),
                        List.of(),
                        List.of("", "", 60, "", "Sunflower oil")));

        assertThat(book.formula("Balm").orElseThrow().lines()).hasSize(2);
        assertThat(book.formula("Balm").orElseThrow().lines().get(1).origin().where())
                .isEqualTo("Balm!C7");
    }

    @Test
    void two_tables_may_stand_on_one_sheet() {
        Book book = sound(TestBook.sound()
                .drop("Runs")
                .drop("Components")
                .sheet(
                        "Plan",
                        List.of("Product", "Units", "", "Formula", "Batch kg"),
                        List.of("Balm 30", 500, "", "Balm", 25),
                        List.of("Balm 30", 1000, "", "", ""),
                        List.of(),
                        List.of("Product", "Component", "Qty"),
                        List.of("Balm 30", "Jar", 1)));

        assertThat(book.runs()).hasSize(3);
        assertThat(book.product("Balm 30").orElseThrow().components()).hasSize(1);
    }

    @Test
    void a_required_column_that_is_missing_is_named_at_the_header() {
        assertThat(TestBook.sound()
                        .sheet("Demand", List.of("Product", "Units"), List.of("Balm 30", 5))
                        .findings())
                .containsExactly(
                        "error Demand!A1: The Demand table has no column \"Needed by\" (the day the units are needed; a month"
                                + " means its first day). Add it.");
    }

    /** Both tables know as many of the headers: the kind that comes first in the book's own order is taken. */
    @Test
    void a_table_that_could_be_of_two_kinds_is_of_the_first() {
        TestBook kettles = TestBook.sound()
                .sheet("Kettles", List.of("Formula", "Vessel max kg", "Batch kg"), List.of("Balm", 100, 20));
        Book book = kettles.read().value();
        assertThat(book.runs()).as("a batch of 20 kg is no run").hasSize(1);
        assertThat(requireNonNull(book.formula("Balm").orElseThrow().batching().vesselMax())
                        .value())
                .isEqualByComparingTo("100");
    }

    @Test
    void the_same_header_twice_is_an_error() {
        assertThat(TestBook.sound()
                        .sheet("Runs", List.of("Product", "Units", "Units"), List.of("Balm 30", 500, 700))
                        .findings())
                .containsExactly("error Runs!C1: \"Units\" is a second column for Units. Keep one.");
    }

    @Test
    void a_column_that_is_missed_may_be_one_whose_header_is_not_understood() {
        assertThat(TestBook.sound()
                        .set("Offers", "F1", "What we pay")
                        .set("Offers", "I1", "Our remarks")
                        .set("Offers", "I2", "good")
                        .findings())
                .as("said once, and not again for each row")
                .containsExactly(
                        "error Offers!A1: The Offers table has no column \"Price\" (the price from that quantity "
                                + "upwards). These headers were not recognised: \"What we pay\" in Offers!F1, \"Our "
                                + "remarks\" in Offers!I1. If one of them is this column, rename it to \"Price\".");
        assertThat(TestBook.sound()
                        .sheet(
                                "Offers",
                                List.of("Supplier", "Item", "Pack size", "Pack unit"),
                                List.of("Tarnholt Oleo", "Shea butter", 25, "kg"),
                                List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg"),
                                List.of("Jarrowglass", "Jar", 100, "each"))
                        .findings())
                .containsExactly(
                        "error Offers!A1: The Offers table has no column \"Price\" (the price from that quantity "
                                + "upwards). Add it.");
    }

    @Test
    void words_between_two_quotations_stay_whole() {
        assertThat(TestBook.sound()
                        .set("Balm", "A1", "Formula")
                        .set("Balm", "A2", "Balm")
                        .set("Balm", "A3", "Balm")
                        .set("Balm", "C1", "Dosing")
                        .with(book -> book.setSheetName(book.getSheetIndex("Balm"), "Formulas"))
                        .findings())
                .containsExactly(
                        "error Formulas!A1: The Formula table has no column \"% w/w\" (of the material as supplied; "
                                + "q.s. for the one that takes the balance). These headers were not recognised: \"Dosing\" in "
                                + "Formulas!C1. If one of them is this column, rename it to \"% w/w\".");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Price per 100 g", "Price €/100g", "Price (EUR per 100 g)", "Price/100 g", "Cost, EUR / 100 g"})
    void a_price_may_be_for_a_hundred_grams(String header) {
        checkPrice(offer(header, 0.65, ""), "6.5", Measure.KG, "10");
    }

    @Test
    void a_price_may_be_for_so_many_of_a_unit_by_a_column_of_its_own() {
        checkPrice(offer("Price", 0.65, "100 g"), "6.5", Measure.KG, "10");
        checkPrice(offer("Price", 0.65, "EUR/100g"), "6.5", Measure.KG, "10");
        checkPrice(offer("Price", "0,65 €", "100 g"), "6.5", Measure.KG, "10");
        checkPrice(offer("Price", 65, "10 kg"), "6.5", Measure.KG, "0.1");
        Offer jars = sound(TestBook.sound().set("Offers", "F4", 620).set("Offers", "G4", "1000 pcs"))
                .offersFor("Jar")
                .get(0);
        checkPrice(jars, "0.62", Measure.EACH, "0.001");
    }

    @Test
    void so_many_of_a_unit_are_refused_where_that_says_nothing_sure() {
        assertThat(TestBook.sound().set("Offers", "G2", "25 kg").findings())
                .as("per 25 kg, or from 25 kg on?")
                .containsExactly(
                        "error Offers!G2: Price per is \"25 kg\", which is not recognised. Use pack, kg, 100 g, g, lb, "
                                + "oz, L, US gal, imp gal or each.");
        assertThat(TestBook.sound()
                        .set("Offers", "F2", "6,50 €/kg")
                        .set("Offers", "G2", "100 kg")
                        .findings())
                .containsExactly("error Offers!F2: Price is per kg, but Price per says 100 kg. Correct one of them.");
        assertThat(TestBook.sound().set("Offers", "F1", "Price 100 kg").findings())
                .as("per 100 kg, or from 100 kg on?")
                .containsExactly(
                        "error Offers!F1: Does \"Price 100 kg\" hold the price for 100 kg, or the price from 100 kg "
                                + "upwards? Possible answers: price from 100 kg or Price per 100 kg. Write the answer on a "
                                + "sheet Reading, at \"Price 100 kg\". perkilo check --review makes that sheet.");
        assertThat(TestBook.sound().set("Offers", "C1", "Pack size (per 100 g)").findings())
                .contains(
                        "error Offers!C1: The unit \"per 100 g\" of Pack size is not recognised. Correct it, or delete it.");
    }

    /** The offer of shea butter, with a header, a price and what its own column says that it is for. */
    private static Offer offer(String header, Object price, String per) {
        return sound(TestBook.sound()
                        .sheet(
                                "Offers",
                                List.of("Supplier", "Item", "Pack size", "Pack unit", header, "Price per", "Currency"),
                                List.of("Tarnholt Oleo", "Shea butter", 25, "kg", price, per, "EUR"),
                                List.of("Tarnholt Oleo", "Sunflower oil", 20, "kg", price, per, "EUR"),
                                List.of("Jarrowglass", "Jar", 1, "each", 0.62, "pack", "EUR")))
                .offersFor("Shea butter")
                .get(0);
    }

    private static void checkPrice(Offer offer, String price, Measure per, String perCell) {
        Offer.PriceBreak only = offer.breaks().get(0);
        assertThat(only.price().value()).isEqualByComparingTo(price);
        assertThat(only.per()).isEqualTo(per);
        assertThat(only.price().perCell()).isEqualByComparingTo(perCell);
    }

    @Test
    void a_cell_merged_downwards_counts_for_every_row() {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Offers",
                        List.of("Supplier", "Item", "Pack size", "Pack unit", "Price", "Price per", "Currency"),
                        List.of("Tarnholt Oleo", "Shea butter", 25, "kg", 6.5, "kg", "EUR"),
                        List.of("", "Sunflower oil", 20, "kg", 3.2, "kg", "EUR"),
                        List.of("Jarrowglass", "Jar", 100, "each", 0.62, "each", "EUR"))
                .with(book1 -> book1.getSheet("Offers")
                        .addMergedRegion(org.apache.poi.ss.util.CellRangeAddress.valueOf("A2:A3"))));

        assertThat(book.offersFor("Sunflower oil").get(0).supplier()).isEqualTo("Tarnholt Oleo");
    }

    @Test
    void a_row_that_lost_its_key_is_left_out_with_a_warning() {
        assertThat(TestBook.sound().set("Offers", "A2", "").findings())
                .contains("warning Offers!A2: Supplier is blank, so this row is not read. Fill it if the row counts.");
    }

    /** A sheet with headings between its rows is read in parts; what is left of it needs no headers of its own. */
    @Test
    void a_sheet_that_is_read_in_parts_does_not_lack_headers() {
        Book book = sound(TestBook.sound()
                .sheet(
                        "Reading",
                        List.of("Sheet", "Cell", "What is there", "Recognised as", "Looks like", "Read as"),
                        List.of("My balm", "", "(the whole sheet)", "", "", "Formula"))
                .sheet(
                        "My balm",
                        List.of("Winter balm"),
                        List.of("remember the new wax"),
                        List.of("Material", "% w/w"),
                        List.of("Phase A"),
                        List.of("Shea butter", 60),
                        List.of("Phase B"),
                        List.of("Sunflower oil", 40)));

        assertThat(book.formulas()).hasSizeGreaterThan(1);
    }

    private static Book sound(TestBook book) {
        Reading<Book> reading = book.read();
        assertThat(reading.findings()).filteredOn(finding -> finding.isError()).isEmpty();
        return reading.value();
    }

    @Test
    void figures_are_the_decimals_that_were_typed() {
        Book book = sound(TestBook.sound().set("Offers", "F2", 0.1));

        assertThat(book.offersFor("Shea butter").get(0).breaks().get(0).price().value())
                .isEqualTo(new BigDecimal("0.1"));
    }
}
