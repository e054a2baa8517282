package perkilo.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.origin.Reading;
import perkilo.rates.Bank;
import perkilo.rates.RatesTable;
import perkilo.reading.LegacyRates;
import perkilo.reading.RateAnswers;
import perkilo.reading.RateJumps;
import perkilo.reading.RatesReader;
import perkilo.reading.table.Findings;
import perkilo.units.DatedRate;
import perkilo.xlsx.grid.UnreadableFileException;

/**
 * Service that adds exchange rates of files and of the bank to a table: all of them, or none if one has errors or open
 * questions.
 */
public final class TakeInRates {

    /** How many differing rates of a file are listed one by one. */
    private static final int NAMED = 20;

    private final Bank bank;

    /**
     * A service that fetches from a bank.
     *
     * @param bank used only if a request says so
     */
    public TakeInRates(Bank bank) {
        this.bank = bank;
    }

    /**
     * Takes rates in and writes the table.
     *
     * @throws IOException if a file cannot be read or written, or the bank does not answer
     */
    public RatesAnswer take(RatesRequest request, Watch watch) throws IOException {
        Reading<RatesTable> before = RatesTable.read(request.table());
        RateReplies replies = RateReplies.of(request.table());
        List<Finding> known = new ArrayList<>(before.findings());
        Intake intake = new Intake(before.value(), request.replace(), known, replies.answers());
        Set<String> names = new HashSet<>();
        int done = 0;
        for (Path file : request.files()) {
            watch.at(Stage.TAKING_IN, done++, request.files().size());
            if (watch.isCancelled()) {
                return new RatesAnswer.Stopped(intake.findings);
            }
            names.add(String.valueOf(file.getFileName()));
            intake.take(file.toString(), new RatesReader(replies.answers()).read(file));
        }
        Bank.Span span = request.fetched();
        if (span != null) {
            watch.at(Stage.FETCHING, 0, 1);
            intake.take(bank.address(span).toString(), fetched(span));
            watch.at(Stage.FETCHING, 1, 1);
        }
        intake.findings.addAll(replies.findings());
        if (!replies.answers().replies().isEmpty()) {
            makeUsualFolder(request.table());
        }
        replies.keep(names);
        if (replies.open() > 0) {
            intake.findings.add(Finding.error(Origin.NONE, DeskMessages.ratesWait(replies.open(), replies.review())));
            return new RatesAnswer.Waits(replies.open(), replies.review(), intake.findings);
        }
        if (intake.findings.stream().anyMatch(Finding::isError)) {
            return new RatesAnswer.BadInput(intake.findings);
        }
        if (watch.isCancelled()) {
            return new RatesAnswer.Stopped(intake.findings);
        }
        if (intake.changed) {
            makeUsualFolder(request.table());
            intake.rates.write(request.table());
        }
        return new RatesAnswer.Taken(intake.files, intake.rates.rates(), intake.changed, intake.findings);
    }

    /** The table while rates are added. */
    private static final class Intake {

        private final RatesTable rates;
        private final boolean replace;
        private final List<Finding> findings;
        private final RateAnswers answers;
        private final List<RatesAnswer.OfFile> files = new ArrayList<>();
        private boolean changed;

        Intake(RatesTable rates, boolean replace, List<Finding> findings, RateAnswers answers) {
            this.answers = answers;
            this.rates = rates;
            this.replace = replace;
            this.findings = findings;
        }

        void take(String file, Reading<List<DatedRate>> read) {
            findings.addAll(read.findings());
            Findings odd = new Findings();
            List<DatedRate> settled = new RateJumps(odd, answers).settled(read.value(), rates.rates());
            LegacyRates.check(settled, odd);
            findings.addAll(odd.list());
            RatesTable.Taken taken = rates.take(settled, replace);
            List<RatesTable.Differing> differing = taken.differing();
            differing.stream().limit(NAMED).map(RatesTable.Differing::finding).forEach(findings::add);
            if (differing.size() > NAMED) {
                Origin whole = new Origin(file, "", "");
                findings.add(Finding.warning(whole, DeskMessages.moreRatesDiffer(differing.size() - NAMED)));
            }
            files.add(new RatesAnswer.OfFile(file, taken));
            changed |= taken.changed();
        }
    }

    private Reading<List<DatedRate>> fetched(Bank.Span span) throws IOException {
        Path folder = Files.createTempDirectory("perkilo-rates");
        Path file = folder.resolve(span.fileName());
        try {
            return new RatesReader().read(bank.fetch(span, folder));
        } catch (UnreadableFileException odd) {
            throw new IOException(DeskMessages.notRates(bank.address(span).toString(), span.fileName()), odd);
        } finally {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
        }
    }

    /** Creates the usual folder for prices if it is missing; other folders must exist. */
    private static void makeUsualFolder(Path table) throws IOException {
        Path folder = table.getParent();
        if (folder != null && folder.equals(Path.of("prices")) && !Files.exists(folder)) {
            Files.createDirectory(folder);
        }
    }
}
