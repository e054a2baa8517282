package perkilo.sheet;

/** What a cell looks like, by what it is for. */
public enum Look {
    /** The sheet's name in large letters. */
    TITLE,
    /** The one sentence that answers the question. */
    ANSWER,
    /** Where a new part of the sheet begins. */
    SECTION,
    /** The head of a column. */
    HEADER,
    /** The name of a row. */
    LABEL,
    /** Anything else. */
    PLAIN,
    /** A figure that a person may change to see what happens: the packs of a purchase. */
    CHOICE,
    /** A sum. */
    TOTAL,
    /** The figure that matters most. */
    KEY,
    /** Explanations. */
    HINT,
    /** Something is wrong. */
    ERROR,
    /** Something should be looked at. */
    WARNING,
    /** Something will have to be looked at before long. */
    NOTICE
}
