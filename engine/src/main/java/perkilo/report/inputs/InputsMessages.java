package perkilo.report.inputs;

/** What result sheets say of inputs that have changed. */
final class InputsMessages {

    private InputsMessages() {}

    /** What the sheet of inputs is for. */
    static String explanation(String command) {
        return "What perkilo " + command + " read, and how many cells now hold something else. Nothing here needs to be"
                + " filled in: the first lines of the result sheets use these counts.";
    }

    /** After the number of inputs that the figures do not follow. */
    static String runAgain(String command) {
        return "Not every figure follows them; run perkilo " + command + " again.";
    }

    /** The choice of purchase may be another one. */
    static String choice(String command) {
        return "Inputs are not those of the last run: the figures follow, but whether the purchase is still the cheapest"
                + " is not known. Run perkilo " + command + " again to know.";
    }

    /** After the number of inputs that changed, on a sheet of values. */
    static String fixedHere(String command) {
        return "Values on this sheet do not follow; run perkilo " + command + " again.";
    }

    /** After the number of lines and orders that cannot be ordered. */
    static String packs() {
        return "They cannot be ordered as they are now; the words beside them say why.";
    }

    /** After the number of recipes. */
    static String recipes() {
        return "They no longer add up to 100 %, so costs are wrong. Correct their lines.";
    }
}
