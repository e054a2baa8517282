package perkilo.schema;

/** The kind of value in the cells of a column. */
public enum ValueKind {
    /** A name or other words. */
    TEXT("text"),
    /** Several words, separated by semicolons or commas. */
    LIST("words separated by semicolons"),
    /** A number in the column's unit. */
    NUMBER("a number"),
    /** A number in the unit that another column, the header or the cell itself names. */
    QUANTITY("a number"),
    /** A number without decimals. */
    WHOLE("a whole number"),
    /** 2.5, or a cell in per cent format that shows 2.5 %: both mean 2.5 %. */
    PERCENT("a percentage"),
    /** A percentage, or {@code q.s.} for the line that takes the balance. */
    LEVEL("a percentage or q.s."),
    /** An amount of money. */
    MONEY("an amount"),
    /** A day. */
    DATE("a date"),
    /** A unit of mass or volume, or pieces. */
    UNIT("a unit"),
    /** A unit, or {@code pack}. */
    PRICE_UNIT("a unit or pack"),
    /** A currency by its ISO 4217 code or its sign. */
    CURRENCY("a currency"),
    /** Several currencies, separated by commas. */
    CURRENCIES("currencies separated by commas"),
    /** A delivery term of Incoterms 2020. */
    TERM("a delivery term"),
    /** One of a few words. */
    CHOICE("one of a few words"),
    /** A value of the kind that the row's setting needs. */
    ANY("a value");

    private final String words;

    ValueKind(String words) {
        this.words = words;
    }

    /** What is expected in a cell, in a person's words. */
    public String words() {
        return words;
    }

    /** Whether a cell holds a number, with or without a unit. */
    public boolean isNumber() {
        return switch (this) {
            case NUMBER, QUANTITY, WHOLE, PERCENT, LEVEL, MONEY -> true;
            default -> false;
        };
    }

    /** Whether a number in the cell is a percentage. */
    public boolean isPercent() {
        return this == PERCENT || this == LEVEL;
    }
}
