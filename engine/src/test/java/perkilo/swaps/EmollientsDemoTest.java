package perkilo.swaps;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.purchasing.SearchLimits;

/** The formulator's demo finds swaps that a formulator would look at. */
final class EmollientsDemoTest {

    @Test
    void cheaper_materials_are_found_for_both_formulas() {
        Book book = DemoBook.emollients();
        long start = System.nanoTime();
        SwapOutcome outcome = new SwapFinder(
                        new perkilo.ordering.CheapestPlan(),
                        SearchLimits.usual(),
                        program -> java.util.Optional.empty())
                .find(book, SwapOptions.usual());
        System.out.println((System.nanoTime() - start) / 1e9 + " s " + outcome.findings());
        SwapOutcome.Found found = (SwapOutcome.Found) outcome;
        System.out.println(found.swaps().size() + " swaps, " + found.rejected().size() + " rejected");
        found.swaps()
                .forEach(swap -> System.out.println(swap.formula().name() + ": "
                        + swap.trial().from().name() + " -> "
                        + swap.trial().to().name() + " " + swap.newLevel() + " close "
                        + swap.closeness().score() + " " + swap.meanChange() + " " + swap.cautions()));
        found.rejected()
                .forEach(no -> System.out.println("NO "
                        + no.trial().before().formula().name() + ": "
                        + no.trial().from().name() + " -> " + no.trial().to().name() + " close "
                        + no.closeness().score() + " " + no.reason()));
        assertThat(found.swaps()).isNotEmpty();
    }
}
