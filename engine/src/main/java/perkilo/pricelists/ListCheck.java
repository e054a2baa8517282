package perkilo.pricelists;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.layouts.ListLine;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/** Checks a whole list: whether it has prices, and names that are not known. */
final class ListCheck {

    private static final int NAMED = 5;

    private final NameMatcher names;
    private final boolean namesAreKnown;
    private final Findings findings;

    ListCheck(NameMatcher names, boolean namesAreKnown, Findings findings) {
        this.names = names;
        this.namesAreKnown = namesAreKnown;
        this.findings = findings;
    }

    /**
     * Reports what is wrong.
     *
     * @param clear whether there are no open questions; while there are, a list without prices is not reported
     */
    void check(List<ListLine> lines, boolean clear) {
        if (lines.stream().noneMatch(ListLine::isPriced)
                && clear
                && findings.list().stream().noneMatch(finding -> finding.isError())) {
            findings.error(Origin.NONE, ListMessages.noPrices());
        }
        if (namesAreKnown) {
            unknown(lines);
        }
    }

    private void unknown(List<ListLine> lines) {
        Set<String> own = new LinkedHashSet<>();
        for (ListLine line : lines) {
            if (names.of(line.listed()).by() == NameMatcher.By.NOTHING) {
                own.add(line.item());
            }
        }
        if (!own.isEmpty()) {
            Origin file = new Origin(lines.get(0).origin().file(), "", "");
            List<String> some = own.stream().limit(NAMED).toList();
            findings.note(file, ListMessages.unknownNames(own.size(), some));
        }
    }
}
