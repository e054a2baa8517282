package perkilo.costing;

import java.util.List;
import java.util.Optional;

/** Costs a run again with the purchase that was made for it, although it now needs more or less. */
public final class KeptPurchase {

    private KeptPurchase() {}

    /**
     * What a run costs with the packs that were bought for another one.
     *
     * @param market that the purchase was made on
     * @param before the run that it was made for
     * @param needs of the same items, in the same order
     * @return empty if it needs more of an item than is bought
     */
    public static Optional<RunCost> cost(Market market, RunCost before, RunNeeds needs) {
        List<Item> now = needs.items();
        if (now.size() != before.items().size()) {
            throw new IllegalArgumentException("the runs need different items");
        }
        for (int at = 0; at < now.size(); at++) {
            ItemCost bought = before.items().get(at);
            boolean fromHouse = bought.housePrice() != null;
            if (!fromHouse && now.get(at).needed().compareTo(bought.ordered()) > 0) {
                return Optional.empty();
            }
        }
        return Optional.of(new RunCosting(market).cost(needs, Source.of(market, needs), before.purchase()));
    }
}
