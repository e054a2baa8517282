package perkilo.reading;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Reading;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.schema.RatesSheet;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.grid.UnreadableFileException;

/**
 * Reads a file of exchange rates: a table with the columns of Rates, or with a column or a row for each currency (CSV,
 * JSON or XLSX), or the euro reference rates as the European Central Bank publishes them (XML, CSV, or CSV in a ZIP
 * file).
 */
public final class RatesReader {

    private final @Nullable RateAnswers answers;

    /** A reader that uses the answers kept beside a file, and asks nothing. */
    public RatesReader() {
        this.answers = null;
    }

    /** A reader that asks what a file leaves open. */
    public RatesReader(RateAnswers answers) {
        this.answers = answers;
    }

    /**
     * Reads all rates of a file.
     *
     * @return the rates, in the order of the file, and what was found wrong
     * @throws UnreadableFileException if the file cannot be opened or holds no rates; its message says why
     */
    public Reading<List<DatedRate>> read(Path file) throws IOException {
        try (ZippedRates zipped = ZippedRates.open(file)) {
            return readUnpacked(
                    zipped.file(), answers == null ? new RateAnswers(RateMemory.of(file)::answer) : answers);
        }
    }

    private static Reading<List<DatedRate>> readUnpacked(Path file, RateAnswers answers) throws IOException {
        Findings findings = new Findings();
        Optional<List<DatedRate>> plain = PlainRates.read(file);
        if (plain.isPresent()) {
            return new Reading<>(new RateJumps(findings, answers).settled(plain.get()), findings.list());
        }
        Optional<byte[]> xml = Grids.xml(file);
        if (xml.isPresent()) {
            return new Reading<>(xmlRates(file, xml.get(), findings), findings.list());
        }
        Grids grids = Grids.ofPriceFile(file);
        findings.addAll(grids.findings());
        List<DatedRate> wide = WideRates.read(grids.sheets(), findings);
        if (!wide.isEmpty()) {
            return new Reading<>(wide, findings.list());
        }
        List<DatedRate> rates = new ArrayList<>();
        List<Grid> others = new ArrayList<>();
        for (Grid grid : grids.sheets()) {
            BaseRates.find(grid, findings, answers)
                    .ifPresentOrElse(found -> rates.addAll(found.read()), () -> others.add(grid));
        }
        List<DatedRate> all = new ArrayList<>(new RateJumps(findings, answers).settled(rates));
        List<FoundTable> tables = new TableFinder(List.of(RatesSheet.SCHEMA), findings).find(others);
        if (tables.isEmpty() && others.size() == grids.sheets().size()) {
            throw new UnreadableFileException(RateTableMessages.noRates(file));
        }
        all.addAll(new RateRows(findings, answers).read(new Tables(tables)));
        return new Reading<>(all, findings.list());
    }

    private static List<DatedRate> xmlRates(Path file, byte[] content, Findings findings) throws IOException {
        try {
            List<DatedRate> rates =
                    EcbXml.read(String.valueOf(file.getFileName()), new ByteArrayInputStream(content), findings);
            if (rates.isEmpty() && findings.list().isEmpty()) {
                throw new UnreadableFileException(RateTableMessages.noBankRates(file));
            }
            return rates;
        } catch (XMLStreamException e) {
            throw new UnreadableFileException(RateTableMessages.damagedXml(file), e);
        }
    }
}
