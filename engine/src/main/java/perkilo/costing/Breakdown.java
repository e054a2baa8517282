package perkilo.costing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** The cost of a run by head; computed on demand, because most callers need only the total. */
final class Breakdown {

    private Breakdown() {}

    /** All heads of a run; the costs on top of the goods are inbound. */
    static Map<Head, BigDecimal> of(RunCost cost) {
        BigDecimal materials = goods(cost, true);
        BigDecimal packaging = goods(cost, false);
        Work work = cost.work();
        Map<Head, BigDecimal> heads = new EnumMap<>(Head.class);
        for (Head head : Head.values()) {
            heads.put(
                    head,
                    switch (head) {
                        case RAW_MATERIALS -> materials;
                        case PACKAGING -> packaging;
                        case INBOUND -> cost.used().subtract(materials).subtract(packaging);
                        case MAKING -> work.making();
                        case FILLING -> work.filling();
                        case QUALITY_CONTROL -> work.qualityControl();
                        case OVERHEAD -> work.overhead();
                        case WASTED_STOCK -> cost.wasted();
                        case ONE_OFFS -> cost.oneOffShare();
                    });
        }
        return Collections.unmodifiableMap(heads);
    }

    private static BigDecimal goods(RunCost cost, boolean materials) {
        BigDecimal sum = ZERO;
        for (ItemCost item : cost.items()) {
            if (item.item().isMaterial() == materials) {
                sum = sum.add(item.usedGoods());
            }
        }
        return sum;
    }
}
