package perkilo.swaps.role;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.facts.FactTable;

/** All roles, and those of a material. */
public final class Roles {

    /** Foams and cleans. */
    private static final String[] SURFACTANTS = {
        "primary surfactant", "amphoteric co-surfactant", "nonionic co-surfactant", "foam booster"
    };

    private static final Map<String, Role> BY_KEY = read();

    private Roles() {}

    /** Every role, in the order of the table. */
    public static List<Role> all() {
        return List.copyOf(BY_KEY.values());
    }

    /** Their names, in the order of the table. */
    public static List<String> names() {
        return all().stream().map(Role::name).toList();
    }

    /**
     * The role that a person names; upper and lower case, spaces, marks and the plural make no difference.
     *
     * @param word as typed
     */
    public static Optional<Role> named(String word) {
        String key = Names.withoutMarks(word);
        Role role = BY_KEY.get(key);
        boolean plural = role == null && key.endsWith("s");
        return Optional.ofNullable(plural ? BY_KEY.get(key.substring(0, key.length() - 1)) : role);
    }

    /**
     * What a material can be put into a formula for, the most usual first: the roles typed for it, else those that the
     * catalogue gives its name or its INCI name; none if neither says it.
     */
    public static List<Role> of(Material material) {
        List<String> typed = material.traits().words(Fact.ROLE);
        return typed.isEmpty() ? Catalogue.roles(material) : rolesIn(typed);
    }

    /** Whether a material can play a role. */
    public static boolean plays(Material material, Role role) {
        return of(material).contains(role);
    }

    /** What a material is put into formulas for first; empty if no role is known. */
    public static Optional<Role> first(Material material) {
        return of(material).stream().findFirst();
    }

    /** Whether a material keeps microbes from growing, alone or by helping a preservative. */
    public static boolean preserves(Material material) {
        return of(material).stream().anyMatch(Roles::isPreserving);
    }

    /** Whether materials in this role keep microbes from growing. */
    public static boolean isPreserving(Role role) {
        return role.dosed() == Role.Dosed.SYSTEM;
    }

    /** Whether materials in this role foam and clean. */
    public static boolean isSurfactant(Role role) {
        return role.isOneOf(SURFACTANTS);
    }

    /** Whether materials in this role keep oil and water together by themselves. */
    public static boolean isEmulsifier(Role role) {
        return role.isOneOf("O/W emulsifier", "W/O emulsifier");
    }

    static List<Role> rolesIn(List<String> words) {
        List<Role> roles = new ArrayList<>();
        for (String word : words) {
            named(word).filter(role -> !roles.contains(role)).ifPresent(roles::add);
        }
        return roles;
    }

    private static Map<String, Role> read() {
        Map<String, List<RoleFact>> facts = new LinkedHashMap<>();
        for (List<String> row : FactTable.read(Roles.class, "role-facts.csv")) {
            facts.computeIfAbsent(row.get(0), role -> new ArrayList<>())
                    .add(new RoleFact(
                            List.of(row.get(1).split("\\|", 0)),
                            Role.word(RoleFact.Deciding.class, row.get(2)),
                            Integer.parseInt(row.get(3)),
                            row.get(4).isEmpty() ? 0 : Double.parseDouble(row.get(4))));
        }
        Map<String, Role> roles = new LinkedHashMap<>();
        for (List<String> row : FactTable.read(Roles.class, "roles.csv")) {
            String name = row.get(0);
            Role role = new Role(
                    name,
                    Role.word(Role.Place.class, row.get(1)),
                    Role.word(Role.Fits.class, row.get(2)),
                    Role.word(Role.Dosed.class, row.get(3)),
                    Set.of("yes").contains(row.get(4)),
                    row.get(5),
                    row.get(6).isEmpty() ? Role.Fits.ANY : Role.word(Role.Fits.class, row.get(6)),
                    facts.getOrDefault(name, List.of()));
            roles.put(Names.withoutMarks(name), role);
        }
        return roles;
    }
}
