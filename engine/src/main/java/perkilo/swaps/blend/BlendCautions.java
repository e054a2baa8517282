package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Words;

/** What a person should look at in a blend. */
final class BlendCautions {

    private BlendCautions() {}

    static List<String> of(Recipe before, Recipe after, Kind kind, boolean proven) {
        List<String> cautions = new ArrayList<>();
        Optional<BigDecimal> old = before.requiredHlb().mean();
        Optional<BigDecimal> now = after.requiredHlb().mean();
        if (before.hasWater() && old.isPresent() && now.isPresent() && old.get().compareTo(now.get()) != 0) {
            cautions.add("the oils require HLB %s instead of %s, so far as known"
                    .formatted(Words.oneDecimal(now.get()), Words.oneDecimal(old.get())));
        }
        List<String> named =
                before.allergens().toBeNamed(before.formula().batching().rinseOff());
        after.allergens().toBeNamed(before.formula().batching().rinseOff()).stream()
                .filter(name -> !named.contains(name))
                .forEach(name -> cautions.add("the label has to name " + name));
        bench(kind).ifPresent(cautions::add);
        for (Portion portion : after.portions()) {
            if (kind == Kind.OILS
                    && portion.material().traits().spreadingClass().isBlank()
                    && before.levelOf(portion.material()).signum() == 0) {
                cautions.add("how %s spreads is not known"
                        .formatted(portion.material().name()));
            }
        }
        if (!proven) {
            cautions.add("the search was ended early: a cheaper blend within the bounds may exist");
        }
        return cautions;
    }

    /** What the facts don't say about a blend of a kind. */
    private static Optional<String> bench(Kind kind) {
        return Optional.ofNullable(
                switch (kind) {
                    case OILS -> null;
                    case BODY ->
                        "body, crystals and bloom of the solids are for the bench: they don't follow from melting points";
                    case EMULSIFIERS ->
                        "HLB is guidance: whether the emulsion holds, and its viscosity, are for the bench";
                    case HUMECTANTS -> "how the humectants feel, and what water they bind, is not among the facts";
                    case THICKENERS ->
                        "viscosity and flow are for the bench: what a gram thickens is not among the facts";
                    case ANTIOXIDANTS ->
                        "how long the oils keep is for the bench: what a gram protects is not among the facts";
                    case CHELATORS ->
                        "what a gram binds is not among the facts; preservation leans on chelators, so the challenge"
                                + " test counts for this too";
                    case SURFACTANTS ->
                        "foam, viscosity and mildness are for the bench: only active matter and charge are kept";
                });
    }
}
