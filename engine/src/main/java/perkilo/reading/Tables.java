package perkilo.reading;

import java.util.List;
import java.util.stream.Stream;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.SheetSchema;

/**
 * All tables that were found, those of the workbook first.
 *
 * @param all in the order of the files and their sheets
 */
record Tables(List<FoundTable> all) {

    Tables {
        all = List.copyOf(all);
    }

    /** The tables of one kind. */
    List<FoundTable> of(SheetSchema schema) {
        return all.stream().filter(table -> table.schema().equals(schema)).toList();
    }

    /** The rows of all tables of one kind. */
    List<TableRow> rows(SheetSchema schema, Findings findings) {
        return stream(schema, findings).toList();
    }

    /** The rows of all tables of one kind, one by one. */
    Stream<TableRow> stream(SheetSchema schema, Findings findings) {
        return of(schema).stream().flatMap(table -> table.stream(findings));
    }
}
