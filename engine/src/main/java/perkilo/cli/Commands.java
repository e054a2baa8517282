package perkilo.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The commands, each made only when it is asked for. */
final class Commands {

    private static final Map<String, Supplier<Command>> ALL = all();

    private Commands() {}

    private static Map<String, Supplier<Command>> all() {
        Map<String, Supplier<Command>> all = new LinkedHashMap<>();
        all.put("check", CheckCommand::new);
        all.put("cost", CostCommand::new);
        all.put("order", OrderCommand::new);
        all.put("swap", SwapCommand::new);
        all.put("prices", PricesCommand::new);
        all.put("rates", RatesCommand::new);
        all.put("new", NewCommand::new);
        return all;
    }

    /** Adds the one command that the first argument names, or else all. */
    static void addTo(CommandSpec whole, String... arguments) {
        Supplier<Command> asked = arguments.length == 0 ? null : ALL.get(arguments[0]);
        if (asked != null) {
            whole.addSubcommand(arguments[0], new CommandLine(asked.get().spec()));
        } else {
            ALL.forEach((name, command) ->
                    whole.addSubcommand(name, new CommandLine(command.get().spec())));
        }
    }
}
