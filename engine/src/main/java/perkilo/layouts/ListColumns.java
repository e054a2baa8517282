package perkilo.layouts;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Cell;

/**
 * What each column of a layout is used for, by the supplier's mapping or by its header.
 *
 * @param layout the table that the columns belong to
 * @param uses by column, from zero; unused columns are missing
 * @param questions about columns that neither the mapping nor the header settles
 * @param notRead the columns that are not used, from left to right, each with the reason
 */
public record ListColumns(
        ListLayout layout, Map<Integer, ColumnUse> uses, List<Question> questions, List<NotRead> notRead) {

    private static final int ROWS_LOOKED_AT = 200;

    /** The columns of a layout. */
    public static ListColumns of(ListLayout layout, Mapping mapping) {
        Map<Integer, ColumnUse> uses = new LinkedHashMap<>();
        ListColumns columns = new ListColumns(layout, uses, new ArrayList<>(), new ArrayList<>());
        layout.headers().forEach((column, header) -> columns.settle(column, header, mapping));
        if (columns.of(Meaning.PACK).isEmpty()) {
            String pack = ListWords.key(mapping.answer(Mapping.PACK_COLUMN).orElse("-"));
            layout.headers().forEach((column, header) -> {
                if (ListWords.key(header).equals(pack)) {
                    uses.put(column, ColumnUse.of(Meaning.PACK));
                }
            });
        }
        boolean priced = uses.values().stream().anyMatch(use -> use.meaning() == Meaning.PRICE);
        SizedColumns sized = SizedColumns.of(columns, mapping);
        columns.settleSized(sized, mapping);
        layout.readings().forEach((column, reading) -> {
            if (!uses.containsKey(column)
                    && reading.use() == null
                    && !sized.columns().contains(column)) {
                columns.ask(column, reading, mapping, priced);
            }
        });
        uses.values().removeIf(use -> use.meaning() == Meaning.NOTHING);
        columns.settleDoubles(mapping);
        columns.list(mapping);
        return columns;
    }

    private void settle(int column, String header, Mapping mapping) {
        HeaderReading reading = layout.readings().get(column);
        PriceNote note = reading == null ? HeaderReading.noteIn(header) : reading.note();
        Optional<String> said = mapping.column(header);
        if (said.isPresent()) {
            ColumnUse.parse(said.get(), note)
                    .ifPresentOrElse(
                            use -> uses.put(column, use), () -> questions.add(notUnderstood(column, said.get())));
        } else if (reading != null && reading.use() != null) {
            uses.put(column, reading.use());
        }
    }

    /** Settles what columns headed by quantities hold, by what the list holds or an answer, or asks once. */
    private void settleSized(SizedColumns sized, Mapping mapping) {
        if (sized.columns().isEmpty()) {
            return;
        }
        String answer = mapping.answer(Mapping.SIZED_COLUMNS).orElse("");
        String holds = answer.isEmpty() && sized.arePacks() ? SizedColumns.PACKS : answer;
        for (int column : sized.columns()) {
            sized.use(column, holds).ifPresent(use -> uses.put(column, use));
        }
        int first = sized.columns().get(0);
        if (!uses.containsKey(first)) {
            questions.add(Question.of(
                    Mapping.SIZED_COLUMNS,
                    where(first),
                    QuestionMessages.packsOrBreaks(sized.headers()),
                    SizedColumns.PACKS,
                    SizedColumns.BREAKS,
                    Meaning.NOTHING.word()));
        }
    }

    /** Asks about a column whose header leaves it open, if it holds anything. */
    private void ask(int column, HeaderReading reading, Mapping mapping, boolean priced) {
        String header = header(column);
        boolean another = reading.doubt() == HeaderReading.Doubt.VAT && priced;
        if (mapping.column(header).isPresent() || another || isBlank(column)) {
            return;
        }
        String text = switch (reading.doubt()) {
            case VAT -> QuestionMessages.whatVat(header);
            case COST -> QuestionMessages.whatCost(header);
            case VALIDITY -> QuestionMessages.whichDay(header);
            case NONE, QUANTITY -> QuestionMessages.whatColumn(header);
        };
        questions.add(new Question(Mapping.COLUMNS, header, where(column), text, named(reading.choices())));
    }

    /** The choices, in which a surcharge like the price says what the prices of the table are for. */
    private List<String> named(List<String> choices) {
        Optional<PriceNote> price = prices().values().stream()
                .map(ColumnUse::note)
                .filter(PriceNote::saysWhatFor)
                .findFirst();
        return price.isEmpty()
                ? choices
                : choices.stream()
                        .map(choice -> choice.endsWith(ColumnUse.LIKE_PRICE)
                                ? "surcharge per " + price.get().basisWords() + ColumnUse.LIKE_PRICE
                                : choice)
                        .toList();
    }

    private String header(int column) {
        return layout.headers().getOrDefault(column, "");
    }

    private Origin where(int column) {
        return layout.grid().origin(layout.lastHeader(), column);
    }

    /** Whether a column holds nothing. */
    private boolean isBlank(int column) {
        BitSet columns = new BitSet();
        columns.set(column);
        for (int row : layout.rows()) {
            if (layout.grid().rows().holdsAny(row, columns)) {
                return false;
            }
        }
        return true;
    }

    private Question notUnderstood(int column, String said) {
        String header = header(column);
        return new Question(
                Mapping.COLUMNS, header, where(column), QuestionMessages.whatColumn(header, said), choices());
    }

    private static List<String> choices() {
        return List.of(
                "item", "INCI name", "CAS number", "pack", "price", "price from 25 kg", "price of 25 kg", "nothing");
    }

    /** Settles which of several columns with the same meaning is to be used, by what they hold, or asks. */
    private void settleDoubles(Mapping mapping) {
        Map<String, List<Integer>> byWords = new LinkedHashMap<>();
        uses.forEach((column, use) -> {
            boolean paired =
                    layout.pairs().containsKey(column) || layout.pairs().containsValue(column);
            boolean any = use.meaning() == Meaning.CODE || use.meaning() == Meaning.GRADE;
            if (!paired && !any) {
                byWords.computeIfAbsent(use.words(), words -> new ArrayList<>()).add(column);
            }
        });
        byWords.forEach((words, all) -> {
            List<Integer> columns = all;
            if (columns.size() > 1) {
                columns = filled(columns);
            }
            if (columns.size() > 1 && words.equals(Meaning.PACK.word())) {
                columns = packsAmong(columns);
            }
            if (columns.size() > 1) {
                List<String> headers = columns.stream().map(this::header).toList();
                for (int column : columns) {
                    if (mapping.column(header(column)).isEmpty()
                            || headers.stream().distinct().count() == 1) {
                        questions.add(new Question(
                                Mapping.COLUMNS,
                                header(column),
                                where(column),
                                QuestionMessages.whichColumn(words, headers),
                                List.of(words, "nothing")));
                    }
                }
            }
        });
    }

    /** The columns that hold something; all of them if none does. */
    private List<Integer> filled(List<Integer> columns) {
        List<Integer> filled =
                columns.stream().filter(column -> !isBlank(column)).toList();
        if (filled.isEmpty()) {
            return columns;
        }
        columns.stream().filter(column -> !filled.contains(column)).toList().forEach(uses::remove);
        return filled;
    }

    /** The columns whose cells are packs; {@code drum} beside {@code 190 kg} is none. */
    private List<Integer> packsAmong(List<Integer> columns) {
        List<Integer> packs = columns.stream().filter(this::holdsPacks).toList();
        if (packs.isEmpty()) {
            return columns;
        }
        for (int column : columns) {
            if (!packs.contains(column)) {
                uses.remove(column);
                notRead.add(new NotRead(
                        where(column), header(column), NotReadMessages.otherColumnHolds(header(packs.get(0)))));
            }
        }
        return packs;
    }

    private boolean holdsPacks(int column) {
        int looked = 0;
        int packs = 0;
        for (int row : layout.rows()) {
            Cell cell = layout.grid().at(row, column);
            if (!cell.isBlank() && looked < ROWS_LOOKED_AT) {
                looked++;
                packs += cell.kind() == Cell.Kind.NUMBER
                                || PackText.of(
                                                cell.text(),
                                                DecimalMark.POINT,
                                                note(column).per())
                                        .isPresent()
                        ? 1
                        : 0;
            }
        }
        return 2 * packs > looked;
    }

    private void list(Mapping mapping) {
        layout.headers().forEach((column, header) -> {
            boolean listed = notRead.stream().anyMatch(other -> other.where().equals(where(column)));
            if (!uses.containsKey(column) && !header.isBlank() && !listed) {
                notRead.add(new NotRead(where(column), header, why(column, mapping)));
            }
        });
    }

    private String why(int column, Mapping mapping) {
        HeaderReading reading = layout.readings().get(column);
        if (mapping.column(header(column)).isPresent()) {
            return NotReadMessages.answeredNothing();
        }
        if (isBlank(column)) {
            return NotReadMessages.blank();
        }
        if (reading != null && reading.doubt() == HeaderReading.Doubt.VAT) {
            return NotReadMessages.otherColumnHolds(
                    prices().keySet().stream().findFirst().map(this::header).orElse(""));
        }
        return reading == null ? NotReadMessages.notUnderstood() : NotReadMessages.notNeeded();
    }

    /** How many columns may hold prices, or hold the same as another: nothing is said of columns of other costs. */
    public int openPrices() {
        return (int) questions.stream()
                .filter(question -> layout.readings().entrySet().stream()
                        .filter(reading -> question.key().equals(header(reading.getKey())))
                        .noneMatch(reading -> reading.getValue().doubt() == HeaderReading.Doubt.COST
                                || reading.getValue().doubt() == HeaderReading.Doubt.VALIDITY))
                .count();
    }

    /** The headers of columns that are not used, from left to right. */
    public List<String> unused() {
        List<String> unused = new ArrayList<>();
        layout.headers().forEach((column, header) -> {
            if (!uses.containsKey(column) && !header.isBlank()) {
                unused.add(header);
            }
        });
        return unused;
    }

    /** The column of a meaning; empty if there is none. */
    public Optional<Integer> of(Meaning meaning) {
        return uses.entrySet().stream()
                .filter(use -> use.getValue().meaning() == meaning)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The columns that hold prices, from left to right. */
    public Map<Integer, ColumnUse> prices() {
        Map<Integer, ColumnUse> prices = new LinkedHashMap<>();
        uses.forEach((column, use) -> {
            if (use.meaning() == Meaning.PRICE) {
                prices.put(column, use);
            }
        });
        return prices;
    }

    /** What else a header says, such as the unit of packs. */
    public PriceNote note(int column) {
        HeaderReading reading = layout.readings().get(column);
        return reading == null ? PriceNote.NONE : reading.note();
    }
}
