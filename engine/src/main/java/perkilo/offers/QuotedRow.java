package perkilo.offers;

/** A row that quotes one price; readers may add more about the row. */
public interface QuotedRow {

    /** The offer of the row, with one price. */
    Offer offer();
}
