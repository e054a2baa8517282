package perkilo.pricelists;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.desk.TakeInAnswer;
import perkilo.desk.TakeInPrices;
import perkilo.desk.TakeInRequest;
import perkilo.desk.Watch;
import perkilo.layouts.Question;
import perkilo.origin.Finding;
import perkilo.review.Asked;
import perkilo.review.prices.FilledReview;
import perkilo.review.prices.PriceReview;

/** A list that is taken in as on the command line: the answers are typed into the review. */
final class Intake {

    private final Path folder;
    private final @Nullable String supplier;

    /**
     * Ready to take lists in.
     *
     * @param supplier who they are from; null if the lists say so
     */
    Intake(Path folder, @Nullable String supplier) {
        this.folder = folder;
        this.supplier = supplier;
    }

    /** Takes a list in. */
    TakenIn take(String file, String text) throws IOException {
        Path list = Files.writeString(folder.resolve(file), text);
        return run(List.of(list)).lists().get(0);
    }

    /** Tries the lists of the review again. */
    TakeInAnswer again() throws IOException {
        return run(List.of());
    }

    private TakeInAnswer run(List<Path> lists) throws IOException {
        TakeIn.Said said = new TakeIn.Said(supplier, null, null);
        return new TakeInPrices().take(new TakeInRequest(lists, kept(), null, said, review()), Watch.NONE);
    }

    Path kept() {
        return folder.resolve("kept");
    }

    private Path review() {
        return folder.resolve(PriceReview.FILE);
    }

    /** Answers the open question that has some words. */
    void answer(String question, String answer) throws IOException {
        fill("Questions", question, "Answer", answer);
    }

    /** Types into the row of a sheet that has some words. */
    void fill(String sheet, String row, String heading, String words) throws IOException {
        try (FilledReview review = FilledReview.open(review())) {
            review.fill(sheet, row, heading, words);
        }
    }

    static List<String> asked(TakenIn taken) {
        return taken.questions().stream().map(Question::text).toList();
    }

    static List<String> choices(TakenIn taken, String question) {
        return taken.seen().asked().stream()
                .filter(asked -> asked.text().contains(question))
                .map(Asked::choices)
                .findFirst()
                .orElseThrow();
    }

    static String said(TakenIn taken) {
        return taken.findings().stream().map(Finding::text).collect(Collectors.joining("\n"));
    }

    /** A taker-in that knows suppliers. */
    TakenIn takeKnowing(String file, String text, Set<String> suppliers) throws IOException {
        Path list = Files.writeString(folder.resolve(file), text);
        return new TakeIn(new ListFolder(kept()), List.of(), suppliers)
                .take(list, new TakeIn.Said(supplier, null, null));
    }
}
