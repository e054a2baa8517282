package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;
import perkilo.swaps.trial.Words;

/** What a person should look at in a blend. */
final class BlendCautions {

    private BlendCautions() {}

    static List<String> of(Recipe before, Recipe after, Kind kind, List<Blend.Part> parts, boolean proven) {
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
        preservation(parts).ifPresent(cautions::add);
        charges(parts, after).ifPresent(cautions::add);
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

    /** What works against microbes besides, and becomes less, takes something from the preservation. */
    private static Optional<String> preservation(List<Blend.Part> parts) {
        String less = names(
                parts,
                part -> part.after().compareTo(part.before()) < 0 && Functions.does(part.material(), "antimicrobial"));
        return less.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "there is less of %s, which works against microbes as well: a preservative efficacy (challenge)"
                                        .formatted(less)
                                + " test is needed before release");
    }

    /** What comes in with a charge that is not known may not go with what is charged. */
    private static Optional<String> charges(List<Blend.Part> parts, Recipe after) {
        String unknown = names(
                parts,
                part -> part.before().signum() == 0
                        && part.after().signum() > 0
                        && KeptCharges.charge(part.material()).isEmpty());
        String charged = after.portions().stream()
                .map(Portion::material)
                .filter(material -> KeptCharges.isCharged(KeptCharges.charge(material)))
                .map(material -> "%s is %s".formatted(material.name(), KeptCharges.charge(material)))
                .distinct()
                .collect(Collectors.joining(", "));
        return unknown.isEmpty() || charged.isEmpty()
                ? Optional.empty()
                : Optional.of("the charge of %s is not known, and %s".formatted(unknown, charged));
    }

    private static String names(List<Blend.Part> parts, Predicate<Blend.Part> which) {
        return parts.stream().filter(which).map(part -> part.material().name()).collect(Collectors.joining(", "));
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
                        "foam, viscosity and mildness are for the bench: active matter, charge and the share of what does something"
                                + " besides are kept, not how well it does it";
                });
    }
}
