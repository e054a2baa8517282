package perkilo.pricelists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.CellFault;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.ListLayout;
import perkilo.layouts.ListLine;
import perkilo.layouts.ListReading;
import perkilo.layouts.ListRows;
import perkilo.layouts.ListWords;
import perkilo.layouts.ListedItem;
import perkilo.layouts.Mapping;
import perkilo.layouts.Meaning;
import perkilo.layouts.NotRead;
import perkilo.layouts.Question;
import perkilo.layouts.QuestionMessages;
import perkilo.layouts.TitleFacts;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.review.Asked;
import perkilo.xlsx.grid.Grid;

/**
 * Reads the tables of a list with the answers that are known, and with those that a person gave on a review: a question
 * that has an answer there is answered, and the list is read again.
 */
final class AnsweredReading {

    /** An answer may lead to another question. */
    private static final int MOST_ROUNDS = 6;

    private static final String COLUMN = "column";
    private static final String SUCH_AS = " such as ";

    /** What is offered besides the currencies of the list; others may be typed. */
    private static final List<String> CURRENCIES =
            List.of("EUR", "USD", "GBP", "CHF", "CAD", "AUD", "SEK", "DKK", "NOK", "PLN", "CZK", "JPY", "CNY", "INR");

    private static final String PACK = "pack";

    private final List<Grid> sheets;
    private final ListAnswers answers;
    private final Memory memory;
    private final Map<String, String> headerRows = new HashMap<>();
    private final Set<String> applied = new HashSet<>();
    private Pass last = new Pass();

    /** What one reading of all tables came to. */
    private static final class Pass {
        private final Findings findings = new Findings();
        private final List<ListLine> lines = new ArrayList<>();
        private final Map<String, Open> open = new LinkedHashMap<>();
        private final List<ListColumn> columns = new ArrayList<>();
        private final List<ListLayout> layouts = new ArrayList<>();
        private final List<NotRead> notRead = new ArrayList<>();
        private final List<ListedItem> items = new ArrayList<>();
        private final List<CellFault> faults = new ArrayList<>();
        private @Nullable TitleFacts title;
        private SheetTables tables = new SheetTables(List.of(), List.of());
    }

    /** A question of a table. */
    private record Open(Question question, String layout) {}

    private AnsweredReading(List<Grid> sheets, ListAnswers answers) {
        this.sheets = sheets;
        this.answers = answers;
        this.memory = answers.memory();
    }

    /** Reads all tables. */
    static AnsweredReading of(List<Grid> sheets, ListAnswers answers) {
        AnsweredReading reading = new AnsweredReading(sheets, answers);
        reading.read();
        return reading;
    }

    private void read() {
        answerHeaderRows();
        answerDates();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            last = pass();
            boolean columns = answerColumns(last);
            if (!answerQuestions(last) && !columns) {
                return;
            }
        }
    }

    private void answerDates() {
        answers.given(answers.keyOf(Mapping.DATES, "|"))
                .ifPresent(order -> memory.put(new Remembered(
                        Mapping.DATES,
                        "",
                        order,
                        "",
                        QuestionMessages.dayOrMonthOfList(),
                        List.of("day first", "month first"),
                        "")));
    }

    private void answerHeaderRows() {
        for (Grid sheet : sheets) {
            String key = answers.keyOf(Memory.HEADER_ROW, sheet.sheet());
            answers.given(key).ifPresent(row -> memory.put(Memory.HEADER_ROW, sheet.sheet(), row, ""));
            memory.answer(Memory.HEADER_ROW, sheet.sheet()).ifPresent(row -> headerRows.put(sheet.sheet(), row));
        }
    }

    private Pass pass() {
        Pass pass = new Pass();
        pass.tables = SheetTables.of(sheets, memory.mapping(""), headerRows);
        if (!pass.tables.tables().isEmpty()) {
            read(pass.tables.tables(), pass);
        }
        if (pass.tables.tables().isEmpty()) {
            for (ListLayout guess : pass.tables.guesses()) {
                pass.columns.addAll(columns(guess, Map.of()));
                ask(guess, pass);
            }
        }
        pass.layouts.addAll(pass.tables.tables());
        return pass;
    }

    private static void ask(ListLayout guess, Pass pass) {
        Grid grid = guess.grid();
        List<String> choices = new ArrayList<>();
        if (guess.lastHeader() >= 0) {
            choices.add("row " + SheetTables.called(grid, guess.lastHeader()));
        }
        choices.add(SheetTables.NONE);
        choices.add(pass.tables.guesses().size() == 1 ? SheetTables.NO_LIST : RowNotRead.IGNORE);
        if (pass.tables.guesses().size() > 1) {
            choices.add(SheetTables.NO_LIST);
        }
        String headings = ListRows.shortened(String.join(" | ", guess.headers().values()));
        Question question = new Question(
                Memory.HEADER_ROW,
                grid.sheet(),
                grid.origin(Math.max(0, guess.lastHeader()), 0),
                ListMessages.noTable(headings),
                choices);
        pass.open.put(Memory.HEADER_ROW + grid.sheet(), new Open(question, ""));
    }

    private void read(List<ListLayout> layouts, Pass pass) {
        ListReading reading = ListReading.of(layouts, layout -> memory.mapping(headings(layout)), pass.findings);
        pass.lines.addAll(reading.lines());
        pass.title = reading.facts();
        pass.notRead.addAll(reading.notRead());
        pass.items.addAll(reading.items());
        pass.faults.addAll(reading.faults());
        for (ListReading.Table table : reading.tables()) {
            ListLayout layout = table.columns().layout();
            String id = headings(layout);
            table.questions()
                    .forEach(question -> pass.open.putIfAbsent(
                            id + "|" + question.field() + "|" + question.key(), new Open(question, id)));
            Set<String> asked = table.questions().stream()
                    .filter(question -> question.field().equals(Mapping.COLUMNS))
                    .map(question -> keyOfColumn(layout, question.key()))
                    .collect(Collectors.toSet());
            columns(layout, table.columns().uses()).stream()
                    .filter(column -> !column.isNotRead() || !asked.contains(column.key()))
                    .forEach(pass.columns::add);
        }
    }

    /** The headings of a table, by which its answers are remembered; digits in them may change from list to list. */
    static String headings(ListLayout layout) {
        return String.join(
                " | ",
                layout.headers().values().stream()
                        .filter(header -> !header.isBlank())
                        .map(header -> header.replaceAll("\\d+", "#").replaceAll("\\s+", " "))
                        .toList());
    }

    private List<ListColumn> columns(ListLayout layout, Map<Integer, ColumnUse> uses) {
        List<ListColumn> columns = new ArrayList<>();
        layout.headers().forEach((column, header) -> {
            List<String> samples = SheetTables.samples(layout, column);
            if (header.isBlank() && samples.isEmpty()) {
                return;
            }
            ColumnUse use = uses.get(column);
            String said = memory.answer(Memory.COLUMN, header)
                    .map(AnsweredReading::shown)
                    .orElse("");
            columns.add(new ListColumn(
                    keyOfColumn(layout, header),
                    layout.grid().origin(Math.max(0, layout.lastHeader()), column),
                    header.isBlank() ? ListLayout.withoutHeading(column) : header,
                    samples,
                    use == null ? "" : use.words(),
                    said,
                    said.isEmpty() ? "" : answers.remark(Memory.COLUMN, header, "")));
        });
        return columns;
    }

    private static String shown(String use) {
        return use.equalsIgnoreCase(Meaning.NOTHING.word()) ? RowNotRead.IGNORE : use;
    }

    /** Puts in what a person said about columns; whether there was anything. */
    private boolean answerColumns(Pass pass) {
        boolean any = false;
        List<ListLayout> layouts = new ArrayList<>(pass.tables.tables());
        layouts.addAll(pass.tables.guesses());
        for (ListLayout layout : layouts) {
            for (String header : layout.headers().values()) {
                String key = keyOfColumn(layout, header);
                Optional<String> said = answers.said(key);
                if (said.isPresent() && applied.add(key)) {
                    memory.put(Memory.COLUMN, header, use(said.get()), "");
                    any = true;
                } else if (answers.isTakenOut(key) && applied.add(key)) {
                    memory.forget(Memory.COLUMN, header, "");
                    any = true;
                }
            }
        }
        return any;
    }

    private String keyOfColumn(ListLayout layout, String header) {
        return answers.keyOf(COLUMN, layout.grid().sheet() + "|" + header);
    }

    /** Puts the answers of a person in; whether there were any. */
    private boolean answerQuestions(Pass pass) {
        boolean any = false;
        for (Open open : pass.open.values()) {
            Question question = open.question();
            String key = key(open);
            Optional<String> answer = answers.given(key);
            if (answer.isPresent() && applied.add(key + answer.get())) {
                apply(question, open.layout(), answer.get());
                any = true;
            }
        }
        return any;
    }

    private void apply(Question question, String layout, String answer) {
        if (question.field().equals(Mapping.PACK_COLUMN)) {
            boolean isHeader = question.choices().stream()
                    .anyMatch(header -> ListWords.key(header).equals(ListWords.key(answer)));
            if (isHeader && !answer.equals(ListRows.ONE_PIECE)) {
                memory.put(Memory.COLUMN, answer, PACK, "");
                return;
            }
        }
        if (question.field().equals(Mapping.COLUMNS)) {
            memory.put(Memory.COLUMN, question.key(), use(answer), "");
        } else if (!question.field().equals(Memory.HEADER_ROW)) {
            memory.put(new Remembered(
                    question.field(), question.key(), answer, "", question.text(), offered(question), layout));
        }
    }

    /** What a person says of a column, in the words of a column's uses. */
    static String use(String answer) {
        String words = answer.strip().replaceFirst("(?i)^(it is )?the ", "");
        return words.toLowerCase(Locale.ROOT).equals(RowNotRead.IGNORE) ? Meaning.NOTHING.word() : words;
    }

    private String key(Open open) {
        Question question = open.question();
        boolean own = Memory.isOwn(question.field());
        return answers.keyOf(question.field(), own ? question.key() : open.layout() + "|" + question.key());
    }

    /** What is still open: questions without an answer, or whose answer is not understood. */
    List<Question> open() {
        return last.open.values().stream().map(Open::question).toList();
    }

    /** All questions: those that are open, then those that have an answer. */
    List<Asked> asked() {
        List<Asked> asked = new ArrayList<>();
        for (Open open : last.open.values()) {
            Question question = open.question();
            Asked one = Asked.of(key(open), question.where(), "", question.text(), offered(question));
            Optional<String> wrong = answers.given(one.key());
            asked.add(wrong.map(words -> one.answered("", ListMessages.notUnderstood(words)))
                    .orElse(one));
        }
        headerRows.forEach((sheet, row) -> {
            if (!last.open.containsKey(Memory.HEADER_ROW + sheet)) {
                asked.add(new Asked(
                        answers.keyOf(Memory.HEADER_ROW, sheet),
                        new Origin(answers.file(), sheet, ""),
                        "",
                        ListMessages.whichHeaderRow(),
                        List.of(),
                        row,
                        answers.remark(Memory.HEADER_ROW, sheet, "")));
            }
        });
        Set<String> shown = new HashSet<>();
        for (ListLayout layout : last.layouts) {
            String id = headings(layout);
            for (Remembered one : memory.ofLayout(id)) {
                String key = answers.keyOf(one.what(), one.layout() + "|" + one.listed());
                boolean open = last.open.containsKey(id + "|" + one.what() + "|" + one.listed());
                if (!open && shown.add(key)) {
                    asked.add(new Asked(
                            key,
                            layout.grid().origin(),
                            "",
                            one.question().isEmpty() ? ListMessages.answeredBefore(one.what()) : one.question(),
                            one.choices(),
                            one.answer(),
                            answers.remark(one.what(), one.listed(), id)));
                }
            }
        }
        return asked;
    }

    /** The answers to choose from: an example in place of its description, and usual currencies. */
    private static List<String> offered(Question question) {
        Set<String> offered = new LinkedHashSet<>();
        for (String choice : question.choices()) {
            int example = choice.indexOf(SUCH_AS);
            offered.add(example < 0 ? choice : choice.substring(example + SUCH_AS.length()));
        }
        if (question.field().equals(Mapping.CURRENCY)) {
            offered.addAll(CURRENCIES);
        }
        return List.copyOf(offered);
    }

    List<ListLine> lines() {
        return last.lines;
    }

    /** What rows with prices name, whether their prices can be read yet or not. */
    List<ListedItem> items() {
        return last.items;
    }

    /** Cells with which something is wrong. */
    List<CellFault> faults() {
        return last.faults;
    }

    /** Whether a person says that the file is no price list. */
    boolean isNoList() {
        boolean said = headerRows.values().stream().anyMatch(SheetTables.NO_LIST::equalsIgnoreCase);
        return said || (last.layouts.isEmpty() && last.tables.guesses().isEmpty() && !headerRows.isEmpty());
    }

    List<Finding> findings() {
        return last.findings.list();
    }

    List<ListColumn> columns() {
        return last.columns;
    }

    List<ListLayout> layouts() {
        return last.layouts;
    }

    /** Columns, lines and sheets that are not used, each with the reason. */
    List<NotRead> notRead() {
        return last.notRead;
    }

    /** What the lines above the first table say; null if there is no table. */
    @Nullable TitleFacts title() {
        return last.title;
    }

    /** Sheets that hold no table, beside others that do. */
    List<Origin> otherSheets() {
        return last.layouts.isEmpty()
                ? List.of()
                : last.tables.guesses().stream()
                        .map(guess -> guess.grid().origin())
                        .toList();
    }
}
