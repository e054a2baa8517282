package perkilo.reading;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.offers.JoinedOffer;
import perkilo.offers.Offer;
import perkilo.origin.Reading;
import perkilo.reading.arrange.Arrangement;
import perkilo.reading.arrange.Arranger;
import perkilo.reading.table.AccountWriter;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.schema.OffersSheet;
import perkilo.schema.Schemas;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** Reads all quotes, including superseded ones: the history of prices. */
public final class QuoteReader {

    /**
     * All quotes of price lists and of a workbook.
     *
     * @param book null for price lists alone
     * @param priceFiles files, or folders of them
     * @return each quote of each pack as an offer of its own, in the order of the files
     */
    public Reading<List<Offer>> read(@Nullable Path book, List<Path> priceFiles) throws IOException {
        Findings findings = new Findings();
        List<Grid> grids = new ArrayList<>();
        List<Grids> files = new ArrayList<>();
        List<FoundTable> tables = new ArrayList<>();
        List<FoundTable> onSheets = new ArrayList<>();
        if (book != null) {
            Grids read = Grids.ofBook(book);
            grids.addAll(read.sheets());
            TableFinder finder = new TableFinder(Schemas.ALL, findings);
            Arrangement arranged = new Arranger(finder, findings).arrange(read.sheets());
            files.add(arranged.asRead(read));
            List<FoundTable> own = finder.find(arranged.grids());
            tables.addAll(own);
            onSheets.addAll(arranged.onSheets(own, findings));
        }
        for (Path file : PriceFiles.expand(priceFiles)) {
            Grids read = Grids.ofPriceFile(file);
            findings.addAll(read.findings());
            files.add(read);
            grids.addAll(read.sheets());
            List<FoundTable> ofFile = new TableFinder(Schemas.OF_PRICE_LISTS, findings).find(read.sheets());
            tables.addAll(ofFile);
            onSheets.addAll(ofFile);
        }
        List<Offer> quotes = quotes(new Tables(tables), findings);
        AccountWriter writer = new AccountWriter(Map.of(), findings);
        files.forEach(file -> writer.add(file, onSheets));
        return new Reading<>(quotes, FindingOrder.sorted(findings.list(), grids), writer.account());
    }

    private static List<Offer> quotes(Tables tables, Findings findings) {
        SupplierBook suppliers = new SupplierBook(tables, findings);
        OfferRowReader reader = new OfferRowReader(new OfferCurrency(suppliers.rows(), findings), findings);
        List<OfferRow> rows = tables.stream(OffersSheet.SCHEMA, findings)
                .flatMap(row -> reader.read(row).stream())
                .toList();
        return OfferConflicts.reported(JoinedOffer.of(rows), findings);
    }
}
