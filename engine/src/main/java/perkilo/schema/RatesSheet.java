package perkilo.schema;

import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.TEXT;

import java.util.List;

/** The Rates sheet: dated exchange rates. */
public final class RatesSheet {

    public static final InputColumn FROM = InputColumn.of(
                    "From", ValueKind.CURRENCY, "one unit of this currency …", "EUR")
            .also("From currency", "Base", "Base currency", "One unit of")
            .also("Von", "Basis", "Basiswährung", "Ausgangswährung", "De", "Devise de base", "Monnaie de base")
            .also("Da", "Valuta base", "Divisa base", "Desde", "Moneda base")
            .needed();

    public static final InputColumn TO = InputColumn.of(
                    "To", ValueKind.CURRENCY, "… is worth the rate in this one", "USD")
            .also("To currency", "Quote currency", "Target currency", "Term currency")
            .also("Nach", "Zielwährung", "À", "Vers", "Devise cible", "Monnaie cible")
            .also("A", "Valuta di destinazione", "Hacia", "Moneda de destino", "Divisa de destino")
            .needed();

    public static final InputColumn RATE = InputColumn.of("Rate", NUMBER, "units of To for one unit of From", "1.1384")
            .also("Exchange rate", "FX rate", "Fx")
            .also("Kurs", "Wechselkurs", "Devisenkurs", "Umrechnungskurs", "Taux", "Taux de change", "Cours")
            .also("Tasso", "Tasso di cambio", "Cambio", "Tipo", "Tipo de cambio", "Tasa", "Tasa de cambio")
            .limited(Limits.ABOVE_ZERO)
            .needed();

    public static final InputColumn DATE_OF = InputColumn.of("Date", DATE, "the day that the rate is of", "2026-11-19")
            .also("Rate date", "As of", "Day", "Date of rate", "Valid on")
            .also("Datum", "Kursdatum", "Stichtag", "Tag", "Date du taux", "Jour")
            .also("Data", "Giorno", "Fecha", "Día")
            .needed();

    public static final InputColumn SOURCE = InputColumn.of("Source", TEXT, "who published it", "European Central Bank")
            .also("Published by", "Origin", "Quelle", "Fonte", "Fuente");

    public static final InputColumn UNITS = InputColumn.of(
                    "Units", NUMBER, "how many units of From the rate is for", "100")
            .also("Unit", "Per", "Per units", "Nominal", "Multiplier", "Einheit", "Einheiten", "Je", "Pro")
            .also("Unité", "Unités", "Quotité", "Unità", "Nominale", "Unidad", "Unidades")
            .limited(Limits.ABOVE_ZERO)
            .orElse("1");

    /** The currency that a row has the rate of, where another place names the other currency of the pair. */
    public static final InputColumn CURRENCY = InputColumn.of(
                    "Currency", ValueKind.CURRENCY, "the currency that the rate is of", "USD")
            .also("Currency code", "Code", "ISO code", "Währung", "Währungscode", "Devise", "Monnaie")
            .also("Valuta", "Divisa", "Moneda");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Rates",
            List.of(
                    "Exchange rates",
                    "FX",
                    "FX rates",
                    "Currency rates",
                    "Currencies",
                    "Wechselkurse",
                    "Kurse",
                    "Taux de change",
                    "Cambi",
                    "Tipos de cambio"),
            List.of(FROM, TO),
            List.of(List.of(FROM, TO, RATE)),
            List.of(FROM, TO, RATE, DATE_OF, UNITS, SOURCE),
            "Exchange rates: needed where an offer is not in the home currency.");

    private RatesSheet() {}
}
