package perkilo.layouts;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.xlsx.grid.Cell;

/** Prices as suppliers type them, in a list in EUR per kg whose marks are those given. */
final class PriceCellTest {

    private static final Origin HERE = Origin.ofCell("list.xlsx", "Prices", 1, 2);
    private static final PackText PACK =
            new PackText(Quantity.unit("kg").orElseThrow().times(new BigDecimal(25)), 1);

    private final Findings findings = new Findings();
    private final List<Question> questions = new ArrayList<>();

    private PriceCell.@Nullable Price read(Cell cell, String header, DecimalMark mark) {
        TitleFacts none = new TitleFacts(
                List.of(),
                null,
                null,
                null,
                null,
                PriceNote.NONE,
                new TreeMap<>(),
                List.of(),
                List.of(),
                Map.of("*", "until sold"),
                List.of(),
                List.of());
        PriceNote note = PriceNote.of(header).orElseThrow();
        return new PriceCell(
                        Mapping.empty("X"),
                        none,
                        questions::add,
                        new ListGallons(Mapping.empty("X"), questions::add),
                        findings::error,
                        findings)
                .read(cell, HERE, new PriceCell.Around(PriceNote.NONE, note, mark, false), "", "", PACK, "");
    }

    private String said(PriceCell.@Nullable Price price) {
        if (price == null) {
            return questions.stream().map(Question::field).collect(Collectors.joining(","))
                    + findings.list().stream().map(Finding::text).collect(Collectors.joining(","));
        }
        String per = price.per() == null ? "pack" : price.per().symbol();
        return Quantity.plain(price.amount()) + " " + price.currency().getCurrencyCode() + "/" + per;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "12.50                | 12.5 EUR/kg",
                "12,50                | 12.5 EUR/kg",
                "12                   | 12 EUR/kg",
                "0,95                 | 0.95 EUR/kg",
                "0.950                | 0.95 EUR/kg",
                "0,950                | 0.95 EUR/kg",
                ".95                  | 0.95 EUR/kg",
                ",95                  | 0.95 EUR/kg",
                "1.250,00             | 1250 EUR/kg",
                "1,250.00             | 1250 EUR/kg",
                "1 250,00             | 1250 EUR/kg",
                "1\u00A0250,00        | 1250 EUR/kg",
                "1\u202F250,00        | 1250 EUR/kg",
                "1\u2009250,00        | 1250 EUR/kg",
                "1'250.00             | 1250 EUR/kg",
                "1’250.00             | 1250 EUR/kg",
                "1.250.000            | 1250000 EUR/kg",
                "12,50 €              | 12.5 EUR/kg",
                "€ 12.50              | 12.5 EUR/kg",
                "€12.50               | 12.5 EUR/kg",
                "EUR 12.50            | 12.5 EUR/kg",
                "12.50 EUR            | 12.5 EUR/kg",
                "12,50 Euro           | 12.5 EUR/kg",
                "12,50\u00A0€         | 12.5 EUR/kg",
                "£12.50               | 12.5 GBP/kg",
                "12.50 GBP            | 12.5 GBP/kg",
                "US$ 12.50            | 12.5 USD/kg",
                "CHF 12.50            | 12.5 CHF/kg",
                "Fr. 12.50            | currencyless",
                "412.-                | 412 EUR/kg",
                "412.–                | 412 EUR/kg",
                "412,--               | 412 EUR/kg",
                "412,—                | 412 EUR/kg",
                "CHF 412.-            | 412 CHF/kg",
                "412.- CHF            | 412 CHF/kg",
                "1'980.–              | 1980 EUR/kg",
                "1’980.-              | 1980 EUR/kg",
                "1.980,-              | 1980 EUR/kg",
                "–.50                 | 0.5 EUR/kg",
                "-.50                 | 0.5 EUR/kg",
                "—,85 €               | 0.85 EUR/kg",
                "3,20 €/100 g         | 32 EUR/kg",
                "3,20 €/100g          | 32 EUR/kg",
                "EUR 3.20/kg          | 3.2 EUR/kg",
                "3.20 EUR per kg      | 3.2 EUR/kg",
                "3,20 € pro kg        | 3.2 EUR/kg",
                "3,20 €/kg            | 3.2 EUR/kg",
                "3,20 €/Kg.           | 3.2 EUR/kg",
                "3,20 € le kg         | 3.2 EUR/kg",
                "3,20 € al kg         | 3.2 EUR/kg",
                "3,20 € por kg        | 3.2 EUR/kg",
                "3,20 € je kg         | 3.2 EUR/kg",
                "4.10 USD/lb          | 4.1 USD/lb",
                "US$4.10/lb           | 4.1 USD/lb",
                "£3.20/kg             | 3.2 GBP/kg",
                "320 €/100 kg         | 3.2 EUR/kg",
                "3.200,00 €/t         | 3.2 EUR/kg",
                "3200 EUR per tonne   | 3.2 EUR/kg",
                "3200 EUR/to          | 3.2 EUR/kg",
                "80,00 €/drum         | 80 EUR/pack",
                "80,00 €/Fass         | 80 EUR/pack",
                "80,00 € par fût      | 80 EUR/pack",
                "80,00 €/Gebinde      | 80 EUR/pack",
                "80 € per 25 kg drum  | 80 EUR/pack",
                "80 €/25 kg Sack      | 80 EUR/pack",
                "12,50 netto          | 12.5 EUR/kg",
                "12,50 € HT           | 12.5 EUR/kg",
                "12,50 zzgl. MwSt     | 12.5 EUR/kg",
                "12.50 ex works       | 12.5 EUR/kg",
                "12.50 net            | 12.5 EUR/kg",
                "ca. 12,50            | 12.5 EUR/kg",
                "approx. 12.50 €      | 12.5 EUR/kg",
                "env. 12,50 €         | 12.5 EUR/kg",
                "1.250                | decimals",
                "1,250                | decimals",
                "1,250 €              | decimals",
                "EUR 1.250/kg         | decimals",
                "12.50*               | prices with *",
                "12,50 € **           | prices with **",
                "12,50¹               | prices with ¹",
                "$12.50               | currency",
                "12.50 kr             | currency",
                "12,5o                | is not understood",
                "1l,50                | is not understood",
                "12–14                | is a range",
                "12,00 - 14,00 €      | is a range",
                "12 bis 14            | is a range",
                "12.50 EUR 14.00 USD  | is not understood",
                "12.50 plus freight   | is not understood",
                "12.50 less 3 %       | is not understood",
                "on stock             | is not understood",
                "12,50 €/L            | is not understood",
                "100 € per 30 kg drum | The price is for a pack of 30 kg, but the pack is 25 kg",
                "12,50 €/1000 Stk     | The price is per each, but the pack is 25 kg",
                "12.50 ct             | is not understood",
                "12.50 /7 kg          | The price is for 7 kg",
                "-12.50               | so it is ignored",
            })
    void a_price_is_read_or_said_not_to_be(String typed, String expected) {
        String text =
                typed.replace("\\u00A0", "\u00A0").replace("\\u202F", "\u202F").replace("\\u2009", "\u2009");
        PriceCell.Price price = read(Cell.text(text), "EUR/kg", DecimalMark.UNKNOWN);
        if (expected.equals("currencyless")) {
            assertThat(said(price)).as(typed).isEqualTo("12.5 CHF/kg");
        } else if (text.equals("12,50 €/L")) {
            assertThat(said(price))
                    .as("a price per litre of a pack by weight needs the density")
                    .isEqualTo("12.5 EUR/L");
        } else {
            assertThat(said(price)).as(typed).contains(expected);
        }
    }

    @Test
    void a_price_that_is_not_firm_is_used_with_a_warning() {
        assertThat(read(Cell.text("ca. 12,50"), "EUR/kg", DecimalMark.UNKNOWN)).isNotNull();
        assertThat(findings.list()).extracting(Finding::text).anyMatch(text -> text.contains("not firm"));
    }

    @Test
    void the_note_of_a_mark_is_quoted() {
        read(Cell.text("12,50*"), "EUR/kg", DecimalMark.UNKNOWN);
        assertThat(questions).extracting(Question::text).anyMatch(text -> text.contains("\"until sold\""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "0.00 \"€/kg\"           | net          | 12.5 EUR/kg",
                "0.00\\ \"EUR/100 g\"    | net          | 125 EUR/kg",
                "#,##0.00 [$€-407]\"/kg\" | net          | 12.5 EUR/kg",
                "#,##0.00 [$€-407]       | per kg       | 12.5 EUR/kg",
                "[$$-409]#,##0.00\"/lb\"  | net          | 12.5 USD/lb",
                "[$£-809]#,##0.00        | per kg       | 12.5 GBP/kg",
                "0.00 \"€/Fass\"          | net          | 12.5 EUR/pack",
                "0.00                    | EUR/kg       | 12.5 EUR/kg",
                "0.00 \"€/100 g\"         | EUR/kg       | basis in rows",
                "0.00 \"€/kg\";[Red]-0.00 \"€/kg\" | net    | 12.5 EUR/kg",
            })
    void a_number_format_says_currency_and_unit(String format, String header, String expected) {
        PriceCell.Price price = read(Cell.number(new BigDecimal("12.5"), format), header, DecimalMark.UNKNOWN);
        assertThat(said(price)).as(format).isEqualTo(expected);
    }
}
