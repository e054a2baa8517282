package perkilo.pricelists;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.LayoutFinder;
import perkilo.layouts.ListDates;
import perkilo.layouts.ListLayout;
import perkilo.layouts.ListLine;
import perkilo.layouts.ListReading;
import perkilo.layouts.ListRows;
import perkilo.layouts.ListWords;
import perkilo.layouts.Mapping;
import perkilo.layouts.Meaning;
import perkilo.layouts.Question;
import perkilo.layouts.QuestionMessages;
import perkilo.layouts.TitleFacts;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/** Takes one supplier's list in: reads it, matches its names, and keeps it in the folder of lists. */
public final class TakeIn {

    private static final int NAMED = 5;

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

    /**
     * Takes a list in. If anything is wrong or not clear, nothing is kept, and the mapping asks for what is missing.
     *
     * @throws perkilo.xlsx.grid.UnreadableFileException if the file cannot be opened
     */
    public TakenIn take(Path file, Said said) throws IOException {
        Grids grids = Grids.ofPriceFile(file);
        Findings findings = new Findings();
        findings.addAll(grids.findings());
        Origin whole = whole(file);
        List<ListLayout> layouts = LayoutFinder.find(grids.sheets());
        if (layouts.isEmpty()) {
            findings.error(whole, ListMessages.noList());
            return TakenIn.refused(file, findings.list(), List.of(), null);
        }
        String supplier = supplier(file, said, layouts);
        if (supplier == null) {
            findings.error(whole, withoutSupplier(layouts));
        }
        return take(file, said, supplier, grids.sheets(), layouts, findings);
    }

    private static Origin whole(Path file) {
        return new Origin(String.valueOf(file.getFileName()), "", "");
    }

    /** A list without a supplier is read too, so that all questions are asked in one go. */
    private TakenIn take(
            Path file,
            Said said,
            @Nullable String supplier,
            List<Grid> sheets,
            List<ListLayout> layouts,
            Findings findings)
            throws IOException {
        Mapping mapping = supplier == null ? Mapping.empty("") : folder.read(supplier);
        List<ListLayout> answered =
                mapping.columns().isEmpty() ? layouts : LayoutFinder.find(sheets, mapping);
        ListReading reading = ListReading.of(answered, mapping, findings);
        List<Question> questions = new ArrayList<>(reading.questions());
        List<ListLine> lines = new ArrayList<>(reading.lines());
        Days days = days(said, lines, reading.facts(), questions, findings, file);
        if (supplier != null) {
            lines.removeIf(line -> isOfAnother(line, supplier));
        }
        NameMatcher names = new NameMatcher(known, mapping);
        lines.forEach(line -> names.of(line.listed()));
        ListCheck check = new ListCheck(names, !known.isEmpty(), findings);
        check.check(lines, questions.isEmpty());
        questions.addAll(check.questions(lines, mapping));
        Mapping confirmed = confirmed(mapping, names);
        if (supplier == null) {
            return TakenIn.refused(file, findings.list(), questions, null);
        }
        boolean wrong = findings.list().stream().anyMatch(Finding::isError);
        if (wrong || !questions.isEmpty() || days == null) {
            Path asked = questions.isEmpty() ? null : folder.mapping(supplier);
            if (asked != null) {
                folder.keep(proposed(confirmed, layouts, questions), questions);
            }
            return TakenIn.refused(file, findings.list(), questions, asked);
        }
        LongForm form = new LongForm();
        lines.forEach(line -> form.add(supplier, names.of(line.listed()).name(), line, days.quotedOn, days.validUntil));
        ListFolder.Kept kept = folder.keep(supplier, days.quotedOn, form.bytes());
        folder.keep(confirmed, List.of());
        List<ListLine> priced = lines.stream().filter(ListLine::isPriced).toList();
        return new TakenIn(
                file,
                supplier,
                days.quotedOn,
                days.validUntil,
                priced.size(),
                (int) priced.stream()
                        .map(line -> Names.key(line.item()))
                        .distinct()
                        .count(),
                kept,
                folder.mapping(supplier),
                List.of(),
                findings.list());
    }

    /** The supplier that a person names, or else the list's rows, its title or its file's name; null if none does. */
    private @Nullable String supplier(Path file, Said said, List<ListLayout> layouts) throws IOException {
        if (said.supplier() != null) {
            return known(said.supplier()).orElse(said.supplier());
        }
        Set<String> inRows = inRows(layouts);
        if (inRows.size() == 1) {
            String name = inRows.iterator().next();
            return known(name).orElse(name);
        }
        Set<String> all = new LinkedHashSet<>(suppliers);
        all.addAll(folder.suppliersWithMapping());
        all.removeIf(String::isBlank);
        Set<String> inTitle = new LinkedHashSet<>();
        Set<String> labelled = new LinkedHashSet<>();
        for (String line : titles(layouts)) {
            all.stream()
                    .filter(name -> ListWords.key(line).contains(ListWords.key(name)))
                    .forEach(inTitle::add);
            labelled(line).ifPresent(labelled::add);
        }
        Set<String> titled = inTitle.size() == 1 ? inTitle : labelled;
        if (titled.size() == 1) {
            return titled.iterator().next();
        }
        String name = ListWords.key(String.valueOf(file.getFileName()));
        List<String> inName = all.stream()
                .filter(supplier -> name.startsWith(ListWords.key(supplier)))
                .toList();
        return inName.size() == 1 ? inName.get(0) : null;
    }

    private static String withoutSupplier(List<ListLayout> layouts) {
        List<String> inRows = List.copyOf(inRows(layouts));
        if (inRows.size() > 1) {
            List<String> some = inRows.stream().limit(NAMED).toList();
            return ListMessages.severalSuppliers(some, inRows.size() - some.size());
        }
        return titles(layouts).stream()
                .filter(line -> !line.isBlank())
                .findFirst()
                .map(line -> ListMessages.noSupplier(ListRows.shortened(line)))
                .orElseGet(ListMessages::noSupplier);
    }

    private static Set<String> inRows(List<ListLayout> layouts) {
        Set<String> names = new LinkedHashSet<>();
        for (ListLayout layout : layouts) {
            layout.readings().forEach((column, reading) -> {
                ColumnUse use = reading.use();
                if (use != null && use.meaning() == Meaning.SUPPLIER) {
                    Grid grid = layout.grid();
                    for (int row : grid.rows().below(layout.lastHeader())) {
                        Optional.ofNullable(grid.row(row).get(column)).ifPresent(cell -> names.add(cell.text()));
                    }
                }
            });
        }
        return names;
    }

    private static List<String> titles(List<ListLayout> layouts) {
        return layouts.stream()
                .flatMap(layout -> TitleFacts.lines(layout).stream())
                .toList();
    }

    /** The name after a word for a supplier and a colon: {@code Fournisseur : Havre Chimie}. */
    private static Optional<String> labelled(String line) {
        int colon = line.indexOf(':');
        boolean label = colon > 0 && ListWords.is("supplier", line.substring(0, colon));
        return Optional.of(line.substring(colon + 1).strip()).filter(name -> label && !name.isEmpty());
    }

    private Optional<String> known(String name) {
        return suppliers.stream()
                .filter(other -> ListWords.key(other).equals(ListWords.key(name)))
                .findFirst();
    }

    private static boolean isOfAnother(ListLine line, String supplier) {
        String named = line.listed().supplier();
        return !named.isEmpty()
                && !named.equals(supplier)
                && !ListWords.key(named).equals(ListWords.key(supplier));
    }

    /** The day of a list and the last day that it is valid. */
    private record Days(LocalDate quotedOn, @Nullable LocalDate validUntil) {}

    private static @Nullable Days days(
            Said said, List<ListLine> lines, TitleFacts title, List<Question> questions, Findings findings, Path file) {
        Optional<LocalDate> newest = lines.stream()
                .flatMap(line -> Stream.ofNullable(line.quotedOn()))
                .max(LocalDate::compareTo);
        boolean allDated = !lines.isEmpty() && lines.stream().allMatch(line -> line.quotedOn() != null);
        LocalDate day = said.quotedOn() != null
                ? said.quotedOn()
                : title.quotedOn() != null ? title.quotedOn() : ofName(file).orElse(null);
        LocalDate first = allDated && newest.isPresent() ? newest.get() : day;
        LocalDate until = said.validUntil() != null ? said.validUntil() : title.untilFrom(first);
        if (allDated && newest.isPresent()) {
            return new Days(newest.get(), until);
        }
        if (day != null) {
            return new Days(day, until);
        }
        Origin ambiguous = title.ambiguous();
        if (ambiguous != null) {
            questions.removeIf(question -> question.field().equals(Mapping.DATES));
            questions.add(Question.of(
                    Mapping.DATES, ambiguous, QuestionMessages.dayOrMonthOfList(), "day first", "month first"));
            return null;
        }
        if (questions.stream().noneMatch(Question::isAboutFirstDay)) {
            findings.error(whole(file), ListMessages.noDate());
        }
        return null;
    }

    private static Optional<LocalDate> ofName(Path file) {
        List<ListDates.Placed> dates = new ListDates(Optional.empty()).all(String.valueOf(file.getFileName()));
        return dates.size() == 1 ? Optional.ofNullable(dates.get(0).read().day()) : Optional.empty();
    }

    /** The mapping with the names that were found in this list. */
    private static Mapping confirmed(Mapping mapping, NameMatcher names) {
        Map<String, Mapping.NameAnswer> all = new LinkedHashMap<>(mapping.names());
        names.found().forEach((listed, match) -> {
            switch (match.by()) {
                case LETTERS, INCI, CAS, SYNONYM ->
                    all.put(
                            listed,
                            new Mapping.NameAnswer(match.name(), match.by().word(), "", 0));
                case LIKE, OTHER_GRADE, LOOKS_THE_SAME ->
                    all.put(listed, new Mapping.NameAnswer(null, "", match.perhaps(), match.likeness()));
                case ANSWER, SAME, NOTHING -> {}
            }
        });
        return new Mapping(mapping.supplier(), mapping.answers(), mapping.columns(), all);
    }

    /** The mapping with the use of each column, so that a person can correct it. */
    private static Mapping proposed(Mapping mapping, List<ListLayout> layouts, List<Question> questions) {
        Map<String, @Nullable String> columns = new LinkedHashMap<>(mapping.columns());
        Set<String> open = new LinkedHashSet<>();
        questions.forEach(question -> open.add(question.key().toLowerCase(Locale.ROOT)));
        for (ListLayout layout : layouts) {
            layout.readings().forEach((column, reading) -> {
                String header = layout.headers().getOrDefault(column, "");
                ColumnUse use = reading.use();
                if (use != null && !open.contains(header.toLowerCase(Locale.ROOT))) {
                    columns.putIfAbsent(header, use.words());
                }
            });
        }
        return new Mapping(mapping.supplier(), mapping.answers(), columns, mapping.names());
    }
}
