package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Gaps;
import perkilo.model.Gaps.Gap;
import perkilo.model.Material;
import perkilo.model.Past;
import perkilo.model.Product;
import perkilo.model.Settings;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.arrange.Arrangement;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableRow;
import perkilo.reading.table.UnitText;
import perkilo.schema.BatchesSheet;
import perkilo.schema.ComponentsSheet;
import perkilo.schema.MaterialsSheet;
import perkilo.schema.OffersSheet;
import perkilo.schema.ProductsSheet;
import perkilo.schema.SettingsSheet;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;

/** Puts a book together from its tables: each kind by its own reader, then the checks that need several of them. */
final class BookAssembler {

    private final Tables tables;
    private final List<DatedRate> fileRates;
    private final Findings findings;
    private final Origin file;
    private final List<String> unrecognised;
    private final List<Arrangement.MaterialAnswer> answers;
    private final List<Arrangement.Open> open = new ArrayList<>();
    private final LookAlikeCheck lookAlikes;
    private final PricesRead prices;
    private final PassedOver passedOver = new PassedOver();

    /**
     * Ready to assemble.
     *
     * @param fileRates the rates of a file
     * @param file the workbook as a whole
     * @param unrecognised the names of its sheets that hold no table
     * @param answers which materials lines of formulas mean, as a person said
     * @param prices which prices of price lists are read
     */
    BookAssembler(
            Tables tables,
            List<DatedRate> fileRates,
            Findings findings,
            Origin file,
            List<String> unrecognised,
            List<Arrangement.MaterialAnswer> answers,
            PricesRead prices) {
        this.prices = prices;
        this.tables = tables;
        this.fileRates = fileRates;
        this.findings = findings;
        this.file = file;
        this.unrecognised = List.copyOf(unrecognised);
        this.answers = List.copyOf(answers);
        this.lookAlikes = new LookAlikeCheck(tables, findings);
    }

    Book assemble(@Nullable LocalDate costingDate, LocalDate today) {
        SettingRows rows = new SettingRows(tables, findings);
        SupplierBook suppliers = new SupplierBook(tables, findings);
        OfferRowReader offerReader = new OfferRowReader(new OfferCurrency(suppliers.rows(), findings), findings);
        ChargesOnOffers charges = new ChargesOnOffers(findings);
        NamedItems named = NamedItems.of(tables, answers);
        List<OfferRow> offerRows = offerRows(offerReader, charges, named);
        CurrencyUnit home = home(rows, offerRows);
        Settings settings = rows.settings(home, costingDate(rows, costingDate, today));
        OfferBook quotes = new OfferBook(settings, offerReader.unpriced(), findings);
        List<Offer> offers = quotes.offers(used(offerRows, named));
        Map<String, Batching> batching = batching(home);
        Map<String, Formula> formulas = new FormulaTables(batching, findings).read(tables);
        Map<String, Product> products = products(home);
        Map<String, Material> materials = materials(home);
        Set<String> described = new LinkedHashSet<>(materials.keySet());
        InciLinks links = InciLinks.of(tables, materials, answers, findings);
        formulas = links.in(formulas);
        open.addAll(links.open());
        addFromFormulas(materials, formulas);
        PlanRows plan = new PlanRows(tables, findings);
        List<DatedRate> typed = new RateRows(findings).read(tables);
        Book book = new Book(
                        settings,
                        suppliers.suppliers(offers, charges),
                        offers,
                        materials,
                        formulas,
                        products,
                        plan.runs(),
                        plan.demand(),
                        plan.stock(),
                        new ExchangeRates(rates(typed, settings)))
                .withScenarios(new ScenarioRows(tables, findings).lines())
                .withPast(new Past(all(typed, fileRates), quotes.quotes(), new ActualRows(tables, findings).rows()));
        checkAnything(book);
        if (Currencies.isUnknown(home)) {
            Gap everything = new Gap(Gaps.Kind.EVERYTHING, "", SettingsSheet.HOME_CURRENCY.header(), file);
            book = book.withGaps(book.gaps().and(List.of(everything)));
        }
        Origin reports = rows.origin(SettingsSheet.REPORT_CURRENCIES).orElse(file);
        WithdrawnPacks withdrawn = new WithdrawnPacks(offerRows, passedOver.listed(), settings.costingDate());
        new UnknownSuppliers(book, tables, findings).run();
        return new BookChecks(book, described, links, tables, lookAlikes, withdrawn, reports, findings).run();
    }

    /** What a person must say before the book is complete. */
    List<Arrangement.Open> open() {
        return List.copyOf(open);
    }

    private LocalDate costingDate(SettingRows rows, @Nullable LocalDate given, LocalDate today) {
        LocalDate typed = rows.costingDate();
        if (given != null) {
            return given;
        }
        if (typed != null) {
            return typed;
        }
        findings.note(file, SettingMessages.noCostingDate(today));
        return today;
    }

    private CurrencyUnit home(SettingRows rows, List<OfferRow> offers) {
        CurrencyUnit typed = rows.home();
        if (typed != null) {
            return typed;
        }
        Set<CurrencyUnit> used = new LinkedHashSet<>();
        offers.stream()
                .filter(offer -> offer.row().table().grid().ofBook())
                .forEach(offer -> used.add(offer.offer().currency()));
        if (used.isEmpty()) {
            offers.forEach(offer -> used.add(offer.offer().currency()));
        }
        if (used.isEmpty()) {
            ofHousePrices().forEach(used::add);
        }
        if (used.size() == 1 && !rows.hasHome()) {
            return used.iterator().next();
        }
        boolean follows =
                rows.hasHome() || (used.isEmpty() && findings.list().stream().anyMatch(this::isOfOffers));
        if (!follows) {
            findings.error(file, used.isEmpty() ? SettingMessages.noHome() : SettingMessages.noHome(codes(used)));
        }
        return Currencies.UNKNOWN;
    }

    /** The currencies that headers of house prices say. */
    private Set<CurrencyUnit> ofHousePrices() {
        Set<CurrencyUnit> said = new LinkedHashSet<>();
        for (FoundTable table : tables.of(MaterialsSheet.SCHEMA)) {
            FoundTable.Place place = table.columns().get(MaterialsSheet.HOUSE_PRICE);
            CurrencySign sign = place == null
                    ? null
                    : UnitText.parse(place.unit()).map(UnitText::currency).orElse(null);
            if (sign != null && sign.isClear()) {
                said.add(sign.meanings().get(0));
            }
        }
        return said;
    }

    /** Whether a finding is an error in an offer: an offer without errors would have shown the currency. */
    private boolean isOfOffers(Finding finding) {
        return finding.isError()
                && tables.of(OffersSheet.SCHEMA).stream()
                        .map(table -> table.grid())
                        .anyMatch(grid -> grid.file().equals(finding.origin().file())
                                && grid.sheet().equals(finding.origin().sheet()));
    }

    private static List<String> codes(Set<CurrencyUnit> currencies) {
        return currencies.stream().map(CurrencyUnit::getCurrencyCode).sorted().toList();
    }

    private List<OfferRow> offerRows(OfferRowReader reader, ChargesOnOffers charges, NamedItems named) {
        List<OfferRow> rows = tables.stream(OffersSheet.SCHEMA, findings)
                .peek(lookAlikes::noteOffer)
                .peek(charges::note)
                .filter(row -> isRead(row, named))
                .flatMap(row -> reader.read(row).stream())
                .toList();
        passedOver.report(file, findings);
        return rows;
    }

    /** Whether a row is read: each of the workbook's own, but only some of a long price list. */
    private boolean isRead(TableRow row, NamedItems named) {
        boolean read = prices == PricesRead.ALL || row.table().grid().ofBook() || named.has(row);
        if (!read) {
            passedOver.add(row);
        }
        return read;
    }

    /** The rows whose offers are used; a row of the workbook's own that is not used was checked alone. */
    private List<OfferRow> used(List<OfferRow> rows, NamedItems named) {
        return prices == PricesRead.ALL
                ? rows
                : rows.stream().filter(row -> named.has(row.offer())).toList();
    }

    private Map<String, Material> materials(CurrencyUnit home) {
        NamedThings<Material> materials = new NamedThings<>("material", findings);
        for (TableRow row : tables.rows(MaterialsSheet.SCHEMA, findings)) {
            Material material = MaterialRow.read(row, home);
            materials.add(material.name(), material.origin(), material);
        }
        return materials.byKey();
    }

    private static void addFromFormulas(Map<String, Material> materials, Map<String, Formula> formulas) {
        for (Formula formula : formulas.values()) {
            for (Formula.Line line : formula.lines()) {
                materials.computeIfAbsent(Names.key(line.material()), key -> Material.of(line.material()));
            }
        }
    }

    private Map<String, Batching> batching(CurrencyUnit home) {
        NamedThings<Batching> batching = new NamedThings<>("formula", findings);
        for (TableRow row : tables.rows(BatchesSheet.SCHEMA, findings)) {
            batching.add(row.text(BatchesSheet.FORMULA), row.origin(BatchesSheet.FORMULA), BatchRow.read(row, home));
        }
        return batching.byKey();
    }

    private Map<String, List<Product.Component>> components() {
        Map<String, List<Product.Component>> components = new LinkedHashMap<>();
        Map<String, Figure> weights = new LinkedHashMap<>();
        for (TableRow row : tables.rows(ComponentsSheet.SCHEMA, findings)) {
            Product.Component component = new Product.Component(
                    row.text(ComponentsSheet.COMPONENT),
                    row.figure(ComponentsSheet.PER_UNIT, Figure.ONE),
                    row.figure(ComponentsSheet.LOSS, Figure.ZERO),
                    row.figure(ComponentsSheet.WEIGHT),
                    row.origin(ComponentsSheet.COMPONENT));
            String product = row.text(ComponentsSheet.PRODUCT);
            List<Product.Component> others = components.computeIfAbsent(Names.key(product), key -> new ArrayList<>());
            others.stream()
                    .filter(other -> Names.key(other.name()).equals(Names.key(component.name())))
                    .findFirst()
                    .ifPresent(first -> findings.error(
                            component.origin(),
                            ProductMessages.componentTwice(
                                    component.name(), product, first.origin().where())));
            others.add(component);
            checkWeight(component, weights);
        }
        return components;
    }

    /** A piece has one weight, whichever product it is in. */
    private void checkWeight(Product.Component component, Map<String, Figure> weights) {
        Figure weight = component.weight();
        Figure first = weight == null ? null : weights.putIfAbsent(Names.key(component.name()), weight);
        if (weight != null && first != null && first.value().compareTo(weight.value()) != 0) {
            findings.warning(
                    weight.origin(),
                    ProductMessages.otherWeight(
                            component.name(),
                            weight.value(),
                            first.value(),
                            first.origin().where()));
        }
    }

    private Map<String, Product> products(CurrencyUnit home) {
        Map<String, List<Product.Component>> components = components();
        NamedThings<Product> products = new NamedThings<>("product", findings);
        for (TableRow row : tables.rows(ProductsSheet.SCHEMA, findings)) {
            String key = Names.key(row.text(ProductsSheet.PRODUCT));
            ProductRow.read(row, components.getOrDefault(key, List.of()), home)
                    .ifPresent(product -> products.add(product.name(), product.origin(), product));
        }
        return products.byKey();
    }

    /** The workbook's rates, and of those in a file the newest of each pair that the costing date allows. */
    private List<DatedRate> rates(List<DatedRate> typed, Settings settings) {
        List<DatedRate> rates = new ArrayList<>(typed);
        Map<List<CurrencyUnit>, DatedRate> newest = new LinkedHashMap<>();
        for (DatedRate rate : fileRates) {
            if (!rate.date().isAfter(settings.costingDate())) {
                newest.merge(
                        List.of(rate.from(), rate.to()),
                        rate,
                        (one, other) -> other.date().isAfter(one.date()) ? other : one);
            }
        }
        rates.addAll(newest.values());
        return rates;
    }

    private static List<DatedRate> all(List<DatedRate> typed, List<DatedRate> ofFile) {
        if (ofFile.isEmpty()) {
            return typed;
        }
        List<DatedRate> all = new ArrayList<>(typed);
        all.addAll(ofFile);
        return all;
    }

    private void checkAnything(Book book) {
        if (book.formulas().isEmpty() && FormulaTables.names(tables).isEmpty()) {
            findings.error(file, FormulaMessages.none());
        }
        boolean priced = book.materials().values().stream().anyMatch(material -> material.housePrice() != null);
        if (tables.of(OffersSheet.SCHEMA).isEmpty() && !priced) {
            findings.error(file, OfferMessages.none(unrecognised));
        }
    }
}
