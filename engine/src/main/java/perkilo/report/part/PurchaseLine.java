package perkilo.report.part;

import perkilo.costing.Listing;
import perkilo.purchasing.LineCost;

/**
 * A line of a purchase, with its offer and the formulas of its order.
 *
 * @param cost the line
 * @param listing the offer
 * @param landing formulas for orders to the supplier
 */
public record PurchaseLine(LineCost cost, Listing listing, Landing landing) {}
