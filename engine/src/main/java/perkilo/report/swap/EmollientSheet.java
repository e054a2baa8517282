package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.Polarity;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * Emollients: side by side, those of each formula at each run size with what they cost, then all others of the book.
 */
final class EmollientSheet {

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder("Emollients");
    private final Page page = new Page(sheet);
    private final NumberFormat money;

    private EmollientSheet(SwapOutcome.Found found) {
        this.found = found;
        this.money = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 4);
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new EmollientSheet(found).write();
    }

    private ResultSheet write() {
        sheet.widths(36, 16, 17, 16, 28, 11, 11, 14, 16, 16, 16).landscape();
        page.title(
                "Emollients",
                "Traits refer to the materials sheet. Landed prices are values: of the purchase for the run, or, for a"
                        + " material that is not in the formula, of its cheapest line for one per cent of the run.");
        page.skip(1);
        found.base()
                .forEach((name, runs) ->
                        found.book().formula(name).ifPresent(formula -> runs.forEach((key, run) -> run(formula, run))));
        return sheet.build();
    }

    private void run(Formula formula, RunCost run) {
        List<Portion> emollients = Recipe.of(found.book(), formula).portions().stream()
                .filter(portion -> isEmollient(portion.material()))
                .toList();
        if (emollients.isEmpty()) {
            return;
        }
        page.section(run.needs().title());
        page.heads(List.of(
                "Material",
                "Spreading class",
                "Spreading value, mm²/10 min",
                "Viscosity, mPa·s",
                "Polarity",
                "Use from",
                "Use to",
                "Level",
                "Landed per kg",
                "Cost in 1 kg of bulk",
                "Share of raw materials"));
        for (Portion portion : emollients) {
            inFormula(portion, run);
        }
        LinePrices prices = new LinePrices(found.market());
        BigDecimal onePercent = run.needs().batches().charged().movePointLeft(2);
        for (Material other : found.book().materials().values()) {
            boolean used = emollients.stream()
                    .anyMatch(portion -> Names.key(portion.material().name()).equals(Names.key(other.name())));
            if (!used && isEmollient(other)) {
                prices.cheapest(other, onePercent).ifPresent(line -> {
                    int row = page.take();
                    traits(row, other);
                    page.number(row, 8, line.perKg(), money);
                });
            }
        }
        page.skip(1);
    }

    private void inFormula(Portion portion, RunCost run) {
        int row = page.take();
        traits(row, portion.material());
        Expr level = portion.line().level() == null
                ? Expr.of(portion.level())
                : Expr.input(portion.line().level());
        Expr cell = sheet.value(row, 7, level, NumberFormat.PERCENT, Look.PLAIN);
        Map<String, ItemCost> items = itemsByName(run);
        ItemCost cost = items.get(Names.key(portion.material().name()));
        if (cost != null) {
            Expr price = page.number(row, 8, cost.landedPerUnit(), money);
            Expr inBulk = sheet.value(row, 9, cell.times(price), money, Look.PLAIN);
            if (run.rawMaterialPerKg().signum() > 0) {
                sheet.value(row, 10, inBulk.over(Expr.of(run.rawMaterialPerKg())), NumberFormat.PERCENT, Look.KEY);
            }
        }
    }

    private void traits(int row, Material material) {
        Traits traits = material.traits();
        sheet.text(row, 0, material.name(), Look.LABEL, material.origin());
        sheet.text(
                row,
                1,
                traits.spreadingClass().isBlank() ? "unknown" : traits.spreadingClass(),
                traits.spreadingClass().isBlank() ? Look.HINT : Look.PLAIN);
        page.typed(row, 2, traits.spreadingValue(), NumberFormat.WHOLE);
        page.typed(row, 3, traits.viscosity(), NumberFormat.WHOLE);
        sheet.text(row, 4, Polarity.of(material.inci()).map(Polarity::words).orElse("unknown"), Look.PLAIN);
        page.typed(row, 5, traits.useMin(), NumberFormat.PERCENT);
        page.typed(row, 6, traits.useMax(), NumberFormat.PERCENT);
    }

    private static boolean isEmollient(Material material) {
        return Functions.work(material).equals(Functions.EMOLLIENT);
    }

    private static Map<String, ItemCost> itemsByName(RunCost run) {
        Map<String, ItemCost> items = new LinkedHashMap<>();
        run.items().forEach(item -> items.put(Names.key(item.item().name()), item));
        return items;
    }
}
