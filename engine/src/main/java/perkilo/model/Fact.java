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
    /** What it is put into a formula for, finer than its functions; the most usual first. */
    ROLE(
            "Role",
            Kind.WORDS,
            "what it is put into a formula for; only materials that can play the same role are compared",
            "emollient ester",
            "Roles",
            "Role in formula"),
    /** Whether swaps leave it alone. */
    KEEP("Keep", List.of("yes", "no"), "yes: it is not swapped; no: it may be, even if it is an active", "yes"),
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
    SOLUBLE_IN(
            "Soluble in",
            List.of("oil", "water", "both", "powder"),
            "water, oil, both, or powder where it dissolves in neither",
            "water",
            "Solubility",
            "Phase solubility"),
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
    CHARGE(
            "Charge",
            List.of("nonionic", "anionic", "cationic", "amphoteric"),
            "nonionic, anionic, cationic or amphoteric",
            "nonionic",
            "Ionic charge",
            "Ionicity"),
    SPREADING_CLASS(
            "Spreading class",
            List.of("light", "medium", "heavy"),
            "of an emollient: light, medium or heavy",
            "medium",
            "Spreading"),
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
    /** Of an oil; from high interfacial tension against water to low. */
    POLARITY("Polarity", List.of("nonpolar", "medium", "polar"), "of an oil", "medium", "Oil polarity"),
    /** At 20 °C, of waxes and butters; of an abrasive, its grains. */
    HARDNESS("Hardness", List.of("soft", "medium", "hard"), "of a wax, a butter or an abrasive", "medium"),
    /** How well an oil keeps in air. */
    OXIDATIVE_STABILITY(
            "Oxidative stability",
            List.of("low", "medium", "high"),
            "how well an oil keeps in air",
            "high",
            "Oxidation stability"),
    /** What people would notice; the word none where there is nothing to notice. */
    COLOUR_AND_ODOUR(
            "Colour and odour",
            Kind.WORDS,
            "what people would see or smell in the product; none if nothing",
            "yellow; nutty",
            "Color and odor",
            "Colour and smell"),
    /** Whether it leaves the skin or the vessel as vapour. */
    VOLATILE("Volatile", List.of("yes", "no"), "whether it evaporates from the skin or in making", "no"),
    /**
     * Grams of active matter for one mole of acid or base; for a chelator, for one mole of metal ions that it binds.
     */
    EQUIVALENT_WEIGHT(
            "Equivalent weight g/mol",
            "g/mol",
            Range.ZERO_OR_MORE,
            "of an acid or base: active matter for one mole of acid or base; of a chelator: for one mole of metal ions",
            "64.04",
            "Equivalent weight",
            "Equivalent mass g/mol"),
    /** How many acid or base groups one molecule has. */
    ACID_BASE_GROUPS(
            "Acid or base groups",
            "",
            Range.ZERO_OR_MORE,
            "how many acid or base groups one molecule has",
            "3",
            "Acid groups",
            "Base groups"),
    /** How a thickener takes salts. */
    ELECTROLYTE_TOLERANCE(
            "Electrolyte tolerance",
            List.of("low", "medium", "high"),
            "how well a thickener stands salts",
            "medium",
            "Salt tolerance"),
    /** What water or oil looks like with it. */
    CLARITY("Clarity", List.of("clear", "hazy", "opaque"), "what water or oil looks like with it", "clear"),
    /** Of a surfactant. */
    FOAM("Foam", List.of("low", "medium", "high"), "of a surfactant", "high"),
    /** Of a surfactant on the skin, as the trade grades it. */
    MILDNESS("Mildness", List.of("mild", "medium", "harsh"), "of a surfactant", "mild"),
    /** What a preservative keeps from growing. */
    SPECTRUM(
            "Protects against",
            Kind.WORDS,
            "of a preservative: gram-positive bacteria, gram-negative bacteria, yeast, mould",
            "yeast; mould",
            "Spectrum",
            "Antimicrobial spectrum"),
    /** What spoils it or makes it fall out. */
    SENSITIVE_TO(
            "Sensitive to",
            Kind.WORDS,
            "what spoils it: hydrolysis, oxygen, light, cold (crystallises), salts",
            "hydrolysis; light",
            "Sensitivity"),
    /** The usual grain; half of the mass is finer. */
    PARTICLE_SIZE(
            "Particle size µm",
            "µm",
            Range.ZERO_OR_MORE,
            "of a powder or an abrasive: half of it is finer",
            "12",
            "Particle size",
            "Median particle size µm"),
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
    private final List<String> choices;

    @SuppressWarnings("ImmutableEnumChecker") // List.of
    private final List<String> alsoHeaded;

    /** A number. */
    Fact(String header, String unit, Range range, String explanation, String example, String... alsoHeaded) {
        this(header, Kind.NUMBER, unit, range, List.of(), explanation, example, alsoHeaded);
    }

    /** A percentage. */
    Fact(String header, Kind kind, Range range, String explanation, String example, String... alsoHeaded) {
        this(header, kind, "%", range, List.of(), explanation, example, alsoHeaded);
    }

    /** Words. */
    Fact(String header, Kind kind, String explanation, String example, String... alsoHeaded) {
        this(header, kind, "", Range.ANY, List.of(), explanation, example, alsoHeaded);
    }

    /** One of a few words. */
    Fact(String header, List<String> choices, String explanation, String example, String... alsoHeaded) {
        this(header, Kind.WORD, "", Range.ANY, choices, explanation, example, alsoHeaded);
    }

    Fact(
            String header,
            Kind kind,
            String unit,
            Range range,
            List<String> choices,
            String explanation,
            String example,
            String[] alsoHeaded) {
        this.header = header;
        this.kind = kind;
        this.unit = unit;
        this.range = range;
        this.choices = choices;
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

    /** The words that may be typed; none if any may. */
    public List<String> choices() {
        return choices;
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
