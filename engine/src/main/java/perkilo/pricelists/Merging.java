package perkilo.pricelists;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Question;
import perkilo.origin.Origin;

/**
 * Makes one list of rows: the same price counts once, different packs stay side by side, and where two rows contradict
 * each other a person says which one holds.
 */
final class Merging {

    /** With more contradictions between two files one question is asked for all. */
    private static final int MOST_ASKED = 8;

    private static final String EARLIER = "what was taken in before";
    private static final String FILES = "; ";

    private final String file;
    private final ListAnswers answers;
    private final Map<String, List<Candidate>> byPlace = new LinkedHashMap<>();
    private boolean anyTwice;
    private final List<Question> open = new ArrayList<>();

    /**
     * A row that may hold.
     *
     * @param row the row
     * @param where its cell; null if it was taken in before
     */
    private record Candidate(KeptRow row, @Nullable Origin where) {

        String source() {
            if (where == null) {
                return row.file().isEmpty() ? EARLIER : row.file();
            }
            return where.cell();
        }

        boolean isSameAs(Candidate other) {
            return row.hasPriceOf(other.row)
                    && row.terms().joined(other.row.terms()).isPresent();
        }
    }

    Merging(String file, ListAnswers answers) {
        this.file = file;
        this.answers = answers;
    }

    /** Adds a row that was taken in before. */
    void addEarlier(KeptRow row) {
        add(new Candidate(row, null));
    }

    /** Adds a row of this list. */
    void add(KeptRow row, Origin where) {
        add(new Candidate(row, where));
    }

    private void add(Candidate candidate) {
        List<Candidate> here = byPlace.computeIfAbsent(candidate.row().place(), any -> new ArrayList<>(1));
        anyTwice |= !here.isEmpty();
        for (int at = 0; at < here.size(); at++) {
            Candidate other = here.get(at);
            if (other.isSameAs(candidate)) {
                here.set(at, joined(other, candidate));
                return;
            }
        }
        here.add(candidate);
    }

    private static Candidate joined(Candidate one, Candidate other) {
        KeptRow.Terms terms = one.row().terms().joined(other.row().terms()).orElseThrow();
        Set<String> files = new LinkedHashSet<>(files(one.row()));
        files.addAll(files(other.row()));
        KeptRow row = one.row().with(terms).from(String.join(FILES, files));
        return new Candidate(row, one.where());
    }

    /** Whether two rows are about the same price. */
    boolean hasAnyTwice() {
        return anyTwice;
    }

    /** The files that a row came from. */
    static List<String> files(KeptRow row) {
        return row.file().isEmpty() ? List.of() : List.of(row.file().split(FILES, -1));
    }

    /** A row without one of the files that it came from; empty if there was no other. */
    static Optional<KeptRow> without(KeptRow row, String file) {
        List<String> rest = files(row).stream().filter(one -> !one.equals(file)).toList();
        if (rest.size() == files(row).size()) {
            return Optional.of(row);
        }
        return rest.isEmpty() ? Optional.empty() : Optional.of(row.from(String.join(FILES, rest)));
    }

    /** The rows that hold; where that is not clear, all of them, and {@link #open} has the question. */
    List<KeptRow> rows() {
        open.clear();
        List<List<Candidate>> between = byPlace.values().stream()
                .filter(here -> here.size() > 1 && here.get(0).where() == null)
                .toList();
        String forAll = between.size() > MOST_ASKED ? forAll(between) : "";
        List<KeptRow> rows = new ArrayList<>();
        for (List<Candidate> here : byPlace.values()) {
            for (Candidate candidate : here.size() == 1 ? here : choose(here, forAll)) {
                rows.add(candidate.row());
            }
        }
        return rows;
    }

    /** The answer to one question for all contradictions; blank if it is open. */
    private String forAll(List<List<Candidate>> between) {
        StringJoiner some = new StringJoiner("; ");
        between.stream().limit(3).forEach(here -> some.add(here.get(0).row().words()));
        String listed = file + " " + between.get(0).get(0).row().quotedOn();
        Question question = new Question(
                Memory.WHICH_HOLDS,
                listed,
                new Origin(file, "", ""),
                ListMessages.manyContradict(between.size(), some.toString()),
                List.of(file, EARLIER));
        return answers.answerTo(question).orElseGet(() -> {
            open.add(question);
            return " ";
        });
    }

    private List<Candidate> choose(List<Candidate> here, String forAll) {
        boolean earlier = here.get(0).where() == null;
        if (earlier && !forAll.isEmpty()) {
            boolean wantsEarlier = forAll.equalsIgnoreCase(EARLIER);
            return forAll.isBlank()
                    ? here
                    : here.stream()
                            .filter(one -> (one.where() == null) == wantsEarlier)
                            .limit(1)
                            .toList();
        }
        Map<String, Candidate> byChoice = new LinkedHashMap<>();
        here.forEach(one -> byChoice.putIfAbsent(one.row().allWords() + " (" + one.source() + ")", one));
        KeptRow row = here.get(0).row();
        Origin where = here.get(here.size() - 1).where();
        Question question = new Question(
                Memory.WHICH_HOLDS,
                row.words() + ", " + row.quotedOn(),
                where == null ? new Origin(file, "", "") : where,
                ListMessages.contradict(row.words(), List.copyOf(byChoice.keySet())),
                List.copyOf(byChoice.keySet()));
        Optional<Candidate> chosen = answers.answerTo(question)
                .flatMap(answer -> byChoice.entrySet().stream()
                        .filter(one -> one.getKey().toLowerCase(Locale.ROOT).equals(answer.toLowerCase(Locale.ROOT)))
                        .map(Map.Entry::getValue)
                        .findFirst());
        if (chosen.isEmpty()) {
            open.add(question);
            return here;
        }
        return List.of(chosen.get());
    }

    /** What a person has to say first; known after {@link #rows}. */
    List<Question> open() {
        return List.copyOf(open);
    }
}
