package perkilo.layouts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences about the days of prices: the first day, the last, the day of the list, or one that can be either. */
final class ValidityTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gültig bis 31.12.2026                           | LAST",
                "Preise gültig bis zum 31.12.2026                | LAST",
                "Bindefrist: 31.12.2026                          | LAST",
                "Angebot gilt bis 31.12.2026                     | LAST",
                "valid until 31 Dec 2026                         | LAST",
                "valid through December 31, 2026                 | LAST",
                "prices valid to 31/12/2026                      | LAST",
                "Offer expires 31 December 2026                  | LAST",
                "valable jusqu'au 31 décembre 2026               | LAST",
                "Prix valables jusqu’au 31/12/2026               | LAST",
                "Fin de validité : 31/12/2026                    | LAST",
                "valido fino al 31 dicembre 2026                 | LAST",
                "Scadenza offerta: 31 dicembre 2026              | EITHER",
                "scade il 31 dicembre 2026                       | LAST",
                "válido hasta el 31 de diciembre de 2026         | LAST",
                "Precios vigentes hasta el 31/12/2026            | LAST",
                "gültig ab 01.12.2026                            | FIRST",
                "ab dem 1. Dezember 2026                         | FIRST",
                "Preise ab 01.12.2026                            | FIRST",
                "valid from 1 Dec 2026                           | FIRST",
                "effective 1 December 2026                       | FIRST",
                "Prices effective as of 1 Dec 2026               | FIRST",
                "à partir du 1er décembre 2026                   | FIRST",
                "Tarif applicable au 1er décembre 2026           | FIRST",
                "en vigueur au 1er décembre 2026                 | FIRST",
                "valido dal 1° dicembre 2026                     | FIRST",
                "a partire dal 1° dicembre 2026                  | FIRST",
                "in vigore dal 1 dicembre 2026                   | FIRST",
                "desde el 1 de diciembre de 2026                 | FIRST",
                "vigente desde el 1 de diciembre de 2026         | FIRST",
                "Preisliste Stand 01.12.2026                     | LIST",
                "Stand: 01.12.2026                               | LIST",
                "Preisliste vom 01.12.2026                       | LIST",
                "as of 1 Dec 2026                                | LIST",
                "Date: 1 Dec 2026                                | LIST",
                "Fecha: 1 de diciembre de 2026                   | LIST",
                "Data: 1 dicembre 2026                           | LIST",
                "Paris, le 1er décembre 2026                     | LIST",
                "Nadelhorst 01.12.2026                           | BARE",
                "Tarif au 1er décembre 2026                      | EITHER",
                "valid 01.12.2026                                | EITHER",
                "gültig 01.12.2026                               | EITHER",
                "Validité : 31/12/2026                           | EITHER",
                "Validity: 31 Dec 2026                           | EITHER",
                "01.10.2026 – 31.12.2026                         | FIRST,LAST",
                "gültig 01.10.2026 bis 31.12.2026                | FIRST,LAST",
                "gültig ab 1. Dezember 2026 bis 31.03.2027       | FIRST,LAST",
                "du 1er octobre au 31 décembre 2026              | EITHER",
                "du 1er octobre 2026 au 31 décembre 2026         | FIRST,LAST",
                "from 1 Oct 2026 to 31 Dec 2026                  | FIRST,LAST",
                "valido dal 1/10/2026 al 31/12/2026              | FIRST,LAST",
                "del 1 de octubre de 2026 al 31 de diciembre de 2026 | FIRST,LAST",
            })
    void the_word_before_a_date_says_what_it_is(String clause, String kinds) {
        String said = ValidityText.dates(clause, new ListDates(Optional.of("day first"))).stream()
                .map(date -> date.kind().toString())
                .collect(Collectors.joining(","));
        assertThat(said).as(clause).isEqualTo(kinds);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "valid 30 days                     | P30D",
                "30 days from the date of this list | P30D",
                "60 days after the date of the offer | P60D",
                "30 Tage ab Datum dieses Angebots  | P30D",
                "90 Tage ab Angebotsdatum          | P90D",
                "30 jours à compter de la date de l'offre | P30D",
                "60 giorni dalla data dell'offerta | P60D",
                "30 días desde la fecha de la oferta | P30D",
                "Offer valid for 30 days           | P30D",
                "Prices are firm for 60 days       | P60D",
                "4 Wochen gültig                   | P28D",
                "Bindefrist 4 Wochen               | P28D",
                "Preisbindung: drei Monate         | P3M",
                "validité 3 mois                   | P3M",
                "Offre valable 30 jours            | P30D",
                "validità 60 giorni                | P60D",
                "offerta valida due settimane      | P14D",
                "válido 30 días                    | P30D",
                "vigencia 1 año                    | P1Y",
            })
    void how_long_prices_hold_is_read(String clause, String period) {
        assertThat(ValidityText.duration(clause)).as(clause).isPresent();
        assertThat(ValidityText.duration(clause).orElseThrow()).hasToString(period);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "payment 30 days net",
                "Lieferzeit 4 Wochen",
                "délai 3 semaines",
                "net 60 giorni",
                "30 days from the date of invoice"
            })
    void terms_of_payment_and_delivery_are_no_validity(String clause) {
        assertThat(ValidityText.duration(clause)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Unsere AGB (Stand 01.01.2020)",
                "ISO 9001 certificate valid until 31.12.2028",
                "Betriebsurlaub vom 23.12.2026 bis 06.01.2027",
                "Orders before 15.12.2026 are delivered this year"
            })
    void dates_of_something_else_are_known(String clause) {
        assertThat(ValidityText.isOfSomethingElse(clause)).isTrue();
    }
}
