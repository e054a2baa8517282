package perkilo.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import perkilo.desk.CheckBook;
import perkilo.desk.Checked;
import perkilo.desk.CostAnswer;
import perkilo.desk.CostBook;
import perkilo.desk.CostRequest;
import perkilo.desk.CostWishes;
import perkilo.desk.Destination;
import perkilo.desk.PortfolioRequest;
import perkilo.json.CostJson;
import perkilo.origin.Finding;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The command {@code cost}: costs every run of every product, of one book or of many. */
final class CostCommand extends Command {

    private final PositionalParamSpec books = Options.parameters(
            "1..*", Path.class, "BOOK", "The workbook, .xlsx or .xlsm. Can be several workbooks, or folders of them.");
    private final OptionSpec sensitivity = Options.flag(
            "Also plan the purchase anew for everything that moves a cost, for the sheet What moves the cost. Takes longer;"
                    + " for one workbook.",
            "--sensitivity");
    private final OptionSpec sizes = Options.flag(
            "Also search all run sizes between the smallest and the largest of each product for those from which a unit"
                    + " really costs less. Takes longer; for one workbook.",
            "--sizes");
    private final OptionSpec what = Options.values(
            String.class,
            "CHANGE",
            "Also cost a scenario beside today, such as \"USD +10 %%\" or \"Run size 2000; Labour rate +5 %%\". Can be given"
                    + " several times; for one workbook.",
            "--what");
    private final SourceOptions sources;
    private final PrintOptions printing;
    private final OutputOptions output;
    private final RunOptions runs;

    private final boolean checkFirst;

    /**
     * The command.
     *
     * @param checkFirst whether one book is checked before it is costed
     */
    CostCommand(boolean checkFirst) {
        super(
                "cost",
                "Cost every run of every product, and write the result sheets into a copy of the workbook.",
                "Several workbooks, or a folder of them, are a portfolio: each gets its own result, and the workbook"
                        + " portfolio-costed.xlsx compares them. --out then names a folder. A workbook with errors"
                        + " does not stop the others; the exit code is then 1.");
        this.checkFirst = checkFirst;
        takes(books, sensitivity, sizes, what);
        sources = new SourceOptions(this);
        printing = new PrintOptions(this);
        output = new OutputOptions(this);
        runs = new RunOptions(this);
    }

    @Override
    public Integer call() throws IOException {
        output.checkUsage();
        runs.checkUsage();
        Console console = new Console(this, printing.json(), printing.quiet());
        List<Path> all = Options.allSaid(books, Path.class);
        if (all.size() > 1 || Files.isDirectory(all.get(0))) {
            for (OptionSpec one : List.of(sensitivity, sizes)) {
                if (Options.isOn(one)) {
                    throw wrong(CommandMessages.onlyForOneBook(one.longestName()));
                }
            }
            if (!Options.allSaid(what, String.class).isEmpty()) {
                throw wrong(CommandMessages.onlyForOneBook(what.longestName()));
            }
            return new PortfolioWords(this, console).cost(request(all));
        }
        FileStamp book = FileStamp.of(all.get(0));
        return checkFirst ? checked(console, book) : one(console, book);
    }

    private int one(Console console, FileStamp book) throws IOException {
        CostRequest request = new CostRequest(sources.with(book.file()), runs.sizes(), wishes(), today());
        CostAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new CostBook().cost(request, progress);
        }
        return said(console, book, answer, List.of());
    }

    /** Prints the problems of the book first, then its costs if it can be costed. */
    private int checked(Console console, FileStamp book) throws IOException {
        Checked checked;
        try (Progress progress = console.progress()) {
            checked = new CheckBook().check(sources.with(book.file()), today(), progress);
        }
        CheckWords.say(console, checked);
        CostAnswer answer;
        try (Progress progress = console.progress()) {
            answer = new CostBook().cost(book.file(), checked.reading(), runs.sizes(), wishes(), progress);
        }
        int exit = said(console, book, answer, checked.findings());
        return exit == Exit.DONE && checked.hasErrors() ? Exit.PARTLY : exit;
    }

    /** Prints and writes an answer; findings that were printed before are not printed again. */
    private int said(Console console, FileStamp book, CostAnswer answer, List<Finding> before) throws IOException {
        List<Finding> unsaid = without(answer.findings(), before);
        List<Finding> all = new ArrayList<>(before);
        all.addAll(unsaid);
        if (!(answer instanceof CostAnswer.Costed costed)) {
            return console.refuse(answer.account(), all, unsaid, Exit.BAD_INPUT);
        }
        Written written = output.destination().write(book, Destination.COSTED, costed.report(), today());
        if (printing.json()) {
            console.json(CostJson.of(costed.costed(), costed.decisions(), all));
        }
        if (!costed.costed().isComplete()) {
            console.say(costed.costed().headline());
        } else if (!costed.isComplete()) {
            console.say(CommandMessages.answeredWithErrors());
        }
        console.table(CostTable.of(costed.costed()));
        console.findings(unsaid);
        console.written(written);
        return costed.isComplete() ? Exit.DONE : Exit.PARTLY;
    }

    private CostWishes wishes() {
        return new CostWishes(
                Options.isOn(sensitivity), Options.isOn(sizes), WhatIfWords.lines(Options.allSaid(what, String.class)));
    }

    private static List<Finding> without(List<Finding> findings, List<Finding> before) {
        if (before.isEmpty()) {
            return findings;
        }
        Set<Finding> said = new HashSet<>(before);
        return findings.stream().filter(finding -> !said.contains(finding)).toList();
    }

    private PortfolioRequest request(List<Path> named) {
        return new PortfolioRequest(
                named, sources.prices(), sources.rates(), sources.date(), runs.sizes(), output.destination(), today());
    }
}
