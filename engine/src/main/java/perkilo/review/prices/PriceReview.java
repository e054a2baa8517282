package perkilo.review.prices;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import perkilo.pricelists.ReviewWords;
import perkilo.pricelists.RowNotRead;
import perkilo.pricelists.TakenIn;
import perkilo.review.Asked;
import perkilo.review.ChoiceLists;
import perkilo.review.FilledIn;
import perkilo.review.QuestionsSheet;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.write.ReportFile;
import perkilo.xlsx.write.WorkbookWriter;

/**
 * The workbook in which a person answers what price lists leave open, and looks through what was read.
 *
 * @param lists all lists that arrived
 * @param items the names of known items, to choose from
 */
public record PriceReview(List<TakenIn> lists, List<String> items) {

    /** Its usual name. */
    public static final String FILE = "prices-review.xlsx";

    private static final List<String> FILLED_IN = List.of(
            QuestionsSheet.ANSWER,
            ReviewWords.IT_IS,
            ReviewWords.OURS,
            ReviewWords.SUPPLIER,
            ReviewWords.QUOTED_ON,
            ReviewWords.VALID_UNTIL);

    public PriceReview {
        lists = List.copyOf(lists);
        items = List.copyOf(items);
    }

    /**
     * What a person filled in; nothing if there is no review yet.
     *
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file is not a workbook that can be opened
     */
    public static FilledIn read(Path file) throws IOException {
        return FilledIn.read(file, FILLED_IN);
    }

    /** The files on a review that wait for answers, or whose answers were changed. */
    public static Set<Path> toTryAgain(FilledIn filledIn) {
        Map<String, Path> files = new LinkedHashMap<>();
        Set<Path> again = new LinkedHashSet<>();
        for (FilledIn.FilledRow row : filledIn.rows()) {
            if (row.sheet().equals(ReviewWords.LISTS)) {
                String name = row.under(ReviewWords.FILE);
                Path file = Path.of(row.under(ReviewWords.FOLDER)).resolve(name);
                files.put(name, file);
                if (row.changed() || isWaiting(row.under(ReviewWords.STATE))) {
                    again.add(file);
                }
            }
        }
        for (FilledIn.FilledRow row : filledIn.rows()) {
            Path file = files.get(row.under(ReviewWords.FILE));
            if (row.changed() && file != null) {
                again.add(file);
            }
        }
        return again;
    }

    private static boolean isWaiting(String state) {
        return !state.startsWith(ReviewWords.TAKEN_IN) && !state.startsWith(ReviewWords.NO_LIST);
    }

    /** The sheets. */
    public Report report() {
        ChoiceLists choices = new ChoiceLists();
        List<ResultSheet> sheets = new ArrayList<>();
        sheets.add(questions(choices));
        sheets.add(new PricesSheet(lists, items).sheet(choices));
        sheets.add(new ColumnsSheet(lists).notRead(choices));
        sheets.add(new ColumnsSheet(lists).readAs(choices));
        sheets.add(ListsSheet.of(lists, choices));
        choices.sheet().ifPresent(sheets::add);
        return new Report(sheets);
    }

    private ResultSheet questions(ChoiceLists choices) {
        Map<String, Asked> byKey = new LinkedHashMap<>();
        lists.forEach(list -> list.seen().asked().forEach(asked -> byKey.putIfAbsent(asked.key(), asked)));
        long open = byKey.values().stream().filter(Asked::isOpen).count();
        long rows = lists.stream()
                .flatMap(list -> list.seen().notRead().stream())
                .filter(RowNotRead::isOpen)
                .count();
        return QuestionsSheet.of(
                "Price lists: questions", ReviewTexts.questions(open, rows), List.copyOf(byKey.values()), choices);
    }

    /**
     * Writes the workbook. An earlier review is replaced, as its answers were read; any other file is kept as a backup.
     *
     * @throws perkilo.xlsx.write.UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public void write(Path file, boolean overReview) throws IOException {
        Report report = report();
        if (Files.exists(file) && !overReview) {
            new WorkbookWriter().writeAlone(report, file);
            return;
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        ReportFile.write(file, report);
    }
}
