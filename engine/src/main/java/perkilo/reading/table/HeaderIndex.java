package perkilo.reading.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.schema.InputColumn;
import perkilo.schema.ValueKind;
import perkilo.units.Measure;

/** The headers that name some columns, in all their spellings. */
final class HeaderIndex {

    private static final Pattern REMARK = Pattern.compile(
            "(?i)|net|ex(cl)?\\.? vat|optional|required|mandatory|if any|typed|approx\\.?|in pack units?");
    private static final int WITH_UNIT = 1000;

    private final Map<String, Spelling> spellings = new HashMap<>();

    HeaderIndex(List<InputColumn> columns) {
        for (InputColumn column : columns) {
            int rank = 0;
            add(column.header(), column, rank++, "");
            add(column.bareHeader(), column, rank++, "");
            for (Map.Entry<String, String> synonym : column.synonyms().entrySet()) {
                add(synonym.getKey(), column, rank++, synonym.getValue());
                if (!column.unit().isEmpty() && !column.kind().isPercent()) {
                    add(synonym.getKey() + column.unit(), column, rank++, "");
                }
            }
        }
    }

    private void add(String header, InputColumn column, int rank, String unit) {
        Spelling spelling = new Spelling(column, rank, unit);
        String key = HeaderText.key(header);
        spellings.merge(key, spelling, (one, other) -> other.rank() < one.rank() ? other : one);
        String plain = HeaderText.withoutAccents(key);
        if (!plain.equals(key)) {
            spellings.merge(plain, spelling, (one, other) -> other.rank() < one.rank() ? other : one);
        }
    }

    /** All spellings, as {@link HeaderText#key} has them. */
    Set<String> keys() {
        return spellings.keySet();
    }

    /** The column that a header names; empty if it names none. */
    Optional<HeaderMatch> match(HeaderText header) {
        Spelling whole = spellings.get(header.key());
        if (whole != null) {
            String sign = sign(whole, header);
            String unit = sign.isEmpty() || whole.unit().isEmpty() ? sign + whole.unit() : sign + "/" + whole.unit();
            return Optional.of(new HeaderMatch(whole.column(), whole.rank(), unit, ""));
        }
        Spelling named = header.name().isEmpty() ? null : spellings.get(header.name());
        if (named != null) {
            return Optional.of(bracketed(named, header.inside()));
        }
        for (HeaderText.Cut cut : header.cuts()) {
            Spelling begun = spellings.get(cut.name());
            HeaderMatch match = begun == null ? null : per(cut);
            match = match == null ? trailing(begun, cut.rest()) : match;
            if (match != null) {
                return Optional.of(match);
            }
        }
        return Optional.empty();
    }

    /** The sign of a currency after a name, which is no letter of the key: {@code Price (£)}, {@code Price €}. */
    private static String sign(Spelling whole, HeaderText header) {
        if (whole.column().kind() != ValueKind.MONEY) {
            return "";
        }
        List<String> ends = new ArrayList<>(List.of(header.inside()));
        header.cuts().forEach(cut -> ends.add(cut.rest()));
        return ends.stream()
                .filter(end -> !end.isEmpty() && HeaderText.key(end).isEmpty())
                .filter(end -> isUnitOf(whole.column(), end))
                .findFirst()
                .orElse("");
    }

    /** An amount per unit that has its own column: {@code Freight €/kg} for {@code Freight per kg}. */
    private @Nullable HeaderMatch per(HeaderText.Cut cut) {
        UnitText unit = UnitText.parse(cut.rest()).orElse(UnitText.NONE);
        Measure measure = unit.measure();
        if (measure == null || !unit.isOne()) {
            return null;
        }
        Spelling own = spellings.get(cut.name() + "per" + HeaderText.key(measure.symbol()));
        CurrencySign currency = unit.currency();
        return own == null || own.column().kind() != ValueKind.MONEY
                ? null
                : new HeaderMatch(own.column(), WITH_UNIT + own.rank(), currency == null ? "" : currency.text(), "");
    }

    private static HeaderMatch bracketed(Spelling spelling, String inside) {
        InputColumn column = spelling.column();
        boolean remark = !column.kind().isNumber() || REMARK.matcher(inside).matches();
        String unit = remark ? spelling.unit() : inside;
        boolean understood = remark || isUnitOf(column, inside);
        return new HeaderMatch(column, WITH_UNIT + spelling.rank(), unit, understood ? "" : inside);
    }

    private static @Nullable HeaderMatch trailing(@Nullable Spelling spelling, String rest) {
        if (spelling == null || !spelling.column().kind().isNumber() || !isUnitOf(spelling.column(), rest)) {
            return null;
        }
        return new HeaderMatch(spelling.column(), WITH_UNIT + spelling.rank(), rest, "");
    }

    private static boolean isUnitOf(InputColumn column, String words) {
        if (!column.unit().isEmpty()) {
            return FixedUnit.factor(column.unit(), words).isPresent();
        }
        return UnitText.parse(words)
                .map(unit -> column.kind() == ValueKind.MONEY
                        ? !unit.isBareNumberWord()
                        : unit.currency() == null && unit.isOne())
                .orElse(false);
    }

    private record Spelling(InputColumn column, int rank, String unit) {}

    /**
     * A column that a header names.
     *
     * @param column which one
     * @param rank the lower, the closer to the header as templates spell it
     * @param unit what the header says of the unit; empty for nothing
     * @param notUnderstood a unit that is not one of this column; empty where there is none
     */
    record HeaderMatch(InputColumn column, int rank, String unit, String notUnderstood) {}
}
