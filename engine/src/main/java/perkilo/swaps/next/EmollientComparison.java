package perkilo.swaps.next;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * All emollients of a book side by side, with what each costs as if it were bought for a line of a run.
 *
 * <p>The line is the formula's main emollient: the emollient with the highest level, or the material that is asked
 * about. For each run, as much as that line needs is bought of each emollient, alone, as purchases are planned: packs,
 * minimums, freight, charges, duty. The cost of a kilogram is what is paid, divided by what is bought.
 *
 * @param runs the runs of formulas that have an emollient, in the order of the book
 * @param entries the emollients that can be bought for at least one run, or are in a formula; the cheapest first, for
 *     the run of {@link #largest}
 * @param notBought names of emollients without an offer
 */
public record EmollientComparison(List<OfRun> runs, List<Entry> entries, List<String> notBought) {

    /** The roles of emollients. */
    private static final List<String> ROLES =
            List.of("emollient ester", "triglyceride oil", "hydrocarbon", "silicone", "volatile emollient", "butter");

    public EmollientComparison {
        runs = List.copyOf(runs);
        entries = List.copyOf(entries);
        notBought = List.copyOf(notBought);
    }

    /**
     * A run, and the line for which emollients are bought.
     *
     * @param formula the formula that is made
     * @param run what it costs now
     * @param line the line
     * @param kilograms how much of the line's material goes into the product
     */
    public record OfRun(Formula formula, RunCost run, Portion line, BigDecimal kilograms) {}

    /**
     * An emollient.
     *
     * @param material what it is
     * @param formulas names of the formulas that have it
     * @param perKg what a kilogram costs for each run, in home currency; null where it cannot be bought
     */
    public record Entry(Material material, List<String> formulas, List<@Nullable BigDecimal> perKg) {

        public Entry {
            formulas = List.copyOf(formulas);
            perKg = new ArrayList<>(perKg);
        }

        private boolean isBought() {
            return perKg.stream().anyMatch(Objects::nonNull);
        }
    }

    /** The index of the run for which most is bought: there, minimums and charges weigh least. */
    public int largest() {
        return largest(runs);
    }

    private static int largest(List<OfRun> runs) {
        int largest = 0;
        for (int run = 1; run < runs.size(); run++) {
            largest = runs.get(run).kilograms().compareTo(runs.get(largest).kilograms()) > 0 ? run : largest;
        }
        return largest;
    }

    /** Whether a material is an emollient: by its roles, or by its main function where it has no role. */
    public static boolean isEmollient(Material material) {
        List<String> roles = material.traits().words(Fact.ROLE);
        return roles.isEmpty()
                ? Functions.work(material).equals(Functions.EMOLLIENT)
                : roles.stream().map(Names::key).anyMatch(ROLES::contains);
    }

    /**
     * Compares the emollients of an answer.
     *
     * @param asked the material that is asked about; null for the main emollient of each formula
     */
    static EmollientComparison of(SwapOutcome.Found found, RunCoster coster, @Nullable String asked) {
        List<OfRun> runs = runs(found, asked);
        SmallPurchase purchase = new SmallPurchase(found.book(), coster);
        List<Entry> entries = new ArrayList<>();
        List<String> notBought = new ArrayList<>();
        Map<String, Material> all = new LinkedHashMap<>();
        found.book().materials().values().stream()
                .filter(EmollientComparison::isEmollient)
                .forEach(material -> all.put(Names.key(material.name()), material));
        for (Material material : runs.isEmpty() ? List.<Material>of() : List.copyOf(all.values())) {
            List<@Nullable BigDecimal> perKg = new ArrayList<>();
            for (OfRun run : runs) {
                perKg.add(purchase.of(Map.of(material, run.kilograms()))
                        .map(cost -> cost.items().get(0).landedPerUnit())
                        .orElse(null));
            }
            Entry entry = new Entry(material, formulasWith(found, material), perKg);
            if (entry.isBought() || !entry.formulas().isEmpty()) {
                entries.add(entry);
            } else {
                notBought.add(material.name());
            }
        }
        int largest = largest(runs);
        entries.sort(Comparator.comparing(
                        (Entry entry) -> entry.perKg().get(largest), Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(entry -> entry.material().name()));
        return new EmollientComparison(runs, entries, notBought);
    }

    private static List<String> formulasWith(SwapOutcome.Found found, Material material) {
        String key = Names.key(material.name());
        return found.base().keySet().stream()
                .filter(name -> found.book().formula(name).stream()
                        .flatMap(formula -> formula.lines().stream())
                        .anyMatch(line -> Names.key(line.material()).equals(key)))
                .toList();
    }

    private static List<OfRun> runs(SwapOutcome.Found found, @Nullable String asked) {
        List<OfRun> runs = new ArrayList<>();
        found.base()
                .forEach((name, ofFormula) -> found.book()
                        .formula(name)
                        .ifPresent(formula -> main(Recipe.of(found.book(), formula), asked)
                                .ifPresent(line -> ofFormula
                                        .values()
                                        .forEach(run -> runs.add(new OfRun(
                                                formula,
                                                run,
                                                line,
                                                run.needs().batches().charged().multiply(line.level())))))));
        return runs;
    }

    private static Optional<Portion> main(Recipe recipe, @Nullable String asked) {
        List<Portion> emollients = recipe.portions().stream()
                .filter(portion ->
                        isEmollient(portion.material()) && portion.level().signum() > 0)
                .toList();
        Optional<Portion> wanted = emollients.stream()
                .filter(portion ->
                        asked != null && Names.key(portion.material().name()).equals(Names.key(asked)))
                .findFirst();
        return wanted.or(() ->
                emollients.stream().reduce((one, other) -> other.level().compareTo(one.level()) > 0 ? other : one));
    }
}
