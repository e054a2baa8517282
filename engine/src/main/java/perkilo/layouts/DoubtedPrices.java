package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;

/**
 * Prices beside a remark that speaks against them, such as "discontinued". They are used, and one warning names them.
 */
public final class DoubtedPrices {

    private static final int NAMED = 12;

    private final List<Doubted> all = new ArrayList<>();

    private record Doubted(String item, String remark, Origin origin) {

        String words() {
            return "\"" + item + "\" in " + origin.cell() + " (" + remark + ")";
        }
    }

    public void add(String item, String remark, Origin price) {
        all.add(new Doubted(item, remark, price));
    }

    public void report(Findings findings) {
        if (all.isEmpty()) {
            return;
        }
        Doubted first = all.get(0);
        findings.warning(
                first.origin(),
                all.size() == 1
                        ? RowMessages.doubtedPrice(first.item(), first.remark())
                        : RowMessages.doubtedPrices(all.size(), some()));
    }

    private List<String> some() {
        return all.stream().limit(NAMED).map(Doubted::words).toList();
    }
}
