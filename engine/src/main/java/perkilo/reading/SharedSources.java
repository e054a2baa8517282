package perkilo.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Account;
import perkilo.origin.CellBlock;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.reading.arrange.Arrangement;
import perkilo.reading.arrange.Arranger;
import perkilo.reading.table.AccountWriter;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.schema.RatesSheet;
import perkilo.schema.Schemas;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * Price lists and rates that are read once, for one book or for many. Nothing in it changes afterwards, but the account
 * of their reading is written when it is first asked for.
 */
public final class SharedSources {

    private final List<Grids> files = new ArrayList<>();
    private final List<Grid> grids = new ArrayList<>();
    private final List<FoundTable> tables = new ArrayList<>();
    private final List<FoundTable> onSheets = new ArrayList<>();
    private final List<DatedRate> rates = new ArrayList<>();
    private final Findings findings = new Findings();
    private Account ofRates = Account.NONE;
    private @Nullable Accounted accounted;

    private SharedSources() {}

    /**
     * Reads price lists and rates.
     *
     * @param priceFiles price lists; files, or folders of them
     * @param rateFile a file of exchange rates; null for none
     * @throws perkilo.xlsx.grid.UnreadableFileException if a file cannot be opened; its message says why
     */
    public static SharedSources read(List<Path> priceFiles, @Nullable Path rateFile) throws IOException {
        SharedSources shared = new SharedSources();
        TableFinder finder = new TableFinder(Schemas.OF_PRICE_LISTS, shared.findings);
        for (Path file : PriceFiles.expand(priceFiles)) {
            shared.addPrices(file, priceFiles.contains(file), finder);
        }
        if (rateFile != null) {
            Reading<List<DatedRate>> read = new RatesReader().read(rateFile);
            shared.findings.addAll(read.findings());
            shared.rates.addAll(read.value());
            shared.ofRates = ofRates(rateFile, read.value().size());
        }
        return shared;
    }

    /** Adds a price list; a file that was named must hold prices, a file in a folder need not. */
    private void addPrices(Path file, boolean named, TableFinder finder) throws IOException {
        Origin origin = new Origin(String.valueOf(file.getFileName()), "", "");
        if (!named && PlainRates.isOne(file)) {
            findings.note(origin, OfferMessages.ratesInFolder());
            return;
        }
        Grids prices = Grids.ofPriceFile(file);
        grids.addAll(prices.sheets());
        findings.addAll(prices.findings());
        Findings unclear = new Findings();
        Arrangement arranged = new Arranger(finder, unclear).arrange(prices.sheets());
        Finding first =
                unclear.list().stream().filter(Finding::isError).findFirst().orElse(null);
        boolean asIs = !named || first != null;
        List<FoundTable> found = finder.find(asIs ? prices.sheets() : arranged.grids());
        tables.addAll(found);
        if (asIs) {
            files.add(prices);
            onSheets.addAll(found);
        } else {
            findings.addAll(unclear.list());
            files.add(arranged.asRead(prices));
            onSheets.addAll(arranged.onSheets(found, findings));
        }
        if (found.isEmpty() && named && first != null) {
            findings.error(first.origin(), OfferMessages.takeIn(file.toString()));
        } else if (found.isEmpty() && named) {
            findings.error(origin, OfferMessages.noPriceList());
        } else if (found.isEmpty()) {
            findings.note(origin, OfferMessages.noPriceListInFolder());
        }
    }

    List<Grid> grids() {
        return grids;
    }

    List<FoundTable> tables() {
        return tables;
    }

    List<DatedRate> rates() {
        return rates;
    }

    /** Whether a place is in one of the price lists. */
    public boolean holds(Origin place) {
        return !place.file().isEmpty()
                && grids.stream()
                        .anyMatch(grid ->
                                grid.file().equals(place.file()) && grid.sheet().equals(place.sheet()));
    }

    /**
     * What became of everything in the files.
     *
     * @param findings what may change costs and was not read
     */
    record Accounted(Account account, List<Finding> findings) {}

    /** The account of the reading; it is written once, after the rows were read for some book. */
    synchronized Accounted accounted() {
        Accounted known = accounted;
        if (known == null) {
            Findings unread = new Findings();
            AccountWriter writer = new AccountWriter(Map.of(), unread);
            for (Grids file : files) {
                writer.add(file, onSheets);
            }
            known = new Accounted(writer.account().and(ofRates), unread.list());
            accounted = known;
        }
        return known;
    }

    private static Account ofRates(Path file, int rates) {
        Origin place = new Origin(String.valueOf(file.getFileName()), "", "");
        return new Account(List.of(new Account.Entry(
                place,
                Account.Subject.FILE,
                "",
                Account.Fate.READ,
                RatesSheet.SCHEMA.name(),
                "",
                rates,
                List.of(CellBlock.ALL))));
    }

    /** Problems of the files themselves; every book that uses them reports them too. */
    public List<Finding> findings() {
        List<Finding> all = findings.list();
        all.addAll(accountedSoFar());
        return all;
    }

    private synchronized List<Finding> accountedSoFar() {
        return accounted == null ? List.of() : accounted.findings();
    }
}
