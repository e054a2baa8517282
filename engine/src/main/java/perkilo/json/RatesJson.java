package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import perkilo.rates.RatesTable;
import perkilo.units.Conversion;

/** Exchange rates as JSON. */
public final class RatesJson {

    private static final MathContext DIGITS = new MathContext(15, RoundingMode.HALF_UP);

    private RatesJson() {}

    /**
     * What was taken in from a file.
     *
     * @param file as the person named it
     */
    public static ObjectNode taken(String file, RatesTable.Taken taken) {
        return Json.object()
                .put("file", file)
                .put("rates", taken.rates())
                .put("added", taken.added())
                .put("same", taken.same())
                .put("differing", taken.differing().size());
    }

    /**
     * The rate of a day; the factor to 15 significant digits, so that small ones stay exact enough.
     *
     * @param asked the day that was asked for
     */
    public static ObjectNode rate(Conversion conversion, LocalDate asked) {
        ObjectNode json = Json.object()
                .put("from", conversion.from().getCurrencyCode())
                .put("to", conversion.to().getCurrencyCode())
                .put("date", asked.toString())
                .put("rateDate", asked.minusDays(conversion.ageInDays(asked)).toString())
                .put("rate", plain(conversion.factor()));
        json.set("legs", Json.array(conversion.legs(), RatesJson::leg));
        return json;
    }

    private static ObjectNode leg(Conversion.Leg leg) {
        return Json.object()
                .put("from", leg.rate().from().getCurrencyCode())
                .put("to", leg.rate().to().getCurrencyCode())
                .put("rate", leg.rate().rate().value().toPlainString())
                .put("date", leg.rate().date().toString())
                .put("source", leg.rate().source())
                .put("inverted", leg.inverted());
    }

    private static String plain(BigDecimal factor) {
        BigDecimal rounded = factor.round(DIGITS).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }
}
