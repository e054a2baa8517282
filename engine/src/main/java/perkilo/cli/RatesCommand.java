package perkilo.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.json.Json;
import perkilo.json.RatesJson;
import perkilo.origin.Finding;
import perkilo.rates.Bank;
import perkilo.units.Conversion;
import perkilo.units.Currencies;
import perkilo.units.ExchangeRates;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes exchange rates in, and says what a rate was on a day. */
@Command(
        name = "rates",
        mixinStandardHelpOptions = true,
        description = {
            "Take exchange rates in, and say what a rate was on a day.",
            "FILE is a file of the European Central Bank as published (XML, CSV or zipped CSV; the day, 90 days or the"
                    + " full history), or a table with the columns From, To, Rate, Date and Source."
        })
final class RatesCommand implements Callable<Integer> {

    @Parameters(arity = "0..*", paramLabel = "FILE", description = "Files to take in.")
    private List<Path> files = List.of();

    @Option(
            names = "--fetch",
            arity = "0..1",
            fallbackValue = "90-days",
            paramLabel = "SPAN",
            description = "Get the rates from the European Central Bank's public address: day, 90-days or all; usually"
                    + " ${FALLBACK-VALUE}. Nothing else asks the network.")
    private @Nullable String fetch;

    @Option(
            names = {"-o", "--out", "--rates"},
            paramLabel = "TABLE",
            defaultValue = "prices/rates.csv",
            description = "The table of rates to add to and to ask; usually ${DEFAULT-VALUE}.")
    private Path table = Path.of("");

    @Option(names = "--replace", description = "Where the table has another rate of a day, take the new one.")
    private boolean replace;

    @Option(names = "--from", paramLabel = "CODE", description = "Ask: one unit of this currency, such as USD …")
    private @Nullable String from;

    @Option(names = "--to", paramLabel = "CODE", description = "… in this one, such as EUR.")
    private @Nullable String to;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "Ask for this day; usually today. The last rate on or before it holds.")
    private @Nullable LocalDate date;

    @Mixin
    private PrintOptions printing = new PrintOptions();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final Bank bank;

    RatesCommand() {
        this(Bank.european());
    }

    /** A command that fetches from a bank of one's own. */
    RatesCommand(Bank bank) {
        this.bank = bank;
    }

    @Override
    public Integer call() throws IOException {
        checkUsage();
        Console console = new Console(spec, printing.json(), printing.quiet());
        ObjectNode answer = Json.object().put("table", table.toString());
        List<Finding> findings = new ArrayList<>();
        if (!files.isEmpty() || fetch != null) {
            RatesIntake intake = new RatesIntake(table, replace, bank);
            if (!intake.take(files, fetch == null ? null : span(fetch))) {
                return console.refuse(intake.findings(), Exit.BAD_INPUT);
            }
            findings.addAll(intake.findings());
            answer.set("files", intake.json());
            intake.lines().forEach(console::say);
        }
        int exit = from == null ? Exit.DONE : ask(console, answer, findings);
        if (printing.json()) {
            answer.set("messages", Json.messages(findings));
            console.json(answer);
        }
        console.findings(findings);
        return exit;
    }

    private int ask(Console console, ObjectNode answer, List<Finding> findings) throws IOException {
        LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
        CurrencyUnit base = currency("--from", from);
        CurrencyUnit term = currency("--to", to);
        ExchangeRates rates = RatesIntake.asked(table, findings);
        Optional<Conversion> found =
                findings.stream().anyMatch(Finding::isError) ? Optional.empty() : rates.on(day, base, term);
        if (found.isEmpty()) {
            findings.add(RateWords.none(table, rates, base, term, day));
            return Exit.BAD_INPUT;
        }
        answer.set("rate", RatesJson.rate(found.get(), day));
        RateWords.lines(found.get(), day).forEach(console::say);
        RateWords.old(found.get(), day).ifPresent(findings::add);
        return Exit.DONE;
    }

    private void checkUsage() {
        if ((from == null) != (to == null)) {
            throw wrong("--from and --to go together");
        }
        if (date != null && from == null) {
            throw wrong("--date asks for the rate of a day: say --from and --to as well");
        }
        if (files.isEmpty() && fetch == null && from == null) {
            throw wrong("name a file to take in, or ask for a rate with --from and --to");
        }
        if (from != null) {
            currency("--from", from);
            currency("--to", to);
        }
        if (fetch != null) {
            span(fetch);
        }
        if (!Files.exists(table) && files.isEmpty() && fetch == null) {
            throw wrong("there is no table %s yet; take a file in first: perkilo rates FILE".formatted(table));
        }
    }

    private Bank.Span span(String word) {
        return Bank.Span.find(word)
                .orElseThrow(() -> wrong("--fetch takes day, 90-days or all, but was given %s".formatted(word)));
    }

    private CurrencyUnit currency(String option, @Nullable String code) {
        return Currencies.find(code == null ? "" : code)
                .orElseThrow(
                        () -> wrong("%s takes an ISO 4217 code such as USD, but was given %s".formatted(option, code)));
    }

    private ParameterException wrong(String text) {
        return new ParameterException(spec.commandLine(), text);
    }
}
