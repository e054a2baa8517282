package perkilo.reading.arrange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.layouts.ListWords;
import perkilo.reading.table.UnitText;

/** Words of people's own sheets in five languages, from {@code headers.csv}; loaded when a sheet is not understood. */
final class SheetWords {

    private static final int LONGEST = 80;
    private static final Map<String, Map<String, String>> KNOWN = load();

    private SheetWords() {}

    private static Map<String, Map<String, String>> load() {
        Map<String, Map<String, String>> known = new HashMap<>();
        for (List<String> row : ListWords.rows(SheetWords.class, "headers.csv")) {
            Map<String, String> words = known.computeIfAbsent(row.get(0), kind -> new HashMap<>());
            for (String word : row.get(3).split(";", -1)) {
                words.putIfAbsent(ListWords.key(word), row.get(1));
            }
        }
        return known;
    }

    private static Optional<String> meaning(String kind, String words) {
        return Optional.ofNullable(KNOWN.getOrDefault(kind, Map.of()).get(ListWords.key(words)));
    }

    /** The name of our sheet that a sheet's name means; empty if it is not known. */
    static Optional<String> sheet(String name) {
        return meaning("sheet", name);
    }

    /** The month, from 1, that a word names; empty if it is not one. */
    static Optional<Integer> month(String word) {
        return meaning("month", word).map(Integer::valueOf);
    }

    /** Whether a word says that a name of a formula follows. */
    static boolean isFormulaLabel(String word) {
        return meaning("title", word).isPresent();
    }

    /** Whether a word heads a total. */
    static boolean isTotal(String word) {
        return meaning("total", word).isPresent();
    }

    /** Whether words head a number of batches. */
    static boolean isBatches(String words) {
        return meaning("batches", words).isPresent();
    }

    /** Whether words head what is lost in making or filling. */
    static boolean isLoss(String words) {
        return meaning("loss", words).isPresent();
    }

    /** Whether a word means a phase. */
    static boolean isPhase(String word) {
        return meaning("phase", word).isPresent();
    }

    /** Whether a word says that a number is an estimate. */
    static boolean isAbout(String word) {
        return meaning("estimate", word).isPresent();
    }

    /** Whether words mean as much as an effect needs. */
    static boolean isToEffect(String words) {
        return meaning("effect", words).isPresent();
    }

    /** A header in our words, with its unit: {@code Lead time days (weeks)}; empty if it is not known. */
    static Optional<String> header(String header) {
        if (header.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<String> whole = meaning("header", header);
        if (whole.isPresent()) {
            return whole;
        }
        int open = Math.max(header.lastIndexOf('('), header.lastIndexOf('['));
        if (open > 0 && (header.endsWith(")") || header.endsWith("]"))) {
            String inside = header.substring(open + 1, header.length() - 1);
            boolean unit = meaning("unit", inside).isPresent()
                    || inside.equals("%")
                    || UnitText.parse(inside).isPresent();
            return !unit
                    ? Optional.empty()
                    : meaning("header", header.substring(0, open)).map(name -> withUnit(name, inside));
        }
        for (int space = header.lastIndexOf(' '); space > 0; space = header.lastIndexOf(' ', space - 1)) {
            String rest = header.substring(space + 1).strip();
            boolean unit = meaning("unit", rest).isPresent()
                    || UnitText.parse(rest)
                            .filter(text -> !text.words().isEmpty())
                            .isPresent()
                    || rest.equals("%");
            Optional<String> name = unit ? meaning("header", header.substring(0, space)) : Optional.empty();
            if (name.isPresent()) {
                return name.map(word -> withUnit(word, rest));
            }
        }
        return Optional.empty();
    }

    private static String withUnit(String name, String unit) {
        String ours = meaning("unit", unit).orElse(unit.strip());
        return name.endsWith(" " + ours) || name.equals(ours) ? name : bare(name) + " (" + ours + ")";
    }

    /** Our header without its own unit, so that another can follow. */
    private static String bare(String name) {
        for (String unit : List.of(" days", " kg", " g/mL", " %")) {
            if (name.endsWith(unit)) {
                return name.substring(0, name.length() - unit.length());
            }
        }
        return name;
    }
}
