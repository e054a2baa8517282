package perkilo.decision;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Head;
import perkilo.costing.ItemCost;
import perkilo.costing.RunCost;

/**
 * A part of the cost of one unit, or of one kilogram of bulk that is not filled. The parts of a run add up to its cost.
 *
 * @param part what kind of part it is
 * @param item whose cost it is, used and wasted, landed; null for work, overhead and one-off costs
 * @param whole the part for the whole run, in home currency
 * @param ofOne the part for a unit or a kilogram
 * @param fraction of the whole cost; null if that is zero
 */
public record Share(
        Part part,
        @Nullable ItemCost item,
        BigDecimal whole,
        BigDecimal ofOne,
        @Nullable BigDecimal fraction) {

    /** The kinds of parts. */
    public enum Part {
        ITEM("item"),
        LABOUR("labour"),
        OVERHEAD("overhead"),
        QUALITY_CONTROL("quality control"),
        ONE_OFFS("one-offs");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        /** The heads that add up to it; none for an item. */
        public List<Head> heads() {
            return switch (this) {
                case ITEM -> List.of();
                case LABOUR -> List.of(Head.MAKING, Head.FILLING);
                case OVERHEAD -> List.of(Head.OVERHEAD);
                case QUALITY_CONTROL -> List.of(Head.QUALITY_CONTROL);
                case ONE_OFFS -> List.of(Head.ONE_OFFS);
            };
        }
    }

    /** The name of the item, or a word for the part. */
    public String name() {
        return item == null ? part.words : item.item().name();
    }

    /** The parts of a run that cost anything, the largest first; equal ones in the order of the run's items. */
    public static List<Share> of(RunCost cost) {
        List<Share> shares = new ArrayList<>();
        BigDecimal by = Measure.of(cost);
        BigDecimal total = cost.total();
        for (ItemCost item : cost.items()) {
            shares.add(share(Part.ITEM, item, item.used().add(item.wasted()), by, total));
        }
        Map<Head, BigDecimal> heads = cost.heads();
        for (Part part : Part.values()) {
            BigDecimal whole = BigDecimal.ZERO;
            for (Head head : part.heads()) {
                whole = whole.add(heads.getOrDefault(head, BigDecimal.ZERO));
            }
            shares.add(share(part, null, whole, by, total));
        }
        return shares.stream()
                .filter(share -> share.whole.signum() != 0)
                .sorted(Comparator.comparing(Share::whole).reversed())
                .toList();
    }

    private static Share share(Part part, @Nullable ItemCost item, BigDecimal whole, BigDecimal by, BigDecimal total) {
        return new Share(
                part,
                item,
                whole,
                whole.divide(by, MathContext.DECIMAL128),
                total.signum() == 0 ? null : whole.divide(total, MathContext.DECIMAL128));
    }
}
