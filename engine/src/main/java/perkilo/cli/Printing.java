package perkilo.cli;

/** How a command prints its answer. */
interface Printing {

    /** Whether the answer is printed as JSON. */
    boolean json();

    /** Whether only what matters is printed. */
    boolean quiet();
}
