package perkilo.swaps.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import perkilo.model.ProductKind.Word;
import perkilo.origin.Finding;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.trial.TrialWords;

/** Sums over what is there for the same: UV filters, emulsifiers, scents, salts. */
final class TotalCheck implements FormulaCheck {

    private static final List<Total> ALL = FactTable.read(TotalCheck.class, "totals.csv").stream()
            .map(row -> new Total(
                    row.get(0),
                    row.get(1).split(";", 0),
                    row.get(2),
                    new BigDecimal(row.get(3)).movePointLeft(2),
                    row.get(4)))
            .toList();

    /**
     * A usual total.
     *
     * @param name of what is added up
     * @param roles that count
     * @param where leave-on, rinse-off, emulsion or any
     * @param most as a fraction
     * @param why it matters, in a full sentence
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Total(String name, String[] roles, String where, BigDecimal most, String why) {

        private boolean applies(Checked formula) {
            return switch (where) {
                case "leave-on" ->
                    !formula.recipe().kind().rinseOff()
                            && !formula.recipe().kind().is(Word.PERFUME);
                case "rinse-off" -> formula.recipe().kind().rinseOff();
                case "emulsion" -> formula.recipe().system().isEmulsion();
                case "surfactants" -> formula.recipe().system().isSurfactantSystem();
                default -> true;
            };
        }
    }

    @Override
    public List<Finding> of(Checked formula) {
        List<Finding> findings = new ArrayList<>();
        for (Total total : ALL) {
            List<String> names = List.copyOf(formula.first(total.roles()));
            BigDecimal level = formula.levelOfFirst(total.roles());
            // one material alone is judged by its own usual level
            if (names.size() > 1 && total.applies(formula) && level.compareTo(total.most()) > 0) {
                String much = CheckMessages.tooMuchTogether(
                        formula.name(),
                        total.name(),
                        names,
                        TrialWords.percent(level),
                        TrialWords.percent(total.most()));
                findings.add(Finding.warning(formula.recipe().formula().origin(), much + ' ' + total.why()));
            }
        }
        return findings;
    }

    /** The names of roles that the table has; for its test. */
    static List<String> roles() {
        return ALL.stream().flatMap(total -> Arrays.stream(total.roles())).toList();
    }
}
