package perkilo.layouts;

import perkilo.origin.Origin;

/**
 * An item that a list names.
 *
 * @param listed how
 * @param origin the cell of a price
 */
public record ListedItem(ListLine.Listed listed, Origin origin) {}
