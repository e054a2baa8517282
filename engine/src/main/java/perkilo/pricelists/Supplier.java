package perkilo.pricelists;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
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
 * @param note what was concluded without a question, for the person to see; empty for nothing
 */
record Supplier(
        @Nullable String name, String read, @Nullable Question question, String answer, String note) {

    /** The answer that a list with several suppliers is taken in for each of them. */
    static final String EACH = "each of them";

    private static final int NAMED = 5;
    private static final int LINES_LOOKED_AT = 15;
    private static final int LONGEST = 60;
    private static final int LONG_WORD = 4;

    /** Words of titles, which no supplier's name has; common practice, no source. */
    private static final Pattern OF_LISTS = Pattern.compile(
            "(?iu)\\b(?:\\p{L}*list[ea]?n?|offers?|quotations?|catalog(?:ue)?|angebote?|katalog|offres?|catalogue|offert[ae]|catalogo"
                    + "|ofertas?|catálogo|orders?|bestellung(?:en)?)\\b");

    private static Supplier of(String name) {
        return new Supplier(name, "", null, "", "");
    }

    /** The same list from a supplier that a person named in answer to the question. */
    Supplier answered(Supplier named, String words) {
        return new Supplier(named.name(), read, question, words, "");
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
            suppliers.forEach(this::know);
            for (Memory memory : memories) {
                know(memory.supplier());
                memory.all(Memory.ALSO_CALLED)
                        .forEach(name -> alsoCalled.put(ListWords.key(name.listed()), memory.supplier()));
            }
        }

        private void know(String name) {
            if (!name.isBlank() && known(name).isEmpty()) {
                known.add(name);
            }
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
            if (inName.size() == 1) {
                return Supplier.of(inName.get(0));
            }
            return sender(titles).map(sender -> concluded(sender, whole)).orElseGet(() -> unknown(titles, whole));
        }

        /**
         * The one that the lines above the table can be from: a line that begins with the name of a company, or a first
         * line of which the file's name has a word too. Empty if there is none, or more than one.
         */
        private Optional<String> sender(List<String> titles) {
            List<String> companies = new ArrayList<>();
            for (String line : titles) {
                SupplierNames.company(line)
                        .filter(name -> !speaksOfLists(name))
                        .filter(name -> companies.stream().noneMatch(one -> SupplierNames.same(one, name)))
                        .ifPresent(companies::add);
            }
            if (!companies.isEmpty()) {
                return companies.size() == 1 ? Optional.of(companies.get(0)) : Optional.empty();
            }
            return titles.stream()
                    .filter(line -> !line.isBlank())
                    .findFirst()
                    .map(line -> dash(line) > 0 ? line.substring(0, dash(line)).strip() : line)
                    .filter(line -> line.length() <= LONGEST && !speaksOfLists(line) && isInName(line));
        }

        private static boolean speaksOfLists(String line) {
            return TitleFacts.saysPrices(line)
                    || OF_LISTS.matcher(line).find()
                    || ListWords.speaksOfCost(line)
                    || line.codePoints().anyMatch(Character::isDigit);
        }

        private boolean isInName(String line) {
            String name = ListWords.key(file);
            return Arrays.stream(line.split("[^\\p{L}]+", -1))
                    .anyMatch(word -> word.length() >= LONG_WORD && name.contains(ListWords.key(word)));
        }

        private Supplier concluded(String sender, Origin whole) {
            Supplier found = checked(sender, whole);
            String name = found.name();
            if (name == null || !found.note().isEmpty()) {
                return found;
            }
            return new Supplier(name, found.read(), null, "", ListMessages.sender(name));
        }

        private Supplier unknown(List<String> titles, Origin whole) {
            Optional<String> first =
                    titles.stream().filter(line -> !line.isBlank()).findFirst();
            String text = first.map(line -> ListMessages.noSupplier(ListRows.shortened(line)))
                    .orElseGet(ListMessages::noSupplier);
            List<String> choices = new ArrayList<>();
            first.filter(line -> line.length() <= LONGEST && !layouts.isEmpty()).ifPresent(line -> {
                int dash = dash(line);
                choices.add(dash > 0 ? line.substring(0, dash).strip() : line);
            });
            known.stream().filter(name -> !choices.contains(name)).forEach(choices::add);
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
            return new Supplier(null, "", new Question(Memory.SUPPLIER, "", where, text, choices), "", "");
        }

        /** A name on the list; asked about if it resembles that of a known supplier. */
        private Supplier checked(String name, Origin whole) {
            Optional<String> same = known(name).or(() -> Optional.ofNullable(alsoCalled.get(ListWords.key(name))));
            if (same.isPresent()) {
                boolean other = !ListWords.key(same.get()).equals(ListWords.key(name));
                return new Supplier(same.get(), "", null, "", other ? ListMessages.sameSupplier(name, same.get()) : "");
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
                    "",
                    "");
        }

        private Optional<String> known(String name) {
            return known.stream()
                    .filter(other -> ListWords.key(other).equals(ListWords.key(name)))
                    .findFirst()
                    .or(() -> {
                        List<String> same = known.stream()
                                .filter(other -> SupplierNames.same(other, name))
                                .toList();
                        return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
                    });
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
