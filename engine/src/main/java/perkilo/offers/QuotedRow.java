package perkilo.offers;

/** A row that quotes one price; whoever reads it may know more of the row than its offer. */
public interface QuotedRow {

    /** What the row says: an offer with one price. */
    Offer offer();
}
