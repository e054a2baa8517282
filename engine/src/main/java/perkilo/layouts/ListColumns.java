package perkilo.layouts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What each column of a layout is used for, by the supplier's mapping or by its header.
 *
 * @param layout the table that the columns belong to
 * @param uses by column, from zero; unused columns are missing
 * @param questions about columns that neither the mapping nor the header settles
 */
public record ListColumns(ListLayout layout, Map<Integer, ColumnUse> uses, List<Question> questions) {

    /** The columns of a layout. */
    public static ListColumns of(ListLayout layout, Mapping mapping) {
        Map<Integer, ColumnUse> uses = new LinkedHashMap<>();
        List<Question> questions = new ArrayList<>();
        layout.headers().forEach((column, header) -> {
            HeaderReading reading = layout.readings().get(column);
            PriceNote note = reading == null ? PriceNote.NONE : reading.note();
            Optional<String> said = mapping.column(header);
            if (said.isPresent()) {
                ColumnUse.parse(said.get(), note)
                        .ifPresentOrElse(
                                use -> uses.put(column, use),
                                () -> questions.add(notUnderstood(layout, column, said.get())));
            } else if (reading != null && reading.use() != null) {
                uses.put(column, reading.use());
            } else if (reading != null) {
                questions.add(new Question(
                        Mapping.COLUMNS,
                        header,
                        layout.grid().origin(layout.lastHeader(), column),
                        QuestionMessages.whatColumn(header),
                        reading.choices()));
            }
        });
        uses.values().removeIf(use -> use.meaning() == Meaning.NOTHING);
        ListColumns columns = new ListColumns(layout, uses, questions);
        columns.askAboutDoubles();
        return columns;
    }

    private static Question notUnderstood(ListLayout layout, int column, String said) {
        String header = layout.headers().getOrDefault(column, "");
        return new Question(
                Mapping.COLUMNS,
                header,
                layout.grid().origin(layout.lastHeader(), column),
                QuestionMessages.whatColumn(header, said),
                choices());
    }

    private static List<String> choices() {
        return List.of(
                "item", "INCI name", "CAS number", "pack", "price", "price from 25 kg", "price of 25 kg", "nothing");
    }

    /** Asks which of several columns with the same meaning is to be used. */
    private void askAboutDoubles() {
        Map<String, List<Integer>> byWords = new LinkedHashMap<>();
        uses.forEach((column, use) ->
                byWords.computeIfAbsent(use.words(), words -> new ArrayList<>()).add(column));
        byWords.forEach((words, columns) -> {
            if (columns.size() > 1) {
                List<String> headers = columns.stream()
                        .map(column -> layout.headers().getOrDefault(column, ""))
                        .toList();
                for (int column : columns) {
                    questions.add(new Question(
                            Mapping.COLUMNS,
                            layout.headers().getOrDefault(column, ""),
                            layout.grid().origin(layout.lastHeader(), column),
                            QuestionMessages.whichColumn(words, headers),
                            List.of(words, "nothing")));
                }
            }
        });
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
