package perkilo.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.StockLot;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.reading.table.Findings;

/**
 * Reports stock that nothing uses.
 *
 * <p>A stock list always has some, so it is no error. If the name may be another spelling of a known one, a warning
 * asks, because goods that are not counted are bought again. All other names are in one note.
 */
final class StockNames {

    private static final int NAMED = 8;

    private final Vocabulary known;
    private final Findings findings;

    /**
     * A check.
     *
     * @param known what is offered, used, or described
     */
    StockNames(Vocabulary known, Findings findings) {
        this.known = known;
        this.findings = findings;
    }

    void check(List<StockLot> stock) {
        List<StockLot> strange = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (StockLot lot : stock) {
            if (!lot.item().isEmpty() && !known.has(lot.item()) && seen.add(Names.key(lot.item()))) {
                Optional<String> meant = meant(lot.item());
                meant.ifPresentOrElse(name -> ask(lot, name), () -> strange.add(lot));
            }
        }
        if (!strange.isEmpty()) {
            note(strange);
        }
    }

    /** Names that differ in a number or in a whole word are those of different goods. */
    private Optional<String> meant(String name) {
        return known.names().stream()
                .filter(other -> SlipOfSpelling.is(name, other))
                .max(Comparator.<String>comparingDouble(other -> Spelling.likeness(name, other))
                        .thenComparing(Comparator.reverseOrder()));
    }

    private void ask(StockLot lot, String meant) {
        findings.warning(lot.origin(), PlanMessages.unknownStock(lot.item(), meant));
    }

    private void note(List<StockLot> strange) {
        List<String> items = strange.stream()
                .limit(NAMED)
                .map(lot -> "\"" + lot.item() + "\"")
                .toList();
        int more = Math.max(0, strange.size() - NAMED);
        findings.note(strange.get(0).origin(), PlanMessages.strangeStock(items, more));
    }
}
