package perkilo.desk;

import java.util.Optional;
import java.util.OptionalInt;
import perkilo.model.Book;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.SwapOutcome;

/**
 * Which swap or blend is to be carried out.
 *
 * @param blend whether a blend is meant
 * @param number in the list of its kind, from one; empty for the only one
 */
public record Choice(boolean blend, OptionalInt number) {

    /** How many there are to choose from. */
    int count(SwapOutcome.Found found) {
        return blend ? found.blends().size() : found.swaps().size();
    }

    /** Carries it out; empty if it is none of those that were found, or not the only one. */
    Optional<AppliedSwap> applyTo(SwapOutcome.Found found) {
        Book book = found.book();
        int count = count(found);
        int chosen = number.orElse(count == 1 ? 1 : 0);
        if (chosen < 1 || chosen > count) {
            return Optional.empty();
        }
        return Optional.of(
                blend
                        ? AppliedSwap.of(book, found.blends().get(chosen - 1), chosen)
                        : AppliedSwap.of(book, found.swaps().get(chosen - 1), chosen));
    }
}
