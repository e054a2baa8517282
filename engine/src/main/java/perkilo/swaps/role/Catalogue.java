package perkilo.swaps.role;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.facts.FactTable;

/**
 * The roles that the project's own catalogue of materials gives, for materials without a typed role.
 *
 * <p>It is read when it is first asked, not at start-up.
 */
final class Catalogue {

    private static final String FILE = "/perkilo/catalogue/materials.csv";

    private Catalogue() {}

    /**
     * The roles of the row with a material's name and INCI name; else the roles that all rows with its INCI name agree
     * on, in the order of the first; else the roles of the row with its name.
     */
    static List<Role> roles(Material material) {
        String name = Names.key(material.name());
        String inci = Names.key(material.inci());
        Row byName = Rows.BY_NAME.get(name);
        List<Row> byInci = inci.isEmpty() ? List.of() : Rows.BY_INCI.getOrDefault(inci, List.of());
        if (byName != null
                && (inci.isEmpty() || byInci.isEmpty() || byName.inci().equals(inci))) {
            return byName.roles();
        }
        List<Role> agreed = null;
        for (Row row : byInci) {
            if (agreed == null) {
                agreed = new ArrayList<>(row.roles());
            } else {
                agreed.retainAll(row.roles());
            }
        }
        return agreed == null ? List.of() : agreed;
    }

    /** Whether the catalogue is at hand. */
    static boolean isThere() {
        return Catalogue.class.getResource(FILE) != null;
    }

    /** A material whose roles are known. */
    private record Row(String inci, List<Role> roles) {}

    /** Read once, on the first question. */
    private static final class Rows {

        static final Map<String, Row> BY_NAME = new HashMap<>();
        static final Map<String, List<Row>> BY_INCI = new HashMap<>();

        static {
            InputStream stream = Catalogue.class.getResourceAsStream(FILE);
            if (stream != null) { // a build without the catalogue knows only typed roles
                List<List<String>> rows = FactTable.read(stream);
                List<String> headers = rows.get(0);
                int name = headers.indexOf("Material");
                int inci = headers.indexOf("INCI name");
                int role = headers.indexOf("Role");
                for (List<String> cells : rows.subList(1, rows.size())) {
                    List<Role> roles = Roles.rolesIn(List.of(cells.get(role).split(";", 0)));
                    if (!roles.isEmpty()) {
                        Row row = new Row(Names.key(cells.get(inci)), roles);
                        BY_NAME.put(Names.key(cells.get(name)), row);
                        BY_INCI.computeIfAbsent(row.inci(), key -> new ArrayList<>())
                                .add(row);
                    }
                }
            }
        }

        private Rows() {}
    }
}
