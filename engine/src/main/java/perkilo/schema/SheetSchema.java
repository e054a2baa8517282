package perkilo.schema;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The description of one kind of table.
 *
 * @param name the sheet's name in templates
 * @param otherNames other names that people give such a sheet
 * @param keys the columns that name a row: a row without them is not part of the table
 * @param signatures sets of columns, each enough to recognise the table by its headers alone
 * @param columns in the order of the templates, the keys first
 * @param explanation one line for a person who fills the sheet in
 */
public record SheetSchema(
        String name,
        List<String> otherNames,
        List<InputColumn> keys,
        List<List<InputColumn>> signatures,
        List<InputColumn> columns,
        String explanation) {

    public SheetSchema {
        otherNames = List.copyOf(otherNames);
        keys = List.copyOf(keys);
        signatures = List.copyOf(signatures);
        columns = List.copyOf(columns);
    }

    /** The required columns. */
    public List<InputColumn> required() {
        return columns.stream().filter(InputColumn::required).toList();
    }

    /** The column with a header, as templates spell it. */
    public Optional<InputColumn> column(String header) {
        return columns.stream().filter(column -> column.header().equals(header)).findFirst();
    }

    /** Explicit: a generated equals and hashCode cost milliseconds at start-up (see engine/docs/measurements.md). */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof SheetSchema schema
                        && name.equals(schema.name)
                        && otherNames.equals(schema.otherNames)
                        && keys.equals(schema.keys)
                        && signatures.equals(schema.signatures)
                        && columns.equals(schema.columns)
                        && explanation.equals(schema.explanation));
    }

    /** Uses fewer parts than equals, for speed. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
