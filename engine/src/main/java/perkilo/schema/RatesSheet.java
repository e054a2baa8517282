package perkilo.schema;

import static perkilo.schema.ValueKind.CURRENCY;
import static perkilo.schema.ValueKind.DATE;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.TEXT;

import java.util.List;

/** The Rates sheet: dated exchange rates. */
public final class RatesSheet {

    public static final InputColumn FROM = InputColumn.of("From", CURRENCY, "one unit of this currency …", "EUR")
            .also("From currency", "Base", "Base currency", "One unit of")
            .needed();

    public static final InputColumn TO = InputColumn.of("To", CURRENCY, "… is worth the rate in this one", "USD")
            .also("To currency", "Quote currency", "Target currency", "Term currency")
            .needed();

    public static final InputColumn RATE = InputColumn.of("Rate", NUMBER, "units of To for one unit of From", "1.1384")
            .also("Exchange rate", "FX rate", "Fx")
            .limited(Limits.ABOVE_ZERO)
            .needed();

    public static final InputColumn DATE_OF = InputColumn.of("Date", DATE, "the day that the rate is of", "2026-11-19")
            .also("Rate date", "As of", "Day", "Date of rate", "Valid on")
            .needed();

    public static final InputColumn SOURCE = InputColumn.of("Source", TEXT, "who published it", "European Central Bank")
            .also("Published by", "Origin");

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
            List.of(FROM, TO, RATE, DATE_OF, SOURCE),
            "Exchange rates: needed where an offer is not in the home currency.");

    private RatesSheet() {}
}
