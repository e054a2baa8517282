package perkilo.pricelists;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.LayoutFinder;
import perkilo.layouts.ListDates;
import perkilo.layouts.ListRows;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.review.FilledIn;
import perkilo.review.Key;
import perkilo.review.QuestionsSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * Takes suppliers' lists in: reads them, matches their names, and keeps them in the folder of lists. A list with open
 * questions is not kept.
 */
public final class TakeIn {

    private final ListFolder folder;
    private final KnownNames known;
    private final Set<String> suppliers;

    /**
     * Ready to take lists in.
     *
     * @param folder where lists are kept
     * @param knownIn sheets whose names are known: a workbook's, a catalogue's
     * @param suppliers names of suppliers that are known
     */
    public TakeIn(ListFolder folder, List<Grid> knownIn, Set<String> suppliers) {
        this.folder = folder;
        this.known = KnownNames.of(knownIn);
        this.suppliers = Set.copyOf(suppliers);
    }

    /**
     * What a person says of a list on the command line.
     *
     * @param supplier who it is from; null if the list says so
     * @param quotedOn its day; null if the list says so
     * @param validUntil its last day; null if the list says so
     */
    public record Said(
            @Nullable String supplier,
            @Nullable LocalDate quotedOn,
            @Nullable LocalDate validUntil) {}

    /** The names of all items that lists are matched with, to choose from. */
    public List<String> knownItems() {
        return known.all();
    }

    /**
     * Takes a list in, without answers of a review.
     *
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file cannot be opened
     */
    public TakenIn take(Path file, Said said) throws IOException {
        return take(file, said, FilledIn.nothing()).get(0);
    }

    /**
     * Takes a list in.
     *
     * @param filledIn the answers on a review
     * @return one result; several for a list of several suppliers
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file cannot be opened
     */
    public List<TakenIn> take(Path file, Said said, FilledIn filledIn) throws IOException {
        Arrived arrived = Arrived.read(file);
        Said all = withReview(arrived, said, filledIn);
        Supplier.Finder finder = new Supplier.Finder(
                arrived.name(),
                arrived.grids().sheets(),
                LayoutFinder.find(arrived.grids().sheets()),
                suppliers,
                folder.memories());
        if (all.supplier() != null) {
            return List.of(take(arrived, all, finder.named(all.supplier()), filledIn));
        }
        Supplier read = finder.read();
        List<String> before = remembered(arrived);
        String key = ListAnswers.keyOf(arrived.id(), Memory.SUPPLIER, "");
        Optional<String> answer = filledIn.answer(key, QuestionsSheet.ANSWER);
        if (answer.isEmpty()) {
            List<TakenIn> each = new ArrayList<>();
            for (String name : before) {
                each.add(take(arrived, all, finder.named(name), filledIn));
            }
            return each.isEmpty() ? List.of(take(arrived, all, read, filledIn)) : each;
        }
        if (!answer.get().equalsIgnoreCase(Supplier.EACH) || read.question() == null) {
            return List.of(take(arrived, all, read.answered(finder.named(answer.get()), answer.get()), filledIn));
        }
        List<TakenIn> each = new ArrayList<>();
        for (String choice : read.question().choices()) {
            if (!choice.equals(Supplier.EACH)) {
                each.add(take(arrived, all, read.answered(finder.named(choice), Supplier.EACH), filledIn));
            }
        }
        return each;
    }

    /**
     * A file that arrived.
     *
     * @param name without its folder
     * @param id of the file on a review, as others may have the same name
     * @param key of the list on a review; another one once the file has changed
     * @param digest of its content
     */
    record Arrived(Path file, String name, String id, String key, String digest, Grids grids) {

        static Arrived read(Path file) throws IOException {
            Grids grids = Grids.ofPriceFile(file);
            String name = String.valueOf(file.getFileName());
            String digest = Key.digest(Files.readAllBytes(file));
            String id = id(file);
            return new Arrived(file, name, id, ListAnswers.keyOf(id, "list", digest), digest, grids);
        }

        /** What is written at a place: the cell, or the line of a text file. */
        String says(Origin where) {
            if (where.cell().isEmpty()) {
                return "";
            }
            for (Grid grid : grids.sheets()) {
                if (grid.sheet().equals(where.sheet())) {
                    return says(grid, where);
                }
            }
            return "";
        }

        private static String says(Grid grid, Origin where) {
            int called = Integer.parseInt(where.cell().replaceAll("\\D", ""));
            for (int row : grid.rows().numbers()) {
                if (SheetTables.called(grid, row) == called) {
                    for (Map.Entry<Integer, Cell> cell : grid.row(row).entrySet()) {
                        if (grid.origin(row, cell.getKey()).equals(where)
                                && !where.cell().startsWith("line")) {
                            return ListRows.shortened(cell.getValue().text());
                        }
                    }
                    List<String> texts =
                            grid.row(row).values().stream().map(Cell::text).toList();
                    return where.cell().startsWith("line") ? ListRows.shortened(String.join(" | ", texts)) : "";
                }
            }
            return "";
        }

        /** What tells a file apart from others of the same name. */
        static String id(Path file) {
            return file.toAbsolutePath().normalize().toString();
        }

        /** The place of the whole file. */
        Origin whole() {
            return new Origin(name, "", "");
        }
    }

    /** What is said on the command line, then on the sheet of lists. */
    private static Said withReview(Arrived arrived, Said said, FilledIn filledIn) {
        Optional<FilledIn.FilledRow> row = filledIn.row(arrived.key());
        if (row.isEmpty()) {
            return said;
        }
        String supplier = row.get().under(ReviewWords.SUPPLIER);
        String quoted = row.get().under(ReviewWords.QUOTED_ON);
        String until = row.get().under(ReviewWords.VALID_UNTIL);
        String asked = ListAnswers.keyOf(arrived.id(), Memory.SUPPLIER, "");
        boolean answered = filledIn.answer(asked, QuestionsSheet.ANSWER).isPresent();
        return new Said(
                said.supplier() != null || supplier.isEmpty() || answered ? said.supplier() : supplier,
                said.quotedOn() != null ? said.quotedOn() : day(quoted),
                said.validUntil() != null ? said.validUntil() : day(until));
    }

    /** The day that a person typed; null if it is none. */
    static @Nullable LocalDate day(String typed) {
        return new ListDates(Optional.empty())
                .one(typed)
                .map(ListDates.Read::day)
                .orElse(null);
    }

    /** The suppliers that this very file was taken in for. */
    private List<String> remembered(Arrived arrived) throws IOException {
        List<String> names = new ArrayList<>();
        for (Memory memory : folder.memories()) {
            if (memory.dayOf(arrived.name(), arrived.digest()).isPresent()) {
                names.add(memory.supplier());
            }
        }
        return names;
    }

    private TakenIn take(Arrived arrived, Said said, Supplier supplier, FilledIn filledIn) throws IOException {
        String name = supplier.name();
        boolean carriedOver = name != null && folder.isOfEarlierVersion(name);
        Memory memory = name == null ? new Memory("") : folder.memory(name);
        ListAnswers answers = new ListAnswers(arrived.id(), arrived.name(), filledIn, memory);
        if (name != null && !supplier.read().isEmpty() && !supplier.read().equals(name)) {
            answers.memory().put(Memory.ALSO_CALLED, supplier.read(), name, "");
        }
        OneList list = new OneList(folder, known, arrived, said, supplier, answers);
        TakenIn taken = list.take();
        if (name != null && (carriedOver || !answers.memory().all().equals(memory.all()))) {
            folder.keep(answers.memory());
            if (carriedOver) {
                Finding note =
                        Finding.note(Origin.NONE, ListMessages.carriedOver(folder.mapping(name), folder.answers(name)));
                return list.with(taken, note);
            }
        }
        return taken;
    }
}
