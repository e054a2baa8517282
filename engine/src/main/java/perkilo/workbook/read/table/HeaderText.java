package perkilo.workbook.read.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.workbook.schema.Column;
import perkilo.workbook.schema.ValueKind;

/** Headers as people type them: case, spaces and punctuation don't matter, and a unit may follow. */
final class HeaderText {

    private static final Pattern BRACKETED = Pattern.compile("^(.*?)[(\\[]([^)\\]]*)[)\\]]\\s*$", Pattern.DOTALL);
    private static final Pattern REMARK = Pattern.compile(
            "(?i)|net|ex(cl)?\\.? vat|optional|required|mandatory|if any|typed|approx\\.?|in pack units?");
    private static final int WITH_UNIT = 1000;

    private HeaderText() {}

    /**
     * What spellings of one header have in common: letters, digits and the per cent sign, in lower case.
     *
     * @param header as typed
     */
    static String key(String header) {
        return Normalizer.normalize(header, Normalizer.Form.NFKC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}%]+", "");
    }

    /** How a header names a column; empty if it does not. */
    static Optional<HeaderMatch> match(Column column, String header) {
        List<Spelling> spellings = spellings(column);
        String whole = key(header);
        for (int rank = 0; rank < spellings.size(); rank++) {
            if (spellings.get(rank).key().equals(whole)) {
                return Optional.of(
                        new HeaderMatch(column, rank, spellings.get(rank).unit(), ""));
            }
        }
        Matcher bracketed = BRACKETED.matcher(header);
        if (bracketed.matches()) {
            return bracketed(
                    column, spellings, bracketed.group(1), bracketed.group(2).strip());
        }
        return trailing(column, spellings, header);
    }

    private static Optional<HeaderMatch> bracketed(
            Column column, List<Spelling> spellings, String name, String inside) {
        String key = key(name);
        for (int rank = 0; rank < spellings.size(); rank++) {
            if (spellings.get(rank).key().equals(key)) {
                boolean remark =
                        !column.kind().isNumber() || REMARK.matcher(inside).matches();
                String unit = remark ? spellings.get(rank).unit() : inside;
                boolean understood = remark || isUnitOf(column, inside);
                return Optional.of(new HeaderMatch(column, WITH_UNIT + rank, unit, understood ? "" : inside));
            }
        }
        return Optional.empty();
    }

    /** A unit without brackets after the name: {@code Price USD/kg}, {@code Price per kg}, {@code Price/kg}. */
    private static Optional<HeaderMatch> trailing(Column column, List<Spelling> spellings, String header) {
        if (!column.kind().isNumber()) {
            return Optional.empty();
        }
        String[] words = header.strip().replace("/", " /").split("[\\s\\p{Z}]+");
        for (int cut = words.length - 1; cut > 0; cut--) {
            String key = key(String.join(" ", List.of(words).subList(0, cut)));
            String unit =
                    String.join(" ", List.of(words).subList(cut, words.length)).replace(" /", "/");
            for (int rank = 0; rank < spellings.size(); rank++) {
                if (spellings.get(rank).key().equals(key) && isUnitOf(column, unit)) {
                    return Optional.of(new HeaderMatch(column, WITH_UNIT + rank, unit, ""));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isUnitOf(Column column, String words) {
        if (!column.unit().isEmpty()) {
            return FixedUnit.factor(column.unit(), words).isPresent();
        }
        return UnitText.parse(words)
                .map(unit -> column.kind() == ValueKind.MONEY || unit.currency() == null)
                .orElse(false);
    }

    private static List<Spelling> spellings(Column column) {
        List<Spelling> all = new ArrayList<>();
        all.add(new Spelling(key(column.header()), ""));
        if (!column.bareHeader().equals(column.header())) {
            all.add(new Spelling(key(column.bareHeader()), ""));
        }
        for (Map.Entry<String, String> synonym : column.synonyms().entrySet()) {
            all.add(new Spelling(key(synonym.getKey()), synonym.getValue()));
            if (!column.unit().isEmpty() && !column.kind().isPercent()) {
                all.add(new Spelling(key(synonym.getKey() + column.unit()), ""));
            }
        }
        return all;
    }

    private record Spelling(String key, String unit) {}

    /**
     * A column that a header names.
     *
     * @param column which one
     * @param rank the lower, the closer to the header as templates spell it
     * @param unit what the header says of the unit; empty for nothing
     * @param notUnderstood a unit that is not one of this column; empty where there is none
     */
    record HeaderMatch(Column column, int rank, String unit, String notUnderstood) {}
}
