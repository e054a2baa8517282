package perkilo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import perkilo.cli.Perkilo;

/**
 * The results for the templates are the same as before, cell by cell, apart from wording.
 *
 * <p>Each result is compared with a snapshot under {@code templates-results}. {@code -Dperkilo.snapshots=write} writes
 * the snapshots anew.
 */
@Tag("slow")
final class TemplateResultsTest {

    private static final Path TEMPLATES = Path.of("../workbook-templates");
    private static final Path SNAPSHOTS = Path.of("src/test/resources/perkilo/templates-results");
    private static final boolean WRITE = "write".equals(System.getProperty("perkilo.snapshots"));
    private static final int SHOWN = 20;

    @TempDir
    private Path folder = Path.of("");

    /**
     * Runs a command and compares its workbook and its JSON.
     *
     * <p>Each search is given more time than it needs, so that it ends with a proof and not by the clock.
     */
    @ParameterizedTest(name = "{1} {0}")
    @CsvSource({
        "minimal, cost, ",
        "launch, cost, ",
        "emollients, cost, --units|2000",
        "orders, cost, --units|1000",
        "launch, order, --time|600|--why|0",
        "orders, order, --time|600|--why|0",
        "minimal, swap, ",
        "emollients, swap, --formula|Dry body oil|--units|2000",
        "launch, prices, --changes|--prices|src/test/resources/perkilo/templates-prices",
    })
    void a_result_is_what_it_was(String template, String command, @Nullable String options) throws IOException {
        Path book = TEMPLATES.resolve(template + ".xlsx");
        Path result = folder.resolve("result.xlsx");
        String json = run(command, book, result, options == null ? List.of() : List.of(options.split("\\|", -1)));

        List<String> differences = new ArrayList<>();
        differences.addAll(differences(template + "-" + command + ".txt", ResultDump.ofWorkbook(result, book)));
        differences.addAll(differences(template + "-" + command + "-json.txt", ResultDump.ofJson(json)));

        if (!differences.isEmpty()) {
            fail(
                    "%d places of %s %s differ from the snapshot; the first of them:%n%s%n%s",
                    differences.size(),
                    command,
                    template,
                    String.join(System.lineSeparator(), differences.subList(0, Math.min(SHOWN, differences.size()))),
                    "If the change is intended, write the snapshots anew with -Dperkilo.snapshots=write"
                            + " and explain the change in the commit.");
        }
    }

    private static String run(String command, Path book, Path result, List<String> options) {
        List<String> arguments = new ArrayList<>(List.of(command, book.toString()));
        arguments.addAll(List.of("--json", "--date", "2026-11-20", "--out", result.toString()));
        arguments.addAll(options);
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();

        int exit = Perkilo.run(new PrintWriter(out), new PrintWriter(err), arguments.toArray(String[]::new));

        assertThat(exit).as(err.toString()).isZero();
        return out.toString();
    }

    private static List<String> differences(String snapshot, Map<String, String> now) throws IOException {
        Path file = SNAPSHOTS.resolve(snapshot);
        if (WRITE) {
            SnapshotFile.write(file, now);
        }
        Map<String, String> before = SnapshotFile.read(file);
        assertThat(before).as(snapshot).isNotEmpty();
        Set<String> places = new LinkedHashSet<>(before.keySet());
        places.addAll(now.keySet());
        return places.stream()
                .filter(place -> !now.getOrDefault(place, "").equals(before.getOrDefault(place, "")))
                .map(place -> place + ": was " + before.getOrDefault(place, "nothing") + ", is "
                        + now.getOrDefault(place, "nothing"))
                .toList();
    }
}
