package perkilo.sheet;

/** The look of a cell, by its purpose. */
public enum Look {
    /** The sheet's title in large letters. */
    TITLE,
    /** The one sentence that answers the question. */
    ANSWER,
    /** The heading of a new part of the sheet. */
    SECTION,
    /** The head of a column. */
    HEADER,
    /** The name of a row. */
    LABEL,
    /** Anything else. */
    PLAIN,
    /** A figure that a person may change to see what happens: the packs of a purchase. */
    CHOICE,
    /** A cell that a person fills in: an answer. It stays unlocked if the sheet is protected. */
    FILL_IN,
    /** A sum. */
    TOTAL,
    /** The figure that matters most. */
    KEY,
    /** Explanations. */
    HINT,
    /** A line of a letter: an address, a day. It runs on over the empty cells beside it. */
    LETTER,
    /** Something is wrong. */
    ERROR,
    /** Something needs a look. */
    WARNING,
    /** Something will need a look soon. */
    NOTICE
}
