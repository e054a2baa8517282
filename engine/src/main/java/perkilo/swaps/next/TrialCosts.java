package perkilo.swaps.next;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.costing.Listing;
import perkilo.costing.Purchase;
import perkilo.costing.RunCost;
import perkilo.costing.RunCoster;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Settings;
import perkilo.names.Names;
import perkilo.origin.Decimals;
import perkilo.origin.Figure;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.Quote;
import perkilo.swaps.Swap;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.money.RunChange;

/** What it costs to try each swap and each blend of an answer. */
final class TrialCosts {

    private static final int GRAMS_OF_KILOGRAM = 3;

    private final SwapOutcome.Found found;
    private final SmallPurchase purchase;
    private final BigDecimal kilograms;
    private final Map<List<Object>, Optional<RunCost>> bought = new HashMap<>();

    /**
     * Costs of trials.
     *
     * @param grams the size of the bench batch
     */
    TrialCosts(SwapOutcome.Found found, RunCoster coster, BigDecimal grams) {
        this.found = found;
        this.purchase = new SmallPurchase(found.book(), coster);
        this.kilograms = grams.movePointLeft(GRAMS_OF_KILOGRAM);
    }

    /** All of them: swaps, then blends. */
    List<TrialCost> all() {
        List<TrialCost> all = new ArrayList<>();
        for (Swap swap : found.swaps()) {
            Material to = swap.trial().to();
            all.add(cost(
                    "swap " + (all.size() + 1),
                    swap.formula(),
                    List.of(swap.trial().from().name()),
                    Map.of(to, swap.newLevel()),
                    swap.runs()));
        }
        int number = 0;
        for (Blend blend : found.blends()) {
            Map<Material, BigDecimal> in = new LinkedHashMap<>();
            for (Blend.Part part : blend.parts()) {
                if (part.before().signum() == 0) {
                    in.put(part.material(), part.after());
                }
            }
            all.add(cost("blend " + ++number, blend.formula(), blend.leaving(), in, blend.runs()));
        }
        return all;
    }

    private TrialCost cost(
            String choice, Formula formula, List<String> out, Map<Material, BigDecimal> in, List<RunChange> runs) {
        Settings.Testing tests = found.book().settings().testing();
        Map<Material, BigDecimal> needed = new LinkedHashMap<>();
        in.forEach((material, level) -> {
            if (!isIn(formula, material) && level.signum() > 0) {
                needed.put(material, level.multiply(kilograms));
            }
        });
        List<String> names = in.keySet().stream().map(Material::name).toList();
        if (needed.isEmpty()) {
            return new TrialCost(choice, formula, out, names, List.of(), BigDecimal.ZERO, tests, runs);
        }
        Optional<RunCost> cost = bought(needed);
        return new TrialCost(
                choice,
                formula,
                out,
                names,
                cost.map(TrialCosts::packs).orElse(List.of()),
                cost.map(RunCost::outlay).orElse(null),
                tests,
                runs);
    }

    private Optional<RunCost> bought(Map<Material, BigDecimal> needed) {
        List<Object> key = new ArrayList<>();
        needed.forEach((material, kg) -> {
            key.add(Names.key(material.name()));
            key.add(kg.setScale(9, RoundingMode.HALF_UP));
        });
        return bought.computeIfAbsent(key, any -> purchase.of(needed));
    }

    private static boolean isIn(Formula formula, Material material) {
        String key = Names.key(material.name());
        return formula.lines().stream()
                .anyMatch(line -> Names.key(line.material()).equals(key));
    }

    private static List<String> packs(RunCost cost) {
        Purchase purchase = cost.purchase();
        List<String> packs = new ArrayList<>();
        for (LineCost line : purchase.cost().lines()) {
            Listing listing = purchase.listing(line);
            packs.add("%s × %s of %s from %s%s"
                    .formatted(
                            Decimals.readable(BigDecimal.valueOf(line.line().packs()), 0),
                            listing.offer().pack(),
                            listing.offer().item(),
                            listing.supplier().name(),
                            whySoMany(purchase, line)));
        }
        return packs;
    }

    /** Why a trial buys more packs than it takes; empty if it does not. */
    private static String whySoMany(Purchase purchase, LineCost line) {
        Quote quote = purchase.problem().quotes().get(line.line().quote());
        BigDecimal needed = purchase.problem().needs().get(quote.item()).total();
        if (line.line().packs() <= quote.packsFor(needed.max(quote.packSize()))) {
            return "";
        }
        if (line.line().packs() <= quote.packsFor(quote.smallestLine())) {
            return ", the least that they sell";
        }
        Listing listing = purchase.listing(line);
        Figure smallest = listing.supplier().minimumOrderValue();
        if (smallest == null) {
            return "";
        }
        String amount = listing.supplier().currency().getCurrencyCode() + " " + Decimals.readable(smallest.value(), 2);
        return listing.supplier().smallOrderCharge() == null
                ? ", because they take orders from " + amount
                : ", because they charge extra for orders below " + amount;
    }
}
