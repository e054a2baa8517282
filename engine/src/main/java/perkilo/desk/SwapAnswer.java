package perkilo.desk;

import java.util.List;
import java.util.Optional;
import perkilo.model.Formula;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.SameCause;
import perkilo.report.swap.SwapReport;
import perkilo.sheet.Report;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.next.NextSteps;

/** The outcome of a search for cheaper materials. */
public sealed interface SwapAnswer {

    /** Everything that a person should know, also from the reading. */
    List<Finding> findings();

    /** What became of everything in the files; nothing where there is no answer for another reason than the files. */
    default Account account() {
        return Account.NONE;
    }

    /**
     * The search was completed.
     *
     * @param found swaps and blends
     * @param next what a formulator asks for then
     * @param applied the formula with the swap or blend that the request names; empty if it names none
     * @param findings everything that a person should know
     */
    record Found(SwapOutcome.Found found, NextSteps next, Optional<SwapReport.Applied> applied, List<Finding> findings)
            implements SwapAnswer {

        public Found {
            findings = SameCause.once(findings);
        }

        /** Whether every formula and run was looked at and nothing has an error. */
        public boolean isComplete() {
            return findings.stream().noneMatch(Finding::isError);
        }

        /** The formula with the swap or blend that the request names; empty if it names none. */
        public Optional<Formula> added() {
            return applied.map(one -> one.swap().formula());
        }

        @Override
        public Account account() {
            return found.book().account();
        }

        /** The result sheets. */
        public Report report() {
            return SwapReport.of(found, next, findings, applied);
        }
    }

    /**
     * The search was completed, but the swap or blend that the request names is not among its results.
     *
     * @param choice the swap or blend that the request names
     * @param count how many swaps or blends there are to choose from
     * @param findings everything that a person should know
     */
    record NoSuchChoice(Choice choice, int count, List<Finding> findings) implements SwapAnswer {

        public NoSuchChoice {
            findings = SameCause.once(findings);
        }
    }

    /** The book has errors, or does not contain what the request names; at least one finding is an error. */
    record BadInput(Account account, List<Finding> findings) implements SwapAnswer {

        public BadInput {
            findings = SameCause.once(findings);
        }
    }

    /** Something that the unchanged formulas need cannot be bought; at least one finding is an error. */
    record NoPurchase(List<Finding> findings) implements SwapAnswer {

        public NoPurchase {
            findings = SameCause.once(findings);
        }
    }

    /** The search was stopped; there is no result, because a part of the results would be misleading. */
    record Stopped(List<Finding> findings) implements SwapAnswer {

        public Stopped {
            findings = SameCause.once(findings);
        }
    }
}
