package perkilo.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The commands, each made only when it is asked for. */
final class Commands {

    private static final List<String> NAMES = List.of("check", "cost", "order", "swap", "prices", "rates", "new");

    private Commands() {}

    private static Command command(String name) {
        return switch (name) {
            case "check" -> new CheckCommand();
            case "cost" -> new CostCommand();
            case "order" -> new OrderCommand();
            case "swap" -> new SwapCommand();
            case "prices" -> new PricesCommand();
            case "rates" -> new RatesCommand();
            case "new" -> new NewCommand();
            default -> throw new AssertionError(name);
        };
    }

    /** Adds the one command that the first argument names, or else all. */
    static void addTo(CommandSpec whole, String... arguments) {
        boolean asked = arguments.length > 0 && NAMES.contains(arguments[0]);
        for (String name : asked ? List.of(arguments[0]) : NAMES) {
            whole.addSubcommand(name, new CommandLine(command(name).spec()));
        }
    }
}
