package perkilo.model;

import java.util.List;

/**
 * One fact about a material: a column of the Materials sheet, and a part of its {@link Traits}.
 *
 * <p>A new fact is one constant here. The sheet, its help, the reader of workbooks and of materials files, and
 * {@link Traits#figure} go by this list; its order is that of the columns. {@code FactsTest} types each fact into a
 * workbook and finds it again.
 */
public enum Fact {
    /** Active matter as a fraction of the material as supplied. */
    ACTIVE(
            "Active %",
            Kind.PERCENT,
            Range.PERCENTAGE,
            "active matter as supplied",
            "47",
            "Active matter %",
            "Actives %",
            "Active content %",
            "Solids %"),
    /** Where it dissolves: oil, water, both … */
    SOLUBLE_IN("Soluble in", Kind.WORD, "water, oil or both", "water", "Solubility", "Phase solubility"),
    /** The highest temperature it withstands in processing. */
    MAX_PROCESS_C(
            "Max process °C",
            "°C",
            Range.ANY,
            "the highest temperature that it withstands in making",
            "90",
            "Max process temperature",
            "Maximum process temperature",
            "Max temperature"),
    MELTS_AT_C("Melts at °C", "°C", Range.ANY, "its melting point", "65", "Melting point", "Melts at", "Melt point"),
    CHARGE("Charge", Kind.WORD, "nonionic, anionic, cationic or amphoteric", "nonionic", "Ionic charge", "Ionicity"),
    SPREADING_CLASS("Spreading class", Kind.WORD, "of an emollient: light, medium or heavy", "medium", "Spreading"),
    /** In mm² in 10 minutes. */
    SPREADING_VALUE("Spreading value", "", Range.ZERO_OR_MORE, "of an emollient, in mm² in 10 minutes", "800"),
    VISCOSITY("Viscosity mPa·s", "mPa·s", Range.ZERO_OR_MORE, "at 20 to 25 °C", "28", "Viscosity"),
    REQUIRED_HLB("Required HLB", "", Range.ZERO_OR_MORE, "of an oil in an oil-in-water emulsion", "11", "rHLB"),
    HLB("HLB", "", Range.ZERO_OR_MORE, "of an emulsifier", "11", "HLB value"),
    /** As a fraction of the formula. */
    USE_MIN(
            "Use min %",
            Kind.PERCENT,
            Range.PERCENTAGE,
            "lowest usual level in a formula",
            "1",
            "Use level min %",
            "Min use %",
            "Minimum use level %"),
    /** As a fraction of the formula. */
    USE_MAX(
            "Use max %",
            Kind.PERCENT,
            Range.PERCENTAGE,
            "highest usual level in a formula",
            "5",
            "Use level max %",
            "Max use %",
            "Maximum use level %"),
    /** As a fraction of the formula. */
    LEGAL_MAX(
            "Legal max %",
            Kind.PERCENT,
            Range.PERCENTAGE,
            "highest level that the law allows",
            "1",
            "Legal limit %",
            "Regulatory limit %",
            "Legal maximum %"),
    PH_MIN("pH min", "", Range.PH, "lowest pH that it works at", "3", "Min pH"),
    PH_MAX("pH max", "", Range.PH, "highest pH that it works at", "12", "Max pH"),
    NATURAL_ORIGIN_INDEX(
            "Natural origin index",
            "",
            Range.INDEX,
            "by ISO 16128, from 0 to 1",
            "1",
            "NOI",
            "Natural origin",
            "ISO 16128 index"),
    TAGS("Tags", Kind.WORDS, "what a brand asks for", "vegan; palm-free", "Claims", "Labels"),
    ALLERGENS(
            "Allergens",
            Kind.SHARES,
            "fragrance allergens in it, each with its percentage",
            "Linalool 35; Limonene 0.5",
            "Fragrance allergens"),
    /** Greenhouse gases of one kilogram as it is bought, in kilograms of carbon dioxide with the same effect. */
    CARBON_FOOTPRINT(
            "Carbon footprint kg CO2e/kg",
            "kg CO2e/kg",
            Range.ZERO_OR_MORE,
            "greenhouse gases of one kilogram, from whatever source you trust; blank is not known, not zero",
            "2.4",
            "Carbon footprint",
            "Product carbon footprint",
            "PCF");

    /** What is typed in a fact's cells. */
    public enum Kind {
        /** A number, in the fact's unit if it has one. */
        NUMBER,
        /** A percentage; kept as a fraction. */
        PERCENT,
        /** A word. */
        WORD,
        /** Several words. */
        WORDS,
        /** Several names, each with or without a percentage. */
        SHARES;

        /** Whether the fact is a figure. */
        public boolean isFigure() {
            return this == NUMBER || this == PERCENT;
        }
    }

    /**
     * The valid numbers, both ends included; 2.5 % is 2.5 here.
     *
     * @param lowest in plain decimals; empty for none
     * @param highest in plain decimals; empty for none
     */
    public record Range(String lowest, String highest) {

        static final Range ANY = new Range("", "");
        static final Range ZERO_OR_MORE = new Range("0", "");
        static final Range PERCENTAGE = new Range("0", "100");
        static final Range PH = new Range("0", "14");
        static final Range INDEX = new Range("0", "1");
    }

    private final String header;
    private final Kind kind;
    private final String unit;

    @SuppressWarnings("ImmutableEnumChecker") // a record of texts
    private final Range range;

    private final String explanation;
    private final String example;

    @SuppressWarnings("ImmutableEnumChecker") // List.of
    private final List<String> alsoHeaded;

    /** A number. */
    Fact(String header, String unit, Range range, String explanation, String example, String... alsoHeaded) {
        this(header, Kind.NUMBER, unit, range, explanation, example, alsoHeaded);
    }

    /** A percentage. */
    Fact(String header, Kind kind, Range range, String explanation, String example, String... alsoHeaded) {
        this(header, kind, "%", range, explanation, example, alsoHeaded);
    }

    /** Words. */
    Fact(String header, Kind kind, String explanation, String example, String... alsoHeaded) {
        this(header, kind, "", Range.ANY, explanation, example, alsoHeaded);
    }

    Fact(String header, Kind kind, String unit, Range range, String explanation, String example, String[] alsoHeaded) {
        this.header = header;
        this.kind = kind;
        this.unit = unit;
        this.range = range;
        this.explanation = explanation;
        this.example = example;
        this.alsoHeaded = List.of(alsoHeaded);
    }

    /** The header of its column, as templates spell it; it ends with the unit, if there is one. */
    public String header() {
        return header;
    }

    /** What is typed in its cells. */
    public Kind kind() {
        return kind;
    }

    /** The unit of its number; empty for none. */
    public String unit() {
        return unit;
    }

    /** Which numbers make sense. */
    public Range range() {
        return range;
    }

    /** One line of help for whoever fills the column in. */
    public String explanation() {
        return explanation;
    }

    /** An example of a cell. */
    public String example() {
        return example;
    }

    /** Other headers that people use. */
    public List<String> alsoHeaded() {
        return alsoHeaded;
    }
}
