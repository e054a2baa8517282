package perkilo.purchasing.search;

/** The goods of an order and their average rate of duty. */
final class AverageDuty {
    private double goods;
    private double weighted;
    private double rates;
    private int lines;

    /** Those of all orders of a plan. */
    static AverageDuty[] of(SearchMarket market, Picks[] picks) {
        AverageDuty[] duty = new AverageDuty[market.orders.count];
        for (int j = 0; j < duty.length; j++) {
            duty[j] = new AverageDuty();
        }
        for (Picks item : picks) {
            for (int l = 0; l < item.lines(); l++) {
                PackChoice offer = market.offers.get(item.offer(l));
                duty[offer.order].add(offer.costs, item.steps(l));
            }
        }
        return duty;
    }

    private void add(LineCosts costs, long steps) {
        double value = costs.goodsAtHome(steps);
        goods += value;
        weighted += costs.duty * value;
        rates += costs.duty;
        lines++;
    }

    /** The value of the goods in home currency. */
    double goods() {
        return goods;
    }

    /** The average rate by goods value; by lines if all goods are free; zero without lines. */
    double rate() {
        if (lines == 0) {
            return 0;
        }
        return goods == 0 ? rates / lines : weighted / goods;
    }
}
