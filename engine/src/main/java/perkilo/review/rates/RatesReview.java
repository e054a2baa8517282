package perkilo.review.rates;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Counted;
import perkilo.review.Asked;
import perkilo.review.ChoiceLists;
import perkilo.review.FilledIn;
import perkilo.review.Key;
import perkilo.review.QuestionsSheet;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.xlsx.write.ReportFile;

/**
 * The workbook in which a person answers what files of exchange rates leave open.
 *
 * @param questions with and without answers
 */
public record RatesReview(List<Asked> questions) {

    public RatesReview {
        questions = List.copyOf(questions);
    }

    /** The key of a question; the same one in every run. */
    public static String keyOf(String what, String about) {
        return Key.of("rates", what, about);
    }

    /**
     * What a person filled in; nothing if there is no review yet.
     *
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file is not a workbook that can be opened
     */
    public static FilledIn read(Path file) throws IOException {
        return FilledIn.read(file, List.of(QuestionsSheet.ANSWER));
    }

    /**
     * Writes the workbook over an earlier one, whose answers were read.
     *
     * @throws perkilo.xlsx.write.UnwritableFileException if it cannot be written, with the reason and what to do
     */
    public void write(Path file) throws IOException {
        int open = (int) questions.stream().filter(Asked::isOpen).count();
        ChoiceLists choices = new ChoiceLists();
        List<ResultSheet> sheets = new ArrayList<>();
        sheets.add(QuestionsSheet.of("Exchange rates: questions", hint(open), questions, choices));
        choices.sheet().ifPresent(sheets::add);
        ReportFile.write(file, new Report(sheets));
    }

    private static String hint(int open) {
        String again = " Then save and close this workbook, and run the same perkilo rates command again.";
        return open == 0
                ? "No open questions. A yellow cell can still be changed." + again
                : Counted.of(open, "open question") + ": answer in the yellow cells." + again;
    }
}
