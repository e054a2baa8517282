package perkilo.reading;

/** Which prices are read. The rows of the workbook's own sheets are checked in any case. */
public enum PricesRead {
    /** All of them. */
    ALL,

    /** Those of the items that the book names: enough to cost it and to plan its orders. */
    OF_NAMED_ITEMS
}
