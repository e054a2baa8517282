package perkilo.reading.arrange;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.ColumnUse;
import perkilo.layouts.LayoutFinder;
import perkilo.layouts.ListColumns;
import perkilo.layouts.ListLayout;
import perkilo.layouts.ListLine;
import perkilo.layouts.ListReading;
import perkilo.layouts.ListWords;
import perkilo.layouts.Mapping;
import perkilo.layouts.Meaning;
import perkilo.layouts.PriceNote;
import perkilo.layouts.Quantity;
import perkilo.layouts.Question;
import perkilo.layouts.QuestionMessages;
import perkilo.layouts.TitleFacts;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;
import perkilo.units.Measure;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.GridBuilder;

/** Prices in any layout that suppliers use, as an Offers table. */
final class OfferArranger {

    /** In place of a currency that the sheet does not say; the supplier's own may say it. */
    private static final String NOT_SAID = "XXX";

    private static final List<BigDecimal> COUNTS =
            List.of(BigDecimal.TEN, BigDecimal.valueOf(100), BigDecimal.valueOf(1000));

    private static final Pattern PER =
            Pattern.compile("(?iu)/|\\b(?:per|pro|je|für|par|pour|le|la|por|al|a|ogni|in)\\b|[€$£]\\s*\\d");

    private final Grid grid;
    private final Grid head;
    private final List<FoundTable> tables;
    private final BookNames names;
    private final Map<String, String> answers;
    private final List<Arrangement.Open> open;
    private final Findings findings;
    private final Map<InputColumn, Integer> places = new HashMap<>();
    private final Map<String, String> saidTerms = new HashMap<>();
    private final Map<String, @Nullable String> saidUses = new HashMap<>();
    private final Map<InputColumn, Integer> terms = new LinkedHashMap<>();

    OfferArranger(
            Grid grid,
            Grid head,
            List<FoundTable> tables,
            BookNames names,
            ReadingSheet said,
            List<Arrangement.Open> open,
            Findings findings) {
        this.open = open;
        this.answers = said.answers(grid.sheet());
        said.columns(grid.sheet()).forEach((header, as) -> {
            if (as != null && Headings.term(as).isPresent()) {
                saidTerms.put(ListWords.key(header), as);
            } else if (as != null && ColumnUse.parse(as, PriceNote.NONE).isPresent()) {
                saidUses.put(header, as);
            }
        });
        this.grid = grid;
        this.head = head;
        this.tables = tables;
        this.names = names;
        this.findings = findings;
        OffersSheet.SCHEMA.columns().forEach(column -> places.put(column, places.size()));
    }

    /** A supplier, with the place that names them. */
    private record Named(String name, Origin origin) {}

    /** The prices of a sheet; empty if it holds none, or is understood as it is. */
    Optional<ArrangedPart> part() {
        if (grid.rows().isEmpty()) {
            return Optional.empty();
        }
        List<ListLayout> layouts = LayoutFinder.find(List.of(head));
        if (layouts.isEmpty()) {
            return Optional.empty();
        }
        ListLayout looked = layouts.get(0);
        ListLayout layout = looked.on(grid);
        ListColumns columns = withTerms(ListColumns.of(layout, new Mapping("", Map.of(), saidUses, Map.of())));
        return isUnderstood(columns) || !isOffers(columns) ? Optional.empty() : read(columns);
    }

    /**
     * Whether a sheet is a price list rather than another table: it has items, packs and prices, and more columns are
     * known as those of a list, or as terms of suppliers beside prices.
     */
    static boolean isPriceList(Grid head, FoundTable table) {
        if (table.columns().size() >= head.row(table.headerRow()).size()) {
            return false; // every header is one of the table's own
        }
        List<ListLayout> layouts = LayoutFinder.find(List.of(head));
        if (layouts.isEmpty()) {
            return false;
        }
        ListColumns columns = ListColumns.of(layouts.get(0), Mapping.empty(""));
        long known = table.schema().columns().stream().filter(table::has).count();
        long terms = columns.layout().headers().entrySet().stream()
                .filter(header -> !columns.uses().containsKey(header.getKey())
                        && Headings.term(header.getValue()).isPresent())
                .count();
        boolean packs = columns.of(Meaning.PACK).isPresent() || columns.prices().size() > 1;
        return packs
                && columns.of(Meaning.ITEM).isPresent()
                && !columns.prices().isEmpty()
                && columns.uses().size() + terms > known;
    }

    /** The columns of a list, those of terms and charges of suppliers apart. */
    private ListColumns withTerms(ListColumns columns) {
        columns.layout().headers().forEach((column, header) -> {
            if (!columns.uses().containsKey(column)) {
                Headings.term(saidTerms.getOrDefault(ListWords.key(header), header))
                        .filter(term -> !saidUses.containsKey(header))
                        .filter(term -> !terms.containsKey(term))
                        .ifPresent(term -> terms.put(term, column));
            }
        });
        return terms.isEmpty()
                ? columns
                : ListColumns.of(columns.layout(), new Mapping("", Map.of(), apart(columns), Map.of()));
    }

    private Map<String, @Nullable String> apart(ListColumns columns) {
        Map<String, @Nullable String> apart = new HashMap<>(saidUses);
        terms.values()
                .forEach(column ->
                        apart.put(columns.layout().headers().getOrDefault(column, ""), Meaning.NOTHING.word()));
        return apart;
    }

    /** What one header of prices says holds for the others, if it is the same wherever it is said. */
    private Mapping mapping(ListColumns columns) {
        Set<String> currencies = new HashSet<>();
        Set<String> bases = new HashSet<>();
        columns.prices().values().forEach(use -> {
            PriceNote note = use.note();
            CurrencySign sign = note.currency();
            if (sign != null && sign.isClear()) {
                currencies.add(sign.meanings().get(0).getCurrencyCode());
            }
            if (note.saysWhatFor()) {
                bases.add(note.pack() ? "pack" : String.valueOf(note.per()));
            }
        });
        Map<String, @Nullable String> all = new HashMap<>();
        all.put(Mapping.CURRENCY, currencies.size() == 1 ? currencies.iterator().next() : NOT_SAID);
        if (bases.size() == 1) {
            String basis = bases.iterator().next();
            all.put(Mapping.PRICE_PER, basis.startsWith("1 ") ? basis.substring(2) : basis);
        }
        all.putAll(answers);
        return new Mapping("", all, apart(columns), Map.of());
    }

    /** Whether our own reader sees all that is there: one column of prices, and all columns that are needed. */
    private boolean isUnderstood(ListColumns columns) {
        boolean whole = tables.stream()
                .anyMatch(table -> table.schema().equals(OffersSheet.SCHEMA)
                        && Arranger.isComplete(table)
                        && columns.uses().values().stream()
                                .allMatch(use -> Meanings.column(use.meaning())
                                        .filter(column -> !table.has(column))
                                        .isEmpty()));
        return whole && columns.prices().size() + columns.openPrices() <= 1;
    }

    private boolean isOffers(ListColumns columns) {
        boolean called = grid.title().equalsIgnoreCase(OffersSheet.SCHEMA.name())
                || OffersSheet.SCHEMA.otherNames().stream().anyMatch(grid.title()::equalsIgnoreCase)
                || tables.stream().anyMatch(table -> table.schema().equals(OffersSheet.SCHEMA));
        if (called || !grid.ofBook()) {
            return true;
        }
        boolean packs = columns.of(Meaning.PACK).isPresent() || columns.prices().size() > 1;
        boolean supplier = columns.of(Meaning.SUPPLIER).isPresent()
                || named(columns.layout()) != null
                || names.supplier(grid.sheet()).isPresent()
                || !sections(columns).isEmpty();
        return packs && supplier;
    }

    private Optional<ArrangedPart> read(ListColumns columns) {
        Mapping mapping = mapping(columns);
        Findings found = new Findings();
        ListReading reading = ListReading.of(List.of(columns.layout()), layout -> mapping, found);
        TitleFacts title = reading.facts();
        List<ListLine> lines = reading.lines();
        List<Question> questions = new ArrayList<>(reading.tables().get(0).questions());
        if (lines.isEmpty() && questions.isEmpty()) {
            return Optional.empty();
        }
        askAboutAmounts(columns, questions);
        findings.addAll(found.list());
        for (Question question : questions) {
            open.add(new Arrangement.Open(question.where(), asked(question), question.text(), question.choices()));
            findings.error(
                    question.where(),
                    ArrangeMessages.question(
                            question.text(), QuestionMessages.choices(question.choices()), asked(question)));
        }
        return Optional.of(part(columns, lines, title));
    }

    /** What the answer to a question is an answer to, as it is written on the sheet Reading. */
    private static String asked(Question question) {
        return question.field().equals(Mapping.COLUMNS) ? question.key() : question.field();
    }

    /** Asks about headers such as {@code Price 100 kg}: for 100 kg, or from 100 kg on? */
    private void askAboutAmounts(ListColumns columns, List<Question> questions) {
        columns.prices().forEach((column, use) -> {
            String header = columns.layout().headers().getOrDefault(column, "");
            Quantity per = use.note().per();
            if (per != null
                    && per.amount().compareTo(BigDecimal.ONE) != 0
                    && !PER.matcher(header).find()) {
                questions.add(new Question(
                        Mapping.COLUMNS,
                        header,
                        grid.origin(columns.layout().lastHeader(), column),
                        ArrangeMessages.forOrFrom(header, per.toString()),
                        List.of("price from " + per, "Price per " + per)));
            }
        });
    }

    // suppliers

    private @Nullable Named named(ListLayout layout) {
        for (int row : grid.rows().between(-1, layout.firstHeader())) {
            for (Map.Entry<Integer, Cell> cell : grid.row(row).entrySet()) {
                String text = cell.getValue().text();
                int colon = text.indexOf(':');
                boolean label = ListWords.is("supplier", colon > 0 ? text.substring(0, colon) : text);
                Map.Entry<Integer, Cell> next = grid.row(row).higherEntry(cell.getKey());
                String after = colon > 0
                        ? text.substring(colon + 1).strip()
                        : next == null ? "" : next.getValue().text();
                if (label && !after.isEmpty()) {
                    return new Named(names.supplier(after).orElse(after), grid.origin(row, cell.getKey()));
                }
                List<String> inside = SheetCells.isText(cell.getValue()) ? names.suppliersIn(text) : List.of();
                if (inside.size() == 1) {
                    return new Named(inside.get(0), grid.origin(row, cell.getKey()));
                }
            }
        }
        return null;
    }

    /** Rows that only name a supplier, whose prices follow. */
    private NavigableMap<Integer, Named> sections(ListColumns columns) {
        NavigableMap<Integer, Named> sections = new TreeMap<>();
        for (int row : grid.rows().below(columns.layout().lastHeader())) {
            NavigableMap<Integer, Cell> cells = grid.row(row);
            if (cells.size() != 1) {
                continue;
            }
            int column = cells.firstKey();
            String text = cells.firstEntry().getValue().text();
            int colon = text.indexOf(':');
            boolean label = colon > 0 && ListWords.is("supplier", text.substring(0, colon));
            Optional<String> name = names.supplier(text)
                    .or(() -> label ? Optional.of(text.substring(colon + 1).strip()) : Optional.empty());
            name.ifPresent(found ->
                    sections.put(row, new Named(names.supplier(found).orElse(found), grid.origin(row, column))));
        }
        return sections;
    }

    private @Nullable Named ofSheet(ListLayout layout) {
        Named inTitle = named(layout);
        if (inTitle != null) {
            return inTitle;
        }
        Origin sheet = grid.origin();
        Optional<String> known = names.supplier(grid.sheet());
        if (known.isPresent()) {
            return new Named(known.get(), sheet);
        }
        boolean general = grid.sheet().isBlank()
                || SheetWords.sheet(grid.sheet()).isPresent()
                || OffersSheet.SCHEMA.name().equalsIgnoreCase(grid.sheet())
                || OffersSheet.SCHEMA.otherNames().stream().anyMatch(grid.sheet()::equalsIgnoreCase);
        List<String> inside = names.suppliersIn(grid.sheet());
        return !general && inside.size() == 1 ? new Named(inside.get(0), sheet) : null;
    }

    // the table

    private ArrangedPart part(ListColumns columns, List<ListLine> lines, TitleFacts title) {
        ListLayout layout = columns.layout();
        GridBuilder builder = new GridBuilder(grid, OffersSheet.SCHEMA.name());
        int first = columns.uses().keySet().stream().min(Integer::compare).orElse(0);
        builder.row(grid.origin(layout.lastHeader(), first));
        OffersSheet.SCHEMA.columns().forEach(column -> {
            Integer theirs = terms.get(column);
            String header = theirs == null ? column.header() : layout.headers().getOrDefault(theirs, column.header());
            builder.said(place(column), Cell.text(header), header(columns, column));
        });
        NavigableMap<Integer, Named> sections = sections(columns);
        Named sheet = ofSheet(layout);
        BitSet rows = new BitSet();
        rows.set(layout.firstHeader(), layout.lastHeader() + 1);
        boolean unnamed = false;
        for (ListLine line : lines) {
            int row = row(line);
            rows.set(Math.max(row, 0));
            if (!line.isPriced()) {
                continue;
            }
            builder.row(line.origin());
            Map.Entry<Integer, Named> section = row < 0 ? null : sections.floorEntry(row);
            Named named = !line.listed().supplier().isEmpty()
                    ? new Named(line.listed().supplier(), place(columns, line, Meaning.SUPPLIER))
                    : section != null ? section.getValue() : sheet;
            unnamed |= named == null;
            if (named != null) {
                builder.said(place(OffersSheet.SUPPLIER), Cell.text(named.name()), named.origin());
                line(builder, columns, line, title);
                terms.forEach((term, column) -> term(builder, row, term, column));
            }
        }
        sections.keySet().forEach(rows::set);
        if (unnamed) {
            findings.error(grid.origin(layout.lastHeader(), first), ArrangeMessages.noSupplier());
        }
        BitSet used = new BitSet();
        columns.uses().keySet().forEach(used::set);
        terms.values().forEach(used::set);
        Map<Integer, String> uses = new HashMap<>();
        columns.uses().forEach((column, use) -> uses.put(column, Meanings.words(use)));
        terms.forEach((term, column) -> uses.put(column, term.header()));
        return new ArrangedPart(grid, OffersSheet.SCHEMA, builder.grid(), layout.lastHeader(), rows, used, uses);
    }

    private int place(InputColumn column) {
        return places.getOrDefault(column, 0);
    }

    private static int row(ListLine line) {
        return line.origin().row();
    }

    private Origin header(ListColumns columns, InputColumn column) {
        Integer theirs = Meanings.of(column).flatMap(columns::of).orElseGet(() -> terms.get(column));
        return theirs == null
                ? grid.origin(
                        columns.layout().lastHeader(),
                        columns.layout().headers().keySet().iterator().next())
                : grid.origin(columns.layout().lastHeader(), theirs);
    }

    private Origin place(ListColumns columns, ListLine line, Meaning meaning) {
        int row = row(line);
        Integer column = columns.of(meaning).orElse(null);
        return row < 0 || column == null ? line.origin() : SheetCells.origin(grid, row, column);
    }

    private Cell cell(ListColumns columns, ListLine line, Meaning meaning) {
        int row = row(line);
        Integer column = columns.of(meaning).orElse(null);
        return row < 0 || column == null ? Cell.BLANK : SheetCells.merged(grid, row, column);
    }

    private void line(GridBuilder builder, ListColumns columns, ListLine line, TitleFacts title) {
        builder.said(place(OffersSheet.ITEM), Cell.text(line.item()), place(columns, line, Meaning.ITEM));
        if (!line.listed().inci().isEmpty()) {
            builder.said(place(OffersSheet.INCI), Cell.text(line.listed().inci()), place(columns, line, Meaning.INCI));
        }
        number(
                builder,
                columns,
                line,
                OffersSheet.PACK_SIZE,
                Meaning.PACK,
                line.pack().amount());
        builder.said(
                place(OffersSheet.PACK_UNIT),
                Cell.text(line.pack().measure().symbol()),
                place(columns, line, Meaning.PACK_UNIT));
        Offer.PriceBreak price = line.price();
        if (price != null) {
            Figure from = price.from();
            if (from != null) {
                number(builder, columns, line, OffersSheet.FROM_QUANTITY, Meaning.FROM, from.value());
            }
            price(builder, line, price);
        }
        if (line.currency() != null && !line.currency().getCurrencyCode().equals(NOT_SAID)) {
            builder.said(
                    place(OffersSheet.CURRENCY_OF_PRICE),
                    Cell.text(line.currency().getCurrencyCode()),
                    place(columns, line, Meaning.CURRENCY));
        }
        figure(
                builder,
                columns,
                line,
                OffersSheet.MINIMUM_ORDER,
                Meaning.MINIMUM,
                line.terms().minimumOrder());
        figure(
                builder,
                columns,
                line,
                OffersSheet.ORDER_MULTIPLE,
                Meaning.MULTIPLE,
                line.terms().orderMultiple());
        Figure duty = line.terms().duty();
        if (duty != null) {
            builder.said(
                    place(OffersSheet.DUTY),
                    Cell.number(duty.value().movePointRight(2)),
                    place(columns, line, Meaning.DUTY));
        }
        date(builder, columns, line, OffersSheet.QUOTED_ON, Meaning.QUOTED_ON, line.quotedOn(), title.quotedOn());
        date(
                builder,
                columns,
                line,
                OffersSheet.VALID_UNTIL,
                Meaning.VALID_UNTIL,
                line.validity().validUntil(),
                title.validUntil());
    }

    /** A term or charge of the supplier, as it was typed. */
    private void term(GridBuilder builder, int row, InputColumn term, int column) {
        if (row >= 0) {
            builder.typed(place(term), SheetCells.merged(grid, row, column), SheetCells.origin(grid, row, column));
        }
    }

    private void figure(
            GridBuilder builder,
            ListColumns columns,
            ListLine line,
            InputColumn column,
            Meaning meaning,
            @Nullable Figure figure) {
        if (figure != null) {
            number(builder, columns, line, column, meaning, figure.value());
        }
    }

    /** A number: live if it is what its cell holds. */
    private void number(
            GridBuilder builder,
            ListColumns columns,
            ListLine line,
            InputColumn column,
            Meaning meaning,
            BigDecimal value) {
        Cell typed = cell(columns, line, meaning);
        BigDecimal number = typed.number();
        boolean same = number != null && number.compareTo(value) == 0;
        Origin place = place(columns, line, meaning);
        if (same) {
            builder.typed(place(column), Cell.number(value), place);
        } else if (value.signum() != 0 || meaning != Meaning.FROM) {
            builder.said(place(column), Cell.number(value), place);
        }
    }

    /** A price, in the unit that its cell is in if that can be said, so that it stays live. */
    private void price(GridBuilder builder, ListLine line, Offer.PriceBreak price) {
        BigDecimal value = price.price().value();
        Measure per = price.per();
        String words = per == null ? "pack" : per.symbol();
        int row = row(line);
        Cell cell = row < 0 ? Cell.BLANK : grid.at(row, line.origin().column());
        BigDecimal number = cell.number();
        Cell shown = Cell.number(value);
        boolean live = number != null && number.compareTo(value) == 0;
        if (number != null
                && !live
                && per == Measure.KG
                && number.multiply(BigDecimal.TEN).compareTo(value) == 0) {
            words = "100 g";
            shown = Cell.number(number);
            live = true;
        } else if (number != null && !live && per != null) {
            for (BigDecimal count : COUNTS) {
                if (value.multiply(count).compareTo(number) == 0) {
                    words = count.toPlainString() + " " + per.symbol();
                    shown = Cell.number(number);
                    live = true;
                }
            }
        }
        builder.said(place(OffersSheet.PRICE_PER), Cell.text(words), line.origin());
        if (live) {
            builder.typed(place(OffersSheet.PRICE), shown, line.origin());
        } else {
            builder.said(place(OffersSheet.PRICE), shown, line.origin());
        }
    }

    private void date(
            GridBuilder builder,
            ListColumns columns,
            ListLine line,
            InputColumn column,
            Meaning meaning,
            @Nullable LocalDate own,
            @Nullable LocalDate ofTitle) {
        LocalDate day = own == null ? ofTitle : own;
        if (day == null) {
            return;
        }
        boolean same = day.equals(cell(columns, line, meaning).date());
        Origin place = place(columns, line, meaning);
        if (same) {
            builder.typed(place(column), Cell.date(day), place);
        } else {
            builder.said(place(column), Cell.date(day), place);
        }
    }
}
