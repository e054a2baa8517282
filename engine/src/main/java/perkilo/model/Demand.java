package perkilo.model;

import perkilo.origin.Day;
import perkilo.origin.Figure;
import perkilo.origin.Origin;

/**
 * Units of a product that are wanted by a day.
 *
 * @param product the product's name
 * @param units a whole number above zero
 * @param neededBy the day; the run is made in its month
 * @param origin its row
 */
public record Demand(String product, Figure units, Day neededBy, Origin origin) {}
