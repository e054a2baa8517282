package perkilo.pricelists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ListWords;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.reading.table.TableRow;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** The names that formulas and material tables use, and their other identifiers (INCI, CAS, synonyms). */
final class KnownNames {

    private static final Pattern CAS = Pattern.compile("\\d{2,7}-\\d{2}-\\d");

    private final Map<String, String> byKey = new LinkedHashMap<>();
    private final Map<String, Set<String>> byLetters = new HashMap<>();
    private final Map<String, Set<String>> byInci = new HashMap<>();
    private final Map<String, Set<String>> byCas = new HashMap<>();
    private final Map<String, Set<String>> bySynonym = new HashMap<>();
    private final Map<String, Set<String>> byWord = new HashMap<>();

    /**
     * The names in the sheets of a workbook and of material tables. The names in suppliers' lists are left out: they
     * are the names to be matched.
     */
    static KnownNames of(List<Grid> grids) {
        KnownNames known = new KnownNames();
        List<SheetSchema> schemas = List.of(
                MaterialsSheet.SCHEMA,
                FormulaSheet.SCHEMA,
                ComponentsSheet.SCHEMA,
                OffersSheet.SCHEMA,
                StockSheet.SCHEMA);
        for (FoundTable table : new TableFinder(schemas, new Findings()).find(grids)) {
            boolean ofList =
                    table.schema().equals(OffersSheet.SCHEMA) && !table.grid().ofBook();
            if (!ofList) {
                known.add(table);
            }
        }
        known.addSynonyms();
        return known;
    }

    private void add(FoundTable table) {
        Integer cas = casColumn(table);
        for (TableRow row : table.rows(new Findings())) {
            for (InputColumn column : List.of(
                    MaterialsSheet.MATERIAL, FormulaSheet.MATERIAL, ComponentsSheet.COMPONENT, OffersSheet.ITEM)) {
                if (table.has(column)) {
                    add(row.text(column));
                }
            }
            if (table.schema().equals(MaterialsSheet.SCHEMA)) {
                String name = row.text(MaterialsSheet.MATERIAL);
                put(byInci, Names.key(row.text(MaterialsSheet.INCI)), name);
                if (cas != null) {
                    numbers(table.grid().at(row.number(), cas).text()).forEach(number -> put(byCas, number, name));
                }
            }
        }
    }

    private static @Nullable Integer casColumn(FoundTable table) {
        for (Map.Entry<Integer, Cell> header :
                table.grid().row(table.headerRow()).entrySet()) {
            if (ListWords.is("CAS number", header.getValue().text())) {
                return header.getKey();
            }
        }
        return null;
    }

    private void add(String name) {
        if (!name.isBlank() && byKey.putIfAbsent(Names.key(name), name) == null) {
            put(byLetters, Names.withoutMarks(name), name);
            for (String part : parts(name)) {
                put(byWord, part, name);
            }
        }
    }

    private static void put(Map<String, Set<String>> index, String key, String name) {
        if (!key.isBlank() && !name.isBlank()) {
            index.computeIfAbsent(key, any -> new LinkedHashSet<>()).add(name);
        }
    }

    private void addSynonyms() {
        for (List<String> row : ListWords.rows(KnownNames.class, "synonyms.csv")) {
            List<String> all = new ArrayList<>(List.of(row.get(0)));
            for (String synonym : row.get(1).split(";", -1)) {
                all.add(synonym.strip());
            }
            Set<String> here = new LinkedHashSet<>();
            all.forEach(name -> here.addAll(set(byKey.get(Names.key(name)))));
            for (String name : all) {
                here.forEach(one -> put(bySynonym, Names.key(name), one));
            }
        }
    }

    private static Set<String> set(@Nullable String name) {
        return name == null ? Set.of() : Set.of(name);
    }

    /** All names, in the order in which they were found. */
    List<String> all() {
        return List.copyOf(byKey.values());
    }

    /** Whether no name is known. */
    boolean isEmpty() {
        return byKey.isEmpty();
    }

    /** The name that is the same but for case and spaces; empty if there is none. */
    Set<String> same(String name) {
        return set(byKey.get(Names.key(name)));
    }

    /** The names that have the same letters and digits. */
    Set<String> sameLetters(String name) {
        return byLetters.getOrDefault(Names.withoutMarks(name), Set.of());
    }

    /** The names of an INCI name. */
    Set<String> ofInci(String inci) {
        return byInci.getOrDefault(Names.key(inci), Set.of());
    }

    /** The names of the CAS numbers in a text. */
    Set<String> ofCas(String text) {
        Set<String> names = new LinkedHashSet<>();
        numbers(text).forEach(number -> names.addAll(byCas.getOrDefault(number, Set.of())));
        return names;
    }

    /** The names of a synonym. */
    Set<String> ofSynonym(String name) {
        return bySynonym.getOrDefault(Names.key(name), Set.of());
    }

    /** The names that share the beginning of a word with another, and so may resemble it. */
    Set<String> near(String name) {
        Set<String> near = new LinkedHashSet<>();
        for (String part : parts(name)) {
            near.addAll(byWord.getOrDefault(part, Set.of()));
        }
        return near;
    }

    /** The first three letters of a name's longer words; letters that look alike count as the same. */
    private static Set<String> parts(String name) {
        Set<String> parts = new LinkedHashSet<>();
        for (String word : Spelling.skeleton(name).split("[^\\p{L}\\p{N}]+", -1)) {
            if (word.length() > 2) {
                parts.add(word.substring(0, 3));
            }
        }
        return parts;
    }

    private static List<String> numbers(String text) {
        return CAS.matcher(text).results().map(MatchResult::group).toList();
    }
}
