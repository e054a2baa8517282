package perkilo.swaps.gate;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.model.Fact;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.InciName;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;

/**
 * Classes of materials that do or do not go together, such as {@code anionic surfactant}, by role, charge, function and
 * name in the ingredient list.
 *
 * @param name the class
 * @param roles one of which the material has; none for any
 * @param charge that it has; empty for any
 * @param functions one of which it has; none for any
 * @param inci a pattern of one of its INCI names; empty for any
 * @param notRole a role that it must not have; empty for none
 * @param notTolerance how well it takes salts, if it is known not to be in the class; none for any
 */
record MaterialClass(
        String name,
        Set<String> roles,
        String charge,
        Set<String> functions,
        String inci,
        String notRole,
        Set<String> notTolerance) {

    private static final List<MaterialClass> ALL = FactTable.read(MaterialClass.class, "classes.csv").stream()
            .map(row -> new MaterialClass(
                    row.get(0),
                    words(row.get(1)),
                    row.get(2),
                    words(row.get(3)),
                    row.get(4),
                    row.get(5),
                    words(row.get(6))))
            .toList();

    private static final Map<String, Pattern> PATTERNS = new ConcurrentHashMap<>();

    /** By everything that decides, because each swap asks for all materials of a formula. */
    private static final Map<Known, Set<String>> FOUND = new ConcurrentHashMap<>();

    /** What decides about the classes of a material. */
    private record Known(
            String name, String inci, List<String> roles, List<String> functions, String charge, String tolerance) {

        static Known of(Material material) {
            return new Known(
                    material.name(),
                    material.inci(),
                    material.traits().words(Fact.ROLE),
                    material.functions(),
                    material.traits().charge(),
                    material.traits().word(Fact.ELECTROLYTE_TOLERANCE));
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Known known
                    && name.equals(known.name)
                    && inci.equals(known.inci)
                    && charge.equals(known.charge)
                    && tolerance.equals(known.tolerance)
                    && functions.equals(known.functions)
                    && roles.equals(known.roles);
        }

        @Override
        public int hashCode() {
            return name.hashCode();
        }
    }

    /** The classes of a material; none if too little is known. */
    static Set<String> of(Material material) {
        return FOUND.computeIfAbsent(Known.of(material), key -> find(material));
    }

    /** All names of classes. */
    static Set<String> names() {
        return ALL.stream().map(MaterialClass::name).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<String> find(Material material) {
        Set<String> roles = Roles.of(material).stream().map(Role::name).collect(Collectors.toSet());
        List<String> functions = Functions.of(material);
        String charge = Names.key(material.traits().charge());
        String tolerance = Names.key(material.traits().word(Fact.ELECTROLYTE_TOLERANCE));
        List<String> names = inci(material);
        Set<String> found = new LinkedHashSet<>();
        for (MaterialClass one : ALL) {
            boolean is = (one.roles.isEmpty() || one.roles.stream().anyMatch(roles::contains))
                    && (one.charge.isEmpty() || one.charge.equals(charge))
                    && (one.functions.isEmpty() || one.functions.stream().anyMatch(functions::contains))
                    && (one.inci.isEmpty() || names.stream().anyMatch(one::fits))
                    && !roles.contains(one.notRole)
                    && !one.notTolerance.contains(tolerance);
            if (is) {
                found.add(one.name);
            }
        }
        return Set.copyOf(found);
    }

    /** The names in its ingredient list, as they are compared; without an INCI name, its own name may be one. */
    static List<String> inci(Material material) {
        return InciName.parts(material.inci().isBlank() ? material.name() : material.inci()).stream()
                .map(part -> Names.key(part.name()))
                .toList();
    }

    private boolean fits(String key) {
        return PATTERNS.computeIfAbsent(inci, Pattern::compile).matcher(key).matches();
    }

    private static Set<String> words(String cell) {
        return cell.isEmpty() ? Set.of() : Arrays.stream(cell.split(";", 0)).collect(Collectors.toUnmodifiableSet());
    }
}
