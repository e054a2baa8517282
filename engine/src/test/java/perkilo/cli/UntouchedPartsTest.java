package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a workbook holds, {@code perkilo cost} leaves it as it was, byte for byte, and running it again lets nothing
 * grow. Each workbook and its result are kept in {@code target/fidelity} for a second opinion by {@code .ci/fidelity}.
 */
@Tag("slow")
final class UntouchedPartsTest {

    private static final Path KEPT = Path.of("target/fidelity");

    /** What has to change for a sheet to be added. */
    private static final Pattern MAY_CHANGE =
            Pattern.compile("\\[Content_Types].xml|xl/workbook\\.xml|xl/_rels/workbook\\.xml\\.rels|xl/styles\\.xml"
                    + "|xl/calcChain\\.xml|docProps/app\\.xml");

    private static final Pattern TAB = Pattern.compile("<(?:\\w+:)?sheet [^>]*?name=\"([^\"]*)\"");

    @TempDir
    private Path folder = Path.of("");

    static Stream<String> names() {
        return FeatureBooks.all().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void what_is_not_ours_stays(String name) throws IOException {
        Path book = Files.write(folder.resolve(name), FeatureBooks.all().getOrDefault(name, new byte[0]));
        checkUntouched(book);
    }

    /** A formula with a swap or a blend carried out is one more sheet; nothing else of the person's changes. */
    @ParameterizedTest
    @ValueSource(strings = {"swap 1", "blend 1"})
    void an_applied_change_is_one_more_sheet(String change) throws IOException {
        Path book = Files.copy(Path.of("../workbook-templates/emollients.xlsx"), folder.resolve("emollients.xlsx"));
        Path result = folder.resolve("applied.xlsx");
        CommandLineRun run =
                CommandLineRun.of("swap", book, "-q", "--formula", "Dry body oil", "--apply", change, "-o", result);
        assertThat(run.exit()).as(run.err()).isEqualTo(Exit.DONE);

        checkOthersStay(book, result);
        Set<String> added = new TreeSet<>(tabs(result).keySet());
        added.removeAll(tabs(book).keySet());
        assertThat(added)
                .containsExactlyInAnyOrder(
                        "Swaps",
                        "Blend",
                        "What a trial costs",
                        "Same swap in all formulas",
                        "Ingredient list",
                        "Emollients compared",
                        "What was read",
                        "Messages",
                        "Dry body oil " + change);
        assertThat(added).hasSize(parts(result, "xl/worksheets/") - parts(book, "xl/worksheets/"));
    }

    private static int parts(Path file, String folder) throws IOException {
        return (int) parts(file).keySet().stream()
                .filter(part -> part.startsWith(folder) && part.endsWith(".xml"))
                .count();
    }

    @Test
    void a_sheet_of_the_persons_that_is_called_like_ours_stays_his() throws IOException {
        byte[] own = FeatureBooks.all().getOrDefault("own-cost-summary.xlsx", new byte[0]);
        Ran ran = Ran.of(folder, own, "cost");

        assertThat(ran.messages())
                .anySatisfy(line -> assertThat(line)
                        .startsWith("note: You have a sheet called \"Cost summary\", so the result is on"));
        assertThat(tabs(folder.resolve("book-costed.xlsx")))
                .containsKey("Cost summary")
                .hasSizeGreaterThan(tabs(folder.resolve(Ran.BOOK)).size());
    }

    @Test
    void what_is_good_to_know_is_not_said_where_quiet_was_asked_for() throws IOException {
        byte[] own = FeatureBooks.all().getOrDefault("own-cost-summary.xlsx", new byte[0]);
        Path book = Files.write(folder.resolve("book.xlsx"), own);

        CommandLineRun loud = CommandLineRun.of("cost", book);
        CommandLineRun quiet = CommandLineRun.of("cost", "-q", book);

        assertThat(loud.err()).contains("note: You have a sheet called");
        assertThat(quiet.exit()).isEqualTo(Exit.DONE);
        assertThat(quiet.err()).doesNotContain("note").isEqualTo(withoutNotes(loud.err()));
        assertThat(quiet.out()).isEmpty();
    }

    private static String withoutNotes(String messages) {
        return messages.lines()
                .filter(line -> !line.startsWith("note"))
                .map(line -> line + System.lineSeparator())
                .collect(Collectors.joining());
    }

    @Test
    void a_protected_structure_is_refused_in_a_sentence() throws IOException {
        Ran ran = Ran.of(
                folder,
                RawBook.sound()
                        .properties("<workbookProtection lockStructure=\"1\"/>")
                        .bytes(),
                "cost");

        assertThat(ran.exit()).isEqualTo(Exit.FILE);
        assertThat(ran.messages())
                .hasSize(1)
                .allSatisfy(line -> assertThat(line).contains("protected against new sheets"));
        assertThat(ran.files()).containsExactly(Ran.BOOK);
        assertThat(ran.untouched()).isTrue();
    }

    @Test
    @Tag("office")
    void what_an_office_suite_wrote_stays() throws Exception {
        for (String name : new String[] {"plain.xlsx", "library.xlsx", "names-and-chain.xlsx", "sparklines.xlsx"}) {
            Files.write(folder.resolve(name), FeatureBooks.all().getOrDefault(name, new byte[0]));
        }
        Files.copy(Path.of("../workbook-templates/launch.xlsx"), folder.resolve("launch.xlsx"));
        Path asOds = convert(folder, "ods", "xlsx");
        Path written = convert(asOds, "xlsx", "ods");
        try (Stream<Path> books = Files.list(written)) {
            for (Path book : books.sorted().toList()) {
                Path renamed = Files.copy(book, folder.resolve("office-" + book.getFileName()));
                checkUntouched(renamed);
            }
        }
    }

    private Path convert(Path from, String to, String ending) throws Exception {
        Path out = Files.createDirectory(folder.resolve("as-" + to));
        try (Stream<Path> files = Files.list(from)) {
            Stream<String> command = Stream.of(
                    "soffice",
                    "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                    "--headless",
                    "--convert-to",
                    to,
                    "--outdir",
                    out.toString());
            Stream<String> books = files.map(Path::toString).filter(file -> file.endsWith("." + ending));
            Process suite = new ProcessBuilder(Stream.concat(command, books).toList())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("suite.log").toFile())
                    .start();
            assertThat(suite.waitFor(10, TimeUnit.MINUTES)).isTrue();
        }
        return out;
    }

    private void checkUntouched(Path book) throws IOException {
        byte[] before = Files.readAllBytes(book);
        String name = String.valueOf(book.getFileName());
        Path result = folder.resolve("result-" + name);
        assertThat(cost(book.toString(), "-o", result.toString())).isEqualTo("");
        keep(book, result, name);

        checkOthersStay(book, result);
        assertThat(Files.readAllBytes(book)).isEqualTo(before);

        Map<String, byte[]> first = parts(result);
        assertThat(cost(result.toString(), "--in-place")).isEqualTo("");
        Map<String, byte[]> after = parts(result);
        long size = Files.size(result);
        // the record of a result names its workbook, which is now the result itself
        assertThat(after)
                .usingRecursiveComparison()
                .ignoringFields("xl/workbook.xml")
                .isEqualTo(first);
        for (int run = 0; run < 5; run++) {
            assertThat(cost(result.toString(), "--in-place")).isEqualTo("");
        }
        assertThat(parts(result)).usingRecursiveComparison().isEqualTo(after);
        assertThat(Files.size(result)).isEqualTo(size);
    }

    private static void checkOthersStay(Path book, Path result) throws IOException {
        Map<String, byte[]> users = new HashMap<>(parts(book));
        users.keySet().removeIf(part -> MAY_CHANGE.matcher(part).matches());
        assertThat(users).isNotEmpty();
        Map<String, byte[]> after = parts(result);
        users.forEach((part, bytes) -> assertThat(after.get(part)).as(part).isEqualTo(bytes));
    }

    /** Costs a workbook; empty if that is done, else what was said. */
    private static String cost(String... book) {
        StringWriter said = new StringWriter();
        String[] arguments =
                Stream.concat(Stream.of("cost", "-q"), Stream.of(book)).toArray(String[]::new);
        int exit = Perkilo.run(new PrintWriter(new StringWriter()), new PrintWriter(said), arguments);
        return exit == Exit.DONE ? "" : exit + ": " + said;
    }

    private static void keep(Path book, Path result, String name) throws IOException {
        Files.createDirectories(KEPT);
        Files.copy(book, KEPT.resolve("before-" + name), StandardCopyOption.REPLACE_EXISTING);
        Files.copy(result, KEPT.resolve("after-" + name), StandardCopyOption.REPLACE_EXISTING);
        Map<String, String> added = tabs(result);
        added.keySet().removeAll(tabs(book).keySet());
        Files.writeString(
                KEPT.resolve("sheets-" + name + ".txt"),
                added.keySet().stream().map(tab -> tab + "\n").collect(Collectors.joining()));
    }

    private static Map<String, byte[]> parts(Path file) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    parts.put(entry.getName(), in.readAllBytes());
                }
            }
        }
        return parts;
    }

    private static Map<String, String> tabs(Path file) throws IOException {
        Map<String, String> tabs = new TreeMap<>();
        byte[] workbook = parts(file).getOrDefault("xl/workbook.xml", new byte[0]);
        String text = new String(
                workbook, workbook.length > 1 && workbook[0] == -2 ? java.nio.charset.StandardCharsets.UTF_16 : UTF_8);
        Matcher tab = TAB.matcher(text);
        while (tab.find()) {
            tabs.put(tab.group(1), "");
        }
        return tabs;
    }
}
