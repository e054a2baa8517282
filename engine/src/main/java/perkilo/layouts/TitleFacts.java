package perkilo.layouts;

import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.xlsx.grid.Cell;

/**
 * What the lines around a table say: its date, its validity, the currency, what prices are for, and what changes them.
 *
 * @param lines the rows above the headers, each as one text
 * @param quotedOn the list's day; null if they give none
 * @param validUntil its last day; null if they give none
 * @param duration how long it is valid from its day on; null if they do not say
 * @param ambiguous the cell of a date that can be two days; null if there is none
 * @param note currency and what prices are for
 * @param sections the same for the rows below a heading between the rows, by the heading's row
 * @param adjustments what is added to the prices of the table, as a person said
 * @param shared those of them that hold for other tables too
 * @param footnotes the text of notes, by their mark
 * @param questions what the lines leave open
 * @param notRead lines that are not understood
 */
public record TitleFacts(
        List<String> lines,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil,
        @Nullable Period duration,
        @Nullable Origin ambiguous,
        PriceNote note,
        NavigableMap<Integer, PriceNote> sections,
        List<LineAdjustment> adjustments,
        List<LineAdjustment> shared,
        Map<String, String> footnotes,
        List<Question> questions,
        List<NotRead> notRead) {

    private static final Pattern PRICES = Pattern.compile(
            "(?<!\\p{L})(?:prices?|pricing|priced|quoted|preis\\w*|\\w*preise?n?|prix|tarifs?|prezz[io]|precios?|tarifas?|listino|currency"
                    + "|wahrung|devise|valuta|divisa|moneda|all figures|alle angaben|angaben|montants|importi|importes|amounts|betrage)(?!\\p{L})");
    private static final Pattern CODE = Pattern.compile("[€£$¥]|US\\$|\\b[A-Z]{3}\\b|(?i)\\beuros?\\b");
    private static final Pattern BASIS = Pattern.compile(
            "(?iu)(?:/|\\b(?:per|pro|je|par|au|le|la|al|por|el|pour|für|for)\\s+)\\s*((?:\\d[\\d.]*\\s*)?[\\p{L}]+|\\d[\\d.]*)");
    private static final Pattern FOOTNOTE = Pattern.compile("^(\\*{1,3}|†|‡|[¹²³]|\\d\\))\\s*(.+)");
    private static final Pattern SOME_DAY =
            Pattern.compile("\\d{1,2}\\.\\d{1,2}\\.(?!\\d)|\\d{1,2}\\.? \\p{L}{3,9}(?!\\p{L})");
    /** How the field of a question about a date begins. */
    static final String DATE_AFTER = "date after ";

    static final String BELOW = "below ";

    private static final int LONGEST_HEADING = 60;

    /** What the lines above the headers of a layout say. */
    public static TitleFacts of(ListLayout layout, ListDates dates) {
        return new Reading(Mapping.empty(""), new Findings(), dates, word -> false).read(LooseLine.above(layout));
    }

    /** The rows above the headers, each as one text. */
    public static List<String> lines(ListLayout layout) {
        return LooseLine.above(layout).stream().map(LooseLine::text).toList();
    }

    /** What all lines around a table say. */
    static TitleFacts of(
            List<LooseLine> lines, ListDates dates, Mapping mapping, Findings findings, ListColumns columns) {
        return new Reading(mapping, findings, dates, word -> isOnList(word, columns)).read(lines);
    }

    /** Whether an item or pack of the table has a word, or a heading above some of its prices. */
    private static boolean isOnList(String word, ListColumns columns) {
        Set<Integer> prices = columns.prices().keySet();
        String heading = "";
        for (int row : columns.layout().rows()) {
            NavigableMap<Integer, Cell> cells = columns.layout().grid().row(row);
            if (cells.size() == 1) {
                heading = cells.firstEntry().getValue().text();
            }
            if (cells.keySet().stream().noneMatch(prices::contains)) {
                continue;
            }
            List<String> texts = new ArrayList<>();
            texts.add(heading);
            for (Meaning meaning : List.of(Meaning.ITEM, Meaning.PACK)) {
                columns.of(meaning)
                        .ifPresent(column ->
                                texts.add(cells.getOrDefault(column, Cell.BLANK).text()));
            }
            if (LineAdjustment.isIn(word, texts)) {
                return true;
            }
        }
        return false;
    }

    /** How the dates of a table are written, as far as its own dates show. */
    static ListDates dates(Mapping mapping, ListColumns columns, List<LooseLine> lines) {
        return new ListDates(mapping.answer(Mapping.DATES)).shownBy(() -> datesIn(columns, lines));
    }

    private static List<String> datesIn(ListColumns columns, List<LooseLine> lines) {
        Set<String> texts = new LinkedHashSet<>();
        lines.forEach(line -> texts.add(line.text()));
        for (Meaning meaning : List.of(Meaning.QUOTED_ON, Meaning.VALID_UNTIL)) {
            columns.of(meaning).ifPresent(column -> {
                for (int row : columns.layout().rows()) {
                    String text = columns.layout().grid().at(row, column).text();
                    if (text.indexOf('/') >= 0 || text.indexOf('-') >= 0) {
                        texts.add(text);
                    }
                }
            });
        }
        return List.copyOf(texts);
    }

    /** What this table's lines leave open is taken from another, such as the table above. */
    TitleFacts orOf(TitleFacts other) {
        PriceNote joined = new PriceNote(
                note.currency() != null ? note.currency() : other.note.currency(),
                note.saysWhatFor() ? note.per() : other.note.per(),
                note.saysWhatFor() ? note.pack() : other.note.pack(),
                note.saysWhatFor() ? note.content() : other.note.content());
        boolean ownEnd = validUntil != null || duration != null;
        Set<LineAdjustment> all = new LinkedHashSet<>(adjustments);
        all.addAll(other.shared);
        return new TitleFacts(
                lines,
                quotedOn != null ? quotedOn : other.quotedOn,
                ownEnd ? validUntil : other.validUntil,
                ownEnd ? duration : other.duration,
                ambiguous != null || quotedOn != null ? ambiguous : other.ambiguous,
                joined,
                sections,
                List.copyOf(all),
                other.shared.isEmpty() ? shared : List.copyOf(union(shared, other.shared)),
                footnotes,
                questions,
                notRead);
    }

    private static <T> Set<T> union(List<T> one, List<T> other) {
        Set<T> all = new LinkedHashSet<>(one);
        all.addAll(other);
        return all;
    }

    /** The last day of prices that are quoted on a day; null if the lines give none. */
    public @Nullable LocalDate untilFrom(@Nullable LocalDate day) {
        if (validUntil != null || duration == null || day == null) {
            return validUntil;
        }
        return day.plus(duration);
    }

    /** Whether a line has a word for prices or for a list of them. */
    public static boolean saysPrices(String line) {
        return speaksOfPrices(ListDates.folded(line));
    }

    /** Whether a sentence has a word for prices. */
    static boolean speaksOfPrices(String folded) {
        return PRICES.matcher(folded).find();
    }

    /** The note in force at a row: that of the nearest heading above it. */
    PriceNote sectionAt(int row) {
        if (sections.isEmpty()) {
            return PriceNote.NONE;
        }
        Map.Entry<Integer, PriceNote> heading = sections.floorEntry(row);
        return heading == null ? PriceNote.NONE : heading.getValue();
    }

    static PriceNote note(String line) {
        String folded = ListDates.folded(line);
        boolean alone = PriceNote.of(line)
                .filter(note -> note.currency() != null && note.saysWhatFor())
                .isPresent();
        if ((!alone && !speaksOfPrices(folded)) || CostText.isCost(line)) {
            return PriceNote.NONE;
        }
        Set<CurrencySign> signs = new HashSet<>();
        CODE.matcher(line)
                .results()
                .forEach(code -> CurrencySign.parse(code.group()).ifPresent(signs::add));
        Set<String> meanings = new HashSet<>();
        signs.forEach(sign -> meanings.add(sign.meanings().toString()));
        Optional<PriceNote> basis = BASIS.matcher(line)
                .results()
                .flatMap(found -> PriceNote.of("per " + found.group(1)).stream())
                .filter(PriceNote::saysWhatFor)
                .findFirst();
        CurrencySign sign = meanings.size() == 1 ? signs.iterator().next() : null;
        PriceNote said = basis.orElse(PriceNote.NONE);
        return new PriceNote(sign, said.per(), said.pack(), said.content());
    }

    /** The lines of one table while they are read. */
    private static final class Reading {

        private final Mapping mapping;
        private final Findings findings;
        private final ListDates dates;
        private final Predicate<String> onList;
        private final Map<String, Question> questions = new LinkedHashMap<>();
        private final List<NotRead> notRead = new ArrayList<>();
        private final Map<LocalDate, LooseLine> firsts = new LinkedHashMap<>();
        private final Map<LocalDate, LooseLine> lasts = new LinkedHashMap<>();
        private final List<LocalDate> listDays = new ArrayList<>();
        private final NavigableMap<Integer, PriceNote> sections = new TreeMap<>();
        private final Set<LineAdjustment> adjustments = new LinkedHashSet<>();
        private final Set<LineAdjustment> shared = new LinkedHashSet<>();
        private final Map<String, String> footnotes = new LinkedHashMap<>();
        private final List<PriceNote> notes = new ArrayList<>();
        private @Nullable Period duration;
        private @Nullable Origin ambiguous;
        private @Nullable LooseLine heading;

        private Reading(Mapping mapping, Findings findings, ListDates dates, Predicate<String> onList) {
            this.onList = onList;
            this.mapping = mapping;
            this.findings = findings;
            this.dates = dates;
        }

        private TitleFacts read(List<LooseLine> lines) {
            List<String> above = new ArrayList<>();
            for (LooseLine line : lines) {
                if (line.place() == LooseLine.Place.ABOVE) {
                    above.add(line.text());
                }
                var footnote = FOOTNOTE.matcher(line.text());
                if (footnote.matches()) {
                    footnotes.putIfAbsent(footnote.group(1), footnote.group(2));
                }
                boolean noted = false;
                for (String clause : line.clauses()) {
                    noted |= read(clause, line);
                }
                section(line, noted);
            }
            LocalDate first = one(firsts, Mapping.FIRST_DAY, "first day");
            LocalDate last = one(lasts, Mapping.LAST_DAY, "last day");
            LocalDate quoted = first != null || listDays.isEmpty() ? first : listDays.get(0);
            return new TitleFacts(
                    above,
                    quoted,
                    last,
                    last == null ? duration : null,
                    ambiguous,
                    joined(),
                    sections,
                    List.copyOf(adjustments),
                    List.copyOf(shared),
                    footnotes,
                    List.copyOf(questions.values()),
                    notRead);
        }

        private void ask(Question question) {
            questions.putIfAbsent(question.field() + question.key(), question);
        }

        /** Reads a sentence; true if it says what prices are in or for. */
        private boolean read(String clause, LooseLine line) {
            boolean dated = days(clause, line);
            PriceNote note = line.place() == LooseLine.Place.WITHIN && line.cells() > 1
                    ? PriceNote.NONE
                    : TitleFacts.note(clause);
            boolean noted = note.currency() != null || note.saysWhatFor();
            if (noted && line.place() == LooseLine.Place.WITHIN) {
                sections.merge(line.row(), note, Reading::joined);
            } else if (noted) {
                notes.add(note);
            }
            Question question = CostText.question(clause, line, onList).orElse(null);
            if (question != null) {
                String answer = mapping.answer(question.field()).orElse("");
                Optional<LineAdjustment> adjustment = LineAdjustment.of(answer, question);
                if (adjustment.isPresent()) {
                    adjustments.add(adjustment.get());
                    if (line.place() == LooseLine.Place.ELSEWHERE || line.place() == LooseLine.Place.ABOVE) {
                        shared.add(adjustment.get());
                    }
                } else if (answer.toLowerCase(Locale.ROOT).endsWith(CostText.NOT_IN_PRICE)) {
                    findings.warning(line.origin(), RowMessages.chargeOfOrders(clause));
                } else if (answer.equalsIgnoreCase("ignore") || answer.equalsIgnoreCase("prices are without VAT")) {
                    notRead.add(new NotRead(line.origin(), clause, NotReadMessages.answeredIgnore()));
                } else {
                    ask(question);
                }
            } else if (!dated && UnpricedBreak.is(clause)) {
                String quoted = "\"" + ListRows.shortened(clause) + "\"";
                findings.warning(line.origin(), RowMessages.breaksWithoutPrice(List.of(quoted), 0));
            } else if (!noted && !dated && line.place() != LooseLine.Place.WITHIN && speaksOfMore(clause)) {
                notRead.add(new NotRead(line.origin(), clause, NotReadMessages.lineNotUnderstood()));
            }
            return noted;
        }

        private static boolean speaksOfMore(String clause) {
            return clause.indexOf('%') >= 0 || ListWords.speaksOfCost(clause) || CostText.saysMoney(clause);
        }

        /** A heading between rows that says nothing of prices, below one that does: does the first still hold? */
        private void section(LooseLine line, boolean noted) {
            if (line.place() != LooseLine.Place.WITHIN
                    || line.cells() > 1
                    || line.text().length() > LONGEST_HEADING) {
                return;
            }
            if (noted) {
                heading = line;
            } else if (heading != null && heading.row() + 1 < line.row()) {
                String field = BELOW + ListRows.shortened(line.text());
                String answer = mapping.answer(field).orElse("");
                if (answer.equalsIgnoreCase("no")) {
                    sections.put(line.row(), PriceNote.NONE);
                    heading = null;
                } else if (!answer.equalsIgnoreCase("yes")) {
                    ask(Question.of(
                            field,
                            line.origin(),
                            QuestionMessages.sectionGoesOn(
                                    ListRows.shortened(heading.text()), ListRows.shortened(line.text())),
                            "yes",
                            "no"));
                }
            }
        }

        private static PriceNote joined(PriceNote one, PriceNote other) {
            return new PriceNote(
                    one.currency() != null ? one.currency() : other.currency(),
                    one.saysWhatFor() ? one.per() : other.per(),
                    one.saysWhatFor() ? one.pack() : other.pack(),
                    one.saysWhatFor() ? one.content() : other.content());
        }

        /** What all lines agree on; nothing where they contradict each other. */
        private PriceNote joined() {
            Set<List<?>> currencies = new HashSet<>();
            Set<String> bases = new HashSet<>();
            PriceNote all = PriceNote.NONE;
            for (PriceNote note : notes) {
                if (note.currency() != null) {
                    currencies.add(note.currency().meanings());
                }
                if (note.saysWhatFor()) {
                    bases.add(note.basisWords());
                }
                all = joined(all, note);
            }
            boolean basis = bases.size() == 1;
            return new PriceNote(
                    currencies.size() == 1 ? all.currency() : null,
                    basis ? all.per() : null,
                    basis && all.pack(),
                    basis ? all.content() : null);
        }

        private boolean days(String clause, LooseLine line) {
            List<ValidityText.Dated> all = ValidityText.dates(clause, dates);
            if (all.isEmpty()) {
                return lasting(clause, line);
            }
            boolean below = line.place() == LooseLine.Place.WITHIN || line.place() == LooseLine.Place.BELOW;
            if (ValidityText.isOfSomethingElse(clause)
                    || (below && all.stream().allMatch(date -> date.kind() == ValidityText.Kind.BARE))) {
                notRead.add(new NotRead(line.origin(), clause, NotReadMessages.dateOfSomethingElse()));
                return true;
            }
            all.forEach(date -> day(date, clause, line));
            if (all.stream().noneMatch(date -> date.kind() == ValidityText.Kind.LAST)) {
                duration = duration == null ? ValidityText.duration(clause).orElse(null) : duration;
            }
            return true;
        }

        private void day(ValidityText.Dated date, String clause, LooseLine line) {
            ListDates.Read read = date.read();
            ValidityText.Kind kind = date.kind();
            if (kind == ValidityText.Kind.EITHER) {
                kind = said(date, clause, line);
            }
            LocalDate day = kind == ValidityText.Kind.LAST ? read.last() : read.day();
            if (read.ambiguous() || day == null) {
                if (kind == ValidityText.Kind.LAST) {
                    ask(Question.of(
                            Mapping.DATES,
                            line.origin(),
                            QuestionMessages.dayOrMonth(date.text()),
                            "day first",
                            "month first"));
                } else {
                    ambiguous = ambiguous == null ? line.origin() : ambiguous;
                }
                return;
            }
            if (read.isRough() && kind != ValidityText.Kind.EITHER) {
                findings.note(line.origin(), RowMessages.roughDate(date.text(), day.toString()));
            }
            switch (kind) {
                case FIRST -> firsts.putIfAbsent(day, line);
                case LAST -> lasts.putIfAbsent(day, line);
                case LIST, BARE -> listDays.add(day);
                case EITHER -> {}
            }
        }

        /** What a person said of a date that can be the first day or the last. */
        private ValidityText.Kind said(ValidityText.Dated date, String clause, LooseLine line) {
            String words = ListWords.tidy(date.before());
            String field =
                    DATE_AFTER + "\"" + (words.length() > 40 ? words.substring(words.length() - 40) : words) + "\"";
            String answer = mapping.answer(field).orElse("");
            if (answer.equalsIgnoreCase("first day")) {
                return ValidityText.Kind.FIRST;
            }
            if (answer.equalsIgnoreCase("last day")) {
                return ValidityText.Kind.LAST;
            }
            if (answer.equalsIgnoreCase("neither")) {
                return ValidityText.Kind.EITHER;
            }
            ask(Question.of(
                    field,
                    line.origin(),
                    QuestionMessages.firstOrLast(ListRows.shortened(clause), date.text()),
                    "first day",
                    "last day",
                    "neither"));
            return ValidityText.Kind.EITHER;
        }

        /** A sentence without a full date: how long prices hold, or a day without its year. */
        private boolean lasting(String clause, LooseLine line) {
            if (ValidityText.isOfSomethingElse(clause) || !ValidityText.speaksOfValidity(clause)) {
                return false;
            }
            Optional<Period> said = ValidityText.duration(clause);
            if (said.isPresent()) {
                duration = duration == null ? said.get() : duration;
                return true;
            }
            boolean day = SOME_DAY.matcher(ListDates.folded(clause)).find();
            if (!day || line.place() == LooseLine.Place.WITHIN) {
                return false;
            }
            String field = CostText.field(clause);
            String answer = mapping.answer(field).orElse("");
            Optional<LocalDate> last = isoDay(answer);
            if (last.isPresent()) {
                lasts.putIfAbsent(last.get(), line);
            } else if (!answer.equalsIgnoreCase("none")) {
                ask(Question.of(
                        field,
                        line.origin(),
                        QuestionMessages.untilWhen(ListRows.shortened(clause)),
                        "a day such as 2027-03-31",
                        "none"));
            }
            return true;
        }

        private @Nullable LocalDate one(Map<LocalDate, LooseLine> days, String field, String what) {
            if (days.isEmpty()) {
                return null;
            }
            LocalDate only = days.keySet().iterator().next();
            LooseLine line = days.values().iterator().next();
            boolean doubtful = field.equals(Mapping.FIRST_DAY)
                    && line.place() != LooseLine.Place.ABOVE
                    && listDays.stream().anyMatch(day -> !day.equals(only));
            Set<LocalDate> all = new LinkedHashSet<>(days.keySet());
            if (doubtful) {
                all.addAll(listDays);
            }
            if (all.size() == 1) {
                return only;
            }
            Optional<LocalDate> answer =
                    isoDay(mapping.answer(field).orElse("")).filter(all::contains);
            if (answer.isPresent()) {
                return answer.get();
            }
            List<String> choices =
                    all.stream().map(LocalDate::toString).sorted().toList();
            ask(new Question(field, "", line.origin(), QuestionMessages.whichDate(what, choices), choices));
            return null;
        }

        private static Optional<LocalDate> isoDay(String text) {
            try {
                return text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
            } catch (DateTimeParseException notADay) {
                return Optional.empty();
            }
        }
    }
}
