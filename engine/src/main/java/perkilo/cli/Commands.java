package perkilo.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;

/** The commands, each looked into only when it is asked for: that takes a third of a second for all of them. */
final class Commands {

    private static final Map<String, Supplier<Object>> ALL = all();

    private Commands() {}

    private static Map<String, Supplier<Object>> all() {
        Map<String, Supplier<Object>> all = new LinkedHashMap<>();
        all.put("check", CheckCommand::new);
        all.put("cost", CostCommand::new);
        all.put("order", OrderCommand::new);
        all.put("swap", SwapCommand::new);
        all.put("prices", PricesCommand::new);
        all.put("rates", RatesCommand::new);
        all.put("new", NewCommand::new);
        return all;
    }

    /** A command line with the one command that the first argument names, or else with all. */
    static CommandLine line(Perkilo perkilo, String... arguments) {
        CommandLine line = new CommandLine(perkilo);
        Supplier<Object> asked = arguments.length == 0 ? null : ALL.get(arguments[0]);
        if (asked != null) {
            return line.addSubcommand(arguments[0], asked.get());
        }
        ALL.forEach((name, command) -> line.addSubcommand(name, command.get()));
        return line;
    }
}
