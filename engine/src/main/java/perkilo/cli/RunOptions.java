package perkilo.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import perkilo.desk.RunSizes;
import perkilo.origin.Decimals;
import perkilo.reading.table.NumberText;
import picocli.CommandLine.Model.OptionSpec;

/** The options for run sizes, which replace the Runs sheet. */
final class RunOptions {

    private static final Pattern WHOLE = Pattern.compile("[1-9]\\d{0,8}");
    private static final Pattern WEIGHT = Pattern.compile("(0|[1-9]\\d{0,8})(\\.\\d+)?");
    private static final int THOUSANDS = 3;

    private final Command command;
    private final OptionSpec units = Options.listed(
            String.class,
            "UNITS",
            "Cost every product at these numbers of units, such as 500,1000, instead of the Runs sheet.",
            "--units");
    private final OptionSpec batchKg = Options.listed(
            String.class,
            "KG",
            "Cost the bulk of every formula at these batch sizes, such as 2.5,10, instead of the Runs sheet.",
            "--batch-kg");

    RunOptions(Command command) {
        this.command = command;
        command.takes(units, batchKg);
    }

    private List<String> units() {
        return Options.allSaid(units, String.class);
    }

    private List<String> batchKg() {
        return Options.allSaid(batchKg, String.class);
    }

    /**
     * Checks that each size can be made, and can be read in one way only.
     *
     * @throws picocli.CommandLine.ParameterException if one cannot
     */
    void checkUsage() {
        if (!units().stream().allMatch(one -> WHOLE.matcher(one).matches())) {
            throw command.wrong(CommandMessages.badUnits(units()));
        }
        for (String one : batchKg()) {
            if (NumberText.parse(one) instanceof NumberText.Ambiguous two) {
                throw command.wrong(CommandMessages.ambiguousBatch(
                        one,
                        Decimals.plain(two.large()),
                        Decimals.plain(two.small()),
                        clear(two.large()),
                        clear(two.small())));
            }
            if (!WEIGHT.matcher(one).matches() || new BigDecimal(one).signum() <= 0) {
                throw command.wrong(CommandMessages.badBatches(batchKg()));
            }
        }
    }

    /** A number typed so that it has one meaning: three decimals could be thousands. */
    private static String clear(BigDecimal number) {
        return Decimals.plain(number) + (number.stripTrailingZeros().scale() == THOUSANDS ? "0" : "");
    }

    /** Whether any sizes were given. */
    boolean isAny() {
        return !units().isEmpty() || !batchKg().isEmpty();
    }

    /** The sizes. */
    RunSizes sizes() {
        return isAny() ? new RunSizes(numbers(units()), numbers(batchKg())) : RunSizes.OF_THE_BOOK;
    }

    private static List<BigDecimal> numbers(List<String> sizes) {
        List<BigDecimal> numbers = new ArrayList<>(sizes.size());
        for (String size : sizes) {
            numbers.add(new BigDecimal(size));
        }
        return numbers;
    }
}
