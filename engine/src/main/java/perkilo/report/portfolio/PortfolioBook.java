package perkilo.report.portfolio;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostOutcome;
import perkilo.costing.RunAnswer;
import perkilo.origin.Counted;
import perkilo.origin.Finding;
import perkilo.origin.Level;
import perkilo.origin.Origin;

/**
 * The result for one book of a portfolio.
 *
 * @param name of the file, different from all others
 * @param address of the file, for links
 * @param result place of its costs, for links: a file's address and a sheet; null if it was not costed
 * @param costs its costs; null if it was not costed
 * @param findings all findings about it
 */
public record PortfolioBook(
        String name,
        String address,
        @Nullable Origin result,
        @Nullable Costs costs,
        List<Finding> findings) {

    public PortfolioBook {
        findings = List.copyOf(findings);
    }

    /** A book with its costs. */
    public static PortfolioBook costed(
            String name, String address, Origin result, CostOutcome.Costed costed, List<Finding> findings) {
        Costs costs = new Costs(
                costed.book().settings().home().getCurrencyCode(),
                costed.book().settings().costingDate(),
                costed.runs().stream().map(PortfolioRun::of).toList(),
                costed.incomplete());
        return new PortfolioBook(name, address, result, costs, findings);
    }

    /** A book that could not be costed; the findings say why. */
    public static PortfolioBook failed(String name, String address, List<Finding> findings) {
        return new PortfolioBook(name, address, null, null, findings);
    }

    /** The same book without some findings. */
    public PortfolioBook without(Set<Finding> others) {
        List<Finding> own =
                findings.stream().filter(finding -> !others.contains(finding)).toList();
        return new PortfolioBook(name, address, result, costs, own);
    }

    /** The number of findings of a level. */
    long count(Level level) {
        return findings.stream().filter(finding -> finding.level() == level).count();
    }

    /** Whether there are errors or warnings. */
    boolean hasProblems() {
        return costs == null || count(Level.ERROR) + count(Level.WARNING) > 0;
    }

    /** Its errors and warnings, such as {@code 2 warnings}; a dash for none. */
    String problems() {
        Map<String, Long> counts = Map.of("error", count(Level.ERROR), "warning", count(Level.WARNING));
        String words = List.of("error", "warning").stream()
                .filter(word -> counts.getOrDefault(word, 0L) > 0)
                .map(word -> Counted.of(counts.getOrDefault(word, 0L), word))
                .reduce((one, other) -> one + ", " + other)
                .orElse("–");
        return costs == null ? "not costed: " + words : words;
    }

    /**
     * A book's costs.
     *
     * @param home the currency of all amounts, as an ISO 4217 code
     * @param costingDate the day that prices and rates are of
     * @param runs those that are complete, in the order of the book
     * @param incomplete the others
     */
    public record Costs(String home, LocalDate costingDate, List<PortfolioRun> runs, List<RunAnswer> incomplete) {

        public Costs {
            runs = List.copyOf(runs);
            incomplete = List.copyOf(incomplete);
        }

        /** How many runs are left out of all totals, in words; empty for none. */
        public String leftOutWords() {
            return incomplete.isEmpty()
                    ? ""
                    : ", " + Counted.of(incomplete.size(), "run") + " not complete and left out";
        }
    }
}
