package perkilo.reading;

import static perkilo.schema.FormulaSheet.FORMULA;
import static perkilo.schema.FormulaSheet.LEVEL_OF;
import static perkilo.schema.FormulaSheet.MATERIAL;
import static perkilo.schema.FormulaSheet.PHASE;
import static perkilo.schema.FormulaSheet.PHASE_TEMPERATURE;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Formula;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;

/** Reads formulas: one per table, named after its sheet, or several separated by a Formula column. */
final class FormulaTables {

    private static final Pattern BALANCE =
            Pattern.compile("(?i)q\\.?\\s*s\\.?\\s*p?\\.?(\\s*(to|ad)?\\s*100\\s*%?)?|(ad|to)\\s*100\\s*%?|balance");

    private final Map<String, Batching> batching;
    private final Findings findings;

    /**
     * Reads formulas.
     *
     * @param batching how each is made, by {@link Names#key}
     */
    FormulaTables(Map<String, Batching> batching, Findings findings) {
        this.batching = batching;
        this.findings = findings;
    }

    /** The names of all formulas, even if their lines have errors. */
    static List<String> names(Tables tables) {
        FormulaTables unread = new FormulaTables(Map.of(), new Findings());
        return tables.of(FormulaSheet.SCHEMA).stream()
                .flatMap(table -> unread.parts(table).keySet().stream())
                .toList();
    }

    /** All formulas, by {@link Names#key}. */
    Map<String, Formula> read(Tables tables) {
        NamedThings<Formula> formulas = new NamedThings<>("formula", findings);
        for (FoundTable table : tables.of(FormulaSheet.SCHEMA)) {
            for (Map.Entry<String, List<TableRow>> part : parts(table).entrySet()) {
                Formula formula = formula(part.getKey(), table, part.getValue());
                if (!formula.lines().isEmpty()) {
                    formulas.add(formula.name(), formula.origin(), formula);
                    FormulaBalance.check(formula, part.getValue(), findings);
                }
            }
        }
        return formulas.byKey();
    }

    /** The rows of each formula; a blank Formula cell continues the formula above. */
    private Map<String, List<TableRow>> parts(FoundTable table) {
        Map<String, List<TableRow>> parts = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        String name = table.grid().title().strip();
        for (TableRow row : table.rows(findings)) {
            String typed = row.text(FORMULA);
            name = typed.isEmpty() ? name : typed;
            String spelling = names.computeIfAbsent(Names.key(name), key -> typed);
            parts.computeIfAbsent(spelling.isEmpty() ? name : spelling, key -> new ArrayList<>())
                    .add(row);
        }
        return parts;
    }

    private Formula formula(String name, FoundTable table, List<TableRow> rows) {
        List<Formula.Line> lines = new ArrayList<>();
        for (TableRow row : rows) {
            Formula.Line line = line(row);
            if (line != null) {
                lines.add(line);
            }
        }
        Batching made = batching.getOrDefault(Names.key(name), Batching.ANY);
        boolean several = table.has(FORMULA);
        return new Formula(name, lines, made, several ? rows.get(0).origin(FORMULA) : table.header(LEVEL_OF));
    }

    private Formula.@Nullable Line line(TableRow row) {
        if (!row.table().has(LEVEL_OF)) {
            return null;
        }
        boolean balance = BALANCE.matcher(row.text(LEVEL_OF)).matches();
        Figure level = balance ? null : level(row);
        if (!balance && level == null) {
            return null;
        }
        return new Formula.Line(
                row.text(PHASE), row.text(MATERIAL), level, row.figure(PHASE_TEMPERATURE), row.origin(LEVEL_OF));
    }

    private @Nullable Figure level(TableRow row) {
        if (row.isBlank(LEVEL_OF)) {
            findings.error(row.origin(LEVEL_OF), FormulaMessages.noLevel(row.text(MATERIAL)));
            return null;
        }
        return row.figure(LEVEL_OF);
    }
}
