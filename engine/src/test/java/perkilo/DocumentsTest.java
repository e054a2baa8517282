package perkilo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The documents against the files and classes that they name. */
final class DocumentsTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Path DECISIONS = ROOT.resolve("engine/docs/decisions");
    private static final Path TESTS = ROOT.resolve("engine/src/test/java");
    private static final Path SOURCES = ROOT.resolve("engine/src/main/java");

    private static final String PINNED = "Pinned by: ";
    private static final Pattern CLASS = Pattern.compile("`(perkilo\\.[\\w.]+)`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern CODE_BLOCK = Pattern.compile("(?ms)^ *```.*?^ *```");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ +(.*)$");
    private static final Pattern PACKAGE = Pattern.compile("(?m)^\\| `(perkilo[\\w.]*)` \\|");

    /** All pages but those in folders that a build makes, which change while tests run. */
    static Stream<Path> documents() throws IOException {
        List<Path> found = new ArrayList<>();
        Files.walkFileTree(ROOT, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                String name = folder.getFileName().toString();
                boolean passedBy = !folder.equals(ROOT) && (name.startsWith(".") || name.startsWith("target"));
                return passedBy ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (file.toString().endsWith(".md")) {
                    found.add(file);
                }
                return FileVisitResult.CONTINUE;
            }
        });
        return found.stream().sorted();
    }

    static Stream<Path> decisions() throws IOException {
        try (Stream<Path> files = Files.list(DECISIONS)) {
            return files
                    .filter(file -> file.getFileName().toString().matches("\\d{4}-.*\\.md"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("decisions")
    void a_decision_names_tests_that_exist_or_says_that_none_does(Path page) {
        String text = text(page);
        assertThat(text).contains("## Context", "## Decision", "## Consequences", PINNED);

        String pinned = text.substring(text.indexOf(PINNED) + PINNED.length());
        if (!pinned.startsWith("no test.")) {
            List<String> tests = all(CLASS, pinned);
            assertThat(tests).as("tests named").isNotEmpty();
            assertThat(tests)
                    .allSatisfy(test -> assertThat(TESTS.resolve(test.replace('.', '/') + ".java"))
                            .exists());
        }
    }

    @Test
    void the_list_of_decisions_has_each_page_once() throws IOException {
        List<String> listed = all(LINK, text(DECISIONS.resolve("README.md"))).stream()
                .filter(target -> target.matches("\\d{4}-.*"))
                .toList();

        assertThat(listed)
                .containsExactlyElementsOf(
                        decisions().map(page -> page.getFileName().toString()).toList());
    }

    @ParameterizedTest
    @MethodSource("documents")
    void a_link_leads_to_a_file_and_a_heading_that_exist(Path document) {
        for (String link : all(LINK, withoutCode(text(document)))) {
            if (link.contains("://")) {
                continue;
            }
            String[] parts = link.split("#", -1);
            Path target = parts[0].isEmpty() ? document : document.resolveSibling(parts[0]);
            assertThat(target).as(link).exists();
            if (parts.length > 1) {
                assertThat(anchors(target)).as(link).contains(parts[1]);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"README.md, 1000", "DEVELOPERS.md, 1500"})
    void the_first_pages_are_short(String name, int words) {
        assertThat(text(ROOT.resolve(name)).strip().split("\\s+", -1)).hasSizeLessThan(words);
    }

    @Test
    void the_layout_has_every_package_or_the_one_above_it() throws IOException {
        Set<String> listed = new TreeSet<>(all(PACKAGE, text(ROOT.resolve("DEVELOPERS.md"))));
        Set<String> packages = packages();

        assertThat(packages)
                .isNotEmpty()
                .allSatisfy(name -> assertThat(listed)
                        .as("DEVELOPERS.md has %s or a package above it", name)
                        .anyMatch(above -> isWithin(name, above)));
        assertThat(listed)
                .allSatisfy(above -> assertThat(packages)
                        .as("%s, listed in DEVELOPERS.md, has classes", above)
                        .anyMatch(name -> isWithin(name, above)));
    }

    private static boolean isWithin(String name, String above) {
        return name.equals(above) || name.startsWith(above + ".");
    }

    private static Set<String> packages() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(file -> SOURCES.relativize(file.resolveSibling("")))
                    .map(folder -> folder.toString().replace('\\', '.').replace('/', '.'))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    /** The headings of a document as links name them: lower case, hyphens for spaces, no other marks. */
    private static List<String> anchors(Path document) {
        return all(HEADING, withoutCode(text(document))).stream()
                .map(heading -> heading.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} -]", "")
                        .strip()
                        .replace(' ', '-'))
                .toList();
    }

    private static String withoutCode(String text) {
        return CODE_BLOCK.matcher(text).replaceAll("");
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
