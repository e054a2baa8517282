package perkilo.costing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import perkilo.model.Supplier;
import perkilo.origin.Finding;

/** Whether freight by weight is counted for all pieces that are bought. */
public final class PieceWeights {

    private PieceWeights() {}

    /**
     * A warning for each supplier who charges freight by weight and sells pieces of unknown weight.
     *
     * @param bought the listings of all lines that are bought
     */
    public static List<Finding> unknown(Stream<Listing> bought) {
        Map<Supplier, Set<String>> unweighed = new LinkedHashMap<>();
        bought.filter(listing -> !listing.isWeighed())
                .filter(listing -> Market.charges(listing.supplier())
                                .freightPerKg()
                                .value()
                                .signum()
                        > 0)
                .forEach(listing -> unweighed
                        .computeIfAbsent(listing.supplier(), supplier -> new LinkedHashSet<>())
                        .add(listing.offer().item()));
        List<Finding> warnings = new ArrayList<>();
        unweighed.forEach((supplier, pieces) -> warnings.add(Finding.warning(
                supplier.origin(),
                CostMessages.weightOfPiecesUnknown(
                        supplier.name(), pieces.iterator().next(), pieces.size() - 1))));
        return warnings;
    }
}
