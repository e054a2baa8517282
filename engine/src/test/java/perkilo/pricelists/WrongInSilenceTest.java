package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.layouts.Question;
import perkilo.origin.Finding;
import perkilo.review.Asked;
import perkilo.review.prices.FilledReview;
import perkilo.review.prices.PriceReview;
import perkilo.xlsx.grid.Csv;

/** What changes a price is read, asked about or an error; nothing goes in wrong without a word. */
final class WrongInSilenceTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 2);

    @TempDir
    Path folder = Path.of("");

    private @Nullable TakenIn last;

    private TakenIn take(String list) throws IOException {
        return take(list, DAY);
    }

    private TakenIn undated(String list) throws IOException {
        return take(list, null);
    }

    private TakenIn take(String list, @Nullable LocalDate day) throws IOException {
        Path file = Files.writeString(folder.resolve("list.csv"), list);
        TakeIn takeIn = new TakeIn(new ListFolder(folder.resolve("kept")), List.of(), Set.of());
        TakenIn taken = takeIn.take(file, new TakeIn.Said("Fen & Moor", day, null), PriceReview.read(review()))
                .get(0);
        new PriceReview(List.of(taken), takeIn.knownItems()).write(review(), true);
        last = taken;
        return taken;
    }

    private Path review() {
        return folder.resolve(PriceReview.FILE);
    }

    private void answer(String field, String words) throws IOException {
        TakenIn asked = Objects.requireNonNull(last);
        Question question = asked.questions().stream()
                .filter(one -> one.field().equals(field) || one.key().equals(field))
                .findFirst()
                .orElseThrow();
        Asked open = asked.seen().asked().stream()
                .filter(one -> one.isOpen() && one.text().equals(question.text()))
                .findFirst()
                .orElseThrow();
        try (FilledReview review = FilledReview.open(review())) {
            review.fill("Questions", open.key(), "Answer", words);
        }
    }

    private List<String> asked(String list) throws IOException {
        TakenIn taken = take(list);
        assertThat(taken.isKept()).as("kept without an answer").isFalse();
        return taken.questions().stream()
                .map(question -> question.key().isEmpty() ? question.field() : question.key())
                .toList();
    }

    private List<String> rows(String list) throws IOException {
        TakenIn taken = take(list);
        assertThat(taken.isKept())
                .as(taken.questions() + " " + taken.findings())
                .isTrue();
        return LayoutsProperties.rows(taken);
    }

    private String note(TakenIn taken) throws IOException {
        var kept = taken.kept();
        assertThat(kept).isNotNull();
        List<Csv.Line> lines = Csv.read(Files.readString(kept.file()), ',');
        int column =
                lines.get(0).fields().stream().map(Csv.Field::text).toList().indexOf("Note");
        return lines.get(lines.size() - 1).fields().get(column).text();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Freight", "Energiezuschlag", "Remise", "Pfand", "Sconto", "Portes", "Handling fee"})
    void a_column_with_a_word_for_a_cost_is_asked_about_if_it_holds_anything(String header) throws IOException {
        assertThat(asked("Product;Pack;EUR/kg;" + header + "\nA;25 kg;1,50;0,20\n"))
                .containsExactly(header);
        answer(header, "nothing");
        assertThat(rows("Product;Pack;EUR/kg;" + header + "\nA;25 kg;1,50;0,20\n"))
                .containsExactly("A|25|kg||1.5|kg|EUR");
        assertThat(rows("Product;Pack;EUR/kg;Other charge\nA;25 kg;1,50;\n")).containsExactly("A|25|kg||1.5|kg|EUR");
    }

    @Test
    void a_discount_and_a_surcharge_are_applied_and_noted() throws IOException {
        String list = "Product;Pack;EUR/kg;Discount %;Surcharge (EUR/kg)\nA;25 kg;10,00;5;0,25\n";
        assertThat(rows(list)).containsExactly("A|25|kg||9.75|kg|EUR");
        assertThat(note(take(list))).isEqualTo("list price 10, less 5 %, plus 0.25 per kg");
    }

    @Test
    void a_surcharge_per_kg_is_added_to_the_price_of_a_pack() throws IOException {
        assertThat(rows("Product;Pack;EUR per drum;Surcharge (EUR/kg)\nA;25 kg;100,00;0,20\n"))
                .containsExactly("A|25|kg||105|pack|EUR");
    }

    @Test
    void a_discount_of_a_hundred_is_an_error() throws IOException {
        TakenIn taken = take("Product;Pack;EUR/kg;Discount %\nA;25 kg;10,00;100\n");
        assertThat(taken.isKept()).isFalse();
        assertThat(taken.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.startsWith("The discount % is 100."));
    }

    @Test
    void prices_with_vat_are_asked_about_and_never_taken_as_net() throws IOException {
        String list = "Product;Pack;Preis inkl. MwSt (EUR/kg)\nA;25 kg;11,90\n";
        assertThat(asked(list)).containsExactly("Preis inkl. MwSt (EUR/kg)");
        answer("Preis inkl. MwSt (EUR/kg)", "price with 19 % VAT");
        assertThat(rows(list)).containsExactly("A|25|kg||10|kg|EUR");
    }

    @Test
    void beside_a_net_price_the_one_with_vat_is_not_needed() throws IOException {
        assertThat(rows("Produit;Conditionnement;Prix HT (EUR/kg);Prix TTC\nA;25 kg;10,00;12,00\n"))
                .containsExactly("A|25|kg||10|kg|EUR");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "All prices plus 3 % energy surcharge | add 3 %           | 10.3",
                "Zzgl. 2,5 % Teuerungszuschlag        | add 2.5 %         | 10.25",
                "Remise de 4 % sur tous les prix      | subtract 4 %      | 9.6",
                "Sconto 10% per ordini online         | ignore            | 10",
                "Energiezuschlag: 0,15 €/kg           | add 0.15 per kg   | 10.15",
                "Alle Preise inkl. 25 % MwSt          | take off 25 % VAT | 8",
                "Tous les prix sont TTC               | prices are without VAT | 10",
            })
    void a_line_that_changes_all_prices_is_asked_about(String line, String answer, String price) throws IOException {
        String list = "Product;Pack;EUR/kg\nA;25 kg;10,00\n" + line + ";;\n";
        List<String> fields = asked(list);
        assertThat(fields).singleElement().asString().startsWith("line: ");
        answer(fields.get(0), answer);
        assertThat(rows(list)).containsExactly("A|25|kg||" + price + "|kg|EUR");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Alle Preise zzgl. MwSt",
                "Prices exclude VAT",
                "Prix hors TVA",
                "IVA no incluido",
                "Preise netto, exkl. 19 % MwSt",
                "prezzi IVA esclusa"
            })
    void prices_without_vat_are_what_is_expected(String line) throws IOException {
        assertThat(rows("Product;Pack;EUR/kg\nA;25 kg;10,00\n\"" + line + "\";;\n"))
                .containsExactly("A|25|kg||10|kg|EUR");
    }

    @Test
    void a_heading_between_the_rows_changes_currency_and_unit_below_it() throws IOException {
        String list = "Product;Pack;Price EUR/kg\nA;25 kg;10,00\nPrices in USD per lb;;\nB;25 kg;4,00\n";
        assertThat(rows(list)).containsExactly("A|25|kg||10|kg|EUR", "B|25|kg||4|lb|USD");
    }

    @Test
    void whether_a_heading_holds_below_the_next_one_is_asked() throws IOException {
        String list = "Product;Pack;Price EUR/kg\nPrices in USD per lb;;\nA;25 kg;10,00\nWaxes;;\nB;25 kg;4,00\n";
        assertThat(asked(list)).containsExactly("below Waxes");
        answer("below Waxes", "no");
        assertThat(rows(list)).containsExactly("A|25|kg||10|lb|USD", "B|25|kg||4|kg|EUR");
    }

    @Test
    void a_second_table_has_its_own_headers_and_title() throws IOException {
        assertThat(rows("""
                        Product;Pack;Price EUR/kg
                        A;25 kg;10,00
                        ;;
                        Packaging;;
                        Item;Pack;Price GBP per 1000
                        Jar;500 pcs;142,00
                        """)).containsExactly("A|25|kg||10|kg|EUR", "Jar|500|each||0.142|each|GBP");
    }

    @Test
    void packaging_priced_by_the_thousand_with_a_minimum_asks_for_the_pack() throws IOException {
        String list = "Item;MOQ;Price EUR per 1000\nJar 50 ml;5000;142,00\n";
        assertThat(asked(list)).containsExactly("pack column");
        answer("pack column", "1 piece");
        TakenIn taken = take(list);
        assertThat(taken.isKept())
                .as(taken.questions() + " " + taken.findings())
                .isTrue();
        assertThat(LayoutsProperties.rows(taken)).containsExactly("Jar 50 ml|1|each||0.142|each|EUR");
        var kept = taken.kept();
        assertThat(kept).isNotNull();
        assertThat(Files.readString(kept.file())).contains("0.142,each,EUR,5000,");
    }

    @Test
    void prices_in_text_with_breaks_are_read() throws IOException {
        assertThat(rows("""
                        Artikel;Gebinde;EUR/kg
                        A;25 kg;1–4: 12,50 / 5+: 11,80
                        B;25 kg;"ab 25 kg 3,20; ab 100 kg 2,95"
                        C;25 kg;12,50 (5+: 11,80)
                        """))
                .containsExactly(
                        "A|25|kg||12.5|kg|EUR",
                        "A|25|kg|125|11.8|kg|EUR",
                        "B|25|kg||3.2|kg|EUR",
                        "B|25|kg|100|2.95|kg|EUR",
                        "C|25|kg||12.5|kg|EUR",
                        "C|25|kg|125|11.8|kg|EUR");
    }

    @Test
    void a_grade_in_its_own_column_belongs_to_the_name() throws IOException {
        assertThat(
                        rows(
                                "Product;Viscosity;Pack;EUR/kg\nDimethicone;5 cSt;25 kg;6,20\nDimethicone;100 cSt;25 kg;5,10\n"))
                .containsExactly("Dimethicone 5 cSt|25|kg||6.2|kg|EUR", "Dimethicone 100 cSt|25|kg||5.1|kg|EUR");
    }

    @Test
    void the_rest_of_the_list_decides_what_a_comma_is() throws IOException {
        assertThat(rows("Product;Pack;EUR/kg\nA;\"1,000 kg\";12.50\nB;25.5 kg;1.250\n"))
                .containsExactly("A|1000|kg||12.5|kg|EUR", "B|25.5|kg||1.25|kg|EUR");
    }

    @Test
    void other_numbers_of_the_sheet_decide_what_a_comma_is() throws IOException {
        assertThat(rows("Product;Density;Pack;EUR/kg\nA;0,92;25 kg;1,250\n")).containsExactly("A|25|kg||1.25|kg|EUR");
    }

    @Test
    void a_comma_is_asked_about_once_for_each_column_that_leaves_it_open() throws IOException {
        assertThat(asked(
                        "Product;Pack;EUR/kg;5+ drums (EUR/kg);From\nA;25,5 kg;1,250;1,150;\nB;25.5 kg;2,250;2,150;\n"))
                .containsExactly("decimals in EUR/kg", "decimals in 5+ drums (EUR/kg)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Preise gültig ab 01.12.2026 bis 31.03.2027        | 2026-12-01 | 2027-03-31",
                "Quote 12 Nov 2026 - valid 30 days                 | 2026-11-12 | 2026-12-12",
                "Stand 01.11.2026 Bindefrist 4 Wochen              | 2026-11-01 | 2026-11-29",
                "Listino valido dal 1° dicembre 2026 al 28 febbraio 2027 | 2026-12-01 | 2027-02-28",
                "Price list 25/11/2026 valid through 01/02/2027    | 2026-11-25 | 2027-02-01",
                "Price list 11/25/2026 valid through 01/02/2027    | 2026-11-25 | 2027-01-02",
                "Preisliste Dez. 26                                | 2026-12-01 |",
            })
    void the_days_of_a_list_are_read_from_its_title(String title, String first, String last) throws IOException {
        TakenIn taken = undated("\"" + title + "\";;\nProduct;Pack;EUR/kg\nA;25 kg;1,50\n");
        assertThat(taken.isKept())
                .as(taken.questions() + " " + taken.findings())
                .isTrue();
        assertThat(taken.quotedOn()).hasToString(first);
        if (last != null) {
            assertThat(taken.validUntil()).hasToString(last);
        }
    }

    @ParameterizedTest
    @CsvSource({"first day,2026-12-01,", "last day,2026-11-02,2026-12-01"})
    void a_word_that_can_be_either_is_asked_about(String answer, String first, String last) throws IOException {
        String list = "Tarif au 1er décembre 2026;;\nProduit;Conditionnement;EUR/kg\nA;25 kg;1,50\n";
        TakenIn asked = undated(list);
        assertThat(asked.questions()).extracting(Question::field).containsExactly("date after \"Tarif au\"");
        assertThat(asked.findings())
                .filteredOn(Finding::isError)
                .as("one cause, one message")
                .isEmpty();
        answer("date after \"Tarif au\"", answer);
        TakenIn taken = last == null ? undated(list) : take(list);
        assertThat(taken.quotedOn()).hasToString(first);
        if (last == null) {
            assertThat(taken.validUntil()).isNull();
        } else {
            assertThat(taken.validUntil()).hasToString(last);
        }
    }

    @Test
    void validity_in_a_footer_counts_and_dates_of_other_things_do_not() throws IOException {
        TakenIn taken = take(
                "Product;Pack;EUR/kg\nA;25 kg;1,50\nPreise gültig bis 31.12.2026;;\nUnsere AGB (Stand 01.01.2020);;\n");
        assertThat(taken.validUntil()).hasToString("2026-12-31");
        assertThat(taken.quotedOn()).isEqualTo(DAY);
    }

    @Test
    void new_prices_that_a_footer_announces_are_asked_about() throws IOException {
        TakenIn taken = undated(
                "Preisliste Stand 01.11.2026;;\nProduct;Pack;EUR/kg\nA;25 kg;1,50\nAb 01.01.2027 gelten neue Preise;;\n");
        assertThat(taken.isKept()).isFalse();
        assertThat(taken.questions()).extracting(Question::field).containsExactly("first day");
    }

    @Test
    void an_end_before_the_begin_is_an_error() throws IOException {
        TakenIn taken = undated("gültig ab 01.12.2026 bis 31.03.2026;;\nProduct;Pack;EUR/kg\nA;25 kg;1,50\n");
        assertThat(taken.isKept()).isFalse();
        assertThat(taken.findings())
                .extracting(Finding::text)
                .anyMatch(text -> text.contains("before their first day"));
    }

    @Test
    void a_validity_without_a_year_is_asked_about() throws IOException {
        assertThat(asked("Angebot gültig bis 15.12.;;\nProduct;Pack;EUR/kg\nA;25 kg;1,50\n"))
                .singleElement()
                .asString()
                .startsWith("line: ");
    }

    @Test
    void a_minimum_without_a_column_of_packs_is_kept() throws IOException {
        TakenIn taken = take("Product;EUR per pack;MOQ\nJojoba oil 5 l;112,50;2\n");
        var kept = taken.kept();
        assertThat(kept).isNotNull();
        assertThat(Files.readString(kept.file())).contains("Jojoba oil,5,L,,112.5,pack,EUR,10,");
    }
}
