package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.List;
import perkilo.model.Formula;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.label.IngredientList;
import perkilo.swaps.trial.Recipe;

/** Ingredient list: each formula's as it is, and the new one of every blend and every swap. */
final class LabelSheet {

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder("Ingredient list");
    private final Page page = new Page(sheet);

    private LabelSheet(SwapOutcome.Found found) {
        this.found = found;
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new LabelSheet(found).write();
    }

    private ResultSheet write() {
        sheet.widths(10, 44, 34, 12, 100).freeze(2, 0).landscape();
        page.title(
                "Ingredient list",
                "In the order of Regulation (EC) No 1223/2009, Article 19(1)(g): falling by weight when added; up to 1 % in"
                        + " any order after; colourants last. Levels are values.");
        page.skip(1);
        for (String name : found.base().keySet()) {
            found.book().formula(name).ifPresent(this::formula);
        }
        if (!found.blends().isEmpty()) {
            blends();
        }
        swaps();
        return sheet.build();
    }

    private void formula(Formula formula) {
        IngredientList list = IngredientList.of(Recipe.of(found.book(), formula));
        page.section(formula.name());
        page.heads(List.of("Place", "Ingredient", "Where", "Level"));
        int place = 1;
        for (IngredientList.Entry entry : list.entries()) {
            int row = page.take();
            page.number(row, 0, BigDecimal.valueOf(place++), NumberFormat.WHOLE);
            sheet.text(row, 1, entry.name(), Look.LABEL);
            sheet.text(row, 2, where(entry.part()), Look.PLAIN);
            page.number(row, 3, entry.level(), new NumberFormat("0.0000%"));
        }
        list.notes().forEach(note -> sheet.text(page.take(), 1, note, Look.HINT));
        page.skip(1);
    }

    private void blends() {
        page.section("With a blend");
        page.heads(List.of("Blend no.", "Formula", "All of its", "", "New ingredient list"));
        for (int i = 0; i < found.blends().size(); i++) {
            Blend blend = found.blends().get(i);
            int row = page.take();
            page.number(row, 0, BigDecimal.valueOf(i + 1L), NumberFormat.WHOLE);
            sheet.text(row, 1, blend.formula().name(), Look.PLAIN);
            sheet.text(row, 2, blend.function(), Look.PLAIN);
            sheet.text(row, 4, blend.label().after().text(), Look.PLAIN);
        }
        page.skip(1);
    }

    private void swaps() {
        page.section("With a swap");
        page.heads(List.of("Swap no.", "Material", "Candidate", "New level", "New ingredient list"));
        for (int i = 0; i < found.swaps().size(); i++) {
            Swap swap = found.swaps().get(i);
            int row = page.take();
            page.number(row, 0, BigDecimal.valueOf(i + 1L), NumberFormat.WHOLE);
            sheet.text(
                    row, 1, swap.formula().name() + ": " + swap.trial().from().name(), Look.PLAIN);
            sheet.text(row, 2, swap.trial().to().name(), Look.PLAIN);
            page.number(row, 3, swap.newLevel(), new NumberFormat("0.0000%"));
            sheet.text(row, 4, swap.label().after().text(), Look.PLAIN);
        }
    }

    private static String where(IngredientList.Part part) {
        return switch (part) {
            case ABOVE_ONE_PERCENT -> "above 1 %: this order";
            case UP_TO_ONE_PERCENT -> "up to 1 %: any order after";
            case COLOURANT -> "colourant: any order, last";
        };
    }
}
