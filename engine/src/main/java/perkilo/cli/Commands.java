package perkilo.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The commands, each created only when it is needed. */
final class Commands {

    /** The names of the commands. */
    static final List<String> NAMES =
            List.of("check", "cost", "order", "swap", "target", "compare", "prices", "rates", "new", "open");

    private Commands() {}

    private static Command command(String name, boolean checkFirst) {
        return switch (name) {
            case "check" -> new CheckCommand();
            case "cost" -> new CostCommand(checkFirst);
            case "order" -> new OrderCommand();
            case "swap" -> new SwapCommand();
            case "target" -> new TargetCommand();
            case "compare" -> new CompareCommand();
            case "prices" -> new PricesCommand();
            case "rates" -> new RatesCommand();
            case "new" -> new NewCommand();
            case "open" -> new OpenCommand();
            default -> throw new AssertionError(name);
        };
    }

    /** Adds the one command that was typed, or all if none was. */
    static void addTo(CommandSpec whole, TypedWords words) {
        String command = words.command();
        for (String name : command == null ? NAMES : List.of(command)) {
            whole.addSubcommand(
                    name, new CommandLine(command(name, words.isWorkbookAlone()).spec()));
        }
    }
}
