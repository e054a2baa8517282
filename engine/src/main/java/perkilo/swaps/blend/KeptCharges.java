package perkilo.swaps.blend;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import perkilo.model.Material;
import perkilo.names.Names;

/** The rule that the share of each charge stays within a tolerance, and no new charge comes in. */
final class KeptCharges implements Keeps {

    private final Set<String> present;
    private final double tolerance;
    private final ToDoubleFunction<Ingredient> measure;

    /**
     * A rule.
     *
     * @param present charges in the blend now, as they are compared
     * @param tolerance how far a share may move, as a fraction of the blend
     * @param measure what counts of an ingredient: its level or its active matter
     */
    KeptCharges(Set<String> present, double tolerance, ToDoubleFunction<Ingredient> measure) {
        this.present = Set.copyOf(present);
        this.tolerance = tolerance;
        this.measure = measure;
    }

    static String charge(Material material) {
        return Names.key(material.traits().charge());
    }

    /** Whether a charge is known and not zero: amphoteric counts, because its charge depends on pH. */
    static boolean isCharged(String charge) {
        return !charge.isEmpty() && !charge.equals("nonionic");
    }

    @Override
    public void addRows(List<Ingredient> ingredients, BlendRows rows) {
        double allowed = tolerance * rows.now(measure);
        present.stream().sorted().forEach(charge -> {
            ToDoubleFunction<Ingredient> has =
                    one -> charge(one.material()).equals(charge) ? measure.applyAsDouble(one) : 0;
            double now = rows.now(has);
            rows.between(now - allowed, has, now + allowed);
        });
    }

    @Override
    public Optional<String> keepsOut(Material candidate) {
        String charge = charge(candidate);
        if (charge.isEmpty()) {
            return Optional.of(KeptMessages.chargeUnknown());
        }
        return present.contains(charge) ? Optional.empty() : Optional.of(KeptMessages.noOtherOfCharge(charge));
    }

    @Override
    public boolean fixes(Material present) {
        return charge(present).isEmpty();
    }

    @Override
    public String words() {
        return KeptMessages.charges(Math.round(tolerance * 100));
    }
}
