package perkilo.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.model.Book;
import perkilo.model.Run;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Run sizes that are given on the command line, in place of the Runs sheet. */
final class RunOptions {

    @Option(
            names = "--units",
            split = ",",
            paramLabel = "UNITS",
            description = "Cost every product at these numbers of units, in place of the Runs sheet.")
    private List<BigDecimal> units = List.of();

    @Option(
            names = "--batch-kg",
            split = ",",
            paramLabel = "KG",
            description = "Cost every formula's bulk at these batch sizes, in place of the Runs sheet.")
    private List<BigDecimal> batchKg = List.of();

    /**
     * Looks for sizes that nobody can make.
     *
     * @throws ParameterException if there are any
     */
    void checkUsage(CommandSpec spec) {
        for (BigDecimal one : units) {
            if (one.signum() <= 0 || one.stripTrailingZeros().scale() > 0) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--units takes whole numbers above zero, but was given " + one.toPlainString());
            }
        }
        for (BigDecimal one : batchKg) {
            if (one.signum() <= 0) {
                throw new ParameterException(
                        spec.commandLine(),
                        "--batch-kg takes weights above zero, but was given " + one.toPlainString());
            }
        }
    }

    /** Whether any sizes were given. */
    boolean isAny() {
        return !units.isEmpty() || !batchKg.isEmpty();
    }

    /** What a command says that finds no run to cost. */
    static final String NONE =
            "there is no run to cost. Fill in the Runs sheet (Product, Units), or use --units or --batch-kg.";

    /** The book with the runs of the command line, if there are any. */
    Book applyTo(Book book) {
        if (units.isEmpty() && batchKg.isEmpty()) {
            return book;
        }
        List<Run> runs = new ArrayList<>();
        book.products()
                .values()
                .forEach(product -> units.forEach(
                        size -> runs.add(new Run.OfProduct(product.name(), Figure.of(size), Origin.NONE))));
        book.formulas()
                .values()
                .forEach(formula -> batchKg.forEach(
                        size -> runs.add(new Run.OfBulk(formula.name(), Figure.of(size), Origin.NONE))));
        return book.withRuns(runs);
    }
}
