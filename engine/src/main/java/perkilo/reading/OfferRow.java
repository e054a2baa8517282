package perkilo.reading;

import perkilo.offers.Offer;
import perkilo.offers.QuotedRow;
import perkilo.reading.table.TableRow;

/**
 * One price break of one offer, as its row says.
 *
 * @param row where it stands
 * @param offer with this price alone; its origin is the first cell of the row that has a column
 */
record OfferRow(TableRow row, Offer offer) implements QuotedRow {}
