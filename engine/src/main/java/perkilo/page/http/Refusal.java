package perkilo.page.http;

/** A request that is not answered: a status code, and a sentence for the person. */
public final class Refusal extends Exception {

    private static final long serialVersionUID = 1L;

    private final int status;

    /**
     * A refusal.
     *
     * @param status a status code of HTTP, 400 or more
     * @param sentence for the person, from a catalogue of messages
     */
    public Refusal(int status, String sentence) {
        super(sentence, null, false, false);
        this.status = status;
    }

    /** The status code. */
    public int status() {
        return status;
    }

    /** The sentence for the person. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
