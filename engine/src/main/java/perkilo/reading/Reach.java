package perkilo.reading;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Gaps.Gap;
import perkilo.model.Gaps.Kind;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.names.Spelling;
import perkilo.offers.Offer;
import perkilo.offers.PackOffered;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.table.Amount;
import perkilo.reading.table.ColumnNames;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.schema.ActualsSheet;
import perkilo.schema.BatchesSheet;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.DaysOffSheet;
import perkilo.schema.DemandSheet;
import perkilo.schema.FormulaSheet;
import perkilo.schema.InputColumn;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.RatesSheet;
import perkilo.schema.RunsSheet;
import perkilo.schema.ScenariosSheet;
import perkilo.schema.SettingsSheet;
import perkilo.schema.SheetSchema;
import perkilo.schema.StockSheet;
import perkilo.schema.SuppliersSheet;
import perkilo.units.Measure;

/**
 * How far each error of a book reaches: takes out what depends on a cell with an error, so that everything that is left
 * can be used.
 *
 * <p>An error is judged by the table, the row and the column that hold its cell. Where that does not tell what depends
 * on it, everything does.
 */
final class Reach {

    private static final Set<InputColumn> ONLY_ORDERS = Set.of(
            SettingsSheet.HOLDING,
            SettingsSheet.COST_PER_ORDER,
            SettingsSheet.MAKING_LEAD_DAYS,
            SettingsSheet.CASH_PER_MONTH,
            SettingsSheet.CASH_TOTAL);
    private static final Set<InputColumn> ONLY_WORK = Set.of(SettingsSheet.LABOUR_RATE, SettingsSheet.OVERHEAD);
    private static final Set<InputColumn> PLACE_IN_FORMULA = Set.of(FormulaSheet.PHASE, FormulaSheet.PHASE_TEMPERATURE);
    private static final Set<InputColumn> KIND_OF_FORMULA = Set.of(BatchesSheet.FINAL_PH, BatchesSheet.KIND);
    private static final Set<InputColumn> COST_OF_MATERIAL = Set.of(
            MaterialsSheet.MATERIAL,
            MaterialsSheet.INCI,
            MaterialsSheet.DENSITY,
            MaterialsSheet.HOUSE_PRICE,
            MaterialsSheet.HANDLING_LOSS,
            MaterialsSheet.SHELF_LIFE);

    private final Book book;
    private final Tables tables;
    private final CellPlaces places;
    private final ColumnNames settings = new ColumnNames(SettingsSheet.SETTINGS);
    private final List<Gap> gaps = new ArrayList<>();
    private final Set<String> suppliersOut = new HashSet<>();
    private final Set<PackOffered> packsOut = new HashSet<>();
    private final Set<List<String>> itemsOfSuppliersOut = new HashSet<>();
    private final Set<CurrencyUnit> currenciesOut = new HashSet<>();
    private boolean allOffersOut;
    private boolean allForeignOut;

    /** Nothing of a formula, or all but some of its materials. */
    private final Map<String, Set<String>> linesOut = new HashMap<>();

    private final Set<String> wholeFormulas = new HashSet<>();

    Reach(Book book, Tables tables) {
        this.book = book;
        this.tables = tables;
        this.places = new CellPlaces(tables);
    }

    /** The book without what depends on an error; it knows what was taken out. */
    Book without(List<Finding> findings) {
        List<Finding> errors = findings.stream().filter(Finding::isError).toList();
        if (errors.isEmpty()) {
            return book;
        }
        for (Finding error : errors) {
            List<CellPlaces.Place> found = places.of(error.origin());
            if (found.isEmpty()) {
                everything(error.origin());
            }
            found.forEach(place -> judge(place, error.origin()));
        }
        List<Offer> offers = book.offers().stream().filter(this::isKept).toList();
        return book.withFormulas(formulas())
                .withOffers(offers)
                .withSettings(withoutReports(book.settings()))
                .withGaps(book.gaps().and(gaps));
    }

    private void judge(CellPlaces.Place place, Origin origin) {
        if (place.isHeader()) {
            ofHeader(place.table(), place.column(), origin);
            return;
        }
        for (TableRow row : place.rows()) {
            ofRow(row, place.column(), origin);
        }
    }

    private void ofHeader(FoundTable table, @Nullable InputColumn column, Origin origin) {
        SheetSchema schema = table.schema();
        List<TableRow> rows = table.rows(new Findings());
        if (schema.equals(OffersSheet.SCHEMA)) {
            // a column of the list is not understood, so none of its prices is sure
            rows.forEach(row -> offerRow(row, column, origin));
            allOffersOut |= rows.isEmpty();
        } else if (schema.equals(FormulaSheet.SCHEMA)) {
            rows.forEach(row -> formulaAsAWhole(formulaOf(row), origin));
        } else if (schema.equals(SettingsSheet.SCHEMA)) {
            everything(origin);
        } else {
            rows.forEach(row -> ofRow(row, column, origin));
        }
    }

    private void ofRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        SheetSchema schema = row.table().schema();
        if (schema.equals(OffersSheet.SCHEMA)) {
            offerRow(row, column, origin);
        } else if (schema.equals(FormulaSheet.SCHEMA)) {
            formulaRow(row, column, origin);
        } else if (schema.equals(MaterialsSheet.SCHEMA)) {
            if (MaterialsSheet.SAFETY_STOCK.equals(column)) {
                add(Kind.STOCK, row, MaterialsSheet.MATERIAL, origin);
                return;
            }
            boolean cost = column == null || COST_OF_MATERIAL.contains(column);
            add(cost ? Kind.ITEM : Kind.FACT, row, MaterialsSheet.MATERIAL, origin);
        } else if (schema.equals(ProductsSheet.SCHEMA)) {
            productRow(row, column, origin);
        } else if (schema.equals(ComponentsSheet.SCHEMA)) {
            componentRow(row, column, origin);
        } else if (schema.equals(BatchesSheet.SCHEMA)) {
            batchRow(row, column, origin);
        } else if (schema.equals(SuppliersSheet.SCHEMA)) {
            supplierRow(row, column, origin);
        } else if (schema.equals(RatesSheet.SCHEMA)) {
            rateRow(row);
        } else if (schema.equals(RunsSheet.SCHEMA)) {
            runRow(row, origin);
        } else if (schema.equals(DemandSheet.SCHEMA)) {
            gaps.add(new Gap(Kind.DEMAND, Gaps.place(row.origin()), row.text(DemandSheet.PRODUCT), origin));
        } else if (schema.equals(StockSheet.SCHEMA)) {
            add(Kind.STOCK, row, StockSheet.ITEM, origin);
        } else if (schema.equals(DaysOffSheet.SCHEMA)) {
            add(Kind.FACT, row, DaysOffSheet.DAY, origin);
        } else if (schema.equals(SettingsSheet.SCHEMA)) {
            setting(row, origin);
        } else if (!isNoPartOfAnyCost(schema)) {
            everything(origin);
        }
    }

    /** A product; without its days to make, only its demand cannot be planned. */
    private void productRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        if (!ProductsSheet.LEAD_DAYS.equals(column)) {
            add(Kind.PRODUCT, row, ProductsSheet.PRODUCT, origin);
            return;
        }
        String key = Names.key(row.text(ProductsSheet.PRODUCT));
        book.demand().stream()
                .filter(demand -> Names.key(demand.product()).equals(key))
                .forEach(demand ->
                        gaps.add(new Gap(Kind.DEMAND, Gaps.place(demand.origin()), demand.product(), origin)));
    }

    /** Whether no cost depends on a table; what is said of it stands beside the costs. */
    private static boolean isNoPartOfAnyCost(SheetSchema schema) {
        return schema.equals(ScenariosSheet.SCHEMA) || schema.equals(ActualsSheet.SCHEMA);
    }

    /** The runs of a row, or, where none was read, what the row says. */
    private void runRow(TableRow row, Origin origin) {
        List<Origin> cells = List.of(row.origin(RunsSheet.PRODUCT), row.origin(RunsSheet.FORMULA), row.origin());
        List<Run> runs =
                book.runs().stream().filter(run -> cells.contains(run.origin())).toList();
        runs.forEach(run -> gaps.add(new Gap(Kind.RUN, Gaps.place(run.origin()), Gaps.name(run), origin)));
        if (runs.isEmpty()) {
            String name = row.isBlank(RunsSheet.PRODUCT) ? row.text(RunsSheet.FORMULA) : row.text(RunsSheet.PRODUCT);
            gaps.add(new Gap(Kind.RUN, "", name, origin));
        }
    }

    private void setting(TableRow row, Origin origin) {
        InputColumn setting = settings.find(row.text(SettingsSheet.SETTING))
                .map(ColumnNames.Named::column)
                .orElse(null);
        if (setting == null) {
            everything(origin);
        } else if (ONLY_WORK.contains(setting)) {
            gaps.add(new Gap(Kind.WORK, "", setting.header(), origin));
        } else if (ONLY_ORDERS.contains(setting)) {
            gaps.add(new Gap(Kind.ORDERS, "", setting.header(), origin));
        } else if (setting.equals(SettingsSheet.PROCESS_WATER)) {
            book.materials().values().stream()
                    .filter(one -> one.isWater() && one.housePrice() == null)
                    .forEach(one -> add(Kind.ITEM, one.name(), one.name(), origin));
        } else if (!setting.equals(SettingsSheet.REPORT_CURRENCIES)
                && !setting.equals(SettingsSheet.LEAST_SAVING)
                && !SettingsSheet.BUYER.contains(setting)
                && !setting.equals(SettingsSheet.SENSITIVITY)
                && !setting.equals(SettingsSheet.HORIZON_DAYS)
                && !SettingsSheet.TESTS.contains(setting)) {
            everything(origin);
        }
    }

    private void offerRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        String item = row.text(OffersSheet.ITEM);
        String supplier = row.text(OffersSheet.SUPPLIER);
        add(Kind.OFFER, item, item, origin);
        Amount size = row.amount(OffersSheet.PACK_SIZE);
        Measure unit = QuantityCells.unit(row, OffersSheet.PACK_UNIT, OffersSheet.PACK_SIZE, size);
        if (size == null
                || unit == null
                || (column == null && !row.table().grid().sheet().isEmpty())) {
            itemsOfSuppliersOut.add(List.of(Names.key(supplier), Names.key(item)));
            return;
        }
        BigDecimal holds =
                QuantityCells.in(row, OffersSheet.PACK_UNIT, size, unit).value();
        packsOut.add(PackOffered.of(supplier, item, holds, unit));
    }

    private void supplierRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        String name = row.text(SuppliersSheet.SUPPLIER);
        if (SuppliersSheet.LEAD_TIME.equals(column)) {
            add(Kind.LEAD_TIME, name, name, origin);
            return;
        }
        if (column != null && SuppliersSheet.OF_PURCHASE_ORDERS.contains(column)) {
            return;
        }
        String key = Names.key(name);
        suppliersOut.add(key);
        book.offers().stream()
                .filter(offer -> Names.key(offer.supplier()).equals(key))
                .forEach(offer -> add(Kind.OFFER, offer.item(), offer.item(), origin));
    }

    /** A rate that cannot be read may be the newest of its pair, so neither of its currencies can be converted. */
    private void rateRow(TableRow row) {
        CurrencyUnit home = book.settings().home();
        for (InputColumn column : List.of(RatesSheet.FROM, RatesSheet.TO)) {
            CurrencySign sign = row.currency(column);
            if (sign == null) {
                allForeignOut = true;
            } else {
                sign.meanings().stream().filter(one -> !one.equals(home)).forEach(currenciesOut::add);
            }
        }
    }

    private void batchRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        String name = row.text(BatchesSheet.FORMULA);
        if (column != null && KIND_OF_FORMULA.contains(column)) {
            add(Kind.FACT, name, name, origin);
        } else if (book.formula(name).isPresent() || !BatchesSheet.FORMULA.equals(column)) {
            add(Kind.MAKING, name, name, origin);
        } else {
            Set<String> made = keys(BatchesSheet.SCHEMA, BatchesSheet.FORMULA);
            meant(name, book.formulas().values().stream().map(Formula::name).toList(), made)
                    .forEach(one -> add(Kind.MAKING, one, one, origin));
        }
    }

    private void componentRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        String component = row.text(ComponentsSheet.COMPONENT);
        String product = row.text(ComponentsSheet.PRODUCT);
        String what = component.isEmpty() ? origin.where() : component;
        if (ComponentsSheet.SAFETY_STOCK.equals(column)) {
            add(Kind.STOCK, component, component, origin);
            return;
        }
        boolean offered = !book.offersFor(component).isEmpty();
        if (ComponentsSheet.COMPONENT.equals(column) && !component.isEmpty() && !offered) {
            add(Kind.NO_OFFER, component, component, origin);
        } else if (!ComponentsSheet.PRODUCT.equals(column)
                || book.product(product).isPresent()) {
            add(Kind.COMPONENT, product, what, origin);
        } else {
            Set<String> packed = keys(ComponentsSheet.SCHEMA, ComponentsSheet.PRODUCT);
            meant(product, book.products().values().stream().map(Product::name).toList(), packed)
                    .forEach(one -> add(Kind.COMPONENT, one, what, origin));
        }
    }

    /**
     * The things that an unknown name may mean: the one that is spelled alike; else all that have no row of their own.
     *
     * @param known the names of the things
     * @param withRow those that have a row, by {@link Names#key}
     */
    private static List<String> meant(String name, List<String> known, Set<String> withRow) {
        Optional<String> near = Spelling.nearest(name, known);
        return near.isPresent()
                ? List.of(near.get())
                : known.stream()
                        .filter(one -> !withRow.contains(Names.key(one)))
                        .toList();
    }

    private Set<String> keys(SheetSchema schema, InputColumn column) {
        Set<String> keys = new HashSet<>();
        tables.rows(schema, new Findings()).forEach(row -> keys.add(Names.key(row.text(column))));
        return keys;
    }

    private void formulaRow(TableRow row, @Nullable InputColumn column, Origin origin) {
        String formula = formulaOf(row);
        String material = row.text(FormulaSheet.MATERIAL);
        if (column != null && PLACE_IN_FORMULA.contains(column)) {
            add(Kind.FACT, formula, formula, origin);
        } else if (FormulaSheet.MATERIAL.equals(column) && !material.isEmpty()) {
            add(Kind.NO_OFFER, material, material, origin);
        } else if ((FormulaSheet.LEVEL_OF.equals(column) && isUnreadable(row)) || material.isEmpty()) {
            linesOut.computeIfAbsent(Names.key(formula), any -> new HashSet<>()).add(Names.key(material));
            add(Kind.RECIPE, formula, material.isEmpty() ? origin.where() : material, origin);
        } else {
            formulaAsAWhole(formula, origin);
        }
    }

    /** Whether the level of a line is neither a number nor the balance. */
    private boolean isUnreadable(TableRow row) {
        return book.formula(formulaOf(row))
                .map(formula -> formula.lines().stream()
                        .noneMatch(line -> line.origin().equals(row.origin(FormulaSheet.LEVEL_OF))))
                .orElse(true);
    }

    private void formulaAsAWhole(String formula, Origin origin) {
        wholeFormulas.add(Names.key(formula));
        add(Kind.RECIPE, formula, formula, origin);
    }

    /** The formula of a row: a blank Formula cell continues the formula above. */
    private static String formulaOf(TableRow row) {
        FoundTable table = row.table();
        for (int number = row.number(); number > table.headerRow(); number--) {
            String typed = table.row(number, new Findings()).text(FormulaSheet.FORMULA);
            if (!typed.isEmpty()) {
                return typed;
            }
        }
        return table.grid().title().strip();
    }

    /** The formulas without what is not known of them; a balance is unknown if any other level is. */
    private Map<String, Formula> formulas() {
        Map<String, Formula> all = new LinkedHashMap<>();
        book.formulas().forEach((key, formula) -> {
            Set<String> out = linesOut.getOrDefault(key, Set.of());
            if (wholeFormulas.contains(key)) {
                all.put(key, new Formula(formula.name(), List.of(), formula.batching(), formula.origin()));
            } else if (out.isEmpty()) {
                all.put(key, formula);
            } else {
                all.put(key, withoutLines(formula, out));
            }
        });
        return all;
    }

    private Formula withoutLines(Formula formula, Set<String> out) {
        List<Formula.Line> kept = new ArrayList<>();
        Set<String> balances = new HashSet<>();
        for (Formula.Line line : formula.lines()) {
            if (line.isBalance()) {
                balances.add(Names.key(line.material()));
                add(Kind.RECIPE, formula.name(), line.material(), line.origin());
            }
        }
        for (Formula.Line line : formula.lines()) {
            String key = Names.key(line.material());
            if (!out.contains(key) && !balances.contains(key)) {
                kept.add(line);
            }
        }
        return new Formula(formula.name(), kept, formula.batching(), formula.origin());
    }

    private boolean isKept(Offer offer) {
        boolean kept = !allOffersOut
                && !suppliersOut.contains(Names.key(offer.supplier()))
                && !packsOut.contains(PackOffered.of(offer))
                && !itemsOfSuppliersOut.contains(List.of(Names.key(offer.supplier()), Names.key(offer.item())))
                && isConvertible(offer.currency())
                && book.supplier(offer.supplier())
                        .map(Supplier::currency)
                        .map(this::isConvertible)
                        .orElse(true);
        if (!isConvertible(offer.currency())) {
            add(Kind.NO_RATE, offer.item(), offer.item(), offer.origin());
        } else if (!kept) {
            add(Kind.OFFER, offer.item(), offer.item(), offer.origin());
        }
        return kept;
    }

    private boolean isConvertible(CurrencyUnit currency) {
        return currency.equals(book.settings().home()) || !(allForeignOut || currenciesOut.contains(currency));
    }

    private Settings withoutReports(Settings all) {
        List<CurrencyUnit> reports = all.reportCurrencies().stream()
                .filter(this::isConvertible)
                .filter(one ->
                        book.rates().on(all.costingDate(), all.home(), one).isPresent())
                .toList();
        return new Settings(
                new Settings.Currencies(all.home(), reports, all.conversionMargin()),
                all.costingDate(),
                all.buying(),
                all.making(),
                all.cashLimits(),
                all.leastSaving(),
                all.testing(),
                all.buyer(),
                all.outlook(),
                all.ordering());
    }

    private void everything(Origin origin) {
        gaps.add(new Gap(Kind.EVERYTHING, "", origin.where(), origin));
    }

    private void add(Kind kind, TableRow row, InputColumn name, Origin origin) {
        add(kind, row.text(name), row.text(name), origin);
    }

    private void add(Kind kind, String name, String what, Origin origin) {
        gaps.add(new Gap(kind, Names.key(name), what, origin));
    }
}
