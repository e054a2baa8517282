package perkilo.costing;

/**
 * A head of cost. All heads add up to the total.
 *
 * <p>A new head is one constant here; the compiler then asks for its amount in {@code Breakdown}, and
 * {@code EveryHeadTest} for its formula on the result sheets. Tables, charts and answers follow this list.
 */
public enum Head {
    RAW_MATERIALS("raw materials"),
    PACKAGING("packaging"),
    /** Freight, insurance, duty, small-order charges and the bank's margin on conversions. */
    INBOUND("inbound"),
    MAKING("making"),
    FILLING("filling"),
    QUALITY_CONTROL("quality control"),
    OVERHEAD("overhead"),
    /** Bought, and expires before it can be used. */
    WASTED_STOCK("wasted stock"),
    ONE_OFFS("one-offs");

    private final String words;

    Head(String words) {
        this.words = words;
    }

    /** The head in words. */
    public String words() {
        return words;
    }
}
