package perkilo.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;

/**
 * What a folder of kept price lists costs a {@code cost} of a workbook that needs few of their prices: processor time
 * and memory, against reading the lines of the same files alone in the same process.
 *
 * <p>Arguments: the number of lists, and of rows in each; 300 and 2,000 if there are none. Suppliers, items and prices
 * are invented.
 */
public final class ManyLists {

    private static final int LISTS_OF_ONE = 6;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);
    private static final List<String> SIZES = List.of("1", "5", "25", "190");
    private static final double NANOS = 1e9;
    private static final int MEGA = 1_000_000;

    private ManyLists() {}

    /** Prints the figures. */
    public static void main(String[] arguments) throws IOException {
        int lists = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 300;
        int rows = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 2_000;
        Path folder = Files.createTempDirectory("many-lists");
        Path book = folder.resolve("launch.xlsx");
        Path prices = write(Files.createDirectory(folder.resolve("prices")), lists, rows);
        run("new", "launch", book.toString());
        double floor = seconds(() -> lines(prices));
        double without = seconds(() -> cost(book));
        double with = seconds(() -> cost(book, "--prices", prices.toString()));
        Writer out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        out.write(
                "%,d rows: %.1f s of processor with the lists, %.1f s without, %.2f s for their lines alone; peak %,d MB%n"
                        .formatted((long) lists * rows, with, without, floor, peak() / MEGA));
        out.flush();
    }

    private interface Task {
        void run() throws IOException;
    }

    private static double seconds(Task task) throws IOException {
        long before =
                ProcessHandle.current().info().totalCpuDuration().orElseThrow().toNanos();
        task.run();
        return (ProcessHandle.current().info().totalCpuDuration().orElseThrow().toNanos() - before) / NANOS;
    }

    private static long peak() {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .map(MemoryPoolMXBean::getPeakUsage)
                .mapToLong(usage -> usage == null ? 0 : usage.getUsed())
                .sum();
    }

    private static void lines(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            for (Path file : files.toList()) {
                try (var lines = Files.lines(file)) {
                    if (lines.mapToInt(line -> line.split(",", -1).length).max().orElse(0) == 0) {
                        throw new IOException("an empty list");
                    }
                }
            }
        }
    }

    private static void cost(Path book, String... more) throws IOException {
        String[] words = new String[more.length + 2];
        words[0] = "cost";
        words[1] = book.toString();
        System.arraycopy(more, 0, words, 2, more.length);
        run(words);
    }

    private static void run(String... words) throws IOException {
        StringWriter said = new StringWriter();
        PrintWriter to = new PrintWriter(said);
        int exit = Perkilo.run(to, to, words);
        if (exit != 0) {
            throw new IOException(said.toString());
        }
    }

    private static Path write(Path folder, int lists, int rows) throws IOException {
        Random random = new Random(5);
        for (int list = 0; list < lists; list++) {
            String house = "%03d".formatted(list / LISTS_OF_ONE);
            LocalDate day = DAY.minusMonths(LISTS_OF_ONE - list % LISTS_OF_ONE);
            StringBuilder text =
                    new StringBuilder("Supplier,Item,Pack size,Pack unit,Price,Price per,Currency,Quoted on\n");
            for (int row = 0; row < rows; row++) {
                text.append("House %s,Oil %s-%04d refined,%s,kg,%d.%02d,kg,%s,%s%n"
                        .formatted(
                                house,
                                house,
                                row,
                                SIZES.get(random.nextInt(SIZES.size())),
                                2 + random.nextInt(80),
                                random.nextInt(100),
                                random.nextBoolean() ? "EUR" : "USD",
                                day));
            }
            Files.writeString(folder.resolve("house-" + house + "-" + day + ".csv"), text);
        }
        return folder;
    }
}
