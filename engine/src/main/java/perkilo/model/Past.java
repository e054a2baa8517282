package perkilo.model;

import java.util.List;
import perkilo.offers.Offer;
import perkilo.units.DatedRate;

/**
 * What is known of earlier days. Costs do not depend on it; it shows how far prices and rates have moved before.
 *
 * @param rates exchange rates of all days, the workbook's own before those of a file
 * @param quotes of all lists, also those that newer ones have replaced
 * @param actuals what runs really took, in the order of the sheet
 */
public record Past(List<DatedRate> rates, List<Offer> quotes, List<ActualRow> actuals) {

    /** Nothing is known. */
    public static final Past UNKNOWN = new Past(List.of(), List.of());

    /** Rates and quotes, and no actuals. */
    public Past(List<DatedRate> rates, List<Offer> quotes) {
        this(rates, quotes, List.of());
    }

    public Past {
        rates = List.copyOf(rates);
        quotes = List.copyOf(quotes);
        actuals = List.copyOf(actuals);
    }
}
