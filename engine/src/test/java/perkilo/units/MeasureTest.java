package perkilo.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.unit.Units;

/**
 * Units that goods are packed, priced, filled and counted in.
 *
 * <p>Factors: exact definitions in NIST Special Publication 811, Appendix B, and NIST Handbook 44, Appendix C: 1 lb =
 * 0.45359237 kg, 16 oz in 1 lb, 1 US gal = 231 in³ with 1 in = 2.54 cm, 128 US fl oz in 1 US gal.
 */
final class MeasureTest {

    @ParameterizedTest(name = "1 {0} is {1}")
    @CsvSource({
        "KG, 1",
        "G, 0.001",
        "LB, 0.45359237",
        "OZ, 0.028349523125",
        "L, 1",
        "ML, 0.001",
        "US_GAL, 3.785411784",
        "US_FL_OZ, 0.0295735295625",
        "EACH, 1",
        "GROSS, 144"
    })
    void one_in_kilograms_litres_or_pieces_is_exact(Measure measure, BigDecimal inBase) {
        assertThat(measure.inBase()).isEqualByComparingTo(inBase);
    }

    /** 231 in³ of 2.54³ cm³ each. */
    @Test
    void a_us_gallon_is_231_cubic_inches() {
        BigDecimal cubicInch = new BigDecimal("2.54").pow(3);

        assertThat(cubicInch).isEqualByComparingTo("16.387064");
        assertThat(Measure.US_GAL.inBase())
                .isEqualByComparingTo(
                        cubicInch.multiply(BigDecimal.valueOf(231)).movePointLeft(3));
    }

    @Test
    void a_litre_becomes_kilograms_only_through_a_density() {
        assertThat(Measure.L.inKg(null)).isEmpty();
        assertThat(Measure.L.inKg(new BigDecimal("0.915"))).contains(new BigDecimal("0.915"));
        assertThat(Measure.LB.inKg(null).orElseThrow()).isEqualByComparingTo("0.45359237");
        assertThat(Measure.LB.inKg(new BigDecimal("0.915")).orElseThrow()).isEqualByComparingTo("0.45359237");
    }

    @Test
    void pieces_have_no_weight() {
        assertThat(Measure.EACH.inKg(new BigDecimal("0.9"))).isEmpty();
    }

    /** 500 × 29.5735295625 mL × 0.985 g/mL = 14.56496330953125 kg. */
    @Test
    void five_hundred_fluid_ounces_of_a_lotion() {
        BigDecimal kg =
                Measure.US_FL_OZ.inKg(new BigDecimal("0.985")).orElseThrow().multiply(BigDecimal.valueOf(500));

        assertThat(kg).isEqualByComparingTo("14.56496330953125");
    }

    /** USD 38.00 for a US gallon at 0.915 g/mL is 38 / (3.785411784 × 0.915) per kg; USD 12.50 for a pound. */
    @Test
    void prices_per_gallon_and_per_pound_in_prices_per_kilogram() {
        BigDecimal gallon = Measure.US_GAL.inKg(new BigDecimal("0.915")).orElseThrow();

        assertThat(new BigDecimal("38.00").divide(gallon, MathContext.DECIMAL128))
                .isCloseTo(new BigDecimal("10.971080"), within(new BigDecimal("1e-6")));
        assertThat(new BigDecimal("12.50").divide(Measure.LB.inBase(), MathContext.DECIMAL128))
                .isCloseTo(new BigDecimal("27.557783"), within(new BigDecimal("1e-6")));
    }

    @ParameterizedTest(name = "\"{0}\" is {1}")
    @CsvSource({
        "kg, KG",
        "Kg., KG",
        "KILO, KG",
        "kilogrammes, KG",
        "g, G",
        "grams, G",
        "lb, LB",
        "LBS, LB",
        "lb., LB",
        "Pounds, LB",
        "oz, OZ",
        "oz., OZ",
        "L, L",
        "l, L",
        "litre, L",
        "Liters, L",
        "ml, ML",
        "mL, ML",
        "ML, ML",
        "US gal, US_GAL",
        "U.S. gal., US_GAL",
        "gallons, US_GAL",
        "gallons (US), US_GAL",
        "gal US, US_GAL",
        "Gal. (US), US_GAL",
        "US gallons, US_GAL",
        "imp gal, IMP_GAL",
        "Imp. gallon, IMP_GAL",
        "imperial gallons, IMP_GAL",
        "gallons (imperial), IMP_GAL",
        "UK gal, IMP_GAL",
        "U.K. gal., IMP_GAL",
        "gallon (UK), IMP_GAL",
        "fl oz, US_FL_OZ",
        "fl. oz., US_FL_OZ",
        "each, EACH",
        "pcs, EACH",
        "Stück, EACH",
        "STÜCK, EACH",
        "units, EACH"
    })
    void spellings_of_the_trade(String word, Measure measure) {
        assertThat(Measure.parse(word)).contains(measure);
    }

    @ParameterizedTest
    @CsvSource({
        "gal, true",
        "Gal., true",
        "gallons, true",
        "US gal, false",
        "imp gal, false",
        "gal US, false",
        "kg, false"
    })
    void a_gallon_alone_does_not_say_whose(String word, boolean bare) {
        assertThat(Measure.isBareGallon(word)).isEqualTo(bare);
    }

    /**
     * An imperial gallon is 277.4194 in³ (NIST Handbook 44, Appendix C, to seven figures), and 1.20095 US gallons (to
     * six figures): a list that is read with the wrong one is a fifth off.
     */
    @Test
    void an_imperial_gallon_is_a_fifth_larger() {
        BigDecimal cubicInch = new BigDecimal("0.016387064");
        assertThat(Measure.IMP_GAL.inBase().divide(cubicInch, 4, RoundingMode.HALF_UP))
                .isEqualTo("277.4194");
        assertThat(Measure.IMP_GAL.inBase().divide(Measure.US_GAL.inBase(), 5, RoundingMode.HALF_UP))
                .isEqualTo("1.20095");
    }

    @Test
    void a_no_break_space_is_a_space() {
        assertThat(Measure.parse("US\u00a0gal")).contains(Measure.US_GAL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "pack", "mg", "t", "gal/L", "kg/L", "€"})
    void what_is_no_unit_is_not_found(String word) {
        assertThat(Measure.parse(word)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void every_symbol_is_read_back(Measure measure) {
        assertThat(Measure.parse(measure.symbol())).contains(measure);
    }

    /** JSR 385 and the engine convert 100 g alike. */
    @Test
    void the_units_are_those_of_the_standard() {
        Unit<Mass> gram = Measure.G.unit().asType(Mass.class);

        assertThat(gram.getConverterTo(Units.KILOGRAM).convert(100.0)).isEqualTo(0.1);
    }

    /** The reference implementation of JSR 385 knows the pound, the ounce, the gallon and the fluid ounce itself. */
    @Test
    void customary_units_are_those_of_the_reference_implementation() {
        assertThat(inKg(USCustomary.POUND)).isEqualByComparingTo(Measure.LB.inBase());
        assertThat(inKg(USCustomary.OUNCE)).isEqualByComparingTo(Measure.OZ.inBase());
        assertThat(inLitres(USCustomary.GALLON_LIQUID)).isEqualByComparingTo(Measure.US_GAL.inBase());
        assertThat(inLitres(USCustomary.FLUID_OUNCE)).isEqualByComparingTo(Measure.US_FL_OZ.inBase());
    }

    private static BigDecimal inKg(Unit<Mass> unit) {
        return new BigDecimal(
                unit.getConverterTo(Units.KILOGRAM).convert(BigDecimal.ONE).toString());
    }

    private static BigDecimal inLitres(Unit<Volume> unit) {
        return new BigDecimal(
                unit.getConverterTo(Units.LITRE).convert(BigDecimal.ONE).toString());
    }
}
