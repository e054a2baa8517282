package perkilo.orderplan;

import java.math.BigDecimal;

/** The difference between another plan and the chosen plan. */
public sealed interface Difference {

    /**
     * The other plan is possible.
     *
     * @param cost its extra cost, with holding and leftovers, in home currency; below zero if it costs less
     * @param cash its extra payments, in home currency; below zero if it pays less
     * @param proven whether both plans are proven cheapest; if not, the other plan is the best found in the time
     *     allowed
     */
    record Costs(BigDecimal cost, BigDecimal cash, boolean proven) implements Difference {}

    /**
     * The other plan is not possible.
     *
     * @param why a sentence for a person
     */
    record NotPossible(String why) implements Difference {}

    /** Nothing was found in the time allowed. */
    record NotKnown() implements Difference {}
}
