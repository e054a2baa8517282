package perkilo.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import perkilo.origin.Finding;
import perkilo.purchasing.LineCost;
import perkilo.purchasing.Quote;

/** Why an item is bought from an added price list although the person's own workbook has a quote for it. */
final class OwnQuotes {

    private OwnQuotes() {}

    /** A note for each such item of a run. */
    static List<Finding> notBought(RunCost cost) {
        List<Finding> notes = new ArrayList<>();
        Purchase purchase = cost.purchase();
        Set<String> files = new HashSet<>();
        files.add(cost.needs().run().origin().file());
        files.add(cost.needs().formula().origin().file());
        for (int need = 0; need < purchase.problem().needs().size(); need++) {
            List<LineCost> lines = purchase.linesOf(need);
            boolean others = !lines.isEmpty() && lines.stream().noneMatch(line -> isOwn(purchase.listing(line), files));
            if (others) {
                note(purchase, need, lines, files, cost, notes);
            }
        }
        return notes;
    }

    private static boolean isOwn(Listing listing, Set<String> files) {
        return files.contains(listing.offer().origin().file());
    }

    private static void note(
            Purchase purchase, int need, List<LineCost> lines, Set<String> files, RunCost cost, List<Finding> notes) {
        BigDecimal paid = lines.stream().map(LineCost::landed).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal amount =
                purchase.problem().needs().get(need).perPeriod().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        Listing own = null;
        BigDecimal least = BigDecimal.ZERO;
        for (int at = 0; at < purchase.listings().size(); at++) {
            Quote quote = purchase.problem().quotes().get(at);
            Listing listing = purchase.listings().get(at);
            if (quote.item() == need && isOwn(listing, files)) {
                BigDecimal goods = listing.toHome().convert(quote.goods(quote.packsFor(amount)));
                if (own == null || goods.compareTo(least) < 0) {
                    own = listing;
                    least = goods;
                }
            }
        }
        if (own == null) {
            return;
        }
        String currency = cost.home().getCurrencyCode();
        String bought = purchase.listing(lines.get(0)).offer().supplier();
        String item = purchase.problem().needs().get(need).item();
        notes.add(Finding.note(
                own.offer().origin(),
                least.compareTo(paid) > 0
                        ? CostMessages.ownQuoteDearer(
                                item,
                                own.offer().supplier(),
                                cost.needs().title(),
                                least.setScale(2, RoundingMode.HALF_UP).toPlainString() + " " + currency,
                                bought,
                                paid.setScale(2, RoundingMode.HALF_UP).toPlainString() + " " + currency)
                        : CostMessages.ownQuoteWithCharges(
                                item, own.offer().supplier(), cost.needs().title(), bought)));
    }
}
