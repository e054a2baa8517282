package perkilo.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Grades;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.origin.Origin;
import perkilo.reading.arrange.Arrangement;
import perkilo.reading.arrange.ReadingSheet;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.SheetSchema;

/**
 * Which material a line of a formula means whose name is not known, by its INCI name. One material alone with that INCI
 * name is taken, and told; of several grades none is taken before a person says which.
 */
final class InciLinks {

    /** Links of no lines. */
    static final InciLinks NONE = new InciLinks(new Tables(List.of()), Map.of(), new Findings());

    private final Tables tables;
    private final Findings findings;
    private final Map<String, Material> described;
    private final Vocabulary known;
    private final Map<String, Map<String, String>> byInci = new HashMap<>();
    private final List<Arrangement.Open> open = new ArrayList<>();

    /** The materials that lines mean, by the cells of their levels. */
    private final Map<Origin, String> linked = new HashMap<>();

    /** The cells of the levels of lines that wait for an answer. */
    private final Set<Origin> asked = new HashSet<>();

    private InciLinks(Tables tables, Map<String, Material> described, Findings findings) {
        this.tables = tables;
        this.findings = findings;
        this.described = described;
        this.known = new Vocabulary(
                described.values().stream().map(Material::name).toList(),
                () -> tables.stream(OffersSheet.SCHEMA, new Findings())
                        .map(row -> row.text(OffersSheet.ITEM))
                        .toList());
    }

    /**
     * The links of all formulas.
     *
     * @param described materials that have a row of their own, by {@link Names#key}
     * @param answers what a person said on the sheet Reading
     */
    static InciLinks of(
            Tables tables,
            Map<String, Material> described,
            List<Arrangement.MaterialAnswer> answers,
            Findings findings) {
        List<FoundTable> formulas = tables.of(FormulaSheet.SCHEMA).stream()
                .filter(table -> table.has(FormulaSheet.INCI))
                .toList();
        if (formulas.isEmpty()) {
            return NONE;
        }
        InciLinks links = new InciLinks(tables, described, findings);
        links.learn(MaterialsSheet.SCHEMA, MaterialsSheet.MATERIAL, MaterialsSheet.INCI);
        links.learn(OffersSheet.SCHEMA, OffersSheet.ITEM, OffersSheet.INCI);
        Set<String> contradicted = new HashSet<>();
        for (FoundTable table : formulas) {
            links.link(table, answers, contradicted);
        }
        return links;
    }

    private void learn(SheetSchema schema, InputColumn name, InputColumn inci) {
        for (FoundTable table : tables.of(schema)) {
            if (table.has(inci)) {
                table.stream(new Findings())
                        .filter(row -> !row.isBlank(inci) && !row.isBlank(name))
                        .forEach(
                                row -> byInci.computeIfAbsent(InciKeys.of(row.text(inci)), any -> new LinkedHashMap<>())
                                        .putIfAbsent(Names.key(row.text(name)), row.text(name)));
            }
        }
    }

    private void link(FoundTable table, List<Arrangement.MaterialAnswer> answers, Set<String> contradicted) {
        Map<String, String> told = new TreeMap<>();
        Map<String, Origin> open = new HashMap<>();
        Origin first = null;
        for (TableRow row : table.rows(new Findings())) {
            String name = row.text(FormulaSheet.MATERIAL);
            String inci = InciKeys.of(row.text(FormulaSheet.INCI));
            if (name.isEmpty() || inci.isEmpty()) {
                continue;
            }
            if (known.has(name)) {
                compare(row, name, inci, contradicted);
                continue;
            }
            Optional<Arrangement.MaterialAnswer> answer = answers.stream()
                    .filter(one -> one.sheet().equalsIgnoreCase(table.grid().sheet())
                            && Names.key(one.of()).equals(Names.key(name)))
                    .findFirst();
            String material = answer.isPresent() ? answered(answer.get()) : alone(row, name, inci, open);
            if (material != null) {
                linked.put(row.origin(FormulaSheet.LEVEL_OF), material);
                told.put(name, material);
                first = first == null ? row.origin(FormulaSheet.MATERIAL) : first;
            } else if (answer.isPresent()) {
                asked.add(row.origin(FormulaSheet.LEVEL_OF));
            }
        }
        if (first != null) {
            findings.note(first, NameMessages.byInci(List.copyOf(told.keySet()), List.copyOf(told.values())));
        }
    }

    /** The material that a person answered; null if nobody knows it, which is reported at the answer. */
    private @Nullable String answered(Arrangement.MaterialAnswer answer) {
        if (known.has(answer.material())) {
            return answer.material();
        }
        findings.error(answer.origin(), NameMessages.unknownAnswer(answer.material()));
        return null;
    }

    /** The only material with an INCI name; null if there is none, or if a person must say which one is meant. */
    private @Nullable String alone(TableRow row, String name, String inci, Map<String, Origin> before) {
        List<String> candidates =
                List.copyOf(byInci.getOrDefault(inci, Map.of()).values());
        if (candidates.isEmpty()) {
            return null;
        }
        boolean byInciAlone = InciKeys.of(name).equals(inci);
        boolean single = candidates.size() == 1;
        if (single && (byInciAlone || Grades.of(name).isSame(Grades.of(candidates.get(0))))) {
            return candidates.get(0);
        }
        if (Material.of(name).isWater()) {
            return null; // its price is known without an offer
        }
        asked.add(row.origin(FormulaSheet.LEVEL_OF));
        if (before.putIfAbsent(Names.key(name), row.origin(FormulaSheet.MATERIAL)) == null) {
            String typed = row.text(FormulaSheet.INCI);
            String question = single
                    ? NameMessages.otherGrade(name, typed, candidates.get(0))
                    : NameMessages.severalGrades(name, typed, candidates);
            findings.error(row.origin(FormulaSheet.MATERIAL), NameMessages.withAnswer(question));
            open.add(new Arrangement.Open(
                    row.origin(FormulaSheet.MATERIAL), ReadingSheet.ofMaterial(name), question, candidates));
        }
        return null;
    }

    /** Warns once of a material whose name and INCI name in a formula are not those of one material. */
    private void compare(TableRow row, String name, String inci, Set<String> contradicted) {
        Material material = described.get(Names.key(name));
        if (material == null || material.inci().isBlank()) {
            return;
        }
        if (!InciKeys.of(material.inci()).equals(inci) && contradicted.add(Names.key(name) + "\n" + inci)) {
            Origin theirs = tables.stream(MaterialsSheet.SCHEMA, new Findings())
                    .filter(other ->
                            Names.key(other.text(MaterialsSheet.MATERIAL)).equals(Names.key(name)))
                    .findFirst()
                    .map(other -> other.origin(MaterialsSheet.INCI))
                    .orElse(material.origin());
            findings.warning(
                    row.origin(FormulaSheet.INCI),
                    NameMessages.otherInci(name, row.text(FormulaSheet.INCI), material.inci(), theirs.where()));
        }
    }

    /** Formulas with the materials that their lines mean. */
    Map<String, Formula> in(Map<String, Formula> formulas) {
        if (linked.isEmpty()) {
            return formulas;
        }
        Map<String, Formula> all = new LinkedHashMap<>();
        formulas.forEach((key, formula) -> {
            List<Formula.Line> lines = formula.lines().stream()
                    .map(line -> line.with(linked.getOrDefault(line.origin(), line.material()), line.level()))
                    .toList();
            all.put(key, new Formula(formula.name(), lines, formula.batching(), formula.origin()));
        });
        return all;
    }

    /** The material that a row of a formula means: the one that it is linked to, else the one that it names. */
    String material(TableRow row) {
        return linked.getOrDefault(row.origin(FormulaSheet.LEVEL_OF), row.text(FormulaSheet.MATERIAL));
    }

    /** Whether it was asked which material a row of a formula means. */
    boolean isAsked(TableRow row) {
        return asked.contains(row.origin(FormulaSheet.LEVEL_OF));
    }

    /** The questions. */
    List<Arrangement.Open> open() {
        return List.copyOf(open);
    }
}
