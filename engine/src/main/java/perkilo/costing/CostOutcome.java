package perkilo.costing;

import java.util.List;
import java.util.Objects;
import perkilo.model.Book;
import perkilo.origin.Finding;

/** The result of costing a book. */
public sealed interface CostOutcome {

    /** Everything found while costing. */
    List<Finding> findings();

    /**
     * Something is known of at least one run.
     *
     * @param book the costed book
     * @param market the offers of the costing date
     * @param answers one for each run, in the order of the book; runs that could not be read come last
     * @param findings errors, warnings and notes
     */
    record Costed(Book book, Market market, List<RunAnswer> answers, List<Finding> findings) implements CostOutcome {

        public Costed {
            answers = List.copyOf(answers);
            findings = List.copyOf(findings);
        }

        /** The costs that are complete. */
        public List<RunCost> runs() {
            return answers.stream()
                    .filter(RunAnswer::isComplete)
                    .map(answer -> Objects.requireNonNull(answer.cost()))
                    .toList();
        }

        /** The runs of which something is not known. */
        public List<RunAnswer> incomplete() {
            return answers.stream().filter(answer -> !answer.isComplete()).toList();
        }

        /** Whether every run is complete. */
        public boolean isComplete() {
            return answers.stream().allMatch(RunAnswer::isComplete);
        }

        /** How many runs are not complete, in one sentence; empty if all are. */
        public String headline() {
            return isComplete() ? "" : CostMessages.notComplete(incomplete().size(), answers.size());
        }
    }

    /**
     * Nothing is known of any run.
     *
     * @param findings why; at least one is an error, or one was reported when the book was read
     */
    record NoPurchase(List<Finding> findings) implements CostOutcome {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }
}
