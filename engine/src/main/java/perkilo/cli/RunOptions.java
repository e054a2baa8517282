package perkilo.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import picocli.CommandLine.Model.OptionSpec;

/** Run sizes that are given on the command line, in place of the Runs sheet. */
final class RunOptions {

    /** What a command says that finds no run to cost. */
    static final String NONE =
            "there is no run to cost. Fill in the Runs sheet (Product, Units), or use --units or --batch-kg.";

    private final Command command;
    private final OptionSpec units = Options.listed(
            BigDecimal.class,
            "UNITS",
            "Cost every product at these numbers of units, in place of the Runs sheet.",
            "--units");
    private final OptionSpec batchKg = Options.listed(
            BigDecimal.class,
            "KG",
            "Cost every formula's bulk at these batch sizes, in place of the Runs sheet.",
            "--batch-kg");

    RunOptions(Command command) {
        this.command = command;
        command.takes(units, batchKg);
    }

    private List<BigDecimal> units() {
        return Options.allSaid(units, BigDecimal.class);
    }

    private List<BigDecimal> batchKg() {
        return Options.allSaid(batchKg, BigDecimal.class);
    }

    /**
     * Looks for sizes that nobody can make.
     *
     * @throws picocli.CommandLine.ParameterException if there are any
     */
    void checkUsage() {
        for (BigDecimal one : units()) {
            if (one.signum() <= 0 || one.stripTrailingZeros().scale() > 0) {
                throw command.wrong("--units takes whole numbers above zero, but was given " + one.toPlainString());
            }
        }
        for (BigDecimal one : batchKg()) {
            if (one.signum() <= 0) {
                throw command.wrong("--batch-kg takes weights above zero, but was given " + one.toPlainString());
            }
        }
    }

    /** Whether any sizes were given. */
    boolean isAny() {
        return !units().isEmpty() || !batchKg().isEmpty();
    }

    /** The book with the runs of the command line, if there are any. */
    Book applyTo(Book book) {
        if (!isAny()) {
            return book;
        }
        List<Run> runs = new ArrayList<>();
        book.products()
                .values()
                .forEach(product -> units().forEach(
                                size -> runs.add(new Run.OfProduct(product.name(), Figure.of(size), Origin.NONE))));
        book.formulas()
                .values()
                .forEach(formula -> batchKg()
                        .forEach(size -> runs.add(new Run.OfBulk(formula.name(), Figure.of(size), Origin.NONE))));
        return book.withRuns(runs);
    }
}
