package perkilo.purchasing.search.quick;

import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/**
 * One needed item of a problem.
 *
 * @param quotes which of the problem's quotes are for it
 * @param prices of these quotes
 * @param wanted how much
 */
@SuppressWarnings("ArrayRecordComponent") // never compared and never shown; very many are made
record AskedItem(int[] quotes, ItemPrices prices, Wanted wanted) {

    /** The needed items of a problem. */
    static List<AskedItem> of(PurchaseProblem problem, MarketPrices market) {
        int[][] quotes = quotesByItem(problem);
        List<AskedItem> items = new ArrayList<>(quotes.length);
        for (int item = 0; item < quotes.length; item++) {
            Need need = problem.needs().get(item);
            if (need.total().signum() > 0) {
                ItemPrices prices = market.prices(need.item(), problem.quotes(), quotes[item]);
                items.add(new AskedItem(quotes[item], prices, Wanted.of(need)));
            }
        }
        return items;
    }

    private static int[][] quotesByItem(PurchaseProblem problem) {
        List<Quote> quotes = problem.quotes();
        int[] count = new int[problem.needs().size()];
        for (int quote = 0; quote < quotes.size(); quote++) {
            count[quotes.get(quote).item()]++;
        }
        int[][] byItem = new int[count.length][];
        for (int item = 0; item < count.length; item++) {
            byItem[item] = new int[count[item]];
        }
        for (int quote = quotes.size() - 1; quote >= 0; quote--) {
            int item = quotes.get(quote).item();
            byItem[item][--count[item]] = quote;
        }
        return byItem;
    }
}
