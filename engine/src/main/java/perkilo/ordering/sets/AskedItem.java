package perkilo.ordering.sets;

import java.util.ArrayList;
import java.util.List;
import perkilo.purchasing.Need;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.Quote;

/**
 * One item of a problem that something is needed of.
 *
 * @param quotes which of the problem's quotes are for it
 * @param prices of these quotes
 * @param wanted how much
 */
record AskedItem(List<Integer> quotes, ItemPrices prices, Wanted wanted) {

    /** The items of a problem that something is needed of. */
    static List<AskedItem> of(PurchaseProblem problem, MarketPrices market) {
        List<List<Integer>> quotes = quotesByItem(problem);
        List<AskedItem> items = new ArrayList<>(quotes.size());
        for (int item = 0; item < quotes.size(); item++) {
            Need need = problem.needs().get(item);
            if (need.total().signum() > 0) {
                List<Quote> own = new ArrayList<>(quotes.get(item).size());
                for (int quote : quotes.get(item)) {
                    own.add(problem.quotes().get(quote));
                }
                items.add(new AskedItem(quotes.get(item), market.prices(need.item(), own), Wanted.of(need)));
            }
        }
        return items;
    }

    private static List<List<Integer>> quotesByItem(PurchaseProblem problem) {
        List<List<Integer>> byItem = new ArrayList<>(problem.needs().size());
        for (int item = 0; item < problem.needs().size(); item++) {
            byItem.add(new ArrayList<>(2));
        }
        for (int quote = 0; quote < problem.quotes().size(); quote++) {
            byItem.get(problem.quotes().get(quote).item()).add(quote);
        }
        return byItem;
    }
}
