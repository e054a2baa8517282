package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.RunCost;
import perkilo.model.Batching;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.report.part.MakingPart;
import perkilo.report.part.Rows;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.SheetNames;

/** The part of a run's block that adds everything up: work, heads, cost per kilogram and per unit. */
final class ResultPart {

    private final Rows rows;
    private final SheetBuilder sheet;
    private final Settings settings;
    private final RunCost cost;
    private final MakingPart making;
    private final ItemsPart items;
    private final NumberFormat money;
    private final NumberFormat fine;

    ResultPart(Rows rows, Settings settings, RunCost cost, MakingPart making, ItemsPart items) {
        this.rows = rows;
        this.sheet = rows.sheet();
        this.settings = settings;
        this.cost = cost;
        this.making = making;
        this.items = items;
        String home = cost.home().getCurrencyCode();
        this.money = NumberFormat.money(home, 2);
        this.fine = NumberFormat.money(home, 4);
    }

    /** Writes the part of the block that begins at {@code blockRow}. */
    RunCells write(int blockRow) {
        Map<Head, Expr> spent = new EnumMap<>(Head.class);
        rows.section("Work and one-off costs", Look.SECTION);
        Expr makingCost = work(spent);
        Expr oneOffs = oneOffs(spent);
        spent.put(Head.RAW_MATERIALS, items.rawMaterials());
        spent.put(Head.PACKAGING, items.packaging());
        spent.put(Head.INBOUND, items.used().minus(items.rawMaterials()).minus(items.packaging()));
        spent.put(Head.WASTED_STOCK, items.wasted());
        rows.skip(1);
        Map<Head, Expr> heads = heads(spent);
        return results(blockRow, heads, makingCost, oneOffs);
    }

    private Expr work(Map<Head, Expr> spent) {
        Batching batching = cost.needs().formula().batching();
        Expr hours = rows.checked(
                "Making",
                making.batches()
                        .times(Expr.input(batching.hoursPerBatch()))
                        .plus(making.charged().times(Expr.input(batching.hoursPerKg()))),
                cost.work().makingHours(),
                NumberFormat.QUANTITY,
                "h",
                "hours per batch, and per kg weighed in");
        Expr filling = rows.checked(
                "Filling",
                fillingHours(),
                cost.work().fillingHours(),
                NumberFormat.QUANTITY,
                "h",
                "set-up, and units ÷ units per hour × people");
        Expr rate = rows.figure(
                "Labour rate",
                Expr.input(settings.labourRate()),
                money,
                "per h",
                "",
                settings.labourRate().origin());
        Expr overhead = rows.figure(
                "Overhead",
                Expr.input(settings.overhead()),
                NumberFormat.PERCENT,
                "",
                "of labour",
                settings.overhead().origin());
        Expr makingCost = hours.times(rate);
        spent.put(Head.MAKING, makingCost);
        spent.put(Head.FILLING, filling.times(rate));
        spent.put(Head.OVERHEAD, makingCost.plus(filling.times(rate)).times(overhead));
        Figure perBatch = batching.qualityControlPerBatch();
        Expr control = rows.figure("Quality control per batch", Expr.input(perBatch), money, "", "", perBatch.origin());
        spent.put(Head.QUALITY_CONTROL, making.batches().times(control));
        return makingCost.times(Expr.of(1).plus(overhead)).plus(making.batches().times(control));
    }

    private Expr fillingHours() {
        Product product = cost.needs().product();
        Expr units = making.units();
        if (product == null || units == null) {
            return Expr.of(0);
        }
        Expr setUp = Expr.input(product.setUpHours());
        Figure speed = product.unitsPerHour();
        return speed == null
                ? setUp
                : setUp.plus(units.over(Expr.input(speed)).times(Expr.input(product.fillingPeople())));
    }

    private Expr oneOffs(Map<Head, Expr> spent) {
        Product product = cost.needs().product();
        Expr units = making.units();
        if (product == null || units == null) {
            spent.put(Head.ONE_OFFS, Expr.of(0));
            return Expr.of(0);
        }
        Expr all = rows.figure(
                "One-off costs",
                Expr.input(product.oneOffCosts()),
                money,
                "",
                "stability, challenge test, safety assessment, notification, artwork",
                product.oneOffCosts().origin());
        Figure spreadOver = product.spreadOver();
        if (spreadOver == null) {
            spent.put(Head.ONE_OFFS, all);
            return all;
        }
        Expr spread = rows.figure(
                "Spread over",
                Expr.input(spreadOver),
                NumberFormat.WHOLE,
                "units",
                "a run carries no more than all",
                spreadOver.origin());
        spent.put(Head.ONE_OFFS, all.times(Expr.of(1).min(units.over(spread))));
        return all;
    }

    private Map<Head, Expr> heads(Map<Head, Expr> spent) {
        rows.section("What it costs, by head", Look.SECTION);
        rows.heads("Head", "Whole run", "Per unit", "Share");
        int first = rows.next();
        int total = first + Head.values().length;
        Expr totalCell = Expr.cell(sheet.name(), SheetNames.cell(total, 1), cost.total());
        Map<Head, Expr> written = new EnumMap<>(Head.class);
        for (Head head : Head.values()) {
            int row = rows.next();
            sheet.text(row, 0, head.words(), Look.LABEL);
            Expr amount = sheet.checked(
                    row,
                    1,
                    Objects.requireNonNull(spent.get(head)),
                    Objects.requireNonNull(cost.heads().get(head)),
                    money,
                    Look.PLAIN);
            perUnitAndShare(row, amount, totalCell, Look.PLAIN);
            written.put(head, amount);
            rows.skip(1);
        }
        sheet.text(total, 0, "Total", Look.TOTAL);
        Expr sum = sheet.checked(total, 1, sheet.sumOfColumn(1, first, total - 1), cost.total(), money, Look.TOTAL);
        perUnitAndShare(total, sum, totalCell, Look.TOTAL);
        rows.skip(2);
        return written;
    }

    private void perUnitAndShare(int row, Expr amount, Expr total, Look look) {
        Expr units = making.units();
        if (units != null) {
            sheet.value(row, 2, amount.over(units), fine, look);
        }
        if (total.value().signum() != 0) {
            sheet.value(row, 3, amount.over(total), NumberFormat.PERCENT, look);
        }
    }

    private RunCells results(int blockRow, Map<Head, Expr> heads, Expr makingCost, Expr oneOffs) {
        rows.section("Results", Look.SECTION);
        Expr total = Expr.sum(List.copyOf(heads.values()));
        Expr perKg = rows.checked(
                "Raw material cost per kg",
                items.rawMaterialPerKg(),
                cost.rawMaterialPerKg(),
                fine,
                "per kg",
                "the recipe at landed cost, without losses");
        Expr bulk = rows.checked(
                "Bulk cost per kg",
                items.materialsUsed().plus(makingCost).over(making.output()),
                cost.bulkPerKg(),
                fine,
                "per kg",
                "materials used, making with overhead, quality control ÷ what leaves the kettle");
        Expr unit = perUnit("Unit cost", total, cost.unitCost().orElse(null), "each", "everything by head ÷ units");
        Expr work = Expr.sum(List.of(
                head(heads, Head.MAKING),
                head(heads, Head.FILLING),
                head(heads, Head.OVERHEAD),
                head(heads, Head.QUALITY_CONTROL)));
        Expr cash = perUnit(
                "Cash per unit",
                items.outlay().plus(work).plus(oneOffs),
                cost.cashPerUnit().orElse(null),
                "each",
                "everything paid, all one-off costs included ÷ units");
        Expr giveawayKg = making.giveawayKg();
        BigDecimal giveaway = cost.giveawayPerUnit().orElse(null);
        if (giveawayKg != null && giveaway != null) {
            rows.checked("Giveaway", giveawayKg.times(bulk), giveaway, fine, "each", "bulk above the nominal fill");
        }
        Expr paid = rows.checked("Outlay for items", items.outlay(), cost.outlay(), money, "", "what leaves the bank");
        Expr wasted = rows.checked(
                "Wasted", items.wasted(), cost.wasted(), money, "", "bought, and expires before it can be used");
        Expr stock = rows.checked(
                "Stock left",
                paid.minus(items.used()).minus(wasted),
                cost.stockLeft(),
                money,
                "",
                "outlay − used − wasted, at cost");
        Expr units = making.units();
        Expr oneOffPerUnit = units == null ? null : head(heads, Head.ONE_OFFS).over(units);
        return new RunCells(
                cost,
                making,
                perKg,
                bulk,
                total,
                unit,
                cash,
                paid,
                stock,
                items.lowestLeft(),
                wasted,
                oneOffPerUnit,
                heads,
                blockRow);
    }

    private @Nullable Expr perUnit(String name, Expr total, @Nullable BigDecimal engine, String unit, String meaning) {
        Expr units = making.units();
        if (units == null || engine == null) {
            return null;
        }
        return rows.checked(name, total.over(units), engine, fine, unit, meaning);
    }

    private static Expr head(Map<Head, Expr> heads, Head head) {
        return Objects.requireNonNull(heads.get(head));
    }
}
