package perkilo.desk;

import java.util.Optional;
import java.util.OptionalInt;
import perkilo.model.Book;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.SwapOutcome;

/**
 * The swap or blend that is to be written into a new formula.
 *
 * @param blend whether a blend is meant
 * @param number its place in the list of its kind, from one; empty for the only one
 */
public record Choice(boolean blend, OptionalInt number) {

    /** How many there are to choose from. */
    int count(SwapOutcome.Found found) {
        return blend ? found.blends().size() : found.swaps().size();
    }

    /**
     * Makes the new formula; empty if there is no such swap or blend, or several and no number.
     *
     * @param earlier names of formulas that may be written anew
     */
    Optional<AppliedSwap> applyTo(SwapOutcome.Found found, AppliedSwap.Earlier earlier) {
        Book book = found.book();
        int count = count(found);
        int chosen = number.orElse(count == 1 ? 1 : 0);
        if (chosen < 1 || chosen > count) {
            return Optional.empty();
        }
        return Optional.of(
                blend
                        ? AppliedSwap.of(book, found.blends().get(chosen - 1), chosen, earlier)
                        : AppliedSwap.of(book, found.swaps().get(chosen - 1), chosen, earlier));
    }
}
