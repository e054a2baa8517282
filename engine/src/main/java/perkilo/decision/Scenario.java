package perkilo.decision;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import perkilo.model.Book;
import perkilo.model.ScenarioLine;
import perkilo.names.Names;
import perkilo.origin.Finding;

/**
 * A what-if: some changes of a book.
 *
 * @param name as typed
 * @param changes in words, such as {@code USD +10 %}
 * @param edit the book with all of them
 */
public record Scenario(String name, List<String> changes, UnaryOperator<Book> edit) {

    public Scenario {
        changes = List.copyOf(changes);
    }

    /**
     * The scenarios of a book, and what was not understood.
     *
     * @param scenarios those of which every line was understood
     * @param findings a warning for each line that was not
     */
    public record Read(List<Scenario> scenarios, List<Finding> findings) {

        public Read {
            scenarios = List.copyOf(scenarios);
            findings = List.copyOf(findings);
        }
    }

    /** Understands the lines of a book; a scenario with a line that is not understood is left out. */
    public static Read of(Book book) {
        Map<String, List<ScenarioLine>> byName = new LinkedHashMap<>();
        for (ScenarioLine line : book.scenarios()) {
            byName.computeIfAbsent(Names.key(line.name()), key -> new ArrayList<>())
                    .add(line);
        }
        List<Scenario> scenarios = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        byName.values().forEach(lines -> {
            List<Finding> problems = new ArrayList<>();
            List<String> words = new ArrayList<>();
            UnaryOperator<Book> all = UnaryOperator.identity();
            for (ScenarioLine line : lines) {
                UnaryOperator<Book> before = all;
                ChangeText.Understood one = new ChangeText(book, line.what()).understand(line.change());
                UnaryOperator<Book> edit = one.edit();
                if (edit == null) {
                    problems.add(Finding.warning(one.ofWhat() ? line.whatOrigin() : line.origin(), one.problem()));
                } else {
                    words.add(line.what() + " " + line.change());
                    all = changed -> edit.apply(before.apply(changed));
                }
            }
            findings.addAll(problems);
            if (problems.isEmpty()) {
                scenarios.add(new Scenario(lines.get(0).name(), words, all));
            }
        });
        return new Read(scenarios, findings);
    }
}
