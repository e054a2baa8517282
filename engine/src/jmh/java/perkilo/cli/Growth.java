package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import perkilo.purchasing.PlanOutcome;
import perkilo.purchasing.PurchaseProblem;
import perkilo.purchasing.SearchLimits;
import perkilo.purchasing.search.CheapestPlan;
import perkilo.purchasing.search.oracle.SampleMarket;

/**
 * How the time of a whole command grows with what it is given: formulas, offers, sizes of a run; and that of the
 * planner with periods. All in one run, each point the better of two, after one that is not counted.
 *
 * <p>The argument is the picture to be written, an SVG file. All materials and prices are invented.
 */
public final class Growth {

    private static final int ROUNDS = 2;
    private static final int FEW = 10;
    private static final Duration LONGEST_SEARCH = Duration.ofSeconds(60);

    /** A thing to be timed. */
    private interface Task {
        void run() throws IOException;
    }

    private final Path folder;
    private final List<GrowthChart.Line> lines = new ArrayList<>();

    private Growth(Path folder) {
        this.folder = folder;
    }

    /** Prints each point and writes the picture. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("growth");
        Growth growth = new Growth(folder);
        growth.formulas(10, 30, 100, 300, 1000);
        growth.offers(1_000, 3_000, 10_000, 30_000, 100_000);
        growth.sizes(1, 3, 10, 30, 100);
        growth.periods(1, 2, 3, 4, 6, 8);
        Files.writeString(Path.of(arguments[0]), GrowthChart.svg(growth.lines));
    }

    private void formulas(int... counts) throws IOException {
        List<GrowthChart.Point> points = new ArrayList<>();
        for (int count : counts) {
            Path book = GrowthBook.write(folder.resolve("formulas.xlsx"), count);
            points.add(point("formulas", count, () -> cost(book, "--batch-kg", "100")));
        }
        lines.add(new GrowthChart.Line("formulas, one size each", points));
    }

    private void offers(int... counts) throws IOException {
        List<GrowthChart.Point> points = new ArrayList<>();
        Path book = GrowthBook.write(folder.resolve("offers.xlsx"), FEW);
        for (int count : counts) {
            Path list = GrowthBook.writeList(folder.resolve("list.csv"), count);
            points.add(point("offers", count, () -> cost(book, "--batch-kg", "100", "--prices", list.toString())));
        }
        lines.add(new GrowthChart.Line("offers in a price list, ten formulas", points));
    }

    private void sizes(int... counts) throws IOException {
        List<GrowthChart.Point> points = new ArrayList<>();
        Path book = GrowthBook.write(folder.resolve("sizes.xlsx"), FEW);
        for (int count : counts) {
            String sizes = IntStream.rangeClosed(1, count)
                    .mapToObj(size -> String.valueOf(5 * size))
                    .collect(Collectors.joining(","));
            points.add(point("sizes of a run", count, () -> cost(book, "--batch-kg", sizes)));
        }
        lines.add(new GrowthChart.Line("sizes of a run, ten formulas", points));
    }

    private void periods(int... counts) throws IOException {
        List<GrowthChart.Point> points = new ArrayList<>();
        for (int count : counts) {
            PurchaseProblem problem = SampleMarket.over(count, SampleMarket.Size.SMALL_PLAN, 1);
            points.add(point("periods", count, () -> plan(problem)));
        }
        lines.add(new GrowthChart.Line("periods of a plan to its proof, twelve items", points));
    }

    private static void plan(PurchaseProblem problem) {
        PlanOutcome outcome = new CheapestPlan().plan(problem, SearchLimits.within(LONGEST_SEARCH));
        if (!(outcome instanceof PlanOutcome.Proven)) {
            throw new IllegalStateException("not proven: " + outcome.getClass().getSimpleName());
        }
    }

    private void cost(Path book, String... options) {
        List<String> words = new ArrayList<>(List.of(
                "cost",
                "-q",
                book.toString(),
                "-o",
                folder.resolve("result.xlsx").toString()));
        words.addAll(List.of(options));
        StringWriter said = new StringWriter();
        int code =
                Perkilo.run(new PrintWriter(Writer.nullWriter()), new PrintWriter(said), words.toArray(String[]::new));
        if (code != 0) {
            throw new IllegalStateException("exit code " + code + ": " + said);
        }
    }

    private static GrowthChart.Point point(String of, int count, Task task) throws IOException {
        double best = Double.MAX_VALUE;
        for (int round = 0; round <= ROUNDS; round++) {
            long start = System.nanoTime();
            task.run();
            best = round == 0 ? best : Math.min(best, (System.nanoTime() - start) / 1e9);
        }
        System.out.printf("%,9d %-16s %8.3f s%n", count, of, best);
        return new GrowthChart.Point(count, best);
    }
}
