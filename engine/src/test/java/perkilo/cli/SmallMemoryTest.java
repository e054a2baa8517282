package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbooks that ask for most are answered or refused in a small memory, each with a bounded amount of work. */
@Tag("slow")
final class SmallMemoryTest {

    private static final String MEMORY = "-Xmx400m";
    private static final int MOST_MEGABYTES = 1_000;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_worst_workbooks_need_little() throws Exception {
        Map<String, Integer> expected = new TreeMap<>();
        save("bomb.xlsx", HostileFilesTest.bomb(), Exit.FILE, expected);
        save("sheetbomb.xlsx", HostileFilesTest.sheetBomb(), Exit.FILE, expected);
        save("ones.xlsx", ones().bytes(), Exit.DONE, expected);
        save("parts.xlsx", HostileFilesTest.manyParts(), Exit.FILE, expected);
        save("entities.xlsx", HostileFilesTest.entities(), Exit.FILE, expected);
        save("dimension.xlsx", OddBooksTest.lyingDimension().bytes(), Exit.DONE, expected);
        save("columns.xlsx", OddBooksTest.wide().bytes(), Exit.DONE, expected);
        save("chain.xlsx", OddBooksTest.chain(false, false).bytes(), Exit.DONE, expected);
        save("essay.xlsx", OddBooksTest.essay().bytes(), Exit.BAD_INPUT, expected);
        save("long.xlsx", longSheet().bytes(), Exit.DONE, expected);

        Path said = folder.resolve("said.txt");
        Process small = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        MEMORY,
                        "-cp",
                        System.getProperty("java.class.path"),
                        SmallMemoryTest.class.getName(),
                        folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(small.waitFor(10, TimeUnit.MINUTES)).isTrue();

        Map<String, Integer> exits = new TreeMap<>();
        for (String line : Files.readAllLines(said)) {
            if (line.startsWith("exit ")) {
                String[] words = line.split(" ", -1);
                exits.put(words[1], Integer.parseInt(words[2]));
                assertThat(Integer.parseInt(words[3])).as(line).isLessThan(MOST_MEGABYTES);
            }
        }
        assertThat(exits).as(Files.readString(said)).isEqualTo(expected);
    }

    private void save(String name, byte[] book, int exit, Map<String, Integer> expected) throws IOException {
        Files.write(folder.resolve(name), book);
        expected.put(name, exit);
    }

    /** A wide sheet of one repeated value, without the places of its cells: 45 MB that pack to very little. */
    private static RawBook ones() {
        RawBook book = RawBook.sound().sheet("Marks", List.of("Marks"));
        String row = "<row>" + "<c><v>1</v></c>".repeat(3_000) + "</row>";
        return book.change(
                book.partOf("Marks"), xml -> xml.replace("</sheetData>", row.repeat(1_000) + "</sheetData>"));
    }

    /** A sheet of sales that has nothing to do with costs: 60,000 rows of ten numbers. */
    private static RawBook longSheet() {
        RawBook book = RawBook.sound();
        for (int row = 0; row < 60_000; row++) {
            List<Object> numbers = new ArrayList<>();
            for (int column = 0; column < 10; column++) {
                numbers.add(row * 0.37 + column);
            }
            book.row("Sales", numbers);
        }
        return book;
    }

    /**
     * Checks every workbook in a folder, and prints the exit code of each and the megabytes of objects that it made.
     */
    public static void main(String[] folder) throws IOException {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        List<Path> books;
        try (Stream<Path> files = Files.list(Path.of(folder[0]))) {
            books = files.filter(file -> file.toString().endsWith(".xlsx"))
                    .sorted()
                    .toList();
        }
        for (Path book : books) {
            long before = Ran.bytesMade();
            int exit = Perkilo.run(out, out, "check", book.toString());
            out.printf("exit %s %d %d%n", book.getFileName(), exit, (Ran.bytesMade() - before) >> 20);
        }
    }
}
