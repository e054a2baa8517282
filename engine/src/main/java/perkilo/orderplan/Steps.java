package perkilo.orderplan;

import java.util.function.BooleanSupplier;

/**
 * A limit of a search in steps. A search asks once in each step whether it should stop, so the questions are counted:
 * unlike time, their number is the same on every machine.
 */
final class Steps implements BooleanSupplier {

    private final long most;
    private final BooleanSupplier cancelled;
    private long taken;

    /**
     * A limit.
     *
     * @param most the steps after which the search stops
     * @param cancelled asked in each step; true stops the search at once
     */
    Steps(long most, BooleanSupplier cancelled) {
        this.most = most;
        this.cancelled = cancelled;
    }

    @Override
    public boolean getAsBoolean() {
        taken++;
        return taken > most || cancelled.getAsBoolean();
    }

    /** How many steps were taken. */
    long taken() {
        return taken;
    }
}
