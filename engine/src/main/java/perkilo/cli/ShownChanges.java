package perkilo.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.CostEffect;
import perkilo.costing.CostRuns;
import perkilo.json.PricesJson;
import perkilo.model.Book;
import perkilo.model.Settings;
import perkilo.offers.Offer;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.reading.BookReader;
import perkilo.reading.QuoteReader;
import perkilo.reading.Sources;
import perkilo.report.prices.EffectTable;
import perkilo.report.prices.PriceChangesReport;
import perkilo.report.prices.PriceTable;
import perkilo.sheet.Report;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/** Shows what rose or fell since the last lists, and writes it to a workbook. */
final class ShownChanges {

    private static final int SHOWN = 20;
    private static final Path ALONE = Path.of("price-changes.xlsx");

    private final Console console;
    private final Path folder;
    private final @Nullable Path rates;
    private final @Nullable LocalDate date;
    private final OutputOptions output;
    private final RunOptions runs;

    ShownChanges(
            Console console,
            Path folder,
            @Nullable Path rates,
            @Nullable LocalDate date,
            OutputOptions output,
            RunOptions runs) {
        this.console = console;
        this.folder = folder;
        this.rates = rates;
        this.date = date;
        this.output = output;
        this.runs = runs;
    }

    /** The changes alone. */
    int alone() throws IOException {
        Reading<List<Offer>> quotes = new QuoteReader().read(null, List.of(folder));
        if (quotes.hasErrors()) {
            return console.refuse(quotes.findings(), Exit.BAD_INPUT);
        }
        LocalDate day = date == null ? LocalDate.now(ZoneId.systemDefault()) : date;
        PriceChanges changes = PriceChanges.on(day, quotes.value(), "");
        Report report = PriceChangesReport.of(changes, null, Settings.USUAL_PRICE_AGE_LIMIT, quotes.findings());
        Written written = new WorkbookWriter().writeAlone(report.alone(), output.or(ALONE));
        return answer(changes, null, quotes.findings(), written);
    }

    /** The changes, and what they do to a workbook's costs. */
    int with(Path book) throws IOException {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        Reading<Book> reading = new BookReader().read(new Sources(book, List.of(folder), rates, date), today);
        if (reading.hasErrors()) {
            return console.refuse(reading.findings(), Exit.BAD_INPUT);
        }
        Book priced = runs.applyTo(reading.value());
        List<Finding> findings = new ArrayList<>(reading.findings());
        List<Finding> problems = RunOptions.problems(book, priced);
        findings.addAll(problems);
        if (!problems.isEmpty()) {
            return console.refuse(findings, Exit.BAD_INPUT);
        }
        List<Offer> quotes = new QuoteReader().read(book, List.of(folder)).value();
        PriceChanges changes =
                PriceChanges.on(priced.settings().costingDate(), quotes, String.valueOf(book.getFileName()));
        CostEffect effect = CostEffect.of(priced, changes, new CostRuns(Planners.forRuns(), SearchLimits.usual()));
        findings.addAll(effect.findings());
        if (!effect.possible()) {
            return console.refuse(findings, Exit.NO_PLAN);
        }
        Report report = PriceChangesReport.of(changes, effect, priced.settings().priceAgeLimitDays(), findings);
        return answer(changes, effect, findings, write(book, report));
    }

    private Written write(Path book, Report report) throws IOException {
        WorkbookWriter writer = new WorkbookWriter();
        Path target = output.target(book, "-prices");
        if (output.sheetOnly()) {
            return writer.writeAlone(report.alone(), target);
        }
        return output.inPlace()
                ? writer.writeInPlace(book, report, LocalDate.now(ZoneId.systemDefault()))
                : writer.write(book, report, target);
    }

    private int answer(PriceChanges changes, @Nullable CostEffect effect, List<Finding> findings, Written written) {
        if (console.isJson()) {
            console.json(PricesJson.of(changes, effect, findings));
        }
        console.say(changes.answer());
        console.table(TextTable.of(new PriceTable(changes).onTerminal(SHOWN)));
        if (changes.changed().size() > SHOWN) {
            console.say(
                    "… and %d more in the workbook".formatted(changes.changed().size() - SHOWN));
        }
        if (effect != null) {
            console.table(TextTable.of(new EffectTable(effect).onTerminal()));
        }
        console.findings(findings);
        console.written(written);
        return Exit.DONE;
    }
}
