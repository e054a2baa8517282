package perkilo.schema;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The description of one column of a table.
 *
 * @param header as templates spell it; it ends with {@code unit} if there is one
 * @param synonyms other spellings that people use, each with the unit that it implies (empty for none): {@code Pack
 *     price} implies {@code pack}
 * @param kind the kind of value in the cells
 * @param limits which numbers make sense
 * @param unit what a number is in, such as {@code kg} or {@code %}; empty if there is none or another column names it
 * @param required whether a table without this column cannot be used
 * @param byDefault what a blank cell means, in a person's words; empty if the value is then unknown
 * @param explanation one line for a person who fills the column in
 * @param example a possible content of a cell
 */
public record InputColumn(
        String header,
        Map<String, String> synonyms,
        ValueKind kind,
        Limits limits,
        String unit,
        boolean required,
        String byDefault,
        String explanation,
        String example) {

    public InputColumn {
        synonyms = Collections.unmodifiableMap(new LinkedHashMap<>(synonyms));
    }

    /** An optional column; its numbers, if it has any, are zero or more. */
    static InputColumn of(String header, ValueKind kind, String explanation, String example) {
        Limits limits = kind.isNumber() ? Limits.ZERO_OR_MORE : Limits.ANY;
        return new InputColumn(
                header,
                OtherLanguages.of(header),
                kind,
                limits,
                kind.isPercent() ? "%" : "",
                false,
                "",
                explanation,
                example);
    }

    /** The same column, but required. */
    InputColumn needed() {
        return new InputColumn(header, synonyms, kind, limits, unit, true, byDefault, explanation, example);
    }

    /** The same column, also known by other headers. */
    InputColumn also(String... names) {
        Map<String, String> all = new LinkedHashMap<>(synonyms);
        for (String name : names) {
            all.put(name, "");
        }
        return new InputColumn(header, all, kind, limits, unit, required, byDefault, explanation, example);
    }

    /** The same column, also known by a header that implies a unit. */
    InputColumn alsoIn(String impliedUnit, String... names) {
        Map<String, String> all = new LinkedHashMap<>(synonyms);
        for (String name : names) {
            all.put(name, impliedUnit);
        }
        return new InputColumn(header, all, kind, limits, unit, required, byDefault, explanation, example);
    }

    /** The same column, with its numbers in a unit. */
    InputColumn in(String numbersUnit) {
        return new InputColumn(header, synonyms, kind, limits, numbersUnit, required, byDefault, explanation, example);
    }

    /** The same column, with limits for its numbers. */
    InputColumn limited(Limits other) {
        return new InputColumn(header, synonyms, kind, other, unit, required, byDefault, explanation, example);
    }

    /** The same column, with the meaning of a blank cell. */
    InputColumn orElse(String blankMeans) {
        return new InputColumn(header, synonyms, kind, limits, unit, required, blankMeans, explanation, example);
    }

    /** The header without its unit: {@code Vessel max} for {@code Vessel max kg}. */
    public String bareHeader() {
        boolean ends = !unit.isEmpty() && header.endsWith(" " + unit);
        return ends ? header.substring(0, header.length() - unit.length() - 1) : header;
    }

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof InputColumn column
                        && header.equals(column.header)
                        && synonyms.equals(column.synonyms)
                        && kind == column.kind
                        && limits.equals(column.limits)
                        && unit.equals(column.unit)
                        && required == column.required
                        && byDefault.equals(column.byDefault)
                        && explanation.equals(column.explanation)
                        && example.equals(column.example));
    }

    /** Uses fewer parts than equals, for speed. */
    @Override
    public int hashCode() {
        return header.hashCode();
    }
}
