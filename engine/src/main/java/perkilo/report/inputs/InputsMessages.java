package perkilo.report.inputs;

/** What result sheets say of inputs that have changed. */
final class InputsMessages {

    private InputsMessages() {}

    /** What the sheet of inputs is for. */
    static String explanation(String command) {
        return "What perkilo " + command + " read, beside what the cells hold now. Nothing here needs to be filled in: the"
                + " first lines of the result sheets use these counts.";
    }

    /** Before the number of inputs that the figures do not follow. */
    static String changed() {
        return "Inputs changed since this was computed: ";
    }

    /** After the sheets with such inputs. */
    static String runAgain(String command) {
        return "). Not every figure follows them; run perkilo " + command + " again.";
    }

    /** The choice of purchase may be another one. */
    static String choice(String command) {
        return "Inputs are not those of the last run: the figures follow, but whether the purchase is still the cheapest"
                + " is not known. Run perkilo " + command + " again to know.";
    }

    /** Before the number of inputs that changed, on a sheet of values. */
    static String fixed() {
        return "Inputs changed since this was computed: ";
    }

    /** After that number. */
    static String fixedHere(String command) {
        return ". Values on this sheet do not follow; run perkilo " + command + " again.";
    }

    /** After the number of lines or orders that cannot be ordered so. */
    static String packs() {
        return " of the packs typed here cannot be ordered like this; the words beside them say why.";
    }

    /** After the number of recipes. */
    static String recipes() {
        return " of the recipes no longer add up to 100 %, so costs are wrong. Correct their lines.";
    }

    /** What a change does to the figures. */
    static String follows() {
        return "the figures follow numbers";
    }

    /** The same, and the purchase is not chosen again. */
    static String followsNotChosen() {
        return "the figures follow numbers; the purchase is not chosen again";
    }

    /** Only the choice depends on it. */
    static String onlyChoice() {
        return "no figure depends on it; the purchase is not chosen again";
    }

    /** Nothing follows. */
    static String notFollowed() {
        return "needs a new run";
    }

    /** The name of the line that compares the extent of a table. */
    static String extent() {
        return "rows and headings";
    }

    /** What is compared in a long table. */
    static String byTotals() {
        return "; compared by its totals, as the table is long";
    }
}
