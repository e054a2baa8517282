package perkilo.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.json.Json;
import perkilo.json.RatesJson;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.rates.Bank;
import perkilo.rates.RatesTable;
import perkilo.reading.RatesReader;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.xlsx.grid.UnreadableFileException;

/** Takes files of rates into the table, all of them or none. */
final class RatesIntake {

    /** So many differing rates of a file are named one by one. */
    private static final int NAMED = 20;

    private final Path table;
    private final boolean replace;
    private final Bank bank;
    private final List<Finding> findings = new ArrayList<>();
    private final List<ObjectNode> json = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();

    RatesIntake(Path table, boolean replace, Bank bank) {
        this.table = table;
        this.replace = replace;
        this.bank = bank;
    }

    /**
     * Takes the files in and writes the table.
     *
     * @param span what the bank is asked for; null for nothing
     * @return whether all could be read; if not, nothing was written
     */
    boolean take(List<Path> files, Bank.@Nullable Span span) throws IOException {
        Reading<RatesTable> before = RatesTable.read(table);
        findings.addAll(before.findings());
        RatesTable rates = before.value();
        boolean changed = false;
        for (Path file : files) {
            changed |= take(rates, file.toString(), new RatesReader().read(file));
        }
        if (span != null) {
            changed |= take(rates, bank.address(span).toString(), fetched(span));
        }
        if (findings.stream().anyMatch(Finding::isError)) {
            return false;
        }
        if (changed) {
            makeUsualFolder();
            rates.write(table);
        }
        lines.add(summary(rates.rates(), changed));
        return true;
    }

    private boolean take(RatesTable rates, String file, Reading<List<DatedRate>> read) {
        findings.addAll(read.findings());
        RatesTable.Taken taken = rates.take(read.value(), replace);
        List<RatesTable.Differing> differing = taken.differing();
        differing.stream().limit(NAMED).map(RatesTable.Differing::finding).forEach(findings::add);
        if (differing.size() > NAMED) {
            findings.add(Finding.warning(
                    new Origin(file, "", ""), "%,d more rates differ".formatted(differing.size() - NAMED)));
        }
        json.add(RatesJson.taken(file, taken));
        lines.add("%s: %,d rates, %,d new%s"
                .formatted(
                        file,
                        taken.rates(),
                        taken.added(),
                        differing.isEmpty() ? "" : ", %,d differing".formatted(differing.size())));
        return taken.changed();
    }

    private Reading<List<DatedRate>> fetched(Bank.Span span) throws IOException {
        Path folder = Files.createTempDirectory("perkilo-rates");
        Path file = folder.resolve(span.fileName());
        try {
            return new RatesReader().read(bank.fetch(span, folder));
        } catch (UnreadableFileException odd) {
            String sent = bank.address(span) + " did not send exchange rates; get " + span.fileName()
                    + " elsewhere and name it: perkilo rates FILE";
            throw new IOException(sent, odd);
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }

    /** The folder for prices is made where it is missing; no other one is. */
    private void makeUsualFolder() throws IOException {
        Path folder = table.getParent();
        if (folder != null && folder.equals(Path.of("prices")) && !Files.exists(folder)) {
            Files.createDirectory(folder);
        }
    }

    private String summary(List<DatedRate> rates, boolean changed) {
        String held = rates.isEmpty()
                ? "no rates"
                : "%,d rates from %s to %s"
                        .formatted(
                                rates.size(),
                                rates.get(rates.size() - 1).date(),
                                rates.get(0).date());
        return changed ? "Written to %s: %s".formatted(table, held) : "Nothing new for %s: %s".formatted(table, held);
    }

    /** Everything that a person should know. */
    List<Finding> findings() {
        return findings;
    }

    /** What each file brought, as JSON. */
    ArrayNode json() {
        return Json.array(json, Function.identity());
    }

    /** What each file brought, in words. */
    List<String> lines() {
        return lines;
    }

    /** The rates to ask, of any file that rates can be read from. */
    static ExchangeRates asked(Path table, List<Finding> findings) throws IOException {
        Reading<List<DatedRate>> read = new RatesReader().read(table);
        findings.addAll(read.findings());
        return new ExchangeRates(read.value());
    }
}
