package perkilo.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import perkilo.costing.CostEffect;
import perkilo.costing.CostRuns;
import perkilo.model.Book;
import perkilo.model.Settings;
import perkilo.offers.AgeLimit;
import perkilo.offers.Offer;
import perkilo.offers.history.PriceChanges;
import perkilo.origin.Finding;
import perkilo.origin.Reading;
import perkilo.purchasing.SearchLimits;
import perkilo.reading.QuoteReader;
import perkilo.reading.Sources;

/** Service that shows which prices rose or fell since the last lists, and what that does to the costs of a workbook. */
public final class ShowPriceChanges {

    /**
     * Compares the lists in a folder.
     *
     * @throws IOException if a file cannot be read
     */
    public PriceChangesAnswer show(PriceChangesRequest request, Watch watch) throws IOException {
        Path book = request.book();
        return book == null ? alone(request, watch) : with(book, request, watch);
    }

    private static PriceChangesAnswer alone(PriceChangesRequest request, Watch watch) throws IOException {
        watch.at(Stage.READING, 0, 1);
        Reading<List<Offer>> quotes = new QuoteReader().read(null, List.of(request.folder()));
        watch.at(Stage.READING, 1, 1);
        if (quotes.hasErrors()) {
            return new PriceChangesAnswer.BadInput(quotes.account(), quotes.findings());
        }
        LocalDate date = request.date();
        PriceChanges changes = PriceChanges.on(
                date == null ? request.today() : date,
                quotes.value(),
                "",
                AgeLimit.ofDays(Settings.USUAL_PRICE_AGE_LIMIT.value()));
        return new PriceChangesAnswer.Changed(
                changes, null, Settings.USUAL_PRICE_AGE_LIMIT, quotes.account(), quotes.findings());
    }

    private static PriceChangesAnswer with(Path file, PriceChangesRequest request, Watch watch) throws IOException {
        Sources sources = new Sources(file, List.of(request.folder()), request.rates(), request.date());
        Reading<Book> reading = BookReading.of(sources, request.today(), watch);
        if (reading.value().gaps().isEverything()) {
            return new PriceChangesAnswer.BadInput(reading.account(), reading.findings());
        }
        Book book = request.sizes().applyTo(reading.value());
        List<Finding> findings = new ArrayList<>(reading.findings());
        findings.addAll(RunSizes.problems(file, book));
        if (RunSizes.isNothing(book)) {
            return new PriceChangesAnswer.BadInput(reading.account(), findings);
        }
        List<Offer> quotes =
                new QuoteReader().read(file, List.of(request.folder())).value();
        PriceChanges changes = PriceChanges.on(
                book.settings().costingDate(),
                quotes,
                String.valueOf(file.getFileName()),
                book.settings().priceAgeLimit());
        Watched costing = new Watched(watch, Stage.COSTING, 0);
        CostEffect effect = CostEffect.of(
                book, changes, new CostRuns(costing.counting(Planners.forRuns()), SearchLimits.usual(costing)));
        findings.addAll(effect.findings());
        return effect.possible()
                ? new PriceChangesAnswer.Changed(
                        changes, effect, book.settings().priceAgeLimitDays(), reading.account(), findings)
                : new PriceChangesAnswer.NoPurchase(findings);
    }
}
