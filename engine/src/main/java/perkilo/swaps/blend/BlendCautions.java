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

/** The cautions of a blend: what a person should check. */
final class BlendCautions {

    private BlendCautions() {}

    static List<String> of(Recipe before, Recipe after, Kind kind, List<Blend.Part> parts, boolean proven) {
        List<String> cautions = new ArrayList<>();
        Optional<BigDecimal> old = before.requiredHlb().mean();
        Optional<BigDecimal> now = after.requiredHlb().mean();
        if (before.hasWater() && old.isPresent() && now.isPresent() && old.get().compareTo(now.get()) != 0) {
            cautions.add(BlendMessages.requiredHlbChanges(now.get(), old.get()));
        }
        List<String> named =
                before.allergens().toBeNamed(before.formula().batching().rinseOff());
        after.allergens().toBeNamed(before.formula().batching().rinseOff()).stream()
                .filter(name -> !named.contains(name))
                .forEach(name -> cautions.add(BlendMessages.labelHasToName(name)));
        bench(kind).ifPresent(cautions::add);
        preservation(parts).ifPresent(cautions::add);
        charges(parts, after).ifPresent(cautions::add);
        for (Portion portion : after.portions()) {
            if (kind == Kind.OILS
                    && portion.material().traits().spreadingClass().isBlank()
                    && before.levelOf(portion.material()).signum() == 0) {
                cautions.add(BlendMessages.spreadingUnknown(portion.material().name()));
            }
        }
        if (!proven) {
            cautions.add(BlendMessages.searchEndedEarly());
        }
        return cautions;
    }

    /** Less of a material that also works against microbes weakens the preservation. */
    private static Optional<String> preservation(List<Blend.Part> parts) {
        List<String> less = names(
                parts,
                part -> part.after().compareTo(part.before()) < 0 && Functions.does(part.material(), "antimicrobial"));
        return less.isEmpty() ? Optional.empty() : Optional.of(BlendMessages.lessAntimicrobial(less));
    }

    /** A new material of unknown charge may not be compatible with charged materials. */
    private static Optional<String> charges(List<Blend.Part> parts, Recipe after) {
        List<String> unknown = names(
                parts,
                part -> part.before().signum() == 0
                        && part.after().signum() > 0
                        && KeptCharges.charge(part.material()).isEmpty());
        String charged = after.portions().stream()
                .map(Portion::material)
                .filter(material -> KeptCharges.isCharged(KeptCharges.charge(material)))
                .map(material -> material.name() + " is " + KeptCharges.charge(material))
                .distinct()
                .collect(Collectors.joining(", "));
        return unknown.isEmpty() || charged.isEmpty()
                ? Optional.empty()
                : Optional.of(BlendMessages.chargeUnknown(unknown, charged));
    }

    private static List<String> names(List<Blend.Part> parts, Predicate<Blend.Part> which) {
        return parts.stream().filter(which).map(part -> part.material().name()).toList();
    }

    /** What the known facts do not show about a blend of a kind. */
    private static Optional<String> bench(Kind kind) {
        return Optional.ofNullable(
                switch (kind) {
                    case OILS -> null;
                    case BODY -> BlendMessages.benchSolids();
                    case EMULSIFIERS -> BlendMessages.benchEmulsifiers();
                    case HUMECTANTS -> BlendMessages.benchHumectants();
                    case THICKENERS -> BlendMessages.benchThickeners();
                    case ANTIOXIDANTS -> BlendMessages.benchAntioxidants();
                    case CHELATORS -> BlendMessages.benchChelators();
                    case SURFACTANTS -> BlendMessages.benchSurfactants();
                });
    }
}
