package perkilo.swaps.blend;

import java.util.Arrays;
import java.util.List;
import perkilo.swaps.facts.FactTable;

/** Linear programs whose answers are published, as the blend's solver takes them. */
final class PublishedPrograms {

    static final double FREE = Double.POSITIVE_INFINITY;

    /** What a person needs a day of nine nutrients: Stigler 1945, Table 1, in the units of the foods' columns. */
    private static final double[] DAILY = {3, 70, 0.8, 12, 5, 1.8, 2.7, 18, 75};

    private static final int FIRST_NUTRIENT = 3;
    private static final List<List<String>> FOODS = FactTable.read(PublishedPrograms.class, "stigler-foods.csv");

    private PublishedPrograms() {}

    /**
     * The cheapest diet of 1939: dollars a day for each of 77 foods, minima for nine nutrients.
     *
     * <p>G. J. Stigler, The Cost of Subsistence, Journal of Farm Economics 27(2), 1945; nutrients per dollar spent.
     */
    static LinearProgram diet() {
        double[] cost = new double[FOODS.size()];
        double[] most = new double[FOODS.size()];
        Arrays.fill(cost, 1);
        Arrays.fill(most, FREE);
        LinearProgram program = new LinearProgram(cost, new double[FOODS.size()], most);
        for (int nutrient = 0; nutrient < DAILY.length; nutrient++) {
            program.row(perDollar(nutrient), DAILY[nutrient], FREE);
        }
        return program;
    }

    /** How much of a nutrient a dollar buys, by food. */
    static double[] perDollar(int nutrient) {
        return FOODS.stream()
                .mapToDouble(food -> Double.parseDouble(food.get(FIRST_NUTRIENT + nutrient)))
                .toArray();
    }

    /** The least of a nutrient a day. */
    static double daily(int nutrient) {
        return DAILY[nutrient];
    }

    /** The place of a food in the table. */
    static int food(String name) {
        return FOODS.stream().map(food -> food.get(0)).toList().indexOf(name);
    }

    /** Corn and soybean meal: H. A. Taha, Operations Research, the diet example. */
    static LinearProgram feed() {
        return new LinearProgram(new double[] {0.30, 0.90}, new double[2], new double[] {FREE, FREE})
                .row(new double[] {1, 1}, 800, FREE)
                .row(new double[] {0.09 - 0.30, 0.60 - 0.30}, 0, FREE)
                .row(new double[] {0.02 - 0.05, 0.06 - 0.05}, -FREE, 0);
    }

    /** Two kinds of sacks, three minima: an exercise. */
    static LinearProgram sacks() {
        return new LinearProgram(new double[] {21, 7}, new double[2], new double[] {FREE, FREE})
                .row(new double[] {70, 21}, 168, FREE)
                .row(new double[] {9, 7}, 27, FREE)
                .row(new double[] {7, 1}, 14, FREE);
    }
}
