package perkilo.desk;

/** A stage of the work of a service. */
public enum Stage {
    READING("files read"),
    COSTING("runs costed"),
    MOVING("runs planned anew"),
    SIZES("sizes tried"),
    SCENARIOS("runs of scenarios costed"),
    TARGETS("runs with targets"),
    BOOKS("books"),
    PLANNING("order plans"),
    ASKING("questions about the plan"),
    COMPARING("candidates"),
    TAKING_IN("files taken in"),
    FETCHING("files fetched");

    private final String pieces;

    Stage(String pieces) {
        this.pieces = pieces;
    }

    /** The word for what is counted, such as {@code books} in {@code 3 of 12 books}. */
    public String pieces() {
        return pieces;
    }
}
