package perkilo.report.part;

import perkilo.costing.Listing;
import perkilo.purchasing.LineCost;

/**
 * A line of a purchase, with the offer it buys at and what an order to its supplier costs.
 *
 * @param cost the line
 * @param listing the offer
 * @param landing what orders to the supplier cost
 */
public record PurchaseLine(LineCost cost, Listing listing, Landing landing) {}
