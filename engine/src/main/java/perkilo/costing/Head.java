package perkilo.costing;

/**
 * What money is spent on. All heads together are the total.
 *
 * <p>A new head is one constant here; the compiler then asks for its amount in {@code Breakdown}, and
 * {@code EveryHeadTest} for its formula on the result sheets. Tables, charts and answers go by this list.
 */
public enum Head {
    RAW_MATERIALS("raw materials"),
    PACKAGING("packaging"),
    /** Freight, insurance, duty, small-order charges and what the bank keeps of conversions. */
    INBOUND("inbound"),
    MAKING("making"),
    FILLING("filling"),
    QUALITY_CONTROL("quality control"),
    OVERHEAD("overhead"),
    /** Bought, and never to be used before it expires. */
    WASTED_STOCK("wasted stock"),
    ONE_OFFS("one-offs");

    private final String words;

    Head(String words) {
        this.words = words;
    }

    /** The head as a person reads it. */
    public String words() {
        return words;
    }
}
