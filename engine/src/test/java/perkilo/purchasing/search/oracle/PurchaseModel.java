package perkilo.purchasing.search.oracle;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import perkilo.oracle.LpText;
import perkilo.purchasing.DutyBasis;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchasePlan;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;
import perkilo.purchasing.Vendor;

/**
 * A purchase problem as a mixed-integer program, in the text format that LP solvers read.
 *
 * <p>For each quote, period and price break a line of {@code n} steps (smallest multiples of packs) is chosen by
 * {@code u}, with first·u ≤ n ≤ last·u; at most one break of a quote, and only in an order that is placed ({@code z}).
 * Supply meets needs by flows {@code x} from each arrival and each lot of stock to each period in which it can be used;
 * where all lots are used up before purchases are, by rows over all spans of periods.
 *
 * <p>Lines must not be rounded to minor units, and leftovers must earn no credit: a linear program can't say it.
 */
public final class PurchaseModel {
    private final PurchaseProblem problem;
    private final List<Line> lines = new ArrayList<>();
    private final LpText lp = new LpText();
    /** By order and small order: what a per cent of average duty costs on its charge, in home currency. */
    private final Map<String, Double> extraDuty = new HashMap<>();

    private final String text;

    /** The model of a problem. */
    public PurchaseModel(PurchaseProblem problem) {
        this.problem = problem;
        if (problem.quotes().stream().anyMatch(quote -> quote.minorDigits() != null)
                || problem.needs().stream()
                        .anyMatch(need -> need.creditPerUnit().signum() > 0)) {
            throw new IllegalArgumentException("rounded lines and credits are not linear");
        }
        for (int q = 0; q < problem.quotes().size(); q++) {
            Quote quote = problem.quotes().get(q);
            for (int t = quote.firstPeriod(); t <= Math.min(quote.lastPeriod(), problem.periods() - 1); t++) {
                addLines(q, t);
            }
        }
        text = write();
    }

    /**
     * A line that may be bought.
     *
     * @param first steps
     * @param last steps
     */
    private record Line(int quote, int period, int tier, long first, long last) {
        String steps() {
            return "n_%d_%d_%d".formatted(quote, period, tier);
        }

        String used() {
            return "u_%d_%d_%d".formatted(quote, period, tier);
        }
    }

    private void addLines(int q, int period) {
        Quote quote = problem.quotes().get(q);
        double step = step(quote);
        Need need = problem.needs().get(quote.item());
        for (int k = 0; k < quote.tiers().size(); k++) {
            BigDecimal from = quote.tiers().get(k).from().max(quote.smallestLine());
            long first = Math.max(1, quote.packsFor(from) / quote.multiple());
            boolean highest = k + 1 == quote.tiers().size();
            long next = highest
                    ? Long.MAX_VALUE
                    : quote.packsFor(quote.tiers().get(k + 1).from()) / quote.multiple();
            long enough = (long) Math.ceil(need.total().doubleValue() / step) + 1;
            double goods = quote.tiers().get(k).pricePerPack().doubleValue() * quote.multiple() * toVendor(quote);
            double minimum = problem.vendorOf(quote).minimumOrderValue().doubleValue();
            long whole = goods == 0 ? 0 : (long) Math.ceil(minimum / goods) + 1;
            long last = Math.min(next - 1, Math.max(first, Math.max(enough, whole)));
            if (first <= last) {
                lines.add(new Line(q, period, k, first, last));
            }
        }
    }

    private static double step(Quote quote) {
        return quote.packSize().doubleValue() * quote.multiple();
    }

    private static double toVendor(Quote quote) {
        return quote.toVendorCurrency().doubleValue();
    }

    /** The program as text. */
    public String text() {
        return text;
    }

    private String write() {
        for (Line line : lines) {
            addLine(line);
        }
        for (int v = 0; v < problem.vendors().size(); v++) {
            for (int t = 0; t < problem.periods(); t++) {
                addOrder(v, t);
            }
        }
        for (int i = 0; i < problem.needs().size(); i++) {
            addNeed(i);
        }
        addCash();
        return lp.text();
    }

    /** The part of the objective that no purchase changes: holding what is there less what is needed. */
    public double constant() {
        double sum = 0;
        for (Need need : problem.needs()) {
            double onShelf = need.stock().stream()
                    .mapToDouble(lot -> lot.quantity().doubleValue())
                    .sum();
            for (BigDecimal used : need.perPeriod()) {
                onShelf -= used.doubleValue();
                sum += onShelf * need.holdingPerUnit().doubleValue();
            }
        }
        return sum;
    }

    /** The plan that a solver's values stand for. */
    public PurchasePlan plan(Map<String, Double> values) {
        List<PurchasePlan.Line> bought = new ArrayList<>();
        for (Line line : lines) {
            long steps = Math.round(values.getOrDefault(line.steps(), 0.0));
            if (steps > 0) {
                int multiple = problem.quotes().get(line.quote()).multiple();
                bought.add(new PurchasePlan.Line(line.quote(), line.period(), steps * multiple));
            }
        }
        return new PurchasePlan(bought);
    }

    private void addLine(Line line) {
        Quote quote = problem.quotes().get(line.quote());
        Need need = problem.needs().get(quote.item());
        double kept = need.holdingPerUnit().doubleValue() * step(quote) * (problem.periods() - line.period());
        lp.cost(line.steps(), landedPerStep(line) + kept);
        lp.integer(line.steps());
        lp.binary(line.used());
        lp.row().plus(1, line.steps()).plus(-(double) line.last(), line.used()).atMost(0);
        lp.row().plus(1, line.steps()).plus(-(double) line.first(), line.used()).atLeast(0);
    }

    private double goodsPerStep(Line line) {
        Quote quote = problem.quotes().get(line.quote());
        return quote.tiers().get(line.tier()).pricePerPack().doubleValue() * quote.multiple() * toVendor(quote);
    }

    /** Goods, the bank's margin, insurance, freight by weight and duty, in home currency. */
    private double landedPerStep(Line line) {
        Quote quote = problem.quotes().get(line.quote());
        Vendor vendor = problem.vendorOf(quote);
        double goods = goodsPerStep(line);
        double insured = goods * vendor.insurance().doubleValue();
        double freight = quote.kgPerPack().doubleValue()
                * quote.multiple()
                * vendor.freightPerKg().doubleValue();
        double dutiable = vendor.dutyBasis() == DutyBasis.CIF ? goods + insured + freight : goods;
        double invoiced = (goods + insured + freight) * (1 + vendor.margin().doubleValue());
        return (invoiced + dutiable * quote.duty().doubleValue())
                * vendor.toHome().doubleValue();
    }

    private void addOrder(int v, int period) {
        Vendor vendor = problem.vendors().get(v);
        List<Line> inOrder = inOrder(v, period);
        if (inOrder.isEmpty()) {
            return;
        }
        String placed = "z_%d_%d".formatted(v, period);
        lp.binary(placed);
        lp.cost(placed, vendor.openingCost(lowest(inOrder)).doubleValue());
        inOrder.stream().mapToInt(Line::quote).distinct().forEach(quote -> {
            LpText.Row row = lp.row();
            inOrder.stream().filter(line -> line.quote() == quote).forEach(line -> row.plus(1, line.used()));
            row.plus(-1, placed).atMost(0);
        });
        if (vendor.minimumOrderValue().signum() > 0) {
            addMinimum(vendor, placed, inOrder);
        }
        addAverageDuty(vendor, placed, inOrder);
    }

    private List<Line> inOrder(int v, int period) {
        return lines.stream()
                .filter(line -> line.period() == period
                        && problem.quotes().get(line.quote()).vendor() == v)
                .toList();
    }

    private BigDecimal lowest(List<Line> inOrder) {
        return inOrder.stream()
                .map(line -> problem.quotes().get(line.quote()).duty())
                .min(BigDecimal::compareTo)
                .orElseThrow();
    }

    private BigDecimal highest(List<Line> inOrder) {
        return inOrder.stream()
                .map(line -> problem.quotes().get(line.quote()).duty())
                .max(BigDecimal::compareTo)
                .orElseThrow();
    }

    /**
     * The duty on the order's charges at the average rate of its lines, beyond that at the lowest rate.
     *
     * <p>{@code r} is how far the average is above the lowest rate, in per cent: r · Σ goods = Σ (rate − lowest) ·
     * goods. The steps of a line are written in binary digits {@code b}, and each product of r and a digit is a
     * variable {@code w} of its own: zero where the digit is zero, r where it is one.
     */
    private void addAverageDuty(Vendor vendor, String placed, List<Line> inOrder) {
        double lowest = 100 * lowest(inOrder).doubleValue();
        double most = 100 * highest(inOrder).doubleValue() - lowest;
        double onOpening = vendor.dutyBasis() == DutyBasis.CIF
                ? vendor.freightPerOrder().multiply(vendor.toHome()).doubleValue()
                : 0;
        boolean charges = lp.knows("s" + placed);
        if (most == 0 || (onOpening == 0 && !charges)) {
            return;
        }
        String average = "r" + placed;
        lp.row().plus(1, average).plus(-most, placed).atMost(0);
        extraDuty.put(placed, onOpening / 100);
        lp.cost(average, onOpening / 100);
        if (charges) {
            double charge = vendor.smallOrderCharge() == null
                    ? 0
                    : vendor.smallOrderCharge().multiply(vendor.toHome()).doubleValue();
            extraDuty.put("s" + placed, charge / 100);
            lp.cost(product("rss" + placed, average, "s" + placed, most), charge / 100);
        }
        LpText.Row above = lp.row();
        LpText.Row below = lp.row();
        for (Line line : inOrder) {
            double goods = goodsPerStep(line);
            double rate = 100 * problem.quotes().get(line.quote()).duty().doubleValue() - lowest;
            LpText.Row digits = lp.row().plus(-1, line.steps());
            LpText.Row same = lp.row().plus(1, line.steps());
            above.plus(-rate * goods, line.steps());
            below.plus(rate * goods, line.steps());
            double worth = 1;
            for (int digit = 0; worth <= line.last(); digit++) {
                String bit = "b%d_%s".formatted(digit, line.steps());
                lp.binary(bit);
                digits.plus(worth, bit);
                same.plus(-worth, bit);
                String part = product("w%d_%s".formatted(digit, line.steps()), average, bit, most);
                above.plus(goods * worth, part);
                below.plus(-goods * worth, part);
                worth *= 2;
            }
            digits.atLeast(0);
            same.atLeast(0);
        }
        above.atLeast(0);
        below.atLeast(0);
    }

    /** A variable that is {@code average}, at most {@code most}, times something that is 0 or 1. */
    private String product(String name, String average, String binary, double most) {
        lp.row().plus(1, name).plus(-most, binary).atMost(0);
        lp.row().plus(1, name).plus(-1, average).atMost(0);
        lp.row().plus(1, name).plus(-1, average).plus(-most, binary).atLeast(-most);
        return name;
    }

    private void addMinimum(Vendor vendor, String placed, List<Line> inOrder) {
        double minimum = vendor.minimumOrderValue().doubleValue();
        LpText.Row row = lp.row();
        inOrder.forEach(line -> row.plus(goodsPerStep(line), line.steps()));
        row.plus(-minimum, placed);
        if (!vendor.refusesSmallOrders()) {
            String small = "s" + placed;
            lp.binary(small);
            lp.cost(small, vendor.smallOrderCost(lowest(inOrder)).doubleValue());
            row.plus(minimum, small);
            lp.row().plus(1, small).plus(-1, placed).atMost(0);
        }
        row.atLeast(0);
    }

    private List<Line> linesOf(int item, int from, int to) {
        return lines.stream()
                .filter(line -> line.period() >= from
                        && line.period() <= to
                        && problem.quotes().get(line.quote()).item() == item)
                .toList();
    }

    private void addNeed(int item) {
        Need need = problem.needs().get(item);
        boolean flows = need.stock().stream()
                .anyMatch(lot -> lot.quantity().signum() > 0
                        && (lot.arrival() > 0 || lot.usablePeriods() > need.usablePeriods()));
        if (flows) {
            addFlows(item, need);
        } else {
            addSpans(item, need);
        }
    }

    /** What is needed in a span of periods must come from what arrives in time and is still good. */
    private void addSpans(int item, Need need) {
        List<BigDecimal> net = need.net();
        int periods = problem.periods();
        for (int from = 0; from < periods; from++) {
            double span = 0;
            for (int to = from; to < periods; to++) {
                span += net.get(to).doubleValue();
                if (net.get(from).signum() == 0 || net.get(to).signum() == 0) {
                    continue;
                }
                long earliest = Math.max(0, from - (long) need.usablePeriods() + 1);
                List<Line> supply = linesOf(item, (int) earliest, to);
                LpText.Row row = lp.row();
                supply.forEach(line -> row.plus(step(problem.quotes().get(line.quote())), line.steps()));
                row.atLeast(span);
                if (from == to) {
                    LpText.Row any = lp.row();
                    supply.forEach(line -> any.plus(1, line.used()));
                    any.atLeast(1);
                }
            }
        }
    }

    private void addFlows(int item, Need need) {
        int periods = problem.periods();
        for (int t = 0; t < periods; t++) {
            LpText.Row out = lp.row();
            for (int use = t; use < periods && use - t < need.usablePeriods(); use++) {
                out.plus(1, "x_%d_%d_%d".formatted(item, t, use));
            }
            linesOf(item, t, t).forEach(line -> out.plus(-step(problem.quotes().get(line.quote())), line.steps()));
            out.atMost(0);
        }
        for (int l = 0; l < need.stock().size(); l++) {
            LpText.Row out = lp.row();
            Need.Lot lot = need.stock().get(l);
            for (int use = lot.arrival(); use < periods && use <= lot.lastPeriod(); use++) {
                out.plus(1, "y_%d_%d_%d".formatted(item, l, use));
            }
            out.atMost(lot.quantity().doubleValue());
        }
        for (int use = 0; use < periods; use++) {
            LpText.Row in = lp.row();
            for (int t = 0; t <= use; t++) {
                if (use - t < need.usablePeriods()) {
                    in.plus(1, "x_%d_%d_%d".formatted(item, t, use));
                }
            }
            for (int l = 0; l < need.stock().size(); l++) {
                Need.Lot lot = need.stock().get(l);
                if (lot.arrival() <= use && use <= lot.lastPeriod()) {
                    in.plus(1, "y_%d_%d_%d".formatted(item, l, use));
                }
            }
            in.atLeast(need.perPeriod().get(use).doubleValue());
        }
    }

    private void addCash() {
        BigDecimal each = problem.cashPerPeriod();
        for (int t = 0; each != null && t < problem.periods(); t++) {
            paid(t, t).atMost(each.doubleValue());
        }
        BigDecimal all = problem.cashTotal();
        if (all != null) {
            paid(0, problem.periods() - 1).atMost(all.doubleValue());
        }
    }

    private LpText.Row paid(int from, int to) {
        LpText.Row row = lp.row();
        for (Line line : lines) {
            if (line.period() >= from && line.period() <= to) {
                row.plus(landedPerStep(line), line.steps());
            }
        }
        for (int v = 0; v < problem.vendors().size(); v++) {
            Vendor vendor = problem.vendors().get(v);
            for (int t = from; t <= to; t++) {
                String placed = "z_%d_%d".formatted(v, t);
                if (!lp.knows(placed)) {
                    continue;
                }
                List<Line> inOrder = inOrder(v, t);
                row.plus(vendor.openingCost(lowest(inOrder)).doubleValue(), placed);
                row.plus(extraDuty.getOrDefault(placed, 0.0), "r" + placed);
                if (lp.knows("s" + placed)) {
                    row.plus(vendor.smallOrderCost(lowest(inOrder)).doubleValue(), "s" + placed);
                    row.plus(extraDuty.getOrDefault("s" + placed, 0.0), "rss" + placed);
                }
            }
        }
        return row;
    }
}
