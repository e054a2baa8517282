package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.layouts.HeaderReading;
import perkilo.layouts.Quantity;
import perkilo.units.Measure;

/** A header that holds a break, a currency and what the price is for says all three. */
final class BreakHeadersTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ab 1 Gebinde €/kg            | price from 1 packs  | EUR",
                "ab 5 Gebinde (EUR/kg)        | price from 5 packs  | EUR",
                "ab 5 Gebinde in €/kg         | price from 5 packs  | EUR",
                "ab 100 kg, EUR/kg            | price from 100 kg   | EUR",
                "ab 1 Gebinde EUR / kg        | price from 1 packs  | EUR",
                "€ pro kg ab 25 kg            | price from 25 kg    | EUR",
                "Preis ab 25 kg €/kg          | price from 25 kg    | EUR",
                "from 1 drum EUR/kg           | price from 1 packs  | EUR",
                "from 5 drums, EUR per kg     | price from 5 packs  | EUR",
                "USD/kg from 25 kg            | price from 25 kg    | USD",
                "25+ kg GBP/kg                | price from 25 kg    | GBP",
                "à partir de 25 kg €/kg       | price from 25 kg    | EUR",
                "à partir de 5 fûts (€/kg)    | price from 5 packs  | EUR",
                "dès 5 fûts, EUR le kg        | price from 5 packs  | EUR",
                "prix à partir de 25 kg €/kg  | price from 25 kg    | EUR",
            })
    void currency_basis_and_break_are_read_from_the_header(String header, String use, String currency) {
        HeaderReading reading = HeaderReading.of(header).orElseThrow();
        assertThat(Objects.requireNonNull(reading.use()).words()).isEqualTo(use);
        assertThat(Objects.requireNonNull(reading.note().currency()).meanings())
                .singleElement()
                .hasToString(currency);
        assertThat(reading.note().per())
                .isNotNull()
                .extracting(Quantity::measure)
                .isEqualTo(Measure.KG);
    }
}
