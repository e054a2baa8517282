package perkilo.swaps;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import perkilo.model.Batching;
import perkilo.model.Book;
import perkilo.model.DeliveryTerm;
import perkilo.model.Fact;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductFixture;
import perkilo.model.ProductKind;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.model.Supplier;
import perkilo.model.Traits;
import perkilo.names.Names;
import perkilo.offers.LineTerms;
import perkilo.offers.Offer;
import perkilo.offers.Validity;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.ExchangeRates;
import perkilo.units.Measure;

/** Books for tests out of the files that ship with the project. */
final class DemoBook {

    private static final String FOLDER = "workbook-templates/source/emollients/";

    private static final List<String> PRICE_LISTS = List.of(
            "ellorin-actives",
            "haverleigh-naturals",
            "ironwillet-bulk-supply",
            "jarrowglass-packaging",
            "kestrelmoor-surfactants",
            "marisque-ingredients",
            "ondavelle-oils",
            "ostlinde-print",
            "quillfen-small-lots",
            "tarnholt-oleo",
            "vidrellan-glassworks");

    private static final List<String> MORE = List.of(
            "Isopropyl myristate",
            "Ethylhexyl palmitate",
            "Decyl oleate",
            "Coco-caprylate",
            "Sweet almond oil",
            "Squalane from sugar cane or olive",
            "Hexyl laurate",
            "Cetyl alcohol");

    /** Phase, material, percent (blank for the rest), phase temperature: an invented formula. */
    private static final List<List<String>> WHOLE_CREAM = List.of(
            List.of("A", "Water", "", "75"),
            List.of("A", "Glycerin", "4", "75"),
            List.of("A", "Propanediol", "2", "75"),
            List.of("A", "Xanthan gum", "0.3", "75"),
            List.of("A", "Disodium EDTA", "0.1", "75"),
            List.of("A", "Allantoin", "0.2", "75"),
            List.of("B", "Glyceryl stearate SE", "3", "75"),
            List.of("B", "Ceteareth-20", "1.5", "75"),
            List.of("B", "Glyceryl stearate", "1.5", "75"),
            List.of("B", "Cetearyl alcohol", "2.5", "75"),
            List.of("B", "Stearic acid", "1", "75"),
            List.of("B", "Caprylic/capric triglyceride", "5", "75"),
            List.of("B", "Isopropyl palmitate", "3", "75"),
            List.of("B", "Coco-caprylate", "2", "75"),
            List.of("B", "Sweet almond oil", "2", "75"),
            List.of("B", "Shea butter refined", "2", "75"),
            List.of("B", "Squalane from sugar cane or olive", "1", "75"),
            List.of("B", "Jojoba oil golden", "1.5", "75"),
            List.of("B", "Tocopheryl acetate", "0.5", "75"),
            List.of("B", "Beeswax white", "0.8", "75"),
            List.of("C", "Panthenol 75 %", "1", "38"),
            List.of("C", "Phenoxyethanol", "0.8", "38"),
            List.of("C", "Ethylhexylglycerin", "0.3", "38"),
            List.of("C", "Fragrance Orchard Rain", "0.3", "38"),
            List.of("C", "Citric acid", "0.05", "38"));

    private DemoBook() {}

    /** The formulator's demo: two formulas, six runs, prices of invented suppliers. */
    static Book emollients() {
        List<Formula> formulas = List.of(formula("Face cream"), formula("Dry body oil"));
        return new Book(
                settings(),
                Book.byName(suppliers(FOLDER + "Suppliers.csv"), Supplier::name),
                offers(FOLDER + "Offers.csv"),
                Book.byName(materials(FOLDER + "Materials.csv"), Material::name),
                Book.byName(formulas, Formula::name),
                Book.byName(products(), Product::name),
                runs(),
                List.of(),
                List.of(),
                rates());
    }

    /** A cream of 25 materials at three run sizes, with the whole shipped catalogue and all price lists. */
    static Book richCream() {
        List<Offer> offers = new ArrayList<>();
        for (String list : PRICE_LISTS) {
            offers.addAll(offers("prices/" + list + "-2026-10.csv"));
        }
        Formula cream = formula("Face cream");
        List<Formula.Line> lines = new ArrayList<>(cream.lines());
        for (String more : MORE) {
            lines.add(new Formula.Line("B", more, Figure.of("0.01"), Figure.of("75"), Origin.NONE));
        }
        List<Run> runs = List.of("25", "100", "500").stream()
                .map(kg -> (Run) new Run.OfBulk("Face cream", Figure.of(kg), Origin.NONE))
                .toList();
        return new Book(
                settings(),
                Book.byName(suppliers("prices/suppliers.csv"), Supplier::name),
                offers,
                Book.byName(materials("prices/materials.csv"), Material::name),
                Book.byName(List.of(new Formula(cream.name(), lines, cream.batching(), Origin.NONE)), Formula::name),
                Book.byName(products(), Product::name),
                runs,
                List.of(),
                List.of(),
                rates());
    }

    /**
     * A cream of 25 lines as a maker has it (invented), at 5, 50 and 250 kg, with all price lists. Leftovers count for
     * half of the lowest price, and one supplier's charges pay several rates of duty.
     */
    static Book wholeCream() {
        Book rich = richCream();
        List<Formula.Line> lines = new ArrayList<>();
        for (List<String> line : WHOLE_CREAM) {
            Figure level = line.get(2).isEmpty() ? null : Figure.of(new BigDecimal(line.get(2)).movePointLeft(2));
            lines.add(new Formula.Line(line.get(0), line.get(1), level, Figure.of(line.get(3)), Origin.NONE));
        }
        Formula before = rich.formulas().values().iterator().next();
        Formula cream = new Formula(before.name(), lines, before.batching(), Origin.NONE);
        List<Run> runs = List.of("5", "50", "250").stream()
                .map(kg -> (Run) new Run.OfBulk(cream.name(), Figure.of(kg), Origin.NONE))
                .toList();
        Settings usual = settings();
        Settings.Buying buying = new Settings.Buying(
                usual.dutyBasis(), Figure.of("0.5"), usual.holdingPerYear(), usual.priceAgeLimitDays());
        Book book = Varied.of(rich, "formulas", Book.byName(List.of(cream), Formula::name));
        book = Varied.of(book, "settings", Varied.of(usual, "buying", buying));
        return Varied.of(book, "runs", runs);
    }

    /**
     * The cream of {@link #richCream}, with so many twins of each of its materials, so that every one of them passes
     * the gates: the same in all but name and price, from half to one and a half times of what the material costs.
     */
    static Book richCreamWithTwins(int twins) {
        Book cream = richCream();
        Random random = new Random(twins);
        Map<String, Material> materials = new LinkedHashMap<>(cream.materials());
        List<Offer> offers = new ArrayList<>(cream.offers());
        for (Formula.Line line : cream.formulas().values().iterator().next().lines()) {
            Material material = cream.material(line.material()).orElseThrow();
            List<Offer> offered = cream.offersFor(material.name());
            for (int twin = 1; twin <= twins && !material.isWater(); twin++) {
                String name = material.name() + ", twin " + twin;
                materials.put(Names.key(name), Varied.of(material, "name", name));
                BigDecimal factor = BigDecimal.valueOf(50 + random.nextInt(100)).movePointLeft(2);
                offers.add(repriced(offered.get(random.nextInt(offered.size())), name, factor));
            }
        }
        return Varied.of(Varied.of(cream, "materials", materials), "offers", offers);
    }

    private static Offer repriced(Offer offer, String item, BigDecimal factor) {
        List<Offer.PriceBreak> breaks = offer.breaks().stream()
                .map(old ->
                        Varied.of(old, "price", Figure.of(old.price().value().multiply(factor))))
                .toList();
        return Varied.of(Varied.of(offer, "item", item), "breaks", breaks);
    }

    static Settings settings() {
        Settings usual = Settings.of(Currencies.of("EUR"), LocalDate.of(2026, 11, 20));
        return new Settings(
                new Settings.Currencies(usual.home(), List.of(), Figure.of("0.015")),
                usual.costingDate(),
                new Settings.Buying(
                        usual.dutyBasis(), usual.leftoverCredit(), usual.holdingPerYear(), usual.priceAgeLimitDays()),
                new Settings.Making(Figure.of("24"), Figure.of("0.15"), Figure.of("0.02")),
                new Settings.CashLimits(null, null));
    }

    static ExchangeRates rates() {
        LocalDate day = LocalDate.of(2026, 11, 19);
        return new ExchangeRates(List.of(
                new DatedRate(Currencies.of("EUR"), Currencies.of("GBP"), Figure.of("0.8642"), day, ""),
                new DatedRate(Currencies.of("EUR"), Currencies.of("USD"), Figure.of("1.1384"), day, "")));
    }

    static List<Supplier> suppliers(String file) {
        return Csv.read(file).stream()
                .map(row -> new Supplier(
                        get(row, "Supplier"),
                        Currencies.of(get(row, "Currency")),
                        DeliveryTerm.parse(get(row, "Terms")).orElse(null),
                        new Supplier.Minimum(number(row, "Minimum order value"), number(row, "Small-order charge")),
                        new Supplier.Charges(
                                orZero(number(row, "Freight per order")),
                                orZero(number(row, "Freight per kg")),
                                orZero(percent(row, "Insurance %")),
                                orZero(percent(row, "Duty %"))),
                        orZero(number(row, "Lead time days")),
                        Origin.NONE))
                .toList();
    }

    static List<Offer> offers(String file) {
        Map<List<String>, List<Map<String, String>>> groups = new LinkedHashMap<>();
        for (Map<String, String> row : Csv.read(file)) {
            groups.computeIfAbsent(
                            List.of(
                                    get(row, "Supplier"),
                                    get(row, "Item"),
                                    get(row, "Pack size"),
                                    get(row, "Pack unit")),
                            key -> new ArrayList<>())
                    .add(row);
        }
        return groups.values().stream().map(DemoBook::offer).toList();
    }

    private static Offer offer(List<Map<String, String>> rows) {
        Map<String, String> row = rows.get(0);
        Figure multiple = number(row, "Order multiple");
        return new Offer(
                get(row, "Supplier"),
                get(row, "Item"),
                Figure.of(get(row, "Pack size")),
                Measure.parse(get(row, "Pack unit")).orElseThrow(),
                rows.stream().map(DemoBook::priceBreak).toList(),
                Currencies.of(get(row, "Currency")),
                LineTerms.of(
                        number(row, "Minimum order"), multiple == null ? Figure.ONE : multiple, percent(row, "Duty %")),
                new Validity(LocalDate.parse(get(row, "Quoted on")), LocalDate.parse(get(row, "Valid until"))),
                Origin.NONE);
    }

    private static Offer.PriceBreak priceBreak(Map<String, String> row) {
        String per = get(row, "Price per");
        return new Offer.PriceBreak(
                number(row, "From quantity"),
                Figure.of(get(row, "Price")),
                per.equals("pack") ? null : Measure.parse(per).orElseThrow(),
                Origin.NONE);
    }

    static List<Material> materials(String file) {
        return Csv.read(file).stream().map(DemoBook::material).toList();
    }

    private static Material material(Map<String, String> row) {
        return new Material(
                get(row, "Material"),
                get(row, "INCI name"),
                words(get(row, "Functions")),
                number(row, "Density g/mL"),
                number(row, "House price"),
                orZero(percent(row, "Handling loss %")),
                number(row, "Shelf life months"),
                traits(row),
                Origin.NONE);
    }

    private static Traits traits(Map<String, String> row) {
        Traits.Builder facts = Traits.builder();
        for (Fact fact : Fact.values()) {
            String typed = get(row, fact.header());
            switch (fact.kind()) {
                case NUMBER -> facts.figure(fact, number(row, fact.header()));
                case PERCENT -> facts.figure(fact, percent(row, fact.header()));
                case WORD -> facts.word(fact, typed);
                case WORDS -> facts.words(fact, words(typed));
                case SHARES ->
                    facts.shares(
                            fact, words(typed).stream().map(DemoBook::allergen).toList());
            }
        }
        return facts.build();
    }

    private static Traits.Allergen allergen(String text) {
        int space = text.lastIndexOf(' ');
        return new Traits.Allergen(
                text.substring(0, space), Figure.of(new BigDecimal(text.substring(space + 1)).movePointLeft(2)));
    }

    static Formula formula(String name) {
        List<Formula.Line> lines = Csv.read(FOLDER + name + ".csv").stream()
                .map(row -> new Formula.Line(
                        get(row, "Phase"),
                        get(row, "Material"),
                        get(row, "% w/w").equals("q.s.") ? null : percent(row, "% w/w"),
                        number(row, "Phase °C"),
                        Origin.NONE))
                .toList();
        Map<String, String> batch = Csv.read(FOLDER + "Batches.csv").stream()
                .filter(row -> get(row, "Formula").equals(name))
                .findFirst()
                .orElseThrow();
        Batching batching = new Batching(
                number(batch, "Vessel max kg"),
                orZero(number(batch, "Vessel min kg")),
                orZero(number(batch, "Hold-up kg")),
                orZero(number(batch, "Hours per batch")),
                orZero(number(batch, "Hours per kg")),
                orZero(number(batch, "Quality control per batch")),
                number(batch, "Final pH"),
                get(batch, "Kind").startsWith("rinse-off") ? ProductKind.RINSE_OFF : ProductKind.LEAVE_ON,
                Origin.NONE);
        return new Formula(name, lines, batching, Origin.NONE);
    }

    private static List<Product> products() {
        return Csv.read(FOLDER + "Products.csv").stream()
                .map(row -> ProductFixture.of(
                                get(row, "Product"),
                                get(row, "Formula"),
                                get(row, "Fill"),
                                Measure.parse(get(row, "Fill unit")).orElseThrow())
                        .filling(new Product.Filling(
                                Figure.of(get(row, "Fill")),
                                Measure.parse(get(row, "Fill unit")).orElseThrow(),
                                number(row, "Density g/mL"),
                                percent(row, "Overfill %"),
                                number(row, "Filler SD"),
                                orZero(percent(row, "Fill loss %"))))
                        .work(new Product.FillingWork(
                                orZero(number(row, "Filling set-up hours")),
                                number(row, "Units per hour"),
                                orZero(number(row, "Filling people"))))
                        .oneOffs(new Product.OneOffs(
                                orZero(number(row, "One-off costs")), number(row, "Spread over units")))
                        .yearlyUnits(number(row, "Yearly units"))
                        .claims(new Product.Claims(
                                words(get(row, "Required tags")), percent(row, "Natural origin target %")))
                        .components(components(get(row, "Product")))
                        .product())
                .toList();
    }

    private static List<Product.Component> components(String product) {
        return Csv.read(FOLDER + "Components.csv").stream()
                .filter(row -> get(row, "Product").equals(product))
                .map(row -> new Product.Component(
                        get(row, "Component"),
                        Figure.of(get(row, "Units per product")),
                        orZero(percent(row, "Loss %")),
                        null,
                        Origin.NONE))
                .toList();
    }

    private static List<Run> runs() {
        return Csv.read(FOLDER + "Runs.csv").stream()
                .map(row -> (Run) new Run.OfProduct(get(row, "Product"), Figure.of(get(row, "Units")), Origin.NONE))
                .toList();
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s*;\\s*", -1));
    }

    private static String get(Map<String, String> row, String column) {
        return row.getOrDefault(column, "");
    }

    private static @Nullable Figure number(Map<String, String> row, String column) {
        String text = get(row, column);
        return text.isEmpty() ? null : Figure.of(text);
    }

    private static @Nullable Figure percent(Map<String, String> row, String column) {
        String text = get(row, column);
        return text.isEmpty() ? null : Figure.of(new BigDecimal(text).movePointLeft(2));
    }

    private static Figure orZero(@Nullable Figure figure) {
        return figure == null ? Figure.ZERO : figure;
    }
}
