package perkilo.pricelists;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/**
 * Prices beside a word that there is none, such as "discontinued": taken, and told in one warning for the whole list.
 */
final class DoubtedPrices {

    private static final int NAMED = 12;

    private final List<Doubted> all = new ArrayList<>();

    private record Doubted(String item, String remark, Origin origin) {

        String words() {
            return "\"%s\" in %s (%s)".formatted(item, origin.cell(), remark);
        }
    }

    void add(String item, String remark, Origin price) {
        all.add(new Doubted(item, remark, price));
    }

    void report(Findings findings) {
        if (all.isEmpty()) {
            return;
        }
        Doubted first = all.get(0);
        findings.warning(
                first.origin(),
                all.size() == 1
                        ? "\"%s\" has a price and the remark \"%s\": the price is taken, ask whether it holds"
                                .formatted(first.item(), first.remark())
                        : "%d prices have a remark that speaks against them: %s%s; they are taken, ask whether they hold"
                                .formatted(all.size(), named(), more()));
    }

    private String named() {
        return all.stream().limit(NAMED).map(Doubted::words).collect(Collectors.joining(", "));
    }

    private String more() {
        return all.size() > NAMED ? " and %d more".formatted(all.size() - NAMED) : "";
    }
}
