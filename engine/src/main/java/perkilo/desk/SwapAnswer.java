package perkilo.desk;

import java.util.List;
import java.util.Optional;
import perkilo.model.Formula;
import perkilo.origin.Finding;
import perkilo.report.swap.SwapReport;
import perkilo.sheet.Report;
import perkilo.swaps.SwapOutcome;

/** What a search for cheaper materials came to. */
public sealed interface SwapAnswer {

    /** Everything that a person should know, of the reading too. */
    List<Finding> findings();

    /**
     * The search went through.
     *
     * @param found swaps and blends
     * @param added the formula with the swap or blend that was to be carried out
     * @param findings everything that a person should know
     */
    record Found(SwapOutcome.Found found, Optional<Formula> added, List<Finding> findings) implements SwapAnswer {

        public Found {
            findings = List.copyOf(findings);
        }

        /** The result sheets. */
        public Report report() {
            return SwapReport.of(found, findings, added);
        }
    }

    /**
     * The search went through, and what was to be carried out is none of what it found.
     *
     * @param choice what was to be carried out
     * @param count how many swaps or blends there are to choose from
     * @param findings everything that a person should know
     */
    record NoSuchChoice(Choice choice, int count, List<Finding> findings) implements SwapAnswer {

        public NoSuchChoice {
            findings = List.copyOf(findings);
        }
    }

    /** The book has errors, or what is asked for is not in it; at least one finding is an error. */
    record BadInput(List<Finding> findings) implements SwapAnswer {

        public BadInput {
            findings = List.copyOf(findings);
        }
    }

    /** Something that the formulas need as they are cannot be bought; at least one finding is an error. */
    record NoPurchase(List<Finding> findings) implements SwapAnswer {

        public NoPurchase {
            findings = List.copyOf(findings);
        }
    }

    /** The search was stopped; what it had found by then would be a part by chance, and is not given. */
    record Stopped(List<Finding> findings) implements SwapAnswer {

        public Stopped {
            findings = List.copyOf(findings);
        }
    }
}
