package perkilo.reading;

import static perkilo.schema.FormulaSheet.ESTIMATE;
import static perkilo.schema.FormulaSheet.FORMULA;
import static perkilo.schema.FormulaSheet.KEEP;
import static perkilo.schema.FormulaSheet.LEVEL_OF;
import static perkilo.schema.FormulaSheet.MATERIAL;
import static perkilo.schema.FormulaSheet.PHASE;
import static perkilo.schema.FormulaSheet.PHASE_TEMPERATURE;
import static perkilo.schema.FormulaSheet.ROLE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.LineWish;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.reading.arrange.LevelWords;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;

/** Reads formulas: one per table, named after its sheet, or several separated by a Formula column. */
final class FormulaTables {

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
        boolean clear = rows.stream()
                .anyMatch(row -> LevelWords.isToHundred(row.cell(LEVEL_OF).text()));
        for (TableRow row : rows) {
            Formula.Line line = line(row, clear);
            if (line != null) {
                lines.add(line);
            }
        }
        Batching made = batching.getOrDefault(Names.key(name), Batching.ANY);
        boolean several = table.has(FORMULA);
        return new Formula(name, lines, made, several ? rows.get(0).origin(FORMULA) : table.header(LEVEL_OF));
    }

    /**
     * One line; null if it was reported.
     *
     * @param clear whether a line of the formula says that it makes up 100 %, so that a bare q.s. is to effect
     */
    private Formula.@Nullable Line line(TableRow row, boolean clear) {
        if (!row.table().has(LEVEL_OF)) {
            return null;
        }
        String text = row.text(LEVEL_OF);
        boolean whole = LevelWords.isToHundred(text);
        boolean enough = !whole && LevelWords.isBalance(text);
        boolean toEffect = LevelWords.isToEffect(text) || (enough && (clear || !row.isBlank(ESTIMATE)));
        boolean balance = whole || (enough && !toEffect);
        Figure level = balance ? null : toEffect ? estimate(row, text) : level(row);
        if (!balance && level == null) {
            return null;
        }
        return new Formula.Line(
                row.text(PHASE),
                row.text(MATERIAL),
                level,
                row.figure(PHASE_TEMPERATURE),
                wish(row),
                row.origin(LEVEL_OF));
    }

    /** What is said of the line for swaps. */
    private static LineWish wish(TableRow row) {
        if (row.isBlank(ROLE) && row.isBlank(KEEP)) {
            return LineWish.NONE;
        }
        String keep = FactWords.chosen(row, KEEP, Fact.KEEP.choices());
        return new LineWish(row.text(ROLE), keep.isEmpty() ? null : keep.equals("yes"), row.origin(ROLE));
    }

    /** About how much is used of a material that is added to effect; null if it was reported. */
    private @Nullable Figure estimate(TableRow row, String text) {
        if (!row.isBlank(ESTIMATE)) {
            return row.figure(ESTIMATE);
        }
        BigDecimal said = LevelWords.estimate(text);
        if (said == null) {
            findings.error(row.origin(LEVEL_OF), FormulaMessages.noEstimate(row.text(MATERIAL), text));
            return null;
        }
        return new Figure(said.movePointLeft(2), row.origin(LEVEL_OF), null, Figure.Held.WORDS);
    }

    private @Nullable Figure level(TableRow row) {
        if (row.isBlank(LEVEL_OF)) {
            findings.error(row.origin(LEVEL_OF), FormulaMessages.noLevel(row.text(MATERIAL)));
            return null;
        }
        return row.figure(LEVEL_OF);
    }
}
