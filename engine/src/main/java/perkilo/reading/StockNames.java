package perkilo.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.StockLot;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.reading.table.Findings;

/**
 * Stock that nothing is made of.
 *
 * <p>A storeroom's list always holds some, so it is no error. Where the name may be another spelling of something that
 * is known, a warning asks: goods that are not counted are bought again. What is like nothing known is told in one
 * note.
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
            tell(strange);
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
        findings.warning(
                lot.origin(),
                "the item \"%s\" is neither offered nor used anywhere, so this stock is not counted%s"
                        .formatted(lot.item(), NameCheck.proposal(lot.item(), meant)));
    }

    private void tell(List<StockLot> strange) {
        String names = strange.stream()
                .limit(NAMED)
                .map(lot -> "\"" + lot.item() + "\"")
                .collect(Collectors.joining(", "));
        int more = strange.size() - NAMED;
        findings.note(
                strange.get(0).origin(),
                "in stock, but neither offered nor used anywhere, and not counted: %s%s"
                        .formatted(names, more > 0 ? " and %d more".formatted(more) : ""));
    }
}
