package perkilo.swaps.blend;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Material;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/** Kinds of materials that can be blended anew for a saving, because the rules for such a blend are known. */
enum Kind {
    OILS(
            Functions.EMOLLIENT,
            "emollients that spread",
            "emollient ester",
            "triglyceride oil",
            "hydrocarbon",
            "silicone"),
    BODY(
            Functions.EMOLLIENT,
            "solid emollients: fatty alcohols, waxes, butters",
            "butter",
            "wax",
            "fatty alcohol",
            "fatty acid"),
    EMULSIFIERS(Functions.EMULSIFYING, "emulsifiers", "O/W emulsifier", "W/O emulsifier", "co-emulsifier"),
    HUMECTANTS("humectant", "humectants", "humectant"),
    THICKENERS(
            "viscosity controlling",
            "thickeners",
            "neutralised polymer thickener",
            "nonionic polymer thickener",
            "gum",
            "clay"),
    ANTIOXIDANTS("antioxidant", "antioxidants", "oil antioxidant", "water antioxidant"),
    CHELATORS("chelating", "chelators", "chelator"),
    SURFACTANTS("cleansing", "surfactants", "primary surfactant", "amphoteric co-surfactant", "nonionic co-surfactant");

    private final String work;
    private final String title;

    @SuppressWarnings("ImmutableEnumChecker") // Set.of
    private final Set<String> roles;

    Kind(String work, String title, String... roles) {
        this.work = work;
        this.title = title;
        this.roles = Set.of(roles);
    }

    /** The name of the kind on a sheet. */
    String title() {
        return title;
    }

    /** The main function of its materials, in the words of the EU glossary. */
    String work() {
        return work;
    }

    /** Whether its lines count together across phases: emulsifiers work where oil and water meet. */
    boolean acrossPhases() {
        return this == EMULSIFIERS;
    }

    /** Whether only lines of one role are blended together: a carbomer does not do the work of a gum. */
    boolean byRole() {
        return this == THICKENERS || this == ANTIOXIDANTS;
    }

    /** Whether a role belongs to it; a solid oil is no oil that spreads. */
    boolean has(Role role) {
        return roles.contains(role.name()) || (this == BODY && OILS.roles.contains(role.name()));
    }

    /**
     * The kind of a material in a role; empty if the rules for such a blend are not known, and for every material that
     * preserves, in any place among its functions and roles.
     */
    static Optional<Kind> of(Role role, Material material) {
        if (preserves(material)) {
            return Optional.empty();
        }
        Optional<Kind> kind = Arrays.stream(values())
                .filter(one -> one.roles.contains(role.name()))
                .findFirst();
        return kind.map(one -> one == OILS && Functions.isSolid(material) ? BODY : one);
    }

    /** The kind of a material in its first role. */
    static Optional<Kind> of(Material material) {
        return Roles.first(material).flatMap(role -> of(role, material));
    }

    /** Whether a material keeps microbes from growing: no blend has it. */
    static boolean preserves(Material material) {
        return Functions.does(material, Functions.PRESERVATIVE) || Roles.preserves(material);
    }

    /** The roles of a kind, for a group of one of them or of all. */
    boolean admits(List<Role> ofGroup, Role role) {
        return byRole() ? ofGroup.contains(role) : has(role);
    }
}
