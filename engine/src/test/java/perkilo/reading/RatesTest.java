package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.costing.Market;
import perkilo.model.Book;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;

/** Exchange rates: on a sheet, in a table of one's own, and as the European Central Bank publishes them. */
final class RatesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 19);

    @TempDir
    Path folder = Path.of("");

    @Test
    void a_currency_that_cannot_be_converted_is_an_error_that_names_the_pair() {
        assertThat(TestBook.sound().set("Offers", "H2", "GBP").findings())
                .containsExactly(
                        "error Offers!F2: There is no rate from GBP to EUR on or before 2026-11-20. Add one to a Rates "
                                + "sheet, or name a file of rates.");
        assertThat(TestBook.sound()
                        .set("Settings", "A4", "Report currencies")
                        .set("Settings", "B4", "EUR, JPY")
                        .findings())
                .containsExactly(
                        "error Settings!B4: There is no rate from EUR to JPY on or before 2026-11-20. Add one to a "
                                + "Rates sheet, or name a file of rates.");
    }

    /** 6.50 DEM for a kilogram are 6.50 / 1.95583 EUR, and no row of Rates says so. */
    @Test
    void a_currency_that_the_euro_has_replaced_needs_no_rate() {
        Reading<Book> read = TestBook.sound()
                .set("Offers", "H2", "DEM")
                .set("Suppliers", "B2", "DEM")
                .read();

        assertThat(read.findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "note Offers!F2: The euro has replaced DEM. Amounts are converted at 1.95583 DEM for 1 EUR, "
                                + "fixed by law (Council Regulation (EC) No 2866/98, Article 1).");
        assertThat(new Market(read.value())
                        .conversion(Currencies.of("DEM"), Currencies.of("EUR"))
                        .convert(new BigDecimal("1.95583")))
                .isEqualByComparingTo("1");
    }

    @Test
    void another_rate_than_that_of_the_law_is_not_used() {
        TestBook book = TestBook.sound()
                .set("Offers", "H2", "HRK")
                .sheet(
                        "Rates",
                        List.of("From", "To", "Rate", "Date"),
                        List.of("EUR", "HRK", 7.6, LocalDate.of(2026, 11, 19)));

        assertThat(book.findings())
                .containsExactly(
                        "note Offers!F2: The euro has replaced HRK. Amounts are converted at 7.53450 HRK for 1 EUR, "
                                + "fixed by law (Council Regulation (EC) No 2866/98, Article 1, as amended in 2022).",
                        "warning Rates!C2: The rate between EUR and HRK in this table is ignored. The rate is 7.53450 "
                                + "HRK for 1 EUR, fixed by law (Council Regulation (EC) No 2866/98, Article 1, as amended in "
                                + "2022).");
    }

    @Test
    void what_nothing_uses_is_left_out_where_it_cannot_be_converted() {
        TestBook book = TestBook.sound()
                .set("Offers", "A5", "Tarnholt Oleo")
                .set("Offers", "B5", "Argan oil")
                .set("Offers", "C5", 5)
                .set("Offers", "D5", "kg")
                .set("Offers", "F5", 30)
                .set("Offers", "G5", "kg")
                .set("Offers", "H5", "GBP");

        assertThat(book.findings())
                .containsExactly(
                        "warning Offers!F5: There is no rate from GBP to EUR on or before 2026-11-20. Add one to a "
                                + "Rates sheet, or name a file of rates. The offer is ignored, because nothing uses it.");
        assertThat(book.read().value().offersFor("Argan oil")).isEmpty();
    }

    @Test
    void an_old_rate_is_a_warning() {
        assertThat(withRate(0.86, LocalDate.of(2026, 11, 1)).findings())
                .containsExactly(
                        "warning Rates!C2: The rate from GBP to EUR is 19 days older than the costing date 2026-11-20. "
                                + "Add a newer one.");
        assertThat(withRate(0.86, DAY).findings()).isEmpty();
    }

    @Test
    void two_directions_that_contradict_each_other_are_a_warning() {
        String contradicted =
                "warning Rates!C3: The rate from GBP to EUR of 2026-11-19 is 0.86, but the rate from EUR to GBP "
                        + "of 2026-11-18 in Rates!C2 is 0.86, which means 1.1628 from GBP to EUR. One of the two may be "
                        + "the wrong way round.";
        assertThat(bothWays(0.86, DAY.minusDays(1)).findings()).containsExactly(contradicted);
        assertThat(bothWays(1.1628, DAY.minusDays(1)).findings()).isEmpty();
        assertThat(bothWays(1.22, DAY.minusDays(1)).findings())
                .as("4.9 % apart")
                .isEmpty();
        assertThat(bothWays(1.222, DAY.minusDays(1)).findings())
                .as("5.1 % apart")
                .hasSize(1);
        assertThat(bothWays(0.86, DAY.minusDays(31)).findings()).hasSize(1);
        assertThat(bothWays(0.86, DAY.minusDays(32)).findings())
                .as("from long before")
                .isEmpty();
    }

    @Test
    void a_rate_must_be_above_zero_dated_and_single() {
        assertThat(withRate(0, DAY).findings()).contains("error Rates!C2: Rate is 0. It must be above zero.");
        assertThat(withRate(0.86, DAY)
                        .set("Rates", "A3", "EUR")
                        .set("Rates", "B3", "GBP")
                        .set("Rates", "C3", 0.87)
                        .set("Rates", "D3", DAY)
                        .findings())
                .containsExactly("error Rates!C3: This is a second rate from EUR to GBP on 2026-11-19; the first is in "
                        + "Rates!C2. Keep one.");
        assertThat(withRate(0.86, DAY).set("Rates", "B2", "EUR").findings())
                .contains("error Rates!B2: From and To are both EUR. Type two different currencies.");
        assertThat(withRate(0.86, DAY).set("Rates", "D2", "").findings())
                .contains("error Rates!D2: Date is missing. Type a date, such as 2026-11-19.");
    }

    @Test
    void a_rate_that_a_fresher_cross_replaces_is_reported_with_the_difference() {
        TestBook typed = TestBook.sound()
                .set("Settings", "B2", "USD")
                .sheet(
                        "Rates",
                        List.of("From", "To", "Rate", "Date"),
                        List.of("EUR", "USD", 1.2, DAY),
                        List.of("EUR", "GBP", 0.8, DAY),
                        List.of("GBP", "USD", 1.4, DAY.minusDays(2)))
                .set("Offers", "H2", "GBP");
        // 1.2 / 0.8 = 1.5; 1.5 / 1.4 = 1.0714
        assertThat(typed.findings())
                .containsExactly(
                        "warning Rates!C4: The rate from GBP to USD of 2026-11-17 is not used, because a conversion "
                                + "through EUR with rates of 2026-11-19 is more recent. That rate is 7.14 % higher.");
        // 1.5 / 1.505 = 0.99668
        assertThat(typed.set("Rates", "C4", 1.505).findings())
                .containsExactly(
                        "note Rates!C4: The rate from GBP to USD of 2026-11-17 is not used, because a conversion "
                                + "through EUR with rates of 2026-11-19 is more recent. That rate is 0.33 % lower.");
        // the row says 0.7 pounds for a dollar, the cross 0.6667: 4.76 % lower
        assertThat(typed.set("Rates", "A4", "USD")
                        .set("Rates", "B4", "GBP")
                        .set("Rates", "C4", 0.7)
                        .findings())
                .containsExactly(
                        "warning Rates!C4: The rate from USD to GBP of 2026-11-17 is not used, because a conversion "
                                + "through EUR with rates of 2026-11-19 is more recent. That rate is 4.76 % lower.");
        assertThat(typed.set("Rates", "D4", DAY).findings()).isEmpty();
    }

    /** 100 JPY = 0.62 EUR; an offer of 6.50 JPY is divided by 100, as is its live formula. */
    @Test
    void units_on_the_sheet_of_a_workbook_count() {
        TestBook book = TestBook.sound()
                .set("Offers", "H2", "JPY")
                .sheet("Rates", List.of("From", "To", "Units", "Rate", "Date"), List.of("JPY", "EUR", 100, 0.62, DAY));

        assertThat(book.findings()).isEmpty();
        assertThat(book.read().value().rates().rates()).singleElement().satisfies(rate -> {
            assertThat(rate.rate().value()).isEqualByComparingTo("0.0062");
            assertThat(rate.rate().perCell()).isEqualByComparingTo("0.01");
        });
    }

    @Test
    void a_rate_the_wrong_way_round_stops_the_workbook() {
        assertThat(withRate(0.86, DAY.minusDays(1))
                        .set("Rates", "A3", "EUR")
                        .set("Rates", "B3", "GBP")
                        .set("Rates", "C3", 1.16)
                        .set("Rates", "D3", DAY)
                        .findings())
                .singleElement()
                .asString()
                .startsWith(
                        "error Rates!C3: The rate from EUR to GBP is 1.16 on 2026-11-19 but 0.86 on 2026-11-18 (Rates!C2)."
                                + " Does 1 EUR cost 1.16 GBP, or does 1 GBP cost 1.16 EUR?");
    }

    /** A quotation mark in the header is enough for the slower reader, which must come to the same. */
    @Test
    void a_plain_table_is_read_the_same_by_the_quick_way_and_the_thorough_one() throws IOException {
        String rows =
                "EUR,USD,1.1384,2026-11-19,the bank\nEUR,JPY,176.4,2026-11-19,the bank\n\nUSD,EUR,0.88,2026-11-18,\n";
        List<DatedRate> quick =
                read(write("rates.csv", "From,To,Rate,Date,Source\n" + rows)).value();
        List<DatedRate> thorough = read(write("rates.csv", "From,To,Rate,Date,\"Source\"\n" + rows))
                .value();

        assertThat(quick).hasSize(3).isEqualTo(thorough);
    }

    @Test
    void what_is_not_plain_is_left_to_the_thorough_reader() throws IOException {
        Path twice =
                write("rates.csv", "From,To,Rate,Date,Source\nEUR,USD,1.1,2026-11-19,a\nEUR,USD,1.2,2026-11-19,b\n");
        assertThat(new RatesReader().read(twice).findings())
                .singleElement()
                .asString()
                .contains("This is a second rate from EUR to USD on 2026-11-19");

        Path word =
                write("rates.csv", "From,To,Rate,Date,Source\nEUR,USD,1.1,2026-11-19,a\nEUR,USD,soon,2026-11-18,a\n");
        assertThat(new RatesReader().read(word).findings())
                .singleElement()
                .asString()
                .contains("rates.csv line 3");
    }

    @Test
    void a_currency_that_is_not_known_is_left_out_with_a_warning() throws IOException {
        Path csv = write("eurofxref.csv", "Date, USD, QQQ, \n19 November 2026, 1.1384, 3.5, \n");
        Path xml = write(
                "eurofxref.xml",
                "<Cube><Cube time='2026-11-19'><Cube currency='USD' rate='1.1384'/><Cube currency='QQQ' rate='3.5'/></Cube></Cube>");

        assertThat(read(csv).value()).hasSize(1);
        assertThat(read(csv).findings())
                .extracting(Finding::toString)
                .containsExactly(
                        "warning eurofxref.csv line 1: \"QQQ\" is not a known currency, so its rates are ignored.");
        assertThat(read(xml).value()).hasSize(1);
        assertThat(read(xml).findings()).hasSize(1);
    }

    @Test
    void the_banks_own_xml() throws IOException {
        Path file = write("eurofxref-daily.xml", """
                <?xml version="1.0" encoding="UTF-8"?>
                <gesmes:Envelope xmlns:gesmes="http://www.gesmes.org/xml/2002-08-01" xmlns="http://www.ecb.int/vocabulary/2002-08-01/eurofxref">
                <gesmes:subject>Reference rates</gesmes:subject>
                <gesmes:Sender><gesmes:name>European Central Bank</gesmes:name></gesmes:Sender>
                <Cube>
                <Cube time='2026-11-19'>
                <Cube currency='USD' rate='1.1384'/>
                <Cube currency='CZK' rate='25.275'/>
                </Cube></Cube></gesmes:Envelope>
                """);

        List<DatedRate> rates = read(file).value();

        assertThat(rates).extracting(DatedRate::toString).hasSize(2);
        assertThat(rates.get(1).to().getCurrencyCode()).isEqualTo("CZK");
        assertThat(rates.get(1).rate().value()).isEqualByComparingTo("25.275");
        assertThat(rates.get(1).rate().origin().where()).isEqualTo("eurofxref-daily.xml line 8");
        assertThat(rates.get(1).date()).isEqualTo(DAY);
        assertThat(rates.get(1).source()).isEqualTo("European Central Bank");
    }

    @Test
    void the_banks_own_csv_of_a_day_and_of_all_days() throws IOException {
        Path day = write("eurofxref.csv", "Date, USD, JPY, CZK, \n19 November 2026, 1.1384, 161.94, 25.275, \n");
        assertThat(read(day).value()).hasSize(3);

        Path all = write(
                "eurofxref-hist.csv",
                "Date,USD,CYP,CZK,\n2026-11-19,1.1384,N/A,25.275,\n2026-11-18,1.1380,N/A,25.3,\n");
        List<DatedRate> rates = read(all).value();
        assertThat(rates).hasSize(4);
        assertThat(rates.get(3).rate().origin().where()).isEqualTo("eurofxref-hist.csv line 3");
    }

    @Test
    void a_table_of_ones_own() throws IOException {
        Path file = write("rates.csv", "From;To;Rate;Date;Source\nEUR;GBP;0,8642;2026-11-19;me\n");

        assertThat(read(file).value())
                .singleElement()
                .satisfies(rate -> assertThat(rate.rate().value()).isEqualByComparingTo("0.8642"));
    }

    @Test
    void a_file_of_rates_adds_to_the_workbooks_own() throws IOException {
        Path file = write("rates.csv", "From,To,Rate,Date\nEUR,GBP,0.8642,2026-11-19\nEUR,GBP,0.9,2026-12-19\n");
        Sources sources =
                new Sources(TestBook.sound().set("Offers", "H2", "GBP").save(), List.of(), file, null);

        assertThat(TestBook.read(sources).findings()).isEmpty();
    }

    @Test
    void a_document_type_is_refused() throws IOException {
        Path file =
                write("evil.xml", "<?xml version='1.0'?><!DOCTYPE Cube [<!ENTITY a 'b'>]><Cube time='2026-11-19'/>");

        assertThatThrownBy(() -> read(file))
                .hasMessageEndingWith("evil.xml is damaged XML. Get a fresh copy from where it was published.");
    }

    @Test
    void a_file_without_rates_is_refused() throws IOException {
        Path file = write("words.csv", "Some,words\nand,more\n");

        assertThatThrownBy(() -> read(file))
                .hasMessageEndingWith(
                        "words.csv holds no exchange rates. Use a table with the columns From, To, Rate and Date, or a "
                                + "file of the European Central Bank.");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static Reading<List<DatedRate>> read(Path file) throws IOException {
        Reading<List<DatedRate>> reading = new RatesReader().read(file);
        assertThat(reading.findings()).filteredOn(Finding::isError).isEmpty();
        return reading;
    }

    /** An offer in pounds, a rate to them of some day and one back of the day. */
    private static TestBook bothWays(double back, LocalDate there) {
        return withRate(0.86, there)
                .set("Offers", "H2", "GBP")
                .set("Settings", "A4", "Report currencies")
                .set("Settings", "B4", "GBP")
                .set("Rates", "A3", "GBP")
                .set("Rates", "B3", "EUR")
                .set("Rates", "C3", back)
                .set("Rates", "D3", DAY);
    }

    private static TestBook withRate(double rate, LocalDate date) {
        return TestBook.sound()
                .set("Offers", "H2", "GBP")
                .sheet("Rates", List.of("From", "To", "Rate", "Date"), List.of("EUR", "GBP", rate, date));
    }
}
