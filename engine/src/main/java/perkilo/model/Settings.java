package perkilo.model;

import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.purchasing.DutyBasis;

/**
 * The settings of a workbook.
 *
 * @param home the currency that costs are computed in
 * @param reportCurrencies other currencies that results are shown in; may be none
 * @param costingDate the day whose offers and rates are used
 * @param conversionMargin what the bank keeps of a conversion, as a fraction
 * @param dutyBasis what duty is charged on
 * @param leftoverCredit value of a usable leftover, as a fraction of its lowest listed goods price
 * @param labourRate in home currency for one hour
 * @param overhead on labour, as a fraction
 * @param holdingPerYear the cost of keeping stock for a year, as a fraction of its value
 * @param priceAgeLimitDays a quote older than this gets a warning
 * @param processWaterPerKg in home currency
 * @param cashPerMonth the most that orders of one month may cost, in home currency; null for no limit
 * @param cashTotal the most that all orders may cost, in home currency; null for no limit
 */
public record Settings(
        CurrencyUnit home,
        List<CurrencyUnit> reportCurrencies,
        LocalDate costingDate,
        Figure conversionMargin,
        DutyBasis dutyBasis,
        Figure leftoverCredit,
        Figure labourRate,
        Figure overhead,
        Figure holdingPerYear,
        Figure priceAgeLimitDays,
        Figure processWaterPerKg,
        @Nullable Figure cashPerMonth,
        @Nullable Figure cashTotal) {

    /** The usual age limit of a quote: half a year. Common practice, no source. */
    public static final Figure USUAL_PRICE_AGE_LIMIT = Figure.of("180");

    public Settings {
        reportCurrencies = List.copyOf(reportCurrencies);
    }

    /**
     * Settings with this currency and date; everything else is zero or its usual value.
     *
     * @param home the currency that costs are computed in
     * @param costingDate the day whose offers and rates are used
     */
    public static Settings of(CurrencyUnit home, LocalDate costingDate) {
        return new Settings(
                home,
                List.of(),
                costingDate,
                Figure.ZERO,
                DutyBasis.CIF,
                Figure.ZERO,
                Figure.ZERO,
                Figure.ZERO,
                Figure.ZERO,
                USUAL_PRICE_AGE_LIMIT,
                Figure.ZERO,
                null,
                null);
    }
}
