package perkilo.costing;

import java.util.Random;
import java.util.stream.IntStream;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Run;
import perkilo.ordering.CheapestPlan;
import perkilo.ordering.sets.QuickPlanner;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.purchasing.PlanPurchases;
import perkilo.purchasing.SearchLimits;
import perkilo.units.Currencies;
import perkilo.units.Measure;

/**
 * How long it takes to cost many formulas at many sizes in many currencies, against a bare loop over doubles that adds
 * up the same purchases, in one run. All materials, prices and rates are invented.
 *
 * <p>The argument is the number of formulas; 10,000 without it.
 */
public final class KernelAgainstLoop {

    private static final String[] CURRENCIES = {"EUR", "USD", "GBP", "CHF", "SEK"};
    private static final double[] PER_EURO = {1, 1.1, 0.85, 0.95, 11};
    private static final int[] BATCH_KG = {5, 10, 25, 50, 100, 250, 500, 1000};
    private static final int MATERIALS = 60;
    private static final int LINES = 10;
    private static final int PACK_KG = 5;
    private static final int ROUNDS = 3;

    private final int[][] formulas;
    private final int[] price;

    private KernelAgainstLoop(int count) {
        Random random = new Random(7);
        price = random.ints(MATERIALS, 100, 10_000).toArray();
        formulas = random.ints(count, 0, MATERIALS)
                .mapToObj(first -> IntStream.range(0, LINES)
                        .map(line -> (first + 7 * line) % MATERIALS)
                        .toArray())
                .toArray(int[][]::new);
    }

    /** Prints the times of each round; in the last one all is compiled. */
    public static void main(String[] arguments) {
        KernelAgainstLoop both = new KernelAgainstLoop(arguments.length == 0 ? 10_000 : Integer.parseInt(arguments[0]));
        for (int round = 1; round <= ROUNDS; round++) {
            long start = System.nanoTime();
            double costed = both.costed();
            long between = System.nanoTime();
            double looped = both.looped();
            long end = System.nanoTime();
            System.out.printf(
                    "%,d costs: %.2f s; the bare loop %.4f s; ratio %.0f; the outlays differ by %.1e of their sum%n",
                    both.formulas.length * BATCH_KG.length * CURRENCIES.length,
                    (between - start) / 1e9,
                    (end - between) / 1e9,
                    (double) (between - start) / (end - between),
                    Math.abs(costed - looped) / looped);
        }
    }

    private double costed() {
        PlanPurchases planner = new QuickPlanner(new CheapestPlan());
        double sum = 0;
        for (int currency = 0; currency < CURRENCIES.length; currency++) {
            Book book = book(CURRENCIES[currency]);
            RunCoster coster = new RunCoster(new Market(book), planner, SearchLimits.usual());
            sum += IntStream.range(0, formulas.length)
                            .parallel()
                            .mapToDouble(formula -> outlay(book, coster, formula))
                            .sum()
                    / PER_EURO[currency];
        }
        return sum;
    }

    private static double outlay(Book book, RunCoster coster, int formula) {
        double sum = 0;
        for (int kg : BATCH_KG) {
            Run run = new Run.OfBulk("formula " + formula, Figure.of(String.valueOf(kg)), Origin.NONE);
            RunCost cost = coster.cost(RunNeeds.of(book, run)).cost();
            sum += cost == null ? Double.NaN : cost.outlay().doubleValue();
        }
        return sum;
    }

    private double looped() {
        double sum = 0;
        for (double rate : PER_EURO) {
            sum += IntStream.range(0, formulas.length)
                            .parallel()
                            .mapToDouble(formula -> bareOutlay(formulas[formula], rate))
                            .sum()
                    / rate;
        }
        return sum;
    }

    private double bareOutlay(int[] materials, double rate) {
        double sum = 0;
        for (int kg : BATCH_KG) {
            for (int material : materials) {
                double packs = Math.ceil((double) kg / LINES / PACK_KG);
                sum += packs * PACK_KG * price[material] / PER_EURO[material % CURRENCIES.length] * rate;
            }
        }
        return sum;
    }

    private Book book(String home) {
        Draft draft = new Draft();
        draft.home = Currencies.of(home);
        for (int currency = 1; currency < CURRENCIES.length; currency++) {
            draft.rate("EUR", CURRENCIES[currency], String.valueOf(PER_EURO[currency]));
        }
        for (int material = 0; material < MATERIALS; material++) {
            int place = material % CURRENCIES.length;
            offer(draft, material, place);
        }
        for (int formula = 0; formula < formulas.length; formula++) {
            Formula.Line[] lines = IntStream.of(formulas[formula])
                    .mapToObj(material -> Draft.line("material " + material, String.valueOf(1.0 / LINES)))
                    .toArray(Formula.Line[]::new);
            draft.formula("formula " + formula, Draft.batching(null, "0", "0"), lines);
        }
        return draft.book();
    }

    private void offer(Draft draft, int material, int place) {
        draft.material(Material.of("material " + material));
        draft.offers.add(Draft.offerOf(
                "supplier " + place,
                "material " + material,
                String.valueOf(PACK_KG),
                Measure.KG,
                CURRENCIES[place],
                Draft.price(String.valueOf(price[material]), Measure.KG)));
    }
}
