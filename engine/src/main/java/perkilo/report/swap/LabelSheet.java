package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.model.Formula;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.swaps.AppliedSwap;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.label.IngredientList;
import perkilo.swaps.label.LabelChange;
import perkilo.swaps.trial.Recipe;

/** The sheet Ingredient list: the present list of each formula, and the new one of every blend and every swap. */
final class LabelSheet {

    private static final NumberFormat LEVEL = new NumberFormat("0.0000%");

    private static final Column<Numbered<IngredientList.Entry>> INGREDIENT = Column.<Numbered<IngredientList.Entry>>of(
                    "ingredient", "Ingredient")
            .words(row -> row.entry().name())
            .look(Look.LABEL)
            .width(44);

    private static final Table<Numbered<IngredientList.Entry>> INGREDIENTS = Table.of(
            number("Place"),
            INGREDIENT,
            Column.<Numbered<IngredientList.Entry>>of("part", "Where")
                    .words(row -> where(row.entry()))
                    .width(48),
            level("Level", IngredientList.Entry::level),
            Column.<Numbered<IngredientList.Entry>>of("known", "")
                    .words(row -> row.entry().atMost() ? "at most" : null)
                    .look(Look.HINT)
                    .width(10));

    private static final Table<Numbered<Swap>> SWAPS = Table.of(
            number("Swap no."),
            Column.<Numbered<Swap>>of("material", "Material")
                    .words(row -> row.entry().formula().name() + ": "
                            + row.entry().trial().from().name())
                    .width(44),
            Column.<Numbered<Swap>>of("candidate", "Candidate")
                    .words(row -> row.entry().trial().to().name())
                    .width(34),
            level("New level", Swap::newLevel),
            Column.<Numbered<Swap>>of("ingredients", "New ingredient list")
                    .words(row -> row.entry().label().after().text())
                    .width(100),
            Column.<Numbered<Swap>>of("changes", "What changes")
                    .words(row -> changes(row.entry().label()))
                    .width(50));

    /**
     * What stands at a place of the label, now and then.
     *
     * @param now null beyond the end of the list
     * @param then null beyond the end of the list
     */
    private record Pair(IngredientList.@Nullable Entry now, IngredientList.@Nullable Entry then) {}

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder("Ingredient list");
    private final Page page = new Page(sheet);

    private LabelSheet(SwapOutcome.Found found) {
        this.found = found;
    }

    static ResultSheet of(SwapOutcome.Found found, Optional<AppliedSwap> applied) {
        return new LabelSheet(found).write(applied);
    }

    private ResultSheet write(Optional<AppliedSwap> applied) {
        sheet.freeze(2, 0).landscape();
        page.title(
                "Ingredient list",
                "In the order of Regulation (EC) No 1223/2009, Article 19(1)(g): by falling weight when added; ingredients"
                        + " up to 1 % follow in any order; colourants are last. Levels are fixed values.");
        page.line(
                "Fragrance allergens of Annex III, as amended by Regulation (EU) 2023/1545, are named above 0.001 % in a"
                        + " leave-on and above 0.01 % in a rinse-off product, all materials together.",
                Look.HINT);
        page.skip(1);
        applied.ifPresent(this::beforeAndAfter);
        for (String name : found.base().keySet()) {
            found.book().formula(name).ifPresent(this::formula);
        }
        if (!found.blends().isEmpty()) {
            page.section("With a blend");
            page.table(new BlendTable(found).at(sheet, page.next()));
            page.skip(1);
        }
        page.section("With a swap");
        page.table(SWAPS.at(sheet, page.next(), Numbered.all(found.swaps())));
        return sheet.build();
    }

    private void beforeAndAfter(AppliedSwap applied) {
        page.section(applied.formula().name() + ": before and after");
        LabelChange label = applied.label();
        List<Numbered<Pair>> places = new ArrayList<>();
        int most = Math.max(
                label.before().entries().size(), label.after().entries().size());
        for (int place = 0; place < most; place++) {
            places.add(new Numbered<>(place + 1, new Pair(at(label.before(), place), at(label.after(), place))));
        }
        page.table(pairs(label).at(sheet, page.next(), places));
        page.line("What changes: " + changes(label) + ".", Look.HINT);
        page.skip(1);
    }

    private static IngredientList.@Nullable Entry at(IngredientList list, int place) {
        return place < list.entries().size() ? list.entries().get(place) : null;
    }

    private static Table<Numbered<Pair>> pairs(LabelChange label) {
        return Table.of(
                number("Place"),
                Column.<Numbered<Pair>>of("now", "Before")
                        .words(row -> name(row.entry().now()))
                        .width(44),
                Column.<Numbered<Pair>>of("then", "After")
                        .words(row -> name(row.entry().then()))
                        .look(row -> {
                            String name = name(row.entry().then());
                            return label.enters().contains(name)
                                            || label.moves().contains(name)
                                    ? Look.NOTICE
                                    : Look.PLAIN;
                        })
                        .width(48),
                Column.<Numbered<Pair>>of("level", "Level after")
                        .value(row -> {
                            IngredientList.Entry then = row.entry().then();
                            return then == null ? null : then.level();
                        })
                        .format(LEVEL)
                        .width(12));
    }

    private static String name(IngredientList.@Nullable Entry entry) {
        return entry == null ? "" : entry.name();
    }

    private void formula(Formula formula) {
        IngredientList list = IngredientList.of(Recipe.of(found.book(), formula));
        page.section(formula.name());
        Placed<Numbered<IngredientList.Entry>> ingredients =
                page.table(INGREDIENTS.at(sheet, page.next(), Numbered.all(list.entries())));
        list.notes().forEach(note -> sheet.text(page.take(), ingredients.column(INGREDIENT), note, Look.HINT));
        page.skip(1);
    }

    private static <T> Column<Numbered<T>> number(String heading) {
        return Column.<Numbered<T>>of("number", heading)
                .value(Numbered::figure)
                .format(NumberFormat.WHOLE)
                .width(10);
    }

    private static <T> Column<Numbered<T>> level(String heading, Function<T, BigDecimal> level) {
        return Column.<Numbered<T>>of("level", heading)
                .value(row -> level.apply(row.entry()))
                .format(LEVEL)
                .width(12);
    }

    private static String changes(LabelChange label) {
        List<String> words = new ArrayList<>();
        add(words, "in: ", label.enters());
        add(words, "out: ", label.leaves());
        add(words, "moves: ", label.moves());
        return words.isEmpty() ? "nothing" : String.join("; ", words);
    }

    private static void add(List<String> words, String what, List<String> names) {
        if (!names.isEmpty()) {
            words.add(what + String.join(", ", names));
        }
    }

    private static String where(IngredientList.Entry entry) {
        String place = where(entry.part());
        return entry.allergen() ? place + "; allergen that has to be named" : place;
    }

    private static String where(IngredientList.Part part) {
        return switch (part) {
            case ABOVE_ONE_PERCENT -> "above 1 %: this order";
            case UP_TO_ONE_PERCENT -> "up to 1 %: any order after";
            case COLOURANT -> "colourant: any order, last";
        };
    }
}
