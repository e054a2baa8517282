package perkilo.reading;

import perkilo.offers.Offer;
import perkilo.offers.QuotedRow;
import perkilo.reading.table.TableRow;

/**
 * One row of an offer, with its price break.
 *
 * @param row the row
 * @param offer with this price alone; its origin is the first cell of the row that has a column
 */
record OfferRow(TableRow row, Offer offer) implements QuotedRow {}
