package perkilo;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Messages are in catalogues, can be read as a list, and are written in plain English.
 *
 * <p>Each method of each catalogue (a class whose name ends with {@code Messages}) is called once with sample values.
 * The list is left in {@code target/messages.txt} for whoever wants to read it.
 */
final class MessagesTest {

    private static final int LONGEST = 420;

    /** Habits of writing that make a reader stop. */
    private static final Pattern HABITS = Pattern.compile(
            "\\b(nobody|nought|is told|are told|stands|as it stands|gives? him|him|his|he|of it|made as small)\\b",
            Pattern.CASE_INSENSITIVE);

    /** A text literal in a call that makes a finding. */
    private static final Pattern LITERAL = Pattern.compile(
            "\\b(?:Finding|[fF]indings|oncePerList|findings\\(\\))\\s*\\.(?:error|warning|note)\\(([^;]*?)\\);",
            Pattern.DOTALL);

    private static final Path SOURCES = Path.of("src", "main", "java");

    @Test
    void every_message_reads_as_plain_english() throws Exception {
        Map<String, List<String>> problems = new TreeMap<>();
        List<String> all = new ArrayList<>();
        for (Class<?> catalogue : catalogues()) {
            for (Method method : catalogue.getDeclaredMethods()) {
                if (!isMessage(method)) {
                    continue;
                }
                String text = text(method);
                String name = catalogue.getSimpleName() + "." + method.getName();
                all.add(name + "\n    " + text);
                List<String> found = problems(text);
                if (!found.isEmpty()) {
                    problems.put(name + ": " + text, found);
                }
            }
        }
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "messages.txt"), all.stream().sorted().toList());
        assertThat(problems).as("messages that are to be reworded").isEmpty();
    }

    @Test
    void findings_take_their_words_from_a_catalogue() throws IOException {
        List<String> outside = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                String name =
                        SOURCES.relativize(file).toString().replace('/', '.').replace('\\', '.');
                if (name.endsWith("Messages.java")) {
                    continue;
                }
                Matcher call = LITERAL.matcher(Files.readString(file));
                while (call.find()) {
                    if (call.group(1).contains("\"")) {
                        outside.add(name + ": " + call.group().replaceAll("\\s+", " "));
                    }
                }
            }
        }
        assertThat(outside).as("words of findings that belong into a catalogue").isEmpty();
    }

    private static List<String> problems(String text) {
        List<String> found = new ArrayList<>();
        if (text.isBlank()) {
            return List.of("is empty");
        }
        char first = text.charAt(0);
        if (Character.isLetter(first) && Character.isLowerCase(first)) {
            found.add("begins with a small letter");
        }
        if (!text.endsWith(".") && !text.endsWith("?")) {
            found.add("ends without a full stop or a question mark");
        }
        if (text.length() > LONGEST) {
            found.add("is longer than " + LONGEST + " characters");
        }
        if (text.contains("%s") || text.contains("null") || text.contains("  ")) {
            found.add("is not filled in well");
        }
        Matcher habit = HABITS.matcher(text);
        if (habit.find()) {
            found.add("says \"" + habit.group() + "\"");
        }
        return found;
    }

    private static List<Class<?>> catalogues() throws ClassNotFoundException {
        List<Class<?>> all = new ArrayList<>();
        for (JavaClass one : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("perkilo")) {
            if (one.getSimpleName().endsWith("Messages")
                    && !one.getSimpleName().equals("PortfolioMessages")
                    && one.getEnclosingClass().isEmpty()) {
                all.add(Class.forName(one.getName()));
            }
        }
        return all;
    }

    private static boolean isMessage(Method method) {
        return Modifier.isStatic(method.getModifiers())
                && !Modifier.isPrivate(method.getModifiers())
                && !method.isSynthetic()
                && method.getReturnType() == String.class;
    }

    private static String text(Method method) throws ReflectiveOperationException {
        Class<?>[] types = method.getParameterTypes();
        Object[] samples = new Object[types.length];
        for (int i = 0; i < types.length; i++) {
            samples[i] = sample(types[i], i);
        }
        method.setAccessible(true);
        return (String) method.invoke(null, samples);
    }

    private static Object sample(Class<?> type, int place) {
        if (type == String.class) {
            return List.of("Argan oil", "Alpha", "25 kg", "Offers!E7").get(place % 4);
        }
        if (type == int.class || type == Integer.class) {
            return 3 + place;
        }
        if (type == long.class || type == Long.class) {
            return 3L + place;
        }
        if (type == boolean.class || type == Boolean.class) {
            return true;
        }
        if (type == BigDecimal.class) {
            return new BigDecimal("12.5");
        }
        if (type == LocalDate.class) {
            return LocalDate.of(2026, 11, 15);
        }
        if (type == YearMonth.class) {
            return YearMonth.of(2026, 11);
        }
        if (type.isAssignableFrom(List.class)) {
            return List.of("Shea butter", "Glycerin");
        }
        if (type == Path.class) {
            return Path.of("Launch.xlsx");
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        throw new AssertionError("a catalogue's method takes " + type + ": use plain values, or add a sample here");
    }
}
