package perkilo.pricelists;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.CellFault;
import perkilo.layouts.ListDates;
import perkilo.layouts.ListLine;
import perkilo.layouts.ListRows;
import perkilo.layouts.ListWords;
import perkilo.layouts.ListedItem;
import perkilo.layouts.Mapping;
import perkilo.layouts.Meaning;
import perkilo.layouts.NotRead;
import perkilo.layouts.Question;
import perkilo.layouts.QuestionMessages;
import perkilo.layouts.TitleFacts;
import perkilo.names.Names;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.review.Asked;
import perkilo.review.Key;
import perkilo.xlsx.grid.Grid;

/** One list of one supplier, from its sheets to the folder of lists. */
final class OneList {

    /** How many prices a person looks through at most. */
    private static final int MOST_SHOWN = 5_000;

    /** A typed value may show another thing that is wrong. */
    private static final int MOST_ROUNDS = 3;

    private static final int LINES_NAMED = 4;

    /** How many digits of a digest tell contents apart. */
    private static final int DIGITS = 12;

    private static final String QUOTED_ON = "quoted on";
    private static final String REPLACES = "it replaces the earlier one";
    private static final String ADDS = "add it to the earlier one";
    private static final String NAME_IS_RIGHT = "the name is right";
    private static final String CONFIRMED = "confirmed";

    private final ListFolder folder;
    private final KnownNames known;
    private final TakeIn.Arrived arrived;
    private final TakeIn.Said said;
    private final Supplier supplier;
    private final ListAnswers answers;
    private final Memory memory;
    private final Findings findings = new Findings();
    private final List<Question> open = new ArrayList<>();
    private final List<Asked> asked = new ArrayList<>();
    private String digest = "";
    private final Set<String> others = new HashSet<>();
    private final List<RowNotRead> notRead = new ArrayList<>();

    OneList(
            ListFolder folder,
            KnownNames known,
            TakeIn.Arrived arrived,
            TakeIn.Said said,
            Supplier supplier,
            ListAnswers answers) {
        this.folder = folder;
        this.known = known;
        this.arrived = arrived;
        this.said = said;
        this.supplier = supplier;
        this.answers = answers;
        this.memory = answers.memory();
    }

    /** The day of a list and the last day that it is valid. */
    private record Days(
            @Nullable LocalDate quotedOn, @Nullable LocalDate validUntil) {}

    /** A line with the row that it is kept as. */
    private record Row(ListLine line, NameMatcher.Match match, KeptRow kept) {}

    /** Reads the list, and keeps it if nothing is open and nothing is wrong. */
    TakenIn take() throws IOException {
        findings.addAll(arrived.grids().findings());
        rememberNoList();
        TypedCells typed = new TypedCells(answers, arrived.digest());
        AnsweredReading reading = AnsweredReading.of(arrived.grids().sheets(), answers);
        for (int round = 0; round < MOST_ROUNDS && typed.take(reading.faults()); round++) {
            reading = AnsweredReading.of(typed.in(arrived.grids().sheets()), answers);
        }
        folder.keepNoList(arrived.name(), arrived.digest(), reading.isNoList());
        if (reading.isNoList()) {
            asked.addAll(reading.asked());
            findings.note(arrived.whole(), ListMessages.noList());
            return taken(
                    new Days(null, null), null, List.of(), reading, new PriceJumps(arrived.name(), Map.of(), answers));
        }
        open.addAll(reading.open());
        askWhose();
        asked.addAll(reading.asked());
        List<ListLine> lines = new ArrayList<>(reading.lines());
        leaveRowsOut(reading, typed, lines);
        sayLines(reading.notRead());
        String name = supplier.name();
        if (name != null) {
            lines.stream()
                    .filter(line -> isOfAnother(line, name))
                    .forEach(line -> others.add(ListWords.key(line.listed().supplier())));
            lines.removeIf(line -> isOfAnother(line, name));
        }
        Days days = days(lines, reading.title(), reading.columns());
        NameMatcher names = names(lines, reading.items());
        new ListCheck(names, !known.isEmpty(), findings)
                .check(lines, open.isEmpty() && notRead.stream().noneMatch(RowNotRead::isOpen));
        List<Row> rows = rows(lines, names, days);
        boolean complete = name != null && days.quotedOn() != null;
        PriceJumps jumps = new PriceJumps(
                arrived.name(),
                name == null || days.quotedOn() == null ? Map.of() : folder.before(name, days.quotedOn()),
                answers);
        List<Row> kept = complete ? holding(rows, jumps) : rows;
        ListFolder.@Nullable Kept where = null;
        if (name != null && days.quotedOn() != null) {
            Optional<List<KeptRow>> list = merged(name, days.quotedOn(), kept);
            boolean wrong = findings.list().stream().anyMatch(Finding::isError);
            if (list.isPresent() && open.isEmpty() && !wrong) {
                List<KeptRow> added = kept.stream().map(Row::kept).toList();
                where = keep(name, days.quotedOn(), list.get(), added, names);
            }
        }
        asked.addAll(answers.asked());
        return taken(days, where, kept, reading, jumps);
    }

    /** A file that is no price list stays so, unless a person answers otherwise now. */
    private void rememberNoList() throws IOException {
        if (folder.isNoList(arrived.name(), arrived.digest())) {
            for (Grid sheet : arrived.grids().sheets()) {
                if (!answers.isAnswerTakenOut(answers.keyOf(Memory.HEADER_ROW, sheet.sheet()))) {
                    memory.put(Memory.HEADER_ROW, sheet.sheet(), SheetTables.NO_LIST, "");
                }
            }
        }
    }

    private void askWhose() {
        Question whose = supplier.question();
        if (whose != null && supplier.answer().isEmpty()) {
            ask(whose);
        } else if (whose != null) {
            asked.add(asked(whose).answered(supplier.answer(), ""));
        }
        if (!supplier.note().isEmpty()) {
            findings.note(arrived.whole(), supplier.note());
        }
    }

    /** Says which lines about money change no price. */
    private void sayLines(List<NotRead> all) {
        List<String> lines = all.stream()
                .filter(NotRead::isOfMoney)
                .map(line -> "\"" + ListRows.shortened(line.what()) + "\" (" + placeOf(line.where()) + ")")
                .distinct()
                .toList();
        if (!lines.isEmpty()) {
            List<String> some = lines.subList(0, Math.min(LINES_NAMED, lines.size()));
            findings.note(arrived.whole(), ListMessages.linesNotUsed(lines.size(), some));
        }
    }

    private void ask(Question question) {
        open.add(question);
        asked.add(asked(question));
    }

    private Asked asked(Question question) {
        String key = answers.keyOf(question.field(), question.key());
        return Asked.of(key, question.where(), "", question.text(), question.choices());
    }

    /** Rows with something wrong: they are left out if a person says so. */
    private void leaveRowsOut(AnsweredReading reading, TypedCells typed, List<ListLine> lines) {
        Map<String, CellFault> faults = new HashMap<>();
        reading.faults().forEach(fault -> faults.put(fault.where().where() + " " + fault.text(), fault));
        notRead.addAll(typed.settled(reading.faults()));
        Set<String> ignored = new HashSet<>();
        for (Finding finding : reading.findings()) {
            Origin where = finding.origin();
            if (!finding.isError() || where.cell().isEmpty()) {
                findings.addAll(List.of(finding));
                continue;
            }
            CellFault fault = faults.get(where.where() + " " + finding.text());
            Optional<String> failed = fault == null ? Optional.empty() : typed.failed(fault);
            if (fault != null && failed.isPresent()) {
                findings.addAll(List.of(finding));
                String remark = ListMessages.notUnderstood(failed.get());
                notRead.add(new RowNotRead(typed.key(fault), where, finding.text(), "", remark, choices(fault), false));
                continue;
            }
            String about = fault == null ? where.where() + " " + finding.text() : typed.about(fault);
            String key = answers.keyOf(Memory.ROW, about);
            answers.said(key).ifPresent(answer -> memory.put(Memory.ROW, about, answer, ""));
            if (answers.isTakenOut(key)) {
                memory.forget(Memory.ROW, about, "");
            }
            String answer = memory.answer(Memory.ROW, about).orElse("");
            RowNotRead row = new RowNotRead(
                    key,
                    where,
                    finding.text(),
                    answer,
                    answer.isEmpty() ? "" : answers.remark(Memory.ROW, about, ""),
                    choices(fault),
                    false);
            notRead.add(row);
            if (row.isIgnored()) {
                ignored.add(where.sheet() + "!" + rowOf(where));
                findings.note(where, ListMessages.leftOutRow(finding.text()));
            } else {
                findings.addAll(List.of(finding));
            }
        }
        if (!ignored.isEmpty()) {
            lines.removeIf(line -> ignored.contains(line.origin().sheet() + "!" + rowOf(line.origin())));
        }
    }

    /** A cell that is blank may say the same as the one above it. */
    private static List<String> choices(@Nullable CellFault fault) {
        boolean blank =
                fault != null && fault.grid().at(fault.row(), fault.column()).isBlank();
        return blank ? List.of(TypedCells.AS_ABOVE, RowNotRead.IGNORE) : List.of(RowNotRead.IGNORE);
    }

    private static String placeOf(Origin where) {
        return where.sheet().isEmpty() ? where.cell() : where.sheet() + "!" + where.cell();
    }

    private static String rowOf(Origin where) {
        return where.cell().replaceAll("\\D", "");
    }

    /**
     * The days of a list. Those in its rows are not asked for while another question keeps all rows from being read.
     */
    private Days days(List<ListLine> lines, @Nullable TitleFacts title, List<ListColumn> columns) {
        Optional<LocalDate> newest = lines.stream()
                .flatMap(line -> Stream.ofNullable(line.quotedOn()))
                .max(LocalDate::compareTo);
        boolean allDated = !lines.isEmpty() && lines.stream().allMatch(line -> line.quotedOn() != null);
        if (allDated && newest.isPresent()) {
            return new Days(newest.get(), until(newest.get(), title));
        }
        String key = answers.keyOf(QUOTED_ON, "");
        LocalDate answered = answers.given(key).map(TakeIn::day).orElse(null);
        LocalDate day = Stream.of(
                        Optional.ofNullable(said.quotedOn()),
                        Optional.ofNullable(answered),
                        Optional.ofNullable(title == null ? null : title.quotedOn()),
                        rememberedDay(),
                        ofName())
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(null);
        boolean inRows = lines.isEmpty()
                && !open.isEmpty()
                && columns.stream().anyMatch(column -> column.use().equals(Meaning.QUOTED_ON.word()));
        if (day == null && !inRows && open.stream().noneMatch(Question::isAboutFirstDay)) {
            Origin ambiguous = title == null ? null : title.ambiguous();
            Question question = ambiguous == null
                    ? Question.of(QUOTED_ON, arrived.whole(), ListMessages.noDate())
                    : new Question(
                            Mapping.DATES,
                            "|",
                            ambiguous,
                            QuestionMessages.dayOrMonthOfList(),
                            List.of("day first", "month first"));
            boolean asksAlready = open.stream().anyMatch(one -> one.field().equals(Mapping.DATES));
            if (ambiguous == null || !asksAlready) {
                ask(question);
                answers.given(answers.keyOf(question.field(), question.key())).ifPresent(this::notUnderstood);
            }
        } else if (day != null && answered != null) {
            asked.add(asked(Question.of(QUOTED_ON, arrived.whole(), ListMessages.noDate()))
                    .answered(answered.toString(), ""));
        }
        return new Days(day, until(day, title));
    }

    /** The last day that a person gave, or that the list gives or says how far it is from its day. */
    private @Nullable LocalDate until(@Nullable LocalDate day, @Nullable TitleFacts title) {
        return said.validUntil() != null ? said.validUntil() : title == null ? null : title.untilFrom(day);
    }

    /** Remarks that the answer to the last question does not settle it. */
    private void notUnderstood(String answer) {
        Asked last = asked.remove(asked.size() - 1);
        asked.add(last.answered("", ListMessages.notUnderstood(answer)));
    }

    private Optional<LocalDate> rememberedDay() {
        return memory.dayOf(arrived.name(), arrived.digest()).map(TakeIn::day);
    }

    private Optional<LocalDate> ofName() {
        List<ListDates.Placed> dates = new ListDates(Optional.empty()).all(arrived.name());
        return dates.size() == 1 ? Optional.ofNullable(dates.get(0).read().day()) : Optional.empty();
    }

    private static boolean isOfAnother(ListLine line, String supplier) {
        return isOfAnother(line.listed(), supplier);
    }

    private static boolean isOfAnother(ListLine.Listed listed, String supplier) {
        String named = listed.supplier();
        return !named.isEmpty()
                && !named.equals(supplier)
                && !ListWords.key(named).equals(ListWords.key(supplier));
    }

    /** The names of a list, with what a person answered about them; asks about names that resemble known ones. */
    private NameMatcher names(List<ListLine> lines, List<ListedItem> listed) {
        Map<String, ListedItem> items = new LinkedHashMap<>();
        lines.forEach(line -> items.putIfAbsent(line.item(), new ListedItem(line.listed(), line.origin())));
        listed.stream()
                .filter(item -> supplier.name() == null || !isOfAnother(item.listed(), supplier.name()))
                .forEach(item -> items.putIfAbsent(item.listed().item(), item));
        Map<String, String> typed = answers.names();
        if (!typed.isEmpty()) {
            for (String item : items.keySet()) {
                String ours = typed.get(ListWords.key(item));
                if (ours != null && ours.isEmpty()) {
                    memory.forget(Memory.NAME, item, "");
                } else if (ours != null) {
                    memory.put(Memory.NAME, item, ours, "");
                }
            }
        }
        NameMatcher names = new NameMatcher(known, memory.mapping(""));
        boolean answered = false;
        for (ListedItem line : items.values()) {
            NameMatcher.Match match = names.of(line.listed());
            boolean similar = match.by() == NameMatcher.By.LIKE
                    || match.by() == NameMatcher.By.OTHER_GRADE
                    || match.by() == NameMatcher.By.LOOKS_THE_SAME;
            if (similar) {
                answered |= answerName(line, match);
            } else if (match.by() == NameMatcher.By.ANSWER) {
                answered |= checkAnswer(line, match);
            }
        }
        showAnswers(items.keySet());
        return answered ? new NameMatcher(known, memory.mapping("")) : names;
    }

    /** Shows the names that a person was asked about, with the answers. */
    private void showAnswers(Set<String> items) {
        for (Remembered one : memory.all(Memory.NAME)) {
            if (!one.question().isEmpty() && items.contains(one.listed())) {
                boolean own = one.answer().equals(one.listed());
                asked.add(new Asked(
                        answers.keyOf(Memory.NAME, one.listed()),
                        arrived.whole(),
                        "",
                        one.question(),
                        one.choices(),
                        own ? Memory.OWN_NAME : one.answer(),
                        answers.remark(Memory.NAME, one.listed(), "")));
            }
        }
    }

    private boolean answerName(ListedItem line, NameMatcher.Match match) {
        String item = line.listed().item();
        String text = switch (match.by()) {
            case OTHER_GRADE -> ListMessages.otherGrade(item, match.perhaps());
            case LOOKS_THE_SAME -> ListMessages.looksTheSame(item, match.perhaps());
            default -> ListMessages.similarName(item, match.perhaps());
        };
        Question question =
                new Question(Memory.NAME, item, line.origin(), text, List.of(match.perhaps(), Memory.OWN_NAME));
        Optional<String> answer = answers.given(answers.keyOf(Memory.NAME, item));
        if (answer.isEmpty()) {
            ask(question);
            return false;
        }
        String name = answer.get().equalsIgnoreCase(Memory.OWN_NAME) ? item : answer.get();
        memory.put(new Remembered(Memory.NAME, item, name, "", text, question.choices(), ""));
        NameMatcher.Match answered = new NameMatcher(known, memory.mapping("")).of(line.listed());
        checkAnswer(line, answered);
        return true;
    }

    /** Asks about a name that a person typed and that is not known; whether they answered that before. */
    private boolean checkAnswer(ListedItem line, NameMatcher.Match match) {
        String item = line.listed().item();
        boolean confirmed = memory.get(Memory.NAME, item, "")
                .filter(one -> one.how().equals(CONFIRMED))
                .isPresent();
        boolean own = Names.key(match.name()).equals(Names.key(item));
        if (known.isEmpty() || confirmed || own || !known.same(match.name()).isEmpty()) {
            return false;
        }
        String about = item + " = " + match.name();
        Optional<String> answer = answers.given(answers.keyOf(Memory.NAME, about));
        if (answer.isEmpty()) {
            ask(new Question(
                    Memory.NAME,
                    about,
                    line.origin(),
                    ListMessages.unknownAnswer(item, match.name()),
                    List.of(NAME_IS_RIGHT, Memory.OWN_NAME)));
            return false;
        }
        if (answer.get().equalsIgnoreCase(NAME_IS_RIGHT)) {
            memory.put(Memory.NAME, item, match.name(), CONFIRMED);
        } else {
            memory.put(Memory.NAME, item, answer.get().equalsIgnoreCase(Memory.OWN_NAME) ? item : answer.get(), "");
        }
        return true;
    }

    private List<Row> rows(List<ListLine> lines, NameMatcher names, Days days) {
        List<Row> rows = new ArrayList<>();
        String name = supplier.name() == null ? "" : supplier.name();
        for (ListLine line : lines) {
            NameMatcher.Match match = names.of(line.listed());
            rows.add(new Row(
                    line,
                    match,
                    KeptRow.of(name, match.name(), line, days.quotedOn(), days.validUntil(), arrived.name())));
        }
        return rows;
    }

    /** The rows without those that contradict others of the list, and without prices that a person leaves out. */
    private List<Row> holding(List<Row> rows, PriceJumps jumps) {
        Merging own = new Merging(arrived.name(), answers);
        rows.forEach(row -> own.add(row.kept(), row.line().origin()));
        List<Row> left = own.hasAnyTwice() ? withoutDoubles(rows, own) : rows;
        Set<KeptRow> out = jumps.leftOut(left.stream()
                .map(row -> new PriceJumps.Placed(row.kept(), row.line().origin()))
                .toList());
        open.addAll(jumps.open());
        for (KeptRow row : out) {
            findings.note(arrived.whole(), ListMessages.leftOut(row.words(), row.priceWords()));
        }
        return out.isEmpty()
                ? left
                : left.stream().filter(row -> !out.contains(row.kept())).toList();
    }

    private List<Row> withoutDoubles(List<Row> rows, Merging own) {
        Map<String, List<KeptRow>> holding = new LinkedHashMap<>();
        own.rows()
                .forEach(row -> holding.computeIfAbsent(row.place(), any -> new ArrayList<>(1))
                        .add(row));
        open.addAll(own.open());
        List<Row> left = new ArrayList<>();
        for (Row row : rows) {
            List<KeptRow> here = holding.getOrDefault(row.kept().place(), List.of());
            if (here.size() > 1) {
                left.add(row);
            } else if (!here.isEmpty() && row.kept().hasPriceOf(here.get(0))) {
                left.add(new Row(row.line(), row.match(), here.get(0)));
                holding.remove(row.kept().place());
            }
        }
        return left;
    }

    /** The list of the supplier and day with these rows; empty if a person has to say first what becomes of it. */
    private Optional<List<KeptRow>> merged(String name, LocalDate day, List<Row> rows) throws IOException {
        List<KeptRow> before = folder.rows(name, day);
        List<KeptRow> mine = before.stream()
                .filter(row -> Merging.files(row).contains(arrived.name()))
                .toList();
        List<KeptRow> added = rows.stream().map(Row::kept).toList();
        if (before.isEmpty()) {
            return Optional.of(added);
        }
        if (memory.hasTaken(arrived.name(), day.toString(), arrived.digest(), digest(added))) {
            return Optional.of(before);
        }
        boolean sameFile = memory.dayOf(arrived.name(), arrived.digest()).isPresent();
        boolean replaces = mine.isEmpty() || sameFile || replaces(mine, added);
        Merging merging = new Merging(arrived.name(), answers);
        for (KeptRow row : before) {
            Optional<KeptRow> rest = replaces ? Merging.without(row, arrived.name()) : Optional.of(row);
            rest.ifPresent(merging::addEarlier);
        }
        rows.forEach(row -> merging.add(row.kept(), row.line().origin()));
        List<KeptRow> list = merging.rows();
        open.addAll(merging.open());
        boolean unchanged = new HashSet<>(list).equals(new HashSet<>(before));
        return Optional.of(unchanged ? before : list);
    }

    /** What tells these rows apart from others. */
    private String digest(List<KeptRow> rows) {
        if (digest.isEmpty()) {
            digest = Key.digest(LongForm.bytes(rows)).substring(0, DIGITS);
        }
        return digest;
    }

    /** Whether a changed file replaces what it brought before: what it lost or says differently is asked about. */
    private boolean replaces(List<KeptRow> mine, List<KeptRow> added) {
        Map<String, KeptRow> now = new LinkedHashMap<>();
        added.forEach(row -> now.put(row.place(), row));
        int gone = 0;
        int differ = 0;
        for (KeptRow row : mine) {
            KeptRow other = now.remove(row.place());
            gone += other == null ? 1 : 0;
            differ += other != null && !other.allWords().equals(row.allWords()) ? 1 : 0;
        }
        if (gone == 0 && differ == 0) {
            return true;
        }
        Question question = new Question(
                Memory.SAME_FILE,
                arrived.name() + " " + arrived.digest().substring(0, DIGITS),
                arrived.whole(),
                ListMessages.changedFile(differ, now.size(), gone),
                List.of(REPLACES, ADDS));
        Optional<String> answer = answers.answerTo(question);
        if (answer.isEmpty()) {
            open.add(question);
            return true;
        }
        return answer.get().equals(REPLACES);
    }

    private ListFolder.Kept keep(String name, LocalDate day, List<KeptRow> list, List<KeptRow> added, NameMatcher names)
            throws IOException {
        takeOutElsewhere(name, day);
        boolean joined = list.stream().anyMatch(row -> !row.file().equals(arrived.name()));
        ListFolder.Kept kept = folder.keep(name, day, list, joined);
        memory.putFile(arrived.name(), day.toString(), arrived.digest(), digest(added));
        names.found().forEach((listed, match) -> {
            if (!match.by().word().isEmpty() && match.by() != NameMatcher.By.SAME) {
                memory.put(Memory.NAME, listed, match.name(), match.by().word());
            }
        });
        return kept;
    }

    /** The same file may have been taken in for another day or supplier, which a person corrected. */
    private void takeOutElsewhere(String name, LocalDate day) throws IOException {
        for (Memory other : folder.memories()) {
            LocalDate when = other.dayOf(arrived.name(), arrived.digest())
                    .map(TakeIn::day)
                    .orElse(null);
            boolean same = other.supplier().equals(name) && day.equals(when);
            boolean shared = others.contains(ListWords.key(other.supplier()));
            if (when != null && !same && !shared) {
                folder.takeOut(other.supplier(), when, arrived.name());
                if (!other.supplier().equals(name)) {
                    other.forget(Memory.FILE, arrived.name(), "");
                    folder.keep(other);
                }
            }
        }
    }

    private TakenIn taken(
            Days days, ListFolder.@Nullable Kept kept, List<Row> rows, AnsweredReading reading, PriceJumps jumps) {
        int priced = 0;
        Set<String> items = new HashSet<>();
        List<PriceLine> lines = new ArrayList<>();
        for (Row row : rows) {
            if (row.line().isPriced()) {
                priced++;
                items.add(Names.key(row.line().item()));
            }
            if (lines.size() < MOST_SHOWN) {
                lines.add(line(row, jumps));
            }
        }
        List<Origin> sheets = reading.otherSheets();
        sheets.forEach(sheet -> findings.note(sheet, ListMessages.noTable()));
        return new TakenIn(
                arrived.file(),
                arrived.key(),
                supplier.name() == null ? "" : supplier.name(),
                days.quotedOn(),
                days.validUntil(),
                new TakenIn.Count(priced, items.size()),
                kept,
                reading.isNoList(),
                open,
                new TakenIn.Seen(
                        asked.stream()
                                .map(one -> one.saying(arrived.says(one.where())))
                                .toList(),
                        lines,
                        reading.columns(),
                        notRead,
                        sheets),
                findings.list());
    }

    private PriceLine line(Row row, PriceJumps jumps) {
        KeptRow kept = row.kept();
        ListLine line = row.line();
        return new PriceLine(
                answers.keyOf("price", line.origin().where() + kept.packAndBreak()),
                line.origin(),
                line.item(),
                kept.item(),
                known.isEmpty() && row.match().by() == NameMatcher.By.NOTHING
                        ? ""
                        : row.match().by().said(),
                kept.packSize() + " " + kept.packUnit(),
                kept.from(),
                line.price() == null ? null : line.price().price().value(),
                kept.per(),
                kept.currency(),
                kept.quotedOn(),
                kept.terms().validUntil(),
                jumps.before(kept));
    }

    /** A result with another finding. */
    TakenIn with(TakenIn taken, Finding finding) {
        List<Finding> all = new ArrayList<>(taken.findings());
        all.add(finding);
        return new TakenIn(
                taken.source(),
                taken.key(),
                taken.supplier(),
                taken.quotedOn(),
                taken.validUntil(),
                taken.count(),
                taken.kept(),
                taken.noList(),
                taken.questions(),
                taken.seen(),
                all);
    }
}
