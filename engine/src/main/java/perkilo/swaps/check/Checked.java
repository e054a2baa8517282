package perkilo.swaps.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.swaps.law.Ruling;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/** A recipe that is checked, with what several checks ask of it. */
final class Checked {

    private final Recipe recipe;
    private final List<Ruling> rulings;

    Checked(Recipe recipe) {
        this.recipe = recipe;
        this.rulings = recipe.law().rulings();
    }

    Recipe recipe() {
        return recipe;
    }

    String name() {
        return recipe.formula().name();
    }

    /** What the law says. */
    List<Ruling> rulings() {
        return rulings;
    }

    /** Whether the law is broken by a material. */
    boolean isUnlawful(Material material) {
        return rulings.stream()
                .anyMatch(ruling -> ruling.outcome() == Ruling.Outcome.BROKEN
                        && ruling.materials().contains(material.name()));
    }

    /** Lines that have something in them, each material once. */
    List<Portion> materials() {
        Map<String, Portion> once = new LinkedHashMap<>();
        for (Portion portion : recipe.portions()) {
            if (portion.level().signum() > 0) {
                once.putIfAbsent(Names.key(portion.material().name()), portion);
            }
        }
        return new ArrayList<>(once.values());
    }

    /** The cell of a material, by its name. */
    Origin origin(String material) {
        String key = Names.key(material);
        return recipe.portions().stream()
                .filter(portion -> Names.key(portion.material().name()).equals(key))
                .map(portion -> portion.line().origin())
                .findFirst()
                .orElse(recipe.formula().origin());
    }

    /** Whether it is known of every material what it is for, so that it can be said that something is missing. */
    boolean isAllKnown() {
        return recipe.portions().stream()
                .filter(portion -> portion.level().signum() > 0)
                .allMatch(portion -> portion.material().isWater()
                        || !Roles.of(portion.material()).isEmpty()
                        || !portion.material().functions().isEmpty());
    }

    /** Whether something in the formula has one of some roles. */
    boolean has(String... roles) {
        return level(roles).signum() > 0;
    }

    /** The level of everything that has one of some roles, as a fraction. */
    BigDecimal level(String... roles) {
        return level(material -> hasRole(material, roles));
    }

    /** The level of everything that is something. */
    BigDecimal level(Predicate<Material> is) {
        return recipe.portions().stream()
                .filter(portion -> is.test(portion.material()))
                .map(Portion::level)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The names of everything that has one of some roles. */
    Set<String> names(String... roles) {
        Set<String> names = new LinkedHashSet<>();
        materials().stream()
                .map(Portion::material)
                .filter(material -> hasRole(material, roles))
                .forEach(material -> names.add(material.name()));
        return names;
    }

    /** The names of everything whose first role is one of some roles. */
    Set<String> first(String... roles) {
        Set<String> names = new LinkedHashSet<>();
        materials().stream()
                .map(Portion::material)
                .filter(material -> isFirst(material, roles))
                .forEach(material -> names.add(material.name()));
        return names;
    }

    /** The level of everything whose first role is one of some roles, as active matter where that is known. */
    BigDecimal levelOfFirst(String... roles) {
        return recipe.portions().stream()
                .filter(portion -> isFirst(portion.material(), roles))
                .map(portion -> {
                    Figure active = portion.material().traits().active();
                    return active == null ? portion.level() : portion.level().multiply(active.value());
                })
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static boolean isFirst(Material material, String... roles) {
        return Roles.first(material).filter(role -> role.isOneOf(roles)).isPresent();
    }

    static boolean hasRole(Material material, String... roles) {
        for (Role role : Roles.of(material)) {
            if (role.isOneOf(roles)) {
                return true;
            }
        }
        return false;
    }
}
