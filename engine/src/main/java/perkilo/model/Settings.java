package perkilo.model;

import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.offers.AgeLimit;
import perkilo.origin.Figure;
import perkilo.purchasing.DutyBasis;

/**
 * The settings of a workbook.
 *
 * @param currencies what costs are computed and shown in
 * @param costingDate the day whose offers and rates are used
 * @param buying how purchases are judged
 * @param making what making costs in every run
 * @param cashLimits the most that orders may cost
 * @param leastSaving the smallest saving that a swap is offered for, as a fraction of the raw material cost
 * @param testing what tests of a changed formula cost
 * @param buyer who orders
 * @param outlook how a cost is looked at that could be another
 */
public record Settings(
        Currencies currencies,
        LocalDate costingDate,
        Buying buying,
        Making making,
        CashLimits cashLimits,
        Figure leastSaving,
        Testing testing,
        Buyer buyer,
        Outlook outlook) {

    /** The usual move of a figure: ten per cent. Common practice, no source. */
    public static final Figure USUAL_SENSITIVITY = Figure.of("0.1");

    /** The usual horizon of a risk band: a quarter of a year. Common practice, no source. */
    public static final Figure USUAL_HORIZON_DAYS = Figure.of("90");

    /** The usual least saving: half a per cent of the raw material cost. Own choice. */
    public static final Figure USUAL_LEAST_SAVING = Figure.of("0.005");

    /** The usual age limit of a quote: half a year. Common practice, no source. */
    public static final Figure USUAL_PRICE_AGE_LIMIT = Figure.of("180");

    /** Settings with the usual least saving, and no known price of a test. */
    public Settings(Currencies currencies, LocalDate costingDate, Buying buying, Making making, CashLimits cashLimits) {
        this(currencies, costingDate, buying, making, cashLimits, USUAL_LEAST_SAVING);
    }

    /** The same settings with another way of making. */
    public Settings withMaking(Making other) {
        return new Settings(currencies, costingDate, buying, other, cashLimits, leastSaving, testing, buyer, outlook);
    }

    /** The same settings on another day. */
    public Settings on(LocalDate day) {
        return new Settings(currencies, day, buying, making, cashLimits, leastSaving, testing, buyer, outlook);
    }

    /** The same settings with another {@link #sensitivity}. */
    public Settings moving(Figure other) {
        return looking(new Outlook(other, outlook.horizonDays()));
    }

    /** The same settings with another outlook. */
    public Settings looking(Outlook other) {
        return new Settings(currencies, costingDate, buying, making, cashLimits, leastSaving, testing, buyer, other);
    }

    /**
     * What costs are computed and shown in.
     *
     * @param home the currency that costs are computed in
     * @param reportCurrencies other currencies that results are shown in; may be none
     * @param conversionMargin what the bank keeps of a conversion, as a fraction
     */
    public record Currencies(CurrencyUnit home, List<CurrencyUnit> reportCurrencies, Figure conversionMargin) {

        public Currencies {
            reportCurrencies = List.copyOf(reportCurrencies);
        }
    }

    /**
     * How purchases are judged.
     *
     * @param dutyBasis what duty is charged on
     * @param leftoverCredit value of a usable leftover, as a fraction of its lowest listed goods price
     * @param holdingPerYear the cost of keeping stock for a year, as a fraction of its value
     * @param priceAgeLimitDays a quote older than this gets a warning, and ends if a newer one has followed and its
     *     last day is unknown
     */
    public record Buying(DutyBasis dutyBasis, Figure leftoverCredit, Figure holdingPerYear, Figure priceAgeLimitDays) {}

    /**
     * What making costs in every run.
     *
     * @param labourRate in home currency for one hour
     * @param overhead on labour, as a fraction
     * @param processWaterPerKg in home currency
     */
    public record Making(Figure labourRate, Figure overhead, Figure processWaterPerKg) {}

    /**
     * The most that orders may cost, in home currency.
     *
     * @param perMonth orders of one month; null for no limit
     * @param total all orders; null for no limit
     */
    public record CashLimits(
            @Nullable Figure perMonth, @Nullable Figure total) {}

    /**
     * What tests of a changed formula cost, in home currency.
     *
     * @param stability null if not known
     * @param challenge the test of preservative efficacy; null if not known
     * @param assessment a new safety assessment; null if not known
     */
    public record Testing(
            @Nullable Figure stability,
            @Nullable Figure challenge,
            @Nullable Figure assessment) {

        /** No price is known. */
        public static final Testing UNKNOWN = new Testing(null, null, null);
    }

    /**
     * How a cost is looked at that could be another.
     *
     * @param sensitivity how far a figure is moved to see what it does to a cost, as a fraction
     * @param horizonDays how many days ahead a risk band looks; whole, above zero
     */
    public record Outlook(Figure sensitivity, Figure horizonDays) {

        /** The usual moves. */
        public static final Outlook USUAL = new Outlook(USUAL_SENSITIVITY, USUAL_HORIZON_DAYS);
    }

    /** Settings that say nothing of tests and of who orders; figures are moved by the usual part. */
    public Settings(
            Currencies currencies,
            LocalDate costingDate,
            Buying buying,
            Making making,
            CashLimits cashLimits,
            Figure leastSaving) {
        this(
                currencies,
                costingDate,
                buying,
                making,
                cashLimits,
                leastSaving,
                Testing.UNKNOWN,
                Buyer.UNKNOWN,
                Outlook.USUAL);
    }

    /**
     * Settings with this currency and date; everything else is zero or its usual value.
     *
     * @param home the currency that costs are computed in
     * @param costingDate the day whose offers and rates are used
     */
    public static Settings of(CurrencyUnit home, LocalDate costingDate) {
        return new Settings(
                new Settings.Currencies(home, List.of(), Figure.ZERO),
                costingDate,
                new Settings.Buying(DutyBasis.CIF, Figure.ZERO, Figure.ZERO, USUAL_PRICE_AGE_LIMIT),
                new Settings.Making(Figure.ZERO, Figure.ZERO, Figure.ZERO),
                new Settings.CashLimits(null, null));
    }

    /** {@link Outlook#sensitivity}. */
    public Figure sensitivity() {
        return outlook.sensitivity();
    }

    /** {@link Currencies#home}. */
    public CurrencyUnit home() {
        return currencies.home();
    }

    /** {@link Currencies#reportCurrencies}. */
    public List<CurrencyUnit> reportCurrencies() {
        return currencies.reportCurrencies();
    }

    /** {@link Currencies#conversionMargin}. */
    public Figure conversionMargin() {
        return currencies.conversionMargin();
    }

    /** {@link Buying#dutyBasis}. */
    public DutyBasis dutyBasis() {
        return buying.dutyBasis();
    }

    /** {@link Buying#leftoverCredit}. */
    public Figure leftoverCredit() {
        return buying.leftoverCredit();
    }

    /** {@link Buying#holdingPerYear}. */
    public Figure holdingPerYear() {
        return buying.holdingPerYear();
    }

    /** {@link Buying#priceAgeLimitDays}. */
    public Figure priceAgeLimitDays() {
        return buying.priceAgeLimitDays();
    }

    /** The price age limit in whole days: when a quote without a last day ends that a newer one has followed. */
    public AgeLimit priceAgeLimit() {
        return AgeLimit.ofDays(buying.priceAgeLimitDays().value());
    }

    /** {@link Making#labourRate}. */
    public Figure labourRate() {
        return making.labourRate();
    }

    /** {@link Making#overhead}. */
    public Figure overhead() {
        return making.overhead();
    }

    /** {@link Making#processWaterPerKg}. */
    public Figure processWaterPerKg() {
        return making.processWaterPerKg();
    }

    /** {@link CashLimits#perMonth}. */
    public @Nullable Figure cashPerMonth() {
        return cashLimits.perMonth();
    }

    /** {@link CashLimits#total}. */
    public @Nullable Figure cashTotal() {
        return cashLimits.total();
    }
}
