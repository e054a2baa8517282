package perkilo.pricelists;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.ListDates;
import perkilo.layouts.ListLayout;
import perkilo.layouts.ListRows;
import perkilo.layouts.ListWords;
import perkilo.layouts.Meaning;
import perkilo.layouts.Question;
import perkilo.layouts.TitleFacts;
import perkilo.origin.Origin;
import perkilo.xlsx.grid.Grid;

/**
 * Who a list is from.
 *
 * @param name null if that is not known yet
 * @param read the name on the list, if it is another; empty for none
 * @param question null if there was none
 * @param answer to the question; empty if it is open or there was none
 */
record Supplier(
        @Nullable String name, String read, @Nullable Question question, String answer) {

    /** The answer that a list with several suppliers is taken in for each of them. */
    static final String EACH = "each of them";

    private static final int NAMED = 5;
    private static final int LINES_LOOKED_AT = 15;
    private static final int LONGEST = 60;

    private static Supplier of(String name) {
        return new Supplier(name, "", null, "");
    }

    /** The same list from a supplier that a person named in answer to the question. */
    Supplier answered(Supplier named, String words) {
        return new Supplier(named.name(), read, question, words);
    }

    /** Finds out who a list is from. */
    static final class Finder {

        private final String file;
        private final List<Grid> sheets;
        private final List<ListLayout> layouts;
        private final Set<String> known = new LinkedHashSet<>();
        private final Map<String, String> alsoCalled = new LinkedHashMap<>();

        Finder(String file, List<Grid> sheets, List<ListLayout> layouts, Set<String> suppliers, List<Memory> memories) {
            this.file = file;
            this.sheets = sheets;
            this.layouts = layouts;
            known.addAll(suppliers);
            for (Memory memory : memories) {
                known.add(memory.supplier());
                memory.all(Memory.ALSO_CALLED)
                        .forEach(name -> alsoCalled.put(ListWords.key(name.listed()), memory.supplier()));
            }
            known.removeIf(String::isBlank);
        }

        /** The supplier that a person names. */
        Supplier named(String name) {
            return Supplier.of(known(name).orElse(name));
        }

        /** The supplier that the list's rows, its title or its file's name say. */
        Supplier read() {
            Origin whole = new Origin(file, "", "");
            Set<String> inRows = inRows(layouts);
            if (inRows.size() > 1) {
                List<String> choices = new ArrayList<>(List.of(EACH));
                choices.addAll(inRows);
                List<String> some = inRows.stream().limit(NAMED).toList();
                return asking(whole, ListMessages.severalSuppliers(some, inRows.size() - some.size()), choices);
            }
            if (inRows.size() == 1) {
                return checked(inRows.iterator().next(), whole);
            }
            List<String> titles = titles();
            Set<String> inTitle = new LinkedHashSet<>();
            Set<String> labelled = new LinkedHashSet<>();
            for (String line : titles) {
                known.stream()
                        .filter(name -> ListWords.key(line).contains(ListWords.key(name)))
                        .forEach(inTitle::add);
                labelled(line).ifPresent(labelled::add);
            }
            if (labelled.size() == 1) {
                return checked(labelled.iterator().next(), whole);
            }
            if (inTitle.size() == 1) {
                return Supplier.of(inTitle.iterator().next());
            }
            String name = ListWords.key(file);
            List<String> inName = known.stream()
                    .filter(supplier -> name.startsWith(ListWords.key(supplier)))
                    .toList();
            return inName.size() == 1 ? Supplier.of(inName.get(0)) : unknown(titles, whole);
        }

        private Supplier unknown(List<String> titles, Origin whole) {
            Optional<String> first =
                    titles.stream().filter(line -> !line.isBlank()).findFirst();
            String text = first.map(line -> ListMessages.noSupplier(ListRows.shortened(line)))
                    .orElseGet(ListMessages::noSupplier);
            List<String> choices = new ArrayList<>();
            first.filter(line -> line.length() <= LONGEST).ifPresent(line -> {
                int dash = dash(line);
                choices.add(dash > 0 ? line.substring(0, dash).strip() : line);
            });
            choices.addAll(known);
            return asking(whole, text, choices);
        }

        /** Where a dash or a bar parts a line, such as {@code Fen & Moor – Price list}; -1 if none does. */
        private static int dash(String line) {
            for (String dash : List.of(" – ", " — ", " - ", " | ")) {
                if (line.indexOf(dash) > 0) {
                    return line.indexOf(dash);
                }
            }
            return -1;
        }

        private static Supplier asking(Origin where, String text, List<String> choices) {
            return new Supplier(null, "", new Question(Memory.SUPPLIER, "", where, text, choices), "");
        }

        /** A name on the list; asked about if it resembles that of a known supplier. */
        private Supplier checked(String name, Origin whole) {
            Optional<String> same = known(name).or(() -> Optional.ofNullable(alsoCalled.get(ListWords.key(name))));
            if (same.isPresent()) {
                return Supplier.of(same.get());
            }
            List<String> alike =
                    known.stream().filter(one -> SupplierNames.alike(one, name)).toList();
            if (alike.isEmpty()) {
                return Supplier.of(name);
            }
            List<String> choices = new ArrayList<>(alike);
            choices.add(name);
            return new Supplier(
                    null,
                    name,
                    new Question(Memory.SUPPLIER, "", whole, ListMessages.alikeSupplier(name, alike.get(0)), choices),
                    "");
        }

        private Optional<String> known(String name) {
            return known.stream()
                    .filter(other -> ListWords.key(other).equals(ListWords.key(name)))
                    .findFirst();
        }

        private static Set<String> inRows(List<ListLayout> layouts) {
            Set<String> names = new LinkedHashSet<>();
            for (ListLayout layout : layouts) {
                layout.readings().forEach((column, reading) -> {
                    ColumnUse use = reading.use();
                    if (use != null && use.meaning() == Meaning.SUPPLIER) {
                        Grid grid = layout.grid();
                        for (int row : grid.rows().below(layout.lastHeader())) {
                            Optional.ofNullable(grid.row(row).get(column)).ifPresent(cell -> names.add(cell.text()));
                        }
                    }
                });
            }
            return names;
        }

        private List<String> titles() {
            if (!layouts.isEmpty()) {
                return layouts.stream()
                        .flatMap(layout -> TitleFacts.of(layout, new ListDates(Optional.empty())).lines().stream())
                        .toList();
            }
            return sheets.stream()
                    .flatMap(grid -> Arrays.stream(grid.rows().numbers())
                            .limit(LINES_LOOKED_AT)
                            .filter(row -> grid.row(row).size() == 1)
                            .mapToObj(
                                    row -> grid.row(row).firstEntry().getValue().text()))
                    .toList();
        }

        /** The name after a word for a supplier and a colon: {@code Fournisseur : Havre Chimie}. */
        private static Optional<String> labelled(String line) {
            int colon = line.indexOf(':');
            boolean label = colon > 0 && ListWords.is("supplier", line.substring(0, colon));
            return Optional.of(line.substring(colon + 1).strip()).filter(name -> label && !name.isEmpty());
        }
    }
}
