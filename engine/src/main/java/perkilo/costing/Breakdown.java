package perkilo.costing;

import static java.math.BigDecimal.ZERO;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/** What a run's money is spent on, head by head; worked out for those who ask, as most want the total alone. */
final class Breakdown {

    private Breakdown() {}

    /** All heads of a run: what comes on top of the goods is inbound. */
    static Map<Head, BigDecimal> of(RunCost cost) {
        BigDecimal materials = ZERO;
        BigDecimal packaging = ZERO;
        for (ItemCost item : cost.items()) {
            if (item.item().isMaterial()) {
                materials = materials.add(item.usedGoods());
            } else {
                packaging = packaging.add(item.usedGoods());
            }
        }
        Work work = cost.work();
        Map<Head, BigDecimal> heads = new EnumMap<>(Head.class);
        heads.put(Head.RAW_MATERIALS, materials);
        heads.put(Head.PACKAGING, packaging);
        heads.put(Head.INBOUND, cost.used().subtract(materials).subtract(packaging));
        heads.put(Head.MAKING, work.making());
        heads.put(Head.FILLING, work.filling());
        heads.put(Head.QUALITY_CONTROL, work.qualityControl());
        heads.put(Head.OVERHEAD, work.overhead());
        heads.put(Head.WASTED_STOCK, cost.wasted());
        heads.put(Head.ONE_OFFS, cost.oneOffShare());
        return Collections.unmodifiableMap(heads);
    }
}
