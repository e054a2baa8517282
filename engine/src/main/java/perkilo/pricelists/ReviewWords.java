package perkilo.pricelists;

/** The sheets and headings of a review of price lists. What is filled in there is read back by them. */
public final class ReviewWords {

    public static final String LISTS = "Lists";
    public static final String PRICES = "Prices";
    public static final String NOT_READ = "Not read";
    public static final String READ_AS = "Read as";

    public static final String FILE = "File";
    public static final String FOLDER = "Folder";
    public static final String SUPPLIER = "Supplier";
    public static final String QUOTED_ON = "Valid from";
    public static final String VALID_UNTIL = "Valid until";
    public static final String STATE = "State";
    public static final String THEIRS = "On the list";
    public static final String OURS = "Your item";
    public static final String HOW = "How it was found";
    public static final String IT_IS = "It is the …";

    /** The beginning of the state of a list that is kept. */
    public static final String TAKEN_IN = "Taken in";

    /** The beginning of the state of a file that is no price list, as a person says. */
    public static final String NO_LIST = "No price list";

    private ReviewWords() {}
}
