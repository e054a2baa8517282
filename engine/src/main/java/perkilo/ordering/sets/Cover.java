package perkilo.ordering.sets;

import java.util.List;

/**
 * Packs that cover one item's need.
 *
 * @param picks what is bought
 * @param cost landed, without what is charged for orders as a whole, in home currency
 * @param bound nothing that covers the need from these vendors costs less
 * @param vendors bit by bit the vendors bought from
 */
record Cover(List<Pick> picks, double cost, double bound, int vendors) {

    Cover {
        picks = List.copyOf(picks);
    }

    /** Packs of one quote. */
    record Pick(PackPrice price, long packs) {}
}
