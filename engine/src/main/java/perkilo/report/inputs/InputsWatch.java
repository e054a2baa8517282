package perkilo.report.inputs;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import perkilo.origin.Account;
import perkilo.origin.SeenTable;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;
import perkilo.sheet.Sign;

/**
 * Lets result sheets notice what they do not follow: adds the sheet of inputs, and in the second line of each other
 * sheet a formula that shows what has changed in the place of the explanation.
 *
 * @param command such as {@code cost}
 * @param effects what input columns mean for its answer
 * @param fixed the names of sheets with values that do not follow
 * @param own what else may be wrong on the sheets, such as packs that a person has changed
 */
public record InputsWatch(String command, Effects effects, Set<String> fixed, List<Own> own) {

    private static final int LINE = 1;

    public InputsWatch {
        fixed = Set.copyOf(fixed);
        own = List.copyOf(own);
    }

    /**
     * Something that a person may have changed on a result sheet.
     *
     * @param name what is counted
     * @param count how many are wrong
     * @param words what is said of them, after their number
     */
    public record Own(String name, Expr count, String words) {}

    /** Packs that a person has changed to what cannot be ordered. */
    public static Own packs(Expr count) {
        return new Own("Packs", count, InputsMessages.packs());
    }

    /** Recipes that no longer add up. */
    public static Own recipes(Expr count) {
        return new Own("Recipes", count, InputsMessages.recipes());
    }

    /**
     * The same sheets, which now notice changes, with the sheet of inputs among them.
     *
     * @param account what was read
     */
    public List<ResultSheet> on(List<ResultSheet> sheets, Account account) {
        List<SeenTable> tables = new ArrayList<>();
        for (SeenTable table : account.seen()) {
            if (effects.counts(table.kind()) && !table.parts().isEmpty()) {
                tables.add(table);
            }
        }
        if (tables.isEmpty()) {
            return sheets;
        }
        InputsSheet inputs = new InputsSheet(this, tables, new Referenced(sheets));
        List<ResultSheet> all = new ArrayList<>();
        for (ResultSheet sheet : sheets) {
            all.add(noticing(sheet, inputs));
        }
        all.add(Math.max(0, all.size() - 1), inputs.sheet());
        return all;
    }

    private ResultSheet noticing(ResultSheet sheet, InputsSheet inputs) {
        var row = sheet.cells().get(LINE);
        ResultSheet.Cell line = row == null ? null : row.get(SheetBuilder.FIRST_COLUMN);
        if (line == null || !(line.content() instanceof ResultSheet.Text words)) {
            return sheet;
        }
        ResultSheet.Part part = fixed.contains(sheet.name()) ? inputs.fixed(words.text()) : inputs.notice(words.text());
        String cell = SheetNames.cell(LINE, SheetBuilder.FIRST_COLUMN);
        return sheet.withCell(
                        LINE,
                        SheetBuilder.FIRST_COLUMN,
                        new ResultSheet.Cell(
                                new ResultSheet.Sentence(List.of(part)), line.look(), line.format(), line.link()))
                .withHighlight(new ResultSheet.Highlight(
                        cell + ":" + cell, new ResultSheet.Holds(Sign.isIn(cell)), Look.ERROR));
    }
}
