package perkilo.layouts;

import java.util.Arrays;
import java.util.Optional;

/** What a column of a supplier's list can hold; the words are those of a mapping file. */
public enum Meaning {
    SUPPLIER("supplier"),
    ITEM("item"),
    GRADE("grade"),
    INCI("INCI name"),
    CAS("CAS number"),
    CODE("code"),
    PACK("pack"),
    PACK_UNIT("pack unit"),
    FROM("from quantity"),
    PRICE("price"),
    PER("price per"),
    CURRENCY("currency"),
    MINIMUM("minimum order"),
    MULTIPLE("order multiple"),
    DUTY("duty %"),
    DISCOUNT("discount %"),
    SURCHARGE_PERCENT("surcharge %"),
    SURCHARGE("surcharge"),
    ORDER_CHARGE("surcharge per order (not in the price)"),
    QUOTED_ON("quoted on"),
    VALID_UNTIL("valid until"),
    NOTHING("nothing");

    private final String word;

    Meaning(String word) {
        this.word = word;
    }

    /** The word in a mapping file. */
    public String word() {
        return word;
    }

    /** The meaning of a word in a mapping file. */
    public static Optional<Meaning> of(String word) {
        return Arrays.stream(values())
                .filter(meaning -> meaning.word.equalsIgnoreCase(word.strip()))
                .findFirst();
    }
}
