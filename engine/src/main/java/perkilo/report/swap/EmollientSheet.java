package perkilo.report.swap;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.money.LinePrices;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** The sheet Emollients: those of each formula at each run size with their costs, then all others of the book. */
final class EmollientSheet {

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder("Emollients");
    private final Page page = new Page(sheet);

    private EmollientSheet(SwapOutcome.Found found) {
        this.found = found;
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new EmollientSheet(found).write();
    }

    private ResultSheet write() {
        sheet.landscape();
        page.title(
                "Emollients",
                "Traits are linked to the materials sheet. Landed prices are fixed values: from the purchase for the run, or,"
                        + " for a material that is not in the formula, from the cheapest offer for one per cent of the run.");
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
        List<EmollientTable.Entry> rows = new ArrayList<>(inFormula(emollients, run));
        rows.addAll(others(emollients, run));
        page.section(run.needs().title());
        page.table(new EmollientTable(run).at(sheet, page.next(), rows));
        page.skip(1);
    }

    private static List<EmollientTable.Entry> inFormula(List<Portion> emollients, RunCost run) {
        Map<String, ItemCost> items = new LinkedHashMap<>();
        run.items().forEach(item -> items.put(Names.key(item.item().name()), item));
        List<EmollientTable.Entry> rows = new ArrayList<>();
        for (Portion portion : emollients) {
            ItemCost cost = items.get(Names.key(portion.material().name()));
            rows.add(new EmollientTable.Entry(portion.material(), portion, cost == null ? null : cost.landedPerUnit()));
        }
        return rows;
    }

    /** The other emollients of the book that can be bought. */
    private List<EmollientTable.Entry> others(List<Portion> emollients, RunCost run) {
        LinePrices prices = new LinePrices(found.market());
        BigDecimal onePercent = run.needs().batches().charged().movePointLeft(2);
        List<EmollientTable.Entry> rows = new ArrayList<>();
        for (Material other : found.book().materials().values()) {
            boolean used = emollients.stream()
                    .anyMatch(portion -> Names.key(portion.material().name()).equals(Names.key(other.name())));
            if (!used && isEmollient(other)) {
                prices.cheapest(other, onePercent)
                        .ifPresent(line -> rows.add(new EmollientTable.Entry(other, null, line.perKg())));
            }
        }
        return rows;
    }

    private static boolean isEmollient(Material material) {
        return Functions.work(material).equals(Functions.EMOLLIENT);
    }
}
