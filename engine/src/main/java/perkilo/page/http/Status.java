package perkilo.page.http;

/** The status codes of answers. */
public final class Status {

    public static final int DONE = 200;

    /** The request is not understood. */
    public static final int BAD_REQUEST = 400;

    /** Whoever asks may not. */
    public static final int FORBIDDEN = 403;

    public static final int NOT_FOUND = 404;

    public static final int WRONG_METHOD = 405;

    /** The file was changed since it was read. */
    public static final int CHANGED = 409;

    public static final int TOO_LARGE = 413;

    /** The body is of another kind. */
    public static final int WRONG_KIND = 415;

    /** A file cannot be read, or there is no answer. */
    public static final int NO_ANSWER = 422;

    /** A fault of the program. */
    public static final int FAULT = 500;

    private Status() {}
}
