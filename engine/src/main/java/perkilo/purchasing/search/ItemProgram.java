package perkilo.purchasing.search;

/** Plans the purchases of one item on its own, exactly. */
interface ItemProgram {

    /**
     * Finds the plan with the least total: lines with their terms, charges of the orders used, less the credit for
     * leftovers.
     *
     * @return the total; infinite if the needs cannot be covered
     */
    double solve(Terms terms);

    /** The plan found last. It must have been possible. */
    Picks picks(Terms terms);
}
