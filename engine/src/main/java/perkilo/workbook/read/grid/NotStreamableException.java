package perkilo.workbook.read.grid;

/** A workbook that cannot be read from beginning to end: it has to be opened as a whole. */
final class NotStreamableException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** What stands in the way, for those who look into the tool itself. */
    NotStreamableException(String what) {
        super(what);
    }
}
