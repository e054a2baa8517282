package perkilo.report.cost;

import perkilo.costing.Purchase;
import perkilo.offers.Offer;
import perkilo.purchasing.LineCost;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** The purchases of an item, for JSON. */
final class PurchasedTable {

    private PurchasedTable() {}

    static Table<LineCost> of(Purchase purchase) {
        return Table.of(
                column("supplier")
                        .words(line -> offer(purchase, line).supplier())
                        .json(),
                column("packSize")
                        .value(line -> offer(purchase, line).packSize().value())
                        .json(),
                column("packUnit")
                        .words(line -> offer(purchase, line).packUnit().symbol())
                        .json(),
                column("packs").json(line -> line.line().packs()),
                column("price")
                        .value(line -> price(purchase, line).price().value())
                        .json(),
                column("pricePer")
                        .words(line -> pricePer(price(purchase, line)))
                        .json(),
                column("currency")
                        .words(line -> offer(purchase, line).currency().getCurrencyCode())
                        .json(),
                column("goods").value(LineCost::goodsQuoted).json());
    }

    private static Column<LineCost> column(String key) {
        return Column.<LineCost>of(key, "").notOnSheet();
    }

    private static Offer offer(Purchase purchase, LineCost line) {
        return purchase.listing(line).offer();
    }

    private static Offer.PriceBreak price(Purchase purchase, LineCost line) {
        return offer(purchase, line).breaks().get(line.tier());
    }

    private static String pricePer(Offer.PriceBreak price) {
        return price.per() == null ? "pack" : price.per().symbol();
    }
}
