package perkilo.swaps.law;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import perkilo.names.Names;
import perkilo.swaps.facts.FactTable;

/** The tables of the law: which substances share a limit, and the rules of each group. */
final class LegalTable {

    private static final Map<String, List<LegalRule>> RULES = FactTable.read(LegalTable.class, "rules.csv").stream()
            .map(LegalRule::parse)
            .collect(Collectors.groupingBy(LegalRule::group));

    private static final Map<String, List<Substance>> SUBSTANCES =
            FactTable.read(LegalTable.class, "substances.csv").stream()
                    .map(Substance::parse)
                    .collect(Collectors.groupingBy(one -> Names.key(one.inci())));

    private LegalTable() {}

    /**
     * A substance in a group.
     *
     * @param inci its name in the ingredient list
     * @param group it may be in several
     * @param factor what one gram counts as, in grams of what the group's limits are expressed as
     */
    record Substance(String inci, String group, BigDecimal factor) {

        private static Substance parse(List<String> row) {
            return new Substance(
                    row.get(0),
                    row.get(1),
                    row.get(2).isEmpty()
                            ? BigDecimal.ONE
                            : MolarMass.of(row.get(3))
                                    .multiply(new BigDecimal(row.get(4)))
                                    .divide(MolarMass.of(row.get(2)), MathContext.DECIMAL64));
        }
    }

    /** The groups that a substance is in; none if the tables have nothing on it. */
    static List<Substance> substances(String inci) {
        return SUBSTANCES.getOrDefault(Names.key(inci), List.of());
    }

    /** The rules of a group, in the order of the table. */
    static List<LegalRule> rules(String group) {
        return RULES.getOrDefault(group, List.of());
    }

    /** All groups. */
    static List<String> groups() {
        return RULES.keySet().stream().sorted().toList();
    }

    /** All substances, each once for every group. */
    static List<Substance> all() {
        return SUBSTANCES.values().stream().flatMap(List::stream).toList();
    }
}
