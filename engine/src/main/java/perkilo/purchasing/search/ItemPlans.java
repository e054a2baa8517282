package perkilo.purchasing.search;

/** The plans of all items, each on its own. */
interface ItemPlans {

    /**
     * The least total of an item: lines with their terms, charges of the orders used, less the credit for leftovers.
     *
     * @return infinite if no plan is possible
     */
    double solve(int item, Terms terms);

    /** The plan of the item that was solved last. It must have been possible. */
    Picks picks(int item, Terms terms);
}
