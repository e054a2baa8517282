package perkilo.costing;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.quick.QuickPlanner;
import perkilo.units.Conversion;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * How long it takes to cost many formulas at many sizes, stated in the home currency and four others, against bare
 * loops over doubles that do the same sums, in one run. All materials, prices and rates are invented.
 *
 * <p>Each formula has ten of sixty materials at levels of its own, in tenths of a per cent, so that hardly a need comes
 * twice. Each material is sold in packs of 5 kg, at a lower price from 50 kg, in one of five currencies, by a supplier
 * who charges insurance, freight by weight and duty. A loop works out of each line: the need with handling loss, the
 * packs that cover it and those that reach the lower price, the goods of both, rounded to the cent, the landed cost of
 * both at the rate, the cheaper one, and the part that is used. It is told all figures in advance, makes no objects,
 * rounds in doubles and keeps two sums, the outlay and what the run costs; the engine leaves, exact, every line of
 * every order as well. Its sums are added up as they are, in decimals, and become a fraction once for each formula and
 * currency: that takes as long as a fifth of a cost, and is no part of it.
 *
 * <p>There are two loops. One works out every cost, of each formula, at each size, in each currency. The other knows,
 * as the engine does, that what is cheapest in one currency is so in all, works out a formula at a size once, and
 * converts the two sums.
 *
 * <p>The argument is the number of formulas; 10,000 without it.
 */
public final class KernelAgainstLoop {

    private static final String[] CURRENCIES = {"EUR", "USD", "GBP", "CHF", "SEK"};
    private static final double[] PER_EURO = {1, 1.1, 0.85, 0.95, 11};
    private static final int[] BATCH_KG = {5, 10, 25, 50, 100, 250, 500, 1000};
    private static final int MATERIALS = 60;
    private static final int LINES = 10;
    private static final double PACK_KG = 5;
    private static final double BREAK_KG = 50;
    private static final double HANDLING_LOSS = 0.01;
    private static final double INSURANCE = 0.004;
    private static final double FREIGHT_PER_KG = 0.35;
    private static final double DUTY = 0.02;
    private static final double HOURS_PER_KG = 0.02;
    private static final double LABOUR_RATE = 24;
    private static final int ROUNDS = 24;

    /** The loop is so quick that it is timed over so many goes. */
    private static final int LOOPS = 20;

    private final int[][] materials;
    private final double[][] levels;
    private final double[] price;
    private final double[] lowerPrice;

    private KernelAgainstLoop(int count) {
        Random random = new Random(7);
        price = random.ints(MATERIALS, 200, 10_000)
                .mapToDouble(cents -> cents / 100.0)
                .toArray();
        lowerPrice = IntStream.range(0, MATERIALS)
                .mapToDouble(material -> Math.round(price[material] * 95) / 100.0)
                .toArray();
        materials = new int[count][];
        levels = new double[count][];
        for (int formula = 0; formula < count; formula++) {
            int first = random.nextInt(MATERIALS);
            materials[formula] = IntStream.range(0, LINES)
                    .map(line -> (first + 7 * line) % MATERIALS)
                    .toArray();
            levels[formula] = levels(random);
        }
    }

    /** Ten levels in tenths of a per cent that add up to the whole. */
    private static double[] levels(Random random) {
        double[] levels = random.ints(LINES, 1, 100)
                .mapToDouble(tenths -> tenths / 1000.0)
                .toArray();
        int rest = 1000;
        for (int line = 1; line < LINES; line++) {
            rest -= (int) Math.round(levels[line] * 1000);
        }
        levels[0] = rest / 1000.0;
        return levels;
    }

    /** Prints the times of each round; in the last ones all is compiled. */
    public static void main(String[] arguments) {
        KernelAgainstLoop both = new KernelAgainstLoop(arguments.length == 0 ? 10_000 : Integer.parseInt(arguments[0]));
        for (int round = 1; round <= ROUNDS; round++) {
            Time engine = Time.of(both::costed);
            Time each = Time.of(() -> again(both::loopedEach));
            Time once = Time.of(() -> again(both::loopedOnce));
            int costs = both.materials.length * BATCH_KG.length * CURRENCIES.length;
            System.out.printf(
                    "%,d costs: %.2f s, %.2f s of processor, %.2f µs each; a loop that works out each %.3f µs, ratio %.1f;"
                            + " one that works them out once and converts %.3f µs, ratio %.0f;"
                            + " the sums differ by %.1e and %.1e%n",
                    costs,
                    engine.clock,
                    engine.processor,
                    engine.processor * 1e6 / costs,
                    each.processor * 1e6 / costs / LOOPS,
                    engine.processor / each.processor * LOOPS,
                    once.processor * 1e6 / costs / LOOPS,
                    engine.processor / once.processor * LOOPS,
                    Math.abs(engine.result - each.result) / each.result,
                    Math.abs(engine.result - once.result) / once.result);
        }
    }

    private static double again(DoubleSupplier loop) {
        double sum = 0;
        for (int again = 0; again < LOOPS; again++) {
            sum += loop.getAsDouble();
        }
        return sum / LOOPS;
    }

    private record Time(double clock, double processor, double result) {

        static Time of(DoubleSupplier work) {
            long clock = System.nanoTime();
            long processor = millis();
            double result = work.getAsDouble();
            return new Time((System.nanoTime() - clock) / 1e9, (millis() - processor) / 1e3, result);
        }

        private static long millis() {
            return ProcessHandle.current()
                    .info()
                    .totalCpuDuration()
                    .orElseThrow()
                    .toMillis();
        }
    }

    private double costed() {
        Book book = book();
        Market market = new Market(book);
        RunCoster coster = new RunCoster(market, new QuickPlanner(new CheapestPlan()), SearchLimits.usual());
        List<Conversion> currencies = Arrays.stream(CURRENCIES)
                .map(code -> market.conversion(book.settings().home(), Currencies.of(code)))
                .toList();
        return IntStream.range(0, materials.length)
                .parallel()
                .mapToDouble(formula -> costed(book, coster, currencies, formula))
                .sum();
    }

    private static double costed(Book book, RunCoster coster, List<Conversion> currencies, int formula) {
        BigDecimal[] sums = new BigDecimal[currencies.size()];
        Arrays.fill(sums, BigDecimal.ZERO);
        for (int kg : BATCH_KG) {
            Run run = new Run.OfBulk("formula " + formula, Figure.of(BigDecimal.valueOf(kg)), Origin.NONE);
            RunCost cost = coster.cost(RunNeeds.of(book, run)).cost();
            if (cost == null) {
                return Double.NaN;
            }
            BigDecimal outlay = cost.outlay();
            BigDecimal total = cost.total();
            for (int currency = 0; currency < sums.length; currency++) {
                Conversion conversion = currencies.get(currency);
                sums[currency] = sums[currency].add(conversion.convert(outlay)).add(conversion.convert(total));
            }
        }
        double all = 0;
        for (BigDecimal sum : sums) {
            all += sum.doubleValue();
        }
        return all;
    }

    private double loopedEach() {
        double sum = 0;
        for (double rate : PER_EURO) {
            sum += looped(rate);
        }
        return sum;
    }

    private double loopedOnce() {
        double inHome = looped(1);
        double sum = 0;
        for (double rate : PER_EURO) {
            sum += inHome * rate;
        }
        return sum;
    }

    private double looped(double rate) {
        return IntStream.range(0, materials.length)
                .parallel()
                .mapToDouble(formula -> looped(materials[formula], levels[formula], rate))
                .sum();
    }

    private double looped(int[] ofFormula, double[] level, double rate) {
        double sum = 0;
        for (int kg : BATCH_KG) {
            double outlay = 0;
            double used = 0;
            for (int line = 0; line < LINES; line++) {
                int material = ofFormula[line];
                double need = kg * level[line] / (1 - HANDLING_LOSS);
                double toHome = rate / PER_EURO[material % CURRENCIES.length];
                double few = Math.ceil(need / PACK_KG - 1e-9) * PACK_KG;
                double many = Math.max(few, BREAK_KG);
                double listed = landed(few, few >= BREAK_KG ? lowerPrice[material] : price[material]);
                double lower = landed(many, lowerPrice[material]);
                double landed = Math.min(listed, lower) * toHome;
                outlay += landed;
                used += landed * need / (listed <= lower ? few : many);
            }
            sum += outlay + used + kg * HOURS_PER_KG * LABOUR_RATE * rate;
        }
        return sum;
    }

    private static double landed(double quantity, double price) {
        double insured = Math.floor(quantity * price * 100 + 0.5) / 100 * (1 + INSURANCE) + FREIGHT_PER_KG * quantity;
        return insured + DUTY * insured;
    }

    private Book book() {
        Draft draft = new Draft();
        draft.home = Currencies.of(CURRENCIES[0]);
        draft.labourRate = Figure.of(String.valueOf(LABOUR_RATE));
        for (int currency = 0; currency < CURRENCIES.length; currency++) {
            if (currency > 0) {
                draft.rate(CURRENCIES[0], CURRENCIES[currency], String.valueOf(PER_EURO[currency]));
            }
            draft.suppliers.add(supplier(currency));
        }
        for (int material = 0; material < MATERIALS; material++) {
            draft.material(Draft.material("material " + material, "", null, null, String.valueOf(HANDLING_LOSS), null));
            draft.offers.add(offer(material));
        }
        for (int formula = 0; formula < materials.length; formula++) {
            draft.formula("formula " + formula, batching(), lines(formula));
        }
        return draft.book();
    }

    private Formula.Line[] lines(int formula) {
        return IntStream.range(0, LINES)
                .mapToObj(line ->
                        Draft.line("material " + materials[formula][line], String.valueOf(levels[formula][line])))
                .toArray(Formula.Line[]::new);
    }

    private static Supplier supplier(int currency) {
        return new Supplier(
                "supplier " + currency,
                Currencies.of(CURRENCIES[currency]),
                null,
                new Supplier.Minimum(null, null),
                new Supplier.Charges(
                        Figure.ZERO,
                        Figure.of(String.valueOf(FREIGHT_PER_KG)),
                        Figure.of(String.valueOf(INSURANCE)),
                        Figure.of(String.valueOf(DUTY))),
                Figure.ZERO,
                Origin.NONE);
    }

    private static Batching batching() {
        return new Batching(
                null,
                Figure.ZERO,
                Figure.ZERO,
                Figure.ZERO,
                Figure.of(String.valueOf(HOURS_PER_KG)),
                Figure.ZERO,
                null,
                ProductKind.LEAVE_ON,
                Origin.NONE);
    }

    private Offer offer(int material) {
        int place = material % CURRENCIES.length;
        return Draft.offerOf(
                "supplier " + place,
                "material " + material,
                String.valueOf((int) PACK_KG),
                Measure.KG,
                CURRENCIES[place],
                Draft.price(String.valueOf(price[material]), Measure.KG),
                Draft.price(String.valueOf((int) BREAK_KG), String.valueOf(lowerPrice[material]), Measure.KG));
    }
}
