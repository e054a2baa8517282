package perkilo.purchasing.search;

import java.util.Arrays;

/**
 * Averages of the items' plans during an ascent; newer plans count more. If an average lies between two whole answers,
 * the question is worth a decision.
 */
final class Averages {
    private static final double NEWEST = 0.1;

    private final double[] use;
    private final double[] steps;
    private final double[] squares;
    private double weight;

    Averages(SearchMarket market) {
        use = new double[market.links.size()];
        steps = new double[market.offers.size()];
        squares = new double[market.offers.size()];
    }

    void clear() {
        Arrays.fill(use, 0);
        Arrays.fill(steps, 0);
        Arrays.fill(squares, 0);
        weight = 0;
    }

    void add(Relaxation relaxation) {
        weight = (1 - NEWEST) * weight + NEWEST;
        for (int l = 0; l < use.length; l++) {
            use[l] = (1 - NEWEST) * use[l] + (relaxation.used[l] ? NEWEST : 0);
        }
        for (int o = 0; o < steps.length; o++) {
            steps[o] *= 1 - NEWEST;
            squares[o] *= 1 - NEWEST;
        }
        for (Picks plan : relaxation.picks) {
            for (int l = 0; l < plan.lines(); l++) {
                double n = plan.steps(l);
                steps[plan.offer(l)] += NEWEST * n;
                squares[plan.offer(l)] += NEWEST * n * n;
            }
        }
    }

    /** How often an item was in an order, from 0 to 1. */
    double use(int link) {
        return use[link];
    }

    double steps(int offer) {
        return weight == 0 ? 0 : steps[offer] / weight;
    }

    double variance(int offer) {
        double mean = steps(offer);
        return weight == 0 ? 0 : Math.max(0, squares[offer] / weight - mean * mean);
    }
}
