package perkilo.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.desk.LookUpRate;
import perkilo.desk.RateAnswer;
import perkilo.desk.RateRequest;
import perkilo.desk.RatesAnswer;
import perkilo.desk.RatesRequest;
import perkilo.desk.TakeInRates;
import perkilo.json.Json;
import perkilo.json.RatesJson;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.rates.Bank;
import perkilo.units.Currencies;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command {@code rates}: takes exchange rates in, and tells what a rate was on a day. */
final class RatesCommand extends Command {

    private final PositionalParamSpec files = Options.parameters("0..*", Path.class, "FILE", "Files to take in.");
    private final OptionSpec fetch = Options.valueBuilder(
                    String.class,
                    "SPAN",
                    "Get the rates from the European Central Bank's public address: day, 90-days or all. Default:"
                            + " ${FALLBACK-VALUE}. Nothing else uses the network.",
                    "--fetch")
            .arity("0..1")
            .fallbackValue("90-days")
            .build();
    private final OptionSpec table = Options.valueOr(
            "prices/rates.csv",
            Path.class,
            "TABLE",
            "The table of rates to add to and to read from. Default: ${DEFAULT-VALUE}.",
            "-o",
            "--out",
            "--rates");
    private final OptionSpec replace =
            Options.flag("If the table has a different rate for a day, replace it with the new one.", "--replace");
    private final OptionSpec from = Options.value(
            String.class, "CODE", "Ask for a rate: convert one unit of this currency, such as USD.", "--from");
    private final OptionSpec to =
            Options.value(String.class, "CODE", "Ask for a rate: convert to this currency, such as EUR.", "--to");
    private final OptionSpec date =
            Options.day("Ask for the rate of this day: the last one on or before it. Default: today.", "--date");
    private final PrintOptions printing;
    private final Bank bank;

    RatesCommand() {
        this(Bank.european());
    }

    /** A command that fetches from a given bank. */
    RatesCommand(Bank bank) {
        super(
                "rates",
                "Take in exchange rates, and tell what a rate was on a day.",
                "FILE is a file of the European Central Bank as published (XML, CSV or zipped CSV; the day, 90 days or"
                        + " the full history), or a table with the columns From, To, Rate, Date and Source.");
        this.bank = bank;
        takes(files, fetch, table, replace, from, to, date);
        printing = new PrintOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        checkUsage();
        Console console = new Console(this, printing.json(), printing.quiet());
        ObjectNode json = Json.object().put("table", table().toString());
        List<Finding> findings = new ArrayList<>();
        if (!files().isEmpty() || said(fetch) != null) {
            RatesAnswer answer = taken(console);
            if (!(answer instanceof RatesAnswer.Taken taken)) {
                return console.refuse(Account.NONE, answer.findings(), Exit.BAD_INPUT);
            }
            findings.addAll(taken.findings());
            json.set("files", Json.array(taken.files(), one -> RatesJson.taken(one.file(), one.taken())));
            RateWords.taken(table(), taken).forEach(console::say);
        }
        int exit = said(from) == null ? Exit.DONE : ask(console, json, findings);
        if (printing.json()) {
            json.set("messages", Json.messages(findings));
            console.json(json);
        }
        console.findings(findings);
        return exit;
    }

    private RatesAnswer taken(Console console) throws IOException {
        String fetched = said(fetch);
        RatesRequest request =
                new RatesRequest(table(), files(), fetched == null ? null : span(fetched), Options.isOn(replace));
        try (Progress progress = console.progress()) {
            return new TakeInRates(bank).take(request, progress);
        }
    }

    private int ask(Console console, ObjectNode json, List<Finding> findings) throws IOException {
        LocalDate asked = date();
        LocalDate day = asked == null ? today() : asked;
        RateAnswer answer = new LookUpRate()
                .look(new RateRequest(table(), currency("--from", said(from)), currency("--to", said(to)), day));
        findings.addAll(answer.findings());
        if (!(answer instanceof RateAnswer.Found found)) {
            return Exit.BAD_INPUT;
        }
        json.set("rate", RatesJson.rate(found.conversion(), day));
        RateWords.lines(found.conversion(), day).forEach(console::say);
        return Exit.DONE;
    }

    private void checkUsage() {
        if ((said(from) == null) != (said(to) == null)) {
            throw wrong(CommandMessages.fromWithoutTo());
        }
        if (date() != null && said(from) == null) {
            throw wrong(CommandMessages.dateWithoutRate());
        }
        if (files().isEmpty() && said(fetch) == null && said(from) == null) {
            throw wrong(CommandMessages.noRates());
        }
        if (said(from) != null) {
            currency("--from", said(from));
            currency("--to", said(to));
        }
        String fetched = said(fetch);
        if (fetched != null) {
            span(fetched);
        }
        if (!Files.exists(table()) && files().isEmpty() && said(fetch) == null) {
            throw wrong(CommandMessages.noTable(table()));
        }
    }

    private Bank.Span span(String word) {
        return Bank.Span.find(word).orElseThrow(() -> wrong(CommandMessages.badSpan(word)));
    }

    private CurrencyUnit currency(String option, @Nullable String code) {
        String typed = code == null ? "" : code;
        return Currencies.find(typed).orElseThrow(() -> wrong(CommandMessages.badCurrency(option, typed)));
    }

    private List<Path> files() {
        return Options.allSaid(files, Path.class);
    }

    private Path table() {
        return table.getValue();
    }

    private @Nullable LocalDate date() {
        return Options.said(date, LocalDate.class);
    }

    private static @Nullable String said(OptionSpec option) {
        return Options.said(option, String.class);
    }
}
