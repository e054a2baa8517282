package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static perkilo.reading.TestBook.value;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Buyer;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.DutyBasis;

/** Settings, suppliers, materials, batches, products, components, runs, demand and stock. */
final class SheetsTest {

    @Test
    void settings_are_read_by_name_in_any_order() {
        Settings settings = TestBook.sound()
                .sheet(
                        "Settings",
                        List.of("Setting", "Value"),
                        List.of("Duty basis", "fob"),
                        List.of("labor rate (EUR/h)", 24),
                        List.of("Overhead", 15),
                        List.of("Home currency", "€"),
                        List.of("Report currencies", "EUR"),
                        List.of("FX margin %", "1,5 %"),
                        List.of("Cash limit", "30.000,00 €"),
                        List.of("Cash limit per month", 8000),
                        List.of("Price age limit (days)", 90))
                .read()
                .value()
                .settings();

        assertThat(settings.dutyBasis()).isEqualTo(DutyBasis.FOB);
        assertThat(settings.overhead().value()).isEqualByComparingTo("0.15");
        assertThat(settings.conversionMargin().value()).isEqualByComparingTo("0.015");
        assertThat(value(settings.cashTotal())).isEqualByComparingTo("30000");
        assertThat(value(settings.cashPerMonth())).isEqualByComparingTo("8000");
        assertThat(settings.priceAgeLimitDays().value()).isEqualByComparingTo("90");
        assertThat(settings.costingDate()).isEqualTo(TestBook.TODAY);
    }

    @Test
    void without_a_date_today_holds_and_is_named() {
        assertThat(TestBook.sound().set("Settings", "B3", "").findings())
                .containsExactly(
                        "note book.xlsx: No costing date is set, so the prices of today, 2026-11-20, are used.");
    }

    @Test
    void a_given_date_goes_before_the_one_that_is_set() {
        LocalDate given = LocalDate.of(2026, 11, 1);
        Sources sources = new Sources(TestBook.sound().save(), List.of(), null, given);

        assertThat(TestBook.read(sources).value().settings().costingDate()).isEqualTo(given);
    }

    @Test
    void without_a_home_currency_that_of_the_offers_holds_if_there_is_but_one() {
        TestBook one = TestBook.sound().set("Settings", "B2", "");
        assertThat(one.findings()).isEmpty();
        assertThat(one.read().value().settings().home().getCurrencyCode()).isEqualTo("EUR");

        assertThat(one.set("Offers", "H2", "GBP").findings())
                .contains("error book.xlsx: No home currency is set, and the offers are in EUR, GBP. Set \"Home "
                        + "currency\" on a Settings sheet.");
    }

    @Test
    void suppliers_and_the_buyer_have_addresses() {
        Book book = TestBook.sound()
                .sheet(
                        "Settings",
                        List.of("Setting", "Value"),
                        List.of("Home currency", "EUR"),
                        List.of("Company name", "Example Skincare"),
                        List.of("Company address", "Kaigade 12\n8000 Aarhus"),
                        List.of("Deliver to", "Gate 2"),
                        List.of("Contact", "Jonas Lind"),
                        List.of("E-mail", "orders@skincare.example"),
                        List.of("VAT no", 12345678))
                .sheet(
                        "Suppliers",
                        List.of(
                                "Supplier",
                                "Currency",
                                "Terms",
                                "Payment terms",
                                "Address",
                                "Contact person",
                                "Email",
                                "Customer number"),
                        List.of(
                                "Tarnholt Oleo",
                                "EUR",
                                "FCA Hamburg",
                                "30 days net",
                                "Hafenweg 4, Hamburg",
                                "Ida Brandt",
                                "orders@tarnholt.example",
                                10482))
                .read()
                .value();

        assertThat(book.settings().buyer().settings().where()).startsWith("Settings!");
        assertThat(book.settings().buyer())
                .isEqualTo(new Buyer(
                        "Example Skincare",
                        "Kaigade 12\n8000 Aarhus",
                        "Gate 2",
                        "Jonas Lind",
                        "orders@skincare.example",
                        "12345678",
                        book.settings().buyer().settings()));
        Supplier supplier = book.supplier("Tarnholt Oleo").orElseThrow();
        assertThat(supplier.details())
                .isEqualTo(new Supplier.Details(
                        "FCA Hamburg", "Hafenweg 4, Hamburg", "Ida Brandt", "orders@tarnholt.example", "10482"));
        assertThat(supplier.payment()).isEqualTo(new Supplier.Payment("30 days net", null, null));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Labor rates|24|warning Settings!A4: \"Labor rates\" is not a known setting, so it is ignored. Did you mean \"Labour rate\"?",
                "Weather|nice|warning Settings!A4: \"Weather\" is not a known setting, so it is ignored.",
                "Duty basis|DDP|error Settings!B4: Duty basis is \"DDP\". Type CIF or FOB.",
                "Home currency|EUR|error Settings!A4: The setting \"Home currency\" is listed twice; the first is in Settings!B2. Keep one.",
                "Leftover credit %|150|error Settings!B4: Leftover credit % is \"150\". It must be from 0 to 100.",
                "Report currencies|EUR, XYZ|error Settings!B4: Report currencies name \"XYZ\", which is not a known currency. Type codes such as EUR, GBP.",
                "Labour rate|24 USD|error Settings!B4: Labour rate is in USD. Type it in EUR."
            })
    void a_setting_that_is_wrong(String name, String text, String expected) {
        assertThat(TestBook.sound()
                        .set("Settings", "A4", name)
                        .set("Settings", "B4", text)
                        .findings())
                .containsExactly(expected);
    }

    @Test
    void suppliers_have_charges_and_terms() {
        Supplier supplier = TestBook.sound()
                .sheet(
                        "Suppliers",
                        List.of(
                                "Vendor",
                                "Currency",
                                "Incoterms",
                                "MOV",
                                "Small order fee",
                                "Freight",
                                "Freight per kg",
                                "Insurance",
                                "Duty %",
                                "Lead time"),
                        List.of("Tarnholt Oleo", "€", "FCA Hamburg", 600, 30, 85, 0.28, 0.2, 6.5, "2 weeks"))
                .read()
                .value()
                .supplier("Tarnholt Oleo")
                .orElseThrow();

        assertThat(supplier.terms()).hasToString("FCA");
        assertThat(value(supplier.minimumOrderValue())).isEqualByComparingTo("600");
        assertThat(value(supplier.smallOrderCharge())).isEqualByComparingTo("30");
        assertThat(supplier.freightPerOrder().value()).isEqualByComparingTo("85");
        assertThat(supplier.insurance().value()).isEqualByComparingTo("0.002");
        assertThat(supplier.duty().value()).isEqualByComparingTo("0.065");
        assertThat(TestBook.value(supplier.leadTimeDays())).isEqualByComparingTo("14");
    }

    @ParameterizedTest(name = "days \"{0}\", prepaid \"{1}\": {2} with the order, the rest after {3} days")
    @CsvSource({
        "30, 40, 0.4, 30",
        "30, '', 0, 30",
        "'', 30 %, 0.3, 0",
        "0, '', 0, 0",
        "2 weeks, 100, 1, 14",
        "'', '', 1, 0"
    })
    void suppliers_say_when_they_are_paid(String days, String prepaid, String part, int after) {
        Supplier supplier = TestBook.sound()
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Payment terms (days)", "Prepaid %"),
                        List.of("Tarnholt Oleo", "EUR", days, prepaid))
                .read()
                .value()
                .supplier("Tarnholt Oleo")
                .orElseThrow();

        assertThat(supplier.payment().prepaidPart()).isEqualByComparingTo(part);
        assertThat(supplier.payment().daysAfterArrival()).isEqualTo(after);
        assertThat(supplier.payment().isKnown()).isEqualTo(!days.isEmpty() || !prepaid.isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-5 | 30 | Suppliers!C2 | Payment terms days",
                "30.5 | 30 | Suppliers!C2 | Payment terms days",
                "30 | 101 | Suppliers!D2 | Prepaid %",
                "30 | -1 | Suppliers!D2 | Prepaid %"
            })
    void terms_of_payment_have_limits(double days, double prepaid, String where, String column) {
        Reading<Book> reading = TestBook.sound()
                .sheet(
                        "Suppliers",
                        List.of("Supplier", "Currency", "Payment terms days", "Prepaid %"),
                        List.of("Tarnholt Oleo", "EUR", days, prepaid))
                .read();

        assertThat(reading.findings())
                .filteredOn(Finding::isError)
                .singleElement()
                .satisfies(error -> {
                    assertThat(error.origin().where()).endsWith(where);
                    assertThat(error.text()).startsWith(column);
                });
    }

    @Test
    void goods_on_order_have_a_day() {
        assertThat(TestBook.sound()
                        .sheet(
                                "On order",
                                List.of("Item", "Quantity", "Unit", "Expected on"),
                                List.of("Shea butter", 100, "kg", ""),
                                List.of("Jar", 500, "each", LocalDate.of(2027, 2, 1)))
                        .findings())
                .containsExactly(
                        "error On order!D2: Expected on is blank on a sheet of goods on order. Type the day that they "
                                + "are expected, or move them to Stock if they are on the shelf.");
    }

    @Test
    void freight_beyond_the_port_counts_with_a_warning() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Suppliers",
                                List.of("Supplier", "Currency", "Terms", "Freight per order", "Freight per kg"),
                                List.of("Tarnholt Oleo", "EUR", "CFR Hamburg", 10, 0),
                                List.of("Jarrowglass", "EUR", "CPT", 0, 0))
                        .findings())
                .containsExactly(
                        "warning Suppliers!D2: Freight per order is filled. Under CFR the seller pays the freight to "
                                + "the port of destination, so this amount is counted as freight from the port on.");
    }

    @Test
    void charges_that_the_seller_bears_are_left_out_with_a_warning() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Suppliers",
                                List.of(
                                        "Supplier",
                                        "Currency",
                                        "Terms",
                                        "Freight per order",
                                        "Freight per kg",
                                        "Insurance %",
                                        "Duty %",
                                        "Small-order charge"),
                                List.of("Tarnholt Oleo", "EUR", "DDP", 85, 0.2, 0.1, 5, ""),
                                List.of("Jarrowglass", "EUR", "FCA", 85, 0.2, 0.1, 5, 30))
                        .findings())
                .containsExactly(
                        "warning Suppliers!D2: Freight per order is filled, but under DDP the seller pays the freight, "
                                + "so it is ignored.",
                        "warning Suppliers!E2: Freight per kg is filled, but under DDP the seller pays the freight, so "
                                + "it is ignored.",
                        "warning Suppliers!F2: Insurance % is filled, but under DDP the seller pays the insurance, so "
                                + "it is ignored.",
                        "warning Suppliers!G2: Duty % is filled, but under DDP the seller pays the duty, so it is ignored.",
                        "warning Suppliers!H3: Small-order charge is filled but Minimum order value is not, so it is "
                                + "never charged. Fill Minimum order value.");
        assertThat(TestBook.sound().set("Suppliers", "C2", "ASAP").findings())
                .containsExactly(
                        "error Suppliers!C2: Terms is \"ASAP\", which is not a delivery term. Use one of EXW, FCA, FAS, "
                                + "FOB, CFR, CIF, CPT, CIP, DAP, DPU, DDP.");
    }

    @Test
    void a_name_twice_is_an_error() {
        assertThat(TestBook.sound()
                        .set("Suppliers", "A3", "tarnholt  OLEO")
                        .set("Offers", "A4", "Tarnholt Oleo")
                        .findings())
                .containsExactly("error Suppliers!A3: The supplier \"tarnholt OLEO\" is listed twice; the first is in "
                        + "Suppliers!A2. Keep one.");
        assertThat(TestBook.sound().set("Materials", "A3", "Shea butter").findings())
                .containsExactly("error Materials!A3: The material \"Shea butter\" is listed twice; the first is in "
                        + "Materials!A2. Keep one.");
    }

    @Test
    void materials_have_traits() {
        Material material = TestBook.sound()
                .sheet(
                        "Materials",
                        List.of(
                                "Ingredient",
                                "INCI",
                                "Function",
                                "Density",
                                "Handling loss %",
                                "Shelf life (years)",
                                "pH min",
                                "pH max",
                                "Tags",
                                "Allergens",
                                "Melting point (°C)"),
                        List.of(
                                "Shea butter",
                                "Butyrospermum Parkii Butter",
                                "emollient; skin conditioning",
                                0.91,
                                1.5,
                                2,
                                3,
                                8,
                                "vegan, palm-free",
                                "Linalool 35; Limonene 0,5 %; Citral",
                                -5))
                .read()
                .value()
                .material("Shea butter")
                .orElseThrow();

        assertThat(material.functions()).containsExactly("emollient", "skin conditioning");
        assertThat(material.handlingLoss().value()).isEqualByComparingTo("0.015");
        assertThat(value(material.shelfLifeMonths())).isEqualByComparingTo("24");
        assertThat(material.traits().tags()).containsExactly("vegan", "palm-free");
        assertThat(material.traits().allergens())
                .extracting(each -> each.name())
                .containsExactly("Linalool", "Limonene", "Citral");
        assertThat(value(material.traits().allergens().get(1).share())).isEqualByComparingTo("0.005");
        assertThat(value(material.traits().meltsAtC())).isEqualByComparingTo("-5");
    }

    @Test
    void losses_and_margins_stay_below_100() {
        assertThat(TestBook.sound()
                        .set("Products", "E1", "Fill loss %")
                        .set("Products", "E2", 100)
                        .set("Products", "F1", "Retailer margin %")
                        .set("Products", "F2", 120)
                        .set("Materials", "D1", "Handling loss %")
                        .set("Materials", "D2", 100)
                        .sheet("Components", List.of("Product", "Component", "Loss %"), List.of("Balm 30", "Jar", 100))
                        .findings())
                .containsExactly(
                        "error Materials!D2: Handling loss % is 100 %. It must be from 0 to below 100.",
                        "error Products!E2: Fill loss % is 100 %. It must be from 0 to below 100.",
                        "error Products!F2: Retailer margin % is 120 %. It must be from 0 to below 100.",
                        "error Components!C2: Loss % is 100 %. It must be from 0 to below 100.");
    }

    @Test
    void batches_belong_to_their_formula() {
        Batching batching = TestBook.sound()
                .sheet(
                        "Batches",
                        List.of(
                                "Formula",
                                "Vessel max kg",
                                "Vessel min kg",
                                "Hold-up kg",
                                "Hours per batch",
                                "Final pH",
                                "Kind"),
                        List.of("Balm", "60 kg", 12, 0.8, 3.5, 5.5, "Rinse off"))
                .read()
                .value()
                .formula("Balm")
                .orElseThrow()
                .batching();

        assertThat(value(batching.vesselMax())).isEqualByComparingTo("60");
        assertThat(batching.rinseOff()).isTrue();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Balm|10|2|10|leave-on|error Batches!B2: Vessel max of 10 kg is not above the hold-up of 10 kg, so nothing would come out. Correct one of them.",
                "Balm|10|12|1|leave-on|error Batches!C2: Vessel min of 12 kg is above Vessel max of 10 kg. Correct one of them.",
                "Balm|10|2|1|leave-on; knees|error Batches!E2: Kind has the word \"knees\", which is not known. Type one or several of these, separated by semicolons: leave-on; rinse-off; face; eye; lips; body; hands; hair; nails; underarm; oral; toothpaste; mouthwash; soap; perfume; spray; propellant spray; under 3.",
                "Balm|10|2|1|leave-on, rinse-off|error Batches!E2: Kind is \"leave-on, rinse-off\", but a product is either leave-on or rinse-off. Take one of them out.",
                "Blam|10|2|1|leave-on|error Batches!A2: The formula \"Blam\" is on no sheet. Add it, or correct the name.",
                "Balms|10|2|1|leave-on|error Batches!A2: The formula \"Balms\" is on no sheet. Did you mean \"Balm\"?"
            })
    void a_batch_that_cannot_be(String formula, int max, int min, int holdUp, String kind, String expected) {
        assertThat(TestBook.sound()
                        .sheet(
                                "Batches",
                                List.of("Formula", "Vessel max kg", "Vessel min kg", "Hold-up kg", "Kind"),
                                List.of(formula, max, min, holdUp, kind))
                        .findings())
                .containsExactly(expected);
    }

    @Test
    void a_fill_by_volume_needs_a_density() {
        assertThat(TestBook.sound().set("Products", "D2", "mL").findings())
                .containsExactly(
                        "error Products!A2: The fill of \"Balm 30\" is a volume, but Density g/mL is missing. Type the "
                                + "density of the bulk.");
        assertThat(TestBook.sound().set("Products", "D2", "each").findings())
                .containsExactly(
                        "error Products!D2: Fill unit is each. Use a unit of mass or volume, such as g or mL.");
    }

    @Test
    void products_are_read_in_full() {
        Product product = TestBook.sound()
                .sheet(
                        "Products",
                        List.of(
                                "Product",
                                "Formula",
                                "Fill",
                                "Fill unit",
                                "Overfill %",
                                "Filler SD",
                                "Filling people",
                                "Target margin",
                                "VAT",
                                "One-off costs (EUR)",
                                "Spread over units",
                                "Required tags"),
                        List.of("Balm 30", "Balm", "30 g", "", 1.5, 0.4, 2, 55, 19, 1450, 5000, "vegan"))
                .read()
                .value()
                .product("Balm 30")
                .orElseThrow();

        assertThat(product.fill().value()).isEqualByComparingTo("30");
        assertThat(value(product.overfill())).isEqualByComparingTo("0.015");
        assertThat(value(product.fillerSd())).isEqualByComparingTo("0.4");
        assertThat(value(product.targetMargin())).isEqualByComparingTo("0.55");
        assertThat(product.oneOffCosts().value()).isEqualByComparingTo("1450");
        assertThat(product.requiredTags()).containsExactly("vegan");
    }

    @Test
    void a_component_that_stands_twice_in_a_product_is_an_error_at_the_second() {
        assertThat(TestBook.sound()
                        .set("Components", "A3", "balm 30")
                        .set("Components", "B3", "jar")
                        .set("Components", "C3", 1)
                        .findings())
                .containsExactly(
                        "error Components!B3: The component \"jar\" of \"balm 30\" is already in Components!B2. Put the "
                                + "pieces into one row.");
    }

    @Test
    void unknown_names_are_errors() {
        assertThat(TestBook.sound().set("Products", "B2", "Blm").findings())
                .containsExactly("error Products!B2: The formula \"Blm\" is on no sheet. Did you mean \"Balm\"?");
        assertThat(TestBook.sound().set("Runs", "A2", "Balm 3O").findings())
                .containsExactly(
                        "error Runs!A2: The product \"Balm 3O\" has no row in Products. Did you mean \"Balm 30\"?");
        assertThat(TestBook.sound().set("Components", "B2", "Jars").findings())
                .containsExactly("error Components!B2: The component \"Jars\" has no offer. Did you mean \"Jar\"?");
        assertThat(TestBook.sound().set("Components", "A2", "Cream").findings())
                .containsExactly(
                        "error Components!A2: The product \"Cream\" has no row in Products. Add one, or correct the name.");
        assertThat(TestBook.sound()
                        .sheet("Stock", List.of("Item", "Quantity", "Unit"), List.of("Sheabutter", 5, "kg"))
                        .findings())
                .containsExactly(
                        "warning Stock!A2: The item \"Sheabutter\" is neither offered nor used, so this stock is not "
                                + "counted. Did you mean \"Shea butter\"?");
        assertThat(TestBook.sound()
                        .sheet(
                                "Demand",
                                List.of("Product", "Units", "Needed by"),
                                List.of("Cream", 5, LocalDate.of(2027, 1, 1)))
                        .findings())
                .containsExactly(
                        "error Demand!A2: The product \"Cream\" has no row in Products. Add one, or correct the name.");
    }

    @Test
    void runs_are_of_products_or_of_bulk() {
        Book book = TestBook.sound()
                .sheet(
                        "Runs",
                        List.of("Product", "Units", "Formula", "Batch kg"),
                        List.of("Balm 30", "1 000", "", ""),
                        List.of("", "", "Balm", 25))
                .read()
                .value();

        assertThat(book.runs()).hasSize(2);
        assertThat(book.runs().get(0))
                .isInstanceOfSatisfying(
                        Run.OfProduct.class,
                        run -> assertThat(run.units().value()).isEqualByComparingTo("1000"));
        assertThat(book.runs().get(1))
                .isInstanceOfSatisfying(
                        Run.OfBulk.class,
                        run -> assertThat(run.batchKg().value()).isEqualByComparingTo("25"));
    }

    @Test
    void units_are_whole_and_above_zero() {
        assertThat(TestBook.sound().set("Runs", "B2", 0).findings())
                .containsExactly("error Runs!B2: Units is 0. It must be a whole number of 1 or more.");
        assertThat(TestBook.sound().set("Runs", "B2", 10.5).findings())
                .containsExactly("error Runs!B2: Units is 10.5. It must be a whole number.");
        assertThat(TestBook.sound().set("Runs", "B2", "").findings())
                .containsExactly("error Runs!B2: Units is missing. Type a whole number, such as 1000.");
    }

    @Test
    void goods_on_order_have_the_day_they_are_expected() {
        for (String head : List.of("Expected on", "Expected", "Due", "due date", "Arrival", "Delivery date", "ETA")) {
            Book book = TestBook.sound()
                    .sheet(
                            "On the way",
                            List.of("Item", "Quantity", "Unit", head),
                            List.of("Shea butter", 5, "kg", LocalDate.of(2027, 3, 15)),
                            List.of("Shea butter", 2, "kg", ""))
                    .read()
                    .value();

            assertThat(book.stock())
                    .as(head)
                    .extracting(
                            lot -> lot.quantity().value() + " expected " + lot.expected() + " expires " + lot.expires())
                    .containsExactly("5 expected 2027-03-15 expires null", "2 expected null expires null");
        }
    }

    @Test
    void goods_that_should_be_there_by_now_are_pointed_out() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Stock",
                                List.of("Item", "Quantity", "Unit", "Expires", "Expected on"),
                                List.of("Shea butter", 5, "kg", "", TestBook.TODAY),
                                List.of("Shea butter", 5, "kg", "", TestBook.TODAY.plusDays(1)),
                                List.of("Jar", 5, "each", LocalDate.of(2027, 1, 31), LocalDate.of(2027, 2, 1)))
                        .findings())
                .containsExactly(
                        "warning Stock!E2: \"Shea butter\" was expected on 2026-11-20, and the costing date is "
                                + "2026-11-20, so it is counted as in stock from this month on. Type a new date, or clear it once "
                                + "the goods are on the shelf.",
                        "warning Stock!D4: \"Jar\" expires on 2027-01-31, before it is expected on 2027-02-01, so it is "
                                + "not used. Correct one of the two days.");
    }

    @Test
    void past_days_of_delivery_are_reported_in_one_warning() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Stock",
                                List.of("Item", "Quantity", "Unit", "Expires", "Delivery date"),
                                List.of("Shea butter", 5, "kg", "", LocalDate.of(2026, 11, 19)),
                                List.of("Shea butter", 5, "kg", "", LocalDate.of(2026, 3, 1)),
                                List.of("Shea butter", 5, "kg", LocalDate.of(2028, 1, 31), LocalDate.of(2026, 11, 1)))
                        .findings())
                .containsExactly(
                        "warning Stock!E2: The day of delivery is not after the costing date 2026-11-20 in E2, E3, E4, "
                                + "so these lots are counted as on the shelf. Type a new date for goods that are still to come, "
                                + "and clear the date of goods that are there.");
    }

    @Test
    void stock_whose_name_differs_in_a_number_or_a_word_is_other_goods() {
        TestBook book = TestBook.sound()
                .set("Offers", "B2", "Jar 50 mL amber glass")
                .set("Offers", "B3", "Oil")
                .set("Materials", "A2", "Sodium lauroyl sarcosinate 30 %");
        for (String other : List.of("Jar 100 mL amber glass", "Foil", "Sodium lauroyl lactylate", "Oil refined")) {
            assertThat(book.sheet("Stock", List.of("Item", "Quantity", "Unit"), List.of(other, 5, "kg"))
                            .findings())
                    .as(other)
                    .filteredOn(text -> text.contains("Stock!"))
                    .singleElement()
                    .asString()
                    .startsWith("note Stock!A2: Stock of items that are neither offered nor used is not counted")
                    .doesNotContain("did you mean");
        }
    }

    @Test
    void unused_stock_is_reported_in_one_note_and_a_likely_misspelling_in_a_warning() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Stock",
                                List.of("Item", "Quantity", "Unit"),
                                List.of("Fragrance no. 7", 5, "kg"),
                                List.of("Fragrance no. 7", 2, "kg"),
                                List.of("Gift ribbon", 80, "each"),
                                List.of("Butter, Shea", 5, "kg"),
                                List.of("Shea butter", 5, "kg"))
                        .findings())
                .containsExactly(
                        "note Stock!A2: Stock of items that are neither offered nor used is not counted: \"Fragrance "
                                + "no. 7\", \"Gift ribbon\".",
                        "warning Stock!A5: The item \"Butter, Shea\" is neither offered nor used, so this stock is not "
                                + "counted. Did you mean \"Shea butter\"?");
    }

    @Test
    void stock_demand_and_runs_on_several_sheets_are_pointed_out_once_each() {
        List<Object> demand = List.of("Product", "Units", "Needed by");
        List<Object> stock = List.of("Item", "Quantity", "Unit");
        assertThat(TestBook.sound()
                        .sheet("Demand", demand, List.of("Balm 30", 5, LocalDate.of(2027, 1, 1)))
                        .sheet("Demand draft", demand, List.of("Balm 30", 5, LocalDate.of(2027, 1, 1)))
                        .sheet("Stock", stock, List.of("Shea butter", 5, "kg"), List.of("Jar", 5, "each"))
                        .sheet("Stock (old)", stock, List.of("Shea butter", 4, "kg"))
                        .sheet("Sales history", List.of("Product", "Units"), List.of("Balm 30", 700))
                        .findings())
                .containsExactly(
                        "warning Demand draft!A1: Demand: 2 tables are read and added up: Demand (1 row), Demand draft "
                                + "(1 row). If one of them is old or a draft, hide its sheet or delete its row of headers.",
                        "warning Stock (old)!A1: Stock: 2 tables are read and added up: Stock (2 rows), Stock (old) (1 "
                                + "row). If one of them is old or a draft, hide its sheet or delete its row of headers.",
                        "warning Sales history!A1: Runs: 2 tables are read and all costed: Runs (1 row), Sales history "
                                + "(1 row). If one of them is old or a draft, hide its sheet or delete its row of headers.");
    }

    @Test
    void goods_on_order_beside_the_stock_are_meant() {
        List<Object> heads = List.of("Item", "Quantity", "Unit", "Expected on");
        TestBook book = TestBook.sound()
                .sheet("Stock", List.of("Item", "Quantity", "Unit"), List.of("Shea butter", 5, "kg"))
                .sheet("On the way", heads, List.of("Shea butter", 4, "kg", LocalDate.of(2027, 1, 1)));
        assertThat(book.findings()).isEmpty();

        assertThat(book.sheet("On the way (old)", heads, List.of("Shea butter", 4, "kg", LocalDate.of(2027, 1, 1)))
                        .findings())
                .singleElement()
                .asString()
                .startsWith("warning On the way (old)!A1: Goods on order: 2 tables are read and added up: ");
    }

    @Test
    void stock_is_in_the_unit_of_the_item() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Stock",
                                List.of("Item", "Quantity", "Unit", "Expires"),
                                List.of("Shea butter", 5, "each", ""),
                                List.of("Sunflower oil", 5, "L", ""),
                                List.of("Shea butter", 5, "kg", LocalDate.of(2026, 1, 1)),
                                List.of("Jar", 5, "kg", ""))
                        .findings())
                .containsExactly(
                        "error Stock!B2: The stock of \"Shea butter\" is in pieces, but it is a raw material. Use a "
                                + "unit such as kg.",
                        "error Stock!B3: The stock of \"Sunflower oil\" is in L, but its density is unknown. Fill "
                                + "Density g/mL in Materials.",
                        "warning Stock!A4: \"Shea butter\" expired on 2026-01-01, before the costing date 2026-11-20, "
                                + "so it is not used.",
                        "error Stock!B5: The stock of \"Jar\" is in kg, but it is a component. Type the number of "
                                + "pieces, with each as the unit.");
    }

    @Test
    void a_workbook_with_the_least_that_works_has_its_defaults() {
        Book book = TestBook.sound()
                .drop("Settings")
                .drop("Suppliers")
                .drop("Materials")
                .drop("Products")
                .drop("Components")
                .drop("Runs")
                .read()
                .value();

        assertThat(book.settings().home().getCurrencyCode()).isEqualTo("EUR");
        assertThat(book.suppliers()).hasSize(2);
        assertThat(book.material("Shea butter")).isPresent();
        assertThat(book.runs()).isEmpty();
    }

    @Test
    void a_margin_below_one_per_cent_is_suspected_to_be_a_fraction() {
        assertThat(TestBook.sound()
                        .set("Products", "E1", "Target margin %")
                        .set("Products", "E2", 0.55)
                        .findings())
                .containsExactly(
                        "warning Products!E2: Target margin % is 0.55, which means 0.55 %. For 55 %, type 55 or format "
                                + "the cell as a percentage.");
        assertThat(TestBook.sound()
                        .set("Products", "E1", "VAT %")
                        .set("Products", "E2", 0.19, "0%")
                        .findings())
                .isEmpty();
    }

    @Test
    void a_rate_that_is_hardly_charged_is_suspected_to_be_a_fraction() {
        assertThat(TestBook.sound()
                        .sheet(
                                "Settings",
                                List.of("Setting", "Value"),
                                List.of("Home currency", "EUR"),
                                List.of("Costing date", LocalDate.of(2026, 11, 20)),
                                List.of("Overhead", 0.15),
                                List.of("Conversion margin", 0.015),
                                List.of("Holding % per year", "0,12"),
                                List.of("Leftover credit %", 0.5))
                        .findings())
                .containsExactly(
                        "warning Settings!B4: Overhead % is 0.15, which means 0.15 %. For 15 %, type 15 or format the "
                                + "cell as a percentage.",
                        "warning Settings!B5: Conversion margin % is 0.015, which means 0.015 %. For 1.5 %, type 1.5 or "
                                + "format the cell as a percentage.",
                        "warning Settings!B6: Holding % per year is 0.12, which means 0.12 %. For 12 %, type 12 or "
                                + "format the cell as a percentage.",
                        "warning Settings!B7: Leftover credit % is 0.5, which means 0.5 %. For 50 %, type 50 or format "
                                + "the cell as a percentage.");
        assertThat(TestBook.sound()
                        .set("Suppliers", "D1", "Duty")
                        .set("Suppliers", "D2", 0.065)
                        .set("Products", "E1", "Overfill")
                        .set("Products", "E2", 0.02)
                        .findings())
                .containsExactly(
                        "warning Suppliers!D2: Duty % is 0.065, which means 0.065 %. For 6.5 %, type 6.5 or format the "
                                + "cell as a percentage.",
                        "warning Products!E2: Overfill % is 0.02, which means 0.02 %. For 2 %, type 2 or format the "
                                + "cell as a percentage.");
    }

    @Test
    void small_rates_are_ordinary_where_people_have_them() {
        assertThat(TestBook.sound()
                        .set("Settings", "A4", "Conversion margin %")
                        .set("Settings", "B4", 0.5)
                        .set("Settings", "A5", "Overhead %")
                        .set("Settings", "B5", "0.15 %")
                        .set("Suppliers", "D1", "Insurance %")
                        .set("Suppliers", "D2", 0.05)
                        .set("Suppliers", "E1", "Duty %")
                        .set("Suppliers", "E2", 0.065, "0.0%")
                        .set("Suppliers", "E3", 0)
                        .set("Products", "E1", "Overfill %")
                        .set("Products", "E2", 0.5)
                        .set("Products", "F1", "Fill loss %")
                        .set("Products", "F2", 0.05)
                        .set("Materials", "D1", "Handling loss %")
                        .set("Materials", "D2", 0.05)
                        .findings())
                .isEmpty();
    }

    @Test
    void a_name_whose_own_row_is_faulty_is_known() {
        assertThat(TestBook.sound()
                        .set("Offers", "G3", "bag of something")
                        .set("Offers", "F4", "x")
                        .findings())
                .as("a material and a component")
                .containsExactly(
                        "error Offers!G3: Price per is \"bag of something\", which is not recognised. Use pack, kg, 100 "
                                + "g, g, lb, oz, L, US gal, imp gal or each.",
                        "error Offers!F4: Price is \"x\", which is not a number. Type the figure alone, such as 1.74.");
        assertThat(TestBook.sound().set("Products", "C2", "thirty").findings())
                .as("a product with components and a run")
                .containsExactly(
                        "error Products!C2: Fill is \"thirty\", which is not a number. Type the figure alone, such as 200.");
        assertThat(TestBook.sound()
                        .set("Balm", "C2", "some")
                        .set("Balm", "C3", "more")
                        .sheet("Batches", List.of("Formula", "Vessel max kg"), List.of("Balm", 50))
                        .sheet(
                                "Stock",
                                List.of("Item", "Quantity", "Unit"),
                                List.of("Shea butter", 5, "kg"),
                                List.of("Sheabutter oil", 5, "kg"))
                        .findings())
                .as("a formula")
                .containsExactly(
                        "error Balm!C2: % w/w is \"some\", which is not a percentage or q.s. Type the figure alone, "
                                + "such as 4.",
                        "error Balm!C3: % w/w is \"more\", which is not a percentage or q.s. Type the figure alone, "
                                + "such as 4.",
                        "note Stock!A3: Stock of items that are neither offered nor used is not counted: \"Sheabutter oil\".");
    }

    @Test
    void a_sheet_called_like_a_table_without_headers_is_an_error() {
        assertThat(TestBook.sound()
                        .sheet("Stock", List.of("Shea butter", 5, "kg"))
                        .findings())
                .containsExactly(
                        "error Stock: No row of headers was found on this sheet. Add one, with columns such as Item, "
                                + "Quantity, Unit.");
    }

    @Test
    void an_amount_for_something_else_is_refused() {
        assertThat(TestBook.sound()
                        .set("Suppliers", "D1", "Freight per kg")
                        .set("Suppliers", "D2", "0,30 €/lb")
                        .set("Suppliers", "E1", "Minimum order value")
                        .set("Suppliers", "E2", "250 €/kg")
                        .set("Materials", "D1", "House price per 100 kg")
                        .set("Materials", "D2", 4.5)
                        .findings())
                .containsExactly(
                        "error Suppliers!D2: Freight per kg is per lb. Type the amount per kg.",
                        "error Suppliers!E2: Minimum order value is per kg. Type an amount that is not per kg.",
                        "error Materials!D2: House price is per 100 kg. Type the amount per kg.");
        assertThat(TestBook.sound()
                        .set("Suppliers", "D1", "Freight per kg")
                        .set("Suppliers", "D2", "0,30 €/kg")
                        .set("Products", "E1", "Target retail price")
                        .set("Products", "E2", "29,90 € per each")
                        .findings())
                .isEmpty();
        assertThat(TestBook.sound()
                        .set("Products", "E1", "Target retail price (€/bottle)")
                        .set("Products", "E2", 29.9)
                        .findings())
                .isEmpty();
    }

    @Test
    void the_unit_in_the_name_of_a_setting_counts() {
        assertThat(TestBook.sound()
                        .set("Settings", "A4", "Labour rate (USD/h)")
                        .set("Settings", "B4", 24)
                        .findings())
                .containsExactly("error Settings!B4: Labour rate is in USD. Type it in EUR.");
        assertThat(TestBook.sound()
                        .set("Settings", "A4", "Labour rate (per shift)")
                        .set("Settings", "B4", 24)
                        .findings())
                .containsExactly(
                        "error Settings!A4: The unit \"per shift\" of Labour rate is not recognised. Correct it, or "
                                + "delete it.");
    }
}
