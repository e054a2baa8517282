package perkilo.purchasing.search;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.Need;
import perkilo.purchasing.Shelf;

/**
 * What purchases have to supply of an item when they do not expire: the needs that the stock does not cover, and what
 * the stock lacks of the safety stock.
 *
 * <p>Stock is used before such purchases, whatever is bought. So what is left of it at the end of a period is known,
 * and the purchases until then have to supply the rest of the safety stock.
 *
 * @param supply by period: what has to be supplied up to its end
 * @param net the needs of all periods that the stock does not cover
 */
record Requirement(List<BigDecimal> supply, BigDecimal net) {

    static Requirement of(Need need) {
        Shelf shelf = Shelf.of(need);
        List<BigDecimal> uncovered = shelf.uncovered();
        List<BigDecimal> supply = new ArrayList<>();
        BigDecimal net = BigDecimal.ZERO;
        BigDecimal most = BigDecimal.ZERO;
        for (int t = 0; t < uncovered.size(); t++) {
            net = net.add(uncovered.get(t));
            BigDecimal safety = need.safety().at(t);
            BigDecimal lacking = safety.signum() == 0
                    ? safety
                    : safety.subtract(shelf.usable(t)).max(BigDecimal.ZERO);
            most = most.max(net.add(lacking));
            supply.add(most);
        }
        return new Requirement(supply, net);
    }
}
