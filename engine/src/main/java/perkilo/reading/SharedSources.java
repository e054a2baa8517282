package perkilo.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.schema.Schemas;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** Price lists and rates that are read once, for one book or for many; nothing in it changes afterwards. */
public final class SharedSources {

    private final List<Grid> grids = new ArrayList<>();
    private final List<FoundTable> tables = new ArrayList<>();
    private final List<DatedRate> rates = new ArrayList<>();
    private final Findings findings = new Findings();

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
        for (Path file : PriceFiles.expand(priceFiles)) {
            shared.addPrices(file, priceFiles.contains(file));
        }
        if (rateFile != null) {
            Reading<List<DatedRate>> read = new RatesReader().read(rateFile);
            shared.findings.addAll(read.findings());
            shared.rates.addAll(read.value());
        }
        return shared;
    }

    /** Adds a price list; a file that was named must hold prices, a file in a folder need not. */
    private void addPrices(Path file, boolean named) throws IOException {
        Origin origin = new Origin(String.valueOf(file.getFileName()), "", "");
        if (!named && PlainRates.isOne(file)) {
            findings.note(origin, OfferMessages.ratesInFolder());
            return;
        }
        Grids prices = Grids.ofPriceFile(file);
        grids.addAll(prices.sheets());
        findings.addAll(prices.findings());
        List<FoundTable> found = new TableFinder(Schemas.OF_PRICE_LISTS, findings).find(prices.sheets());
        tables.addAll(found);
        if (found.isEmpty() && named) {
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

    /** Problems of the files themselves; every book that uses them reports them too. */
    public List<Finding> findings() {
        return findings.list();
    }
}
