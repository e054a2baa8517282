package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.model.Batching;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.origin.Figure;
import perkilo.report.part.Lines;
import perkilo.report.part.MakingPart;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** The part of a run's block with the totals: work, heads, cost per kilogram and per unit. */
final class ResultPart {

    private final Lines lines;
    private final Settings settings;
    private final RunCost cost;
    private final MakingPart making;
    private final ItemsPart items;
    private final NumberFormat money;
    private final NumberFormat fine;

    ResultPart(Lines lines, Settings settings, RunCost cost, MakingPart making, ItemsPart items) {
        this.lines = lines;
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
        lines.section("Work and one-off costs");
        Expr makingCost = work(spent);
        Expr oneOffs = oneOffs(spent);
        spent.put(Head.RAW_MATERIALS, items.rawMaterials());
        spent.put(Head.PACKAGING, items.packaging());
        spent.put(Head.INBOUND, items.used().minus(items.rawMaterials()).minus(items.packaging()));
        spent.put(Head.WASTED_STOCK, items.wasted());
        lines.skip(1);
        Map<Head, Expr> heads = heads(spent);
        return results(blockRow, heads, makingCost, oneOffs);
    }

    /** Writes what is known of a run, and nothing that looks like a complete figure. */
    PartCells writeKnown(RunAnswer answer, int blockRow) {
        Map<Head, Expr> spent = new EnumMap<>(Head.class);
        lines.section("Work and one-off costs");
        List<Expr> known = new ArrayList<>(List.of(items.used(), items.wasted()));
        Expr makingCost = Expr.of(0);
        if (answer.isWorkKnown()) {
            makingCost = work(spent);
            for (Head head : List.of(Head.MAKING, Head.FILLING, Head.OVERHEAD, Head.QUALITY_CONTROL)) {
                known.add(head(spent, head));
            }
        }
        oneOffs(spent);
        known.add(head(spent, Head.ONE_OFFS));
        lines.skip(1);
        lines.section(IncompleteTable.KNOWN);
        BigDecimal raw = answer.rawMaterialPerKg().orElse(null);
        Expr perKg = raw == null ? null : rawMaterialPerKg(raw);
        BigDecimal made = answer.bulkPerKg().orElse(null);
        Expr bulk = made == null ? null : bulkPerKg(makingCost, made);
        Expr sum = lines.checked(
                IncompleteTable.KNOWN,
                Expr.sum(known),
                Objects.requireNonNull(answer.knownSoFar()),
                money,
                "",
                "items used and wasted, work, and its share of the one-off costs, as far as they are known");
        return new PartCells(answer, making, sum, perKg, bulk, blockRow);
    }

    private Expr rawMaterialPerKg(BigDecimal engine) {
        return lines.checked(
                "Raw material cost per kg",
                items.rawMaterialPerKg(),
                engine,
                fine,
                "per kg",
                "the recipe at landed cost, without losses");
    }

    private Expr bulkPerKg(Expr makingCost, BigDecimal engine) {
        return lines.checked(
                "Bulk cost per kg",
                items.materialsUsed().plus(makingCost).over(making.output()),
                engine,
                fine,
                "per kg",
                "(materials used + making with overhead + quality control) ÷ bulk that leaves the kettle");
    }

    private Expr work(Map<Head, Expr> spent) {
        Batching batching = cost.needs().formula().batching();
        Expr hours = lines.checked(
                "Making",
                making.batches()
                        .times(Expr.input(batching.hoursPerBatch()))
                        .plus(making.charged().times(Expr.input(batching.hoursPerKg()))),
                cost.work().makingHours(),
                NumberFormat.QUANTITY,
                "h",
                "hours per batch, and per kg weighed in");
        Expr filling = lines.checked(
                "Filling",
                fillingHours(),
                cost.work().fillingHours(),
                NumberFormat.QUANTITY,
                "h",
                "set-up, and units ÷ units per hour × people");
        Expr rate = lines.figure(
                "Labour rate",
                Expr.input(settings.labourRate()),
                money,
                "per h",
                "",
                settings.labourRate().origin());
        Expr overhead = lines.figure(
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
        Expr control =
                lines.figure("Quality control per batch", Expr.input(perBatch), money, "", "", perBatch.origin());
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
        Expr all = lines.figure(
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
        Expr spread = lines.figure(
                "Spread over",
                Expr.input(spreadOver),
                NumberFormat.WHOLE,
                "units",
                "a run carries at most all one-off costs",
                spreadOver.origin());
        spent.put(Head.ONE_OFFS, all.times(Expr.of(1).min(units.over(spread))));
        return all;
    }

    private Map<Head, Expr> heads(Map<Head, Expr> spent) {
        lines.section("What it costs, by head");
        Column<Head> amount = Column.<Head>of("amount", "Whole run")
                .value(head -> Objects.requireNonNull(cost.heads().get(head)))
                .formula(row -> Objects.requireNonNull(
                        spent.get(row.entry()),
                        () -> "the head " + row.entry() + " has no formula on the result sheet; add it to ResultPart"))
                .format(money)
                .sum(cost.total());
        Column<Head> each = Column.<Head>of("perUnit", "Per unit")
                .formula(row -> perUnit(row.ref(amount)))
                .format(fine)
                .total(table -> perUnit(table.total(amount)));
        Column<Head> share = Column.<Head>of("share", "Share")
                .formula(row -> share(row.ref(amount), row.table().total(amount)))
                .format(NumberFormat.PERCENT)
                .total(table -> share(table.total(amount), table.total(amount)));
        Table<Head> columns = Table.of(
                Column.<Head>of("head", "Head")
                        .words(Head::words)
                        .look(Look.LABEL)
                        .totalWords("Total"),
                amount,
                each,
                share);
        Placed<Head> table = lines.write(lines.place(columns, List.of(Head.values())));
        lines.skip(1);
        Map<Head, Expr> written = new EnumMap<>(Head.class);
        for (Head head : Head.values()) {
            written.put(head, table.ref(head, amount));
        }
        return written;
    }

    private @Nullable Expr perUnit(Expr amount) {
        Expr units = making.units();
        return units == null ? null : amount.over(units);
    }

    private static @Nullable Expr share(Expr amount, Expr total) {
        return total.value().signum() == 0 ? null : amount.over(total);
    }

    private RunCells results(int blockRow, Map<Head, Expr> heads, Expr makingCost, Expr oneOffs) {
        lines.section("Results");
        Expr total = Expr.sum(List.copyOf(heads.values()));
        Expr perKg = rawMaterialPerKg(cost.rawMaterialPerKg());
        Expr bulk = bulkPerKg(makingCost, cost.bulkPerKg());
        Expr unit = line("Unit cost", total, cost.unitCost().orElse(null), "each", "all heads ÷ units");
        Expr work = Expr.sum(List.of(
                head(heads, Head.MAKING),
                head(heads, Head.FILLING),
                head(heads, Head.OVERHEAD),
                head(heads, Head.QUALITY_CONTROL)));
        Expr cash = line(
                "Cash per unit",
                items.outlay().plus(work).plus(oneOffs),
                cost.cashPerUnit().orElse(null),
                "each",
                "all payments, with all one-off costs, ÷ units");
        Expr giveawayKg = making.giveawayKg();
        BigDecimal giveaway = cost.giveawayPerUnit().orElse(null);
        if (giveawayKg != null && giveaway != null) {
            lines.checked("Giveaway", giveawayKg.times(bulk), giveaway, fine, "each", "bulk above the nominal fill");
        }
        Expr paid = lines.checked(
                "Outlay for items",
                items.outlay(),
                cost.outlay(),
                money,
                "",
                "all payments for materials and components");
        Expr wasted = lines.checked(
                "Wasted", items.wasted(), cost.wasted(), money, "", "bought, and expires before it can be used");
        Expr stock = lines.checked(
                "Stock left",
                paid.minus(items.used()).minus(wasted),
                cost.stockLeft(),
                money,
                "",
                "outlay − used − wasted, at cost");
        Expr units = making.units();
        RunCells.PerUnit perUnit = units == null || unit == null || cash == null
                ? null
                : new RunCells.PerUnit(unit, cash, head(heads, Head.ONE_OFFS).over(units));
        return new RunCells(
                cost,
                making,
                items,
                new RunCells.PerKg(perKg, bulk),
                perUnit,
                new RunCells.Cash(paid, stock, wasted),
                heads,
                blockRow);
    }

    private @Nullable Expr line(String name, Expr total, @Nullable BigDecimal engine, String unit, String meaning) {
        Expr units = making.units();
        if (units == null || engine == null) {
            return null;
        }
        return lines.checked(name, total.over(units), engine, fine, unit, meaning);
    }

    private static Expr head(Map<Head, Expr> heads, Head head) {
        return Objects.requireNonNull(heads.get(head));
    }
}
