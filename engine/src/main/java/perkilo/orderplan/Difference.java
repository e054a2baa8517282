package perkilo.orderplan;

import java.math.BigDecimal;

/** What another plan would come to, compared with the plan that was chosen. */
public sealed interface Difference {

    /**
     * It can be done.
     *
     * @param cost how much more it would cost, with holding and leftovers, in home currency; below zero if less
     * @param cash how much more would leave the bank, in home currency; below zero if less
     * @param proven whether both plans are proven cheapest; elsewhere the other plan is the best found in the time
     *     allowed
     */
    record Costs(BigDecimal cost, BigDecimal cash, boolean proven) implements Difference {}

    /**
     * It cannot be done.
     *
     * @param why in a person's words
     */
    record NotPossible(String why) implements Difference {}

    /** Nothing was found in the time allowed. */
    record NotKnown() implements Difference {}
}
