package perkilo.decision;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.model.ActualRow;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * The runs of which it is known what they took.
 *
 * @param runs in the order of the sheet
 * @param findings what is wrong with their rows
 */
public record ActualRuns(List<One> runs, List<Finding> findings) {

    public ActualRuns {
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
    }

    /**
     * One run.
     *
     * @param name its number or name; empty if there is none
     * @param planned as it was planned
     * @param made good units; null if not said
     * @param hours of work; null if not said
     * @param rows what is said of it
     */
    public record One(
            String name,
            Run.OfProduct planned,
            @Nullable Figure made,
            @Nullable Figure hours,
            List<ActualRow> rows) {

        public One {
            rows = List.copyOf(rows);
        }

        /** The run in words. */
        String title() {
            String title = planned.units().value().toBigInteger() + " × " + planned.product();
            return name.isEmpty() ? title : title + " (" + name + ")";
        }
    }

    /** The runs of a book. Those with an error in a row, or of which it is not clear which they are, are left out. */
    public static ActualRuns of(Book book) {
        List<Finding> findings = new ArrayList<>();
        Map<String, List<ActualRow>> byRun = new LinkedHashMap<>();
        Map<String, Run.OfProduct> planned = new LinkedHashMap<>();
        for (ActualRow row : book.past().actuals()) {
            Run.OfProduct run = run(book, row, findings);
            if (run != null) {
                String key = Names.key(run.product())
                        + '\n'
                        + run.units().value().stripTrailingZeros().toPlainString()
                        + '\n'
                        + Names.key(row.run());
                byRun.computeIfAbsent(key, any -> new ArrayList<>()).add(row);
                planned.putIfAbsent(key, run);
            }
        }
        List<One> runs = new ArrayList<>();
        byRun.forEach((key, rows) -> {
            One one = one(rows, planned.get(key), findings);
            if (one != null) {
                runs.add(one);
            }
        });
        return new ActualRuns(runs, findings);
    }

    private static @Nullable One one(List<ActualRow> rows, Run.@Nullable OfProduct run, List<Finding> findings) {
        if (run == null) {
            return null;
        }
        int errors = findings.size();
        Figure made = null;
        Figure hours = null;
        One title = new One(rows.get(0).run(), run, null, null, rows);
        for (ActualRow row : rows) {
            made = same("Units made", title, made, row.made(), findings);
            hours = same("Hours", title, hours, row.hours(), findings);
        }
        if (rows.stream().anyMatch(ActualRow::isFaulty)) {
            findings.add(Finding.warning(rows.get(0).origin(), ActualMessages.faulty(title.title())));
        }
        return findings.size() > errors ? null : new One(title.name(), run, made, hours, rows);
    }

    /** A figure of the whole run, which may stand in several rows. */
    private static @Nullable Figure same(
            String column, One run, @Nullable Figure first, @Nullable Figure other, List<Finding> findings) {
        if (first == null || other == null) {
            return first == null ? other : first;
        }
        if (first.value().compareTo(other.value()) != 0) {
            findings.add(Finding.error(
                    other.origin(),
                    ActualMessages.differs(column, run.title(), first.origin().where())));
        }
        return first;
    }

    /** The run that a row is about; null if that is not clear, which is reported. */
    private static Run.@Nullable OfProduct run(Book book, ActualRow row, List<Finding> findings) {
        if (book.product(row.product()).isEmpty()) {
            findings.add(Finding.error(row.origin(), ActualMessages.unknownProduct(row.product())));
            return null;
        }
        Figure units = row.planned();
        if (units != null) {
            return new Run.OfProduct(row.product(), units, row.origin());
        }
        List<Run.OfProduct> all = new ArrayList<>();
        for (Run run : book.runs()) {
            if (run instanceof Run.OfProduct one && Names.key(one.product()).equals(Names.key(row.product()))) {
                all.add(one);
            }
        }
        if (all.size() == 1) {
            return all.get(0);
        }
        if (!row.isFaulty()) {
            findings.add(Finding.error(row.origin(), ActualMessages.whichSize(row.product())));
        }
        return null;
    }

    /** The place of everything that is said. */
    public Origin origin() {
        return runs.isEmpty() ? Origin.NONE : runs.get(0).rows().get(0).origin();
    }

    /** The book with these runs alone, as they were planned. */
    public Book plan(Book book) {
        return book.withRuns(runs.stream().map(one -> (Run) one.planned()).toList());
    }

    /** Units that came out, or that were planned. */
    static BigDecimal made(One run) {
        Figure made = run.made();
        return made == null ? run.planned().units().value() : made.value();
    }
}
