package perkilo.swaps;

import perkilo.model.Formula;
import perkilo.origin.Origin;

/** Makes a formula of its own out of a swap; the original stays as it is. */
public final class AppliedSwap {

    private AppliedSwap() {}

    /**
     * The formula with a swap carried out.
     *
     * @param changed the formula after the swap
     * @param number of the swap in its list, from one
     * @return named {@code <formula> swap <number>}
     */
    public static Formula of(Formula changed, int number) {
        return new Formula(changed.name() + " swap " + number, changed.lines(), changed.batching(), Origin.NONE);
    }

    /** The formula with a swap carried out. */
    public static Formula of(Swap swap, int number) {
        return of(swap.trial().after().formula(), number);
    }
}
