package perkilo.swaps.law;

import java.time.LocalDate;

/** The day up to which changes of the law are in the tables beside this package. */
public final class StateOfLaw {

    /** Acts that were published later are not in the tables. */
    public static final LocalDate DATE = LocalDate.of(2025, 9, 1);

    private StateOfLaw() {}

    /** What every result says that uses the tables. */
    public static String words() {
        return LawMessages.stateOfLaw(DATE);
    }
}
