package perkilo.corpus;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Invents a small launch and writes it twice: in our own form, and as a person might keep it: other words, another
 * language, other layouts.
 */
final class BookMaker {

    /** Where the phase of a line is written. */
    enum Phases {
        COLUMN,
        HEADING_ROWS,
        ONLY_FIRST_ROW,
        NONE
    }

    /** How offers are laid out. */
    enum Offers {
        A_ROW_A_BREAK,
        BREAKS_AS_COLUMNS,
        PAIRS,
        A_SHEET_A_SUPPLIER
    }

    /** How runs are laid out. */
    enum Runs {
        ROWS,
        SIZES_AS_COLUMNS
    }

    /** How a supplier's terms are written. */
    enum Terms {
        SHEET,
        ON_OFFERS
    }

    /** Where the unit of a pack is written. */
    enum PackText {
        OWN_COLUMN,
        BESIDE,
        WITH_CONTAINER,
        HEADER
    }

    private static final List<List<String>> LINES = List.of(
            List.of("A", "Glycerin"),
            List.of("A", "Xanthan gum"),
            List.of("B", "Cetyl alcohol"),
            List.of("B", "Sweet almond oil"),
            List.of("B", "Shea butter"),
            List.of("B", "Glyceryl stearate SE"),
            List.of("C", "Panthenol 75 %"),
            List.of("C", "Niacinamide"));

    private static final List<String> SUPPLIERS = List.of("Fen & Moor", "Larch Oils", "Sierra Clara");

    private record Line(String phase, String material, BigDecimal percent) {}

    private record Offer(String supplier, String item, BigDecimal size, String unit, List<BigDecimal> prices) {}

    private final Random random;
    private final Tongue tongue;
    private final Phases phases;
    private final Offers offersLayout;
    private final Runs runsLayout;
    private final Terms terms;
    private final PackText packText;
    private final boolean asText;
    private final boolean percentFormat;
    private final boolean total;
    private final boolean perCell;
    private final int word;
    private final List<Line> lines = new ArrayList<>();
    private final List<Offer> offers = new ArrayList<>();
    private final List<Integer> sizes = new ArrayList<>();
    private final Map<String, BigDecimal> freight = new LinkedHashMap<>();
    private final int secondBreak;
    private final int fill;
    private final Map<String, String> tables = new LinkedHashMap<>();

    BookMaker(long seed) {
        random = new Random(seed * 104_729 + 5);
        tongue = any(Tongue.values());
        phases = any(Phases.values());
        offersLayout = any(Offers.values());
        runsLayout = any(Runs.values());
        terms = any(Terms.values());
        packText = any(PackText.values());
        asText = random.nextInt(4) == 0;
        percentFormat = random.nextInt(3) == 0;
        total = random.nextBoolean();
        perCell = random.nextInt(3) == 0;
        word = random.nextInt(60);
        secondBreak = 2 + random.nextInt(5);
        fill = any(50, 100, 200);
        invent();
    }

    @SafeVarargs
    private <T> T any(T... all) {
        return all[random.nextInt(all.length)];
    }

    private void invent() {
        List<List<String>> some = new ArrayList<>(LINES);
        Collections.shuffle(some, random);
        List<List<String>> chosen = new ArrayList<>(some.subList(0, 5));
        chosen.sort((one, other) -> one.get(0).compareTo(other.get(0)));
        BigDecimal rest = new BigDecimal(100);
        for (List<String> line : chosen) {
            BigDecimal percent = BigDecimal.valueOf(5 + random.nextInt(80), 1);
            rest = rest.subtract(percent);
            lines.add(new Line(line.get(0), line.get(1), percent));
        }
        lines.add(0, new Line("A", water(), rest));
        SUPPLIERS.forEach(supplier -> freight.put(supplier, BigDecimal.valueOf(20 + random.nextInt(60))));
        boolean waterIsBought = random.nextBoolean();
        for (Line line : lines) {
            if (line.material().equals(water()) && !waterIsBought) {
                continue;
            }
            for (int at = 0; at < 1 + random.nextInt(2); at++) {
                String supplier = SUPPLIERS.get((word + at) % SUPPLIERS.size());
                BigDecimal price = BigDecimal.valueOf(300 + random.nextInt(3000), 2);
                offers.add(new Offer(
                        supplier,
                        line.material(),
                        any(new BigDecimal("5"), new BigDecimal("10"), new BigDecimal("25")),
                        "kg",
                        List.of(price, price.multiply(new BigDecimal("0.9")).setScale(2, RoundingMode.HALF_UP))));
            }
        }
        sizes.add(500 + 100 * random.nextInt(5));
        sizes.add(2000 + 500 * random.nextInt(5));
    }

    private String water() {
        return switch (tongue) {
            case ENGLISH -> "Water";
            case GERMAN -> "Wasser";
            case FRENCH -> "Eau";
            case ITALIAN -> "Acqua";
            case SPANISH -> "Agua";
        };
    }

    /** The sheets that a person keeps, with the table that each is read as. */
    Map<String, String> tables() {
        return tables;
    }

    String described() {
        return String.join(
                " ",
                tongue.name(),
                "phases " + phases,
                "offers " + offersLayout,
                "runs " + runsLayout,
                "terms " + terms,
                "packs " + packText,
                asText ? "all text" : "typed",
                percentFormat ? "per cent format" : "",
                perCell ? "price with its unit" : "");
    }

    // our own form

    byte[] inOurForm() {
        Map<String, Paper> sheets = new LinkedHashMap<>();
        List<Map<String, Val>> formula = new ArrayList<>();
        for (Line line : lines) {
            formula.add(row("Phase", line.phase(), "Material", line.material(), "% w/w", line.percent()));
        }
        sheets.put("Day cream", paper(formula));
        List<Map<String, Val>> rows = new ArrayList<>();
        for (Offer offer : offers) {
            for (int at = 0; at < offer.prices().size(); at++) {
                BigDecimal from = at == 0 ? BigDecimal.ZERO : offer.size().multiply(BigDecimal.valueOf(secondBreak));
                rows.add(row(
                        "Supplier",
                        offer.supplier(),
                        "Item",
                        offer.item(),
                        "Pack size",
                        offer.size(),
                        "Pack unit",
                        offer.unit(),
                        "From quantity",
                        from,
                        "Price",
                        offer.prices().get(at),
                        "Price per",
                        "kg",
                        "Currency",
                        "EUR"));
            }
        }
        sheets.put("Offers", paper(rows));
        List<Map<String, Val>> suppliers = new ArrayList<>();
        freight.forEach((supplier, charge) ->
                suppliers.add(row("Supplier", supplier, "Currency", "EUR", "Freight per order", charge)));
        sheets.put("Suppliers", paper(suppliers));
        sheets.put(
                "Products",
                paper(List.of(row(
                        "Product",
                        "Cream jar",
                        "Formula",
                        "Day cream",
                        "Fill",
                        BigDecimal.valueOf(fill),
                        "Fill unit",
                        "g"))));
        List<Map<String, Val>> runs = new ArrayList<>();
        sizes.forEach(size -> runs.add(row("Product", "Cream jar", "Units", BigDecimal.valueOf(size))));
        sheets.put("Runs", paper(runs));
        return Paper.xlsx(sheets, false);
    }

    private static Paper paper(List<Map<String, Val>> rows) {
        Paper paper = new Paper();
        paper.table(rows);
        return paper;
    }

    private static Map<String, Val> row(Object... headsAndValues) {
        Map<String, Val> row = new LinkedHashMap<>();
        for (int at = 0; at < headsAndValues.length; at += 2) {
            Object value = headsAndValues[at + 1];
            row.put(
                    (String) headsAndValues[at],
                    value instanceof BigDecimal number
                            ? Val.number(number, number.toPlainString(), "")
                            : Val.of((String) value));
        }
        return row;
    }

    // as a person keeps it

    byte[] asKept() {
        Map<String, Paper> sheets = new LinkedHashMap<>();
        String formulaSheet = "Day cream";
        put(sheets, formulaSheet, "Formula", formula());
        if (offersLayout == Offers.A_SHEET_A_SUPPLIER) {
            for (String supplier : SUPPLIERS) {
                List<Offer> own = offers.stream()
                        .filter(offer -> offer.supplier().equals(supplier))
                        .toList();
                if (!own.isEmpty()) {
                    put(sheets, supplier, "Offers", offers(own, false));
                }
            }
        } else {
            put(sheets, any("Prices", "Sheet2", tongue.titles.get(0)), "Offers", offers(offers, true));
        }
        if (terms == Terms.SHEET || offersLayout == Offers.A_SHEET_A_SUPPLIER) {
            List<Map<String, Val>> rows = new ArrayList<>();
            freight.forEach((supplier, charge) ->
                    rows.add(row(heads("supplier"), supplier, heads("freight"), charge, heads("currency"), "EUR")));
            put(sheets, any("Suppliers", "Sheet3", tongue.suppliers.get(0)), "Suppliers", paper(rows));
        }
        put(
                sheets,
                any("Products", "Sheet4"),
                "Products",
                paper(List.of(row(
                        heads("product"),
                        "Cream jar",
                        heads("formula"),
                        formulaSheet,
                        heads("fill") + " (g)",
                        BigDecimal.valueOf(fill)))));
        put(sheets, any("Runs", "Sheet5"), "Runs", runs());
        return Paper.xlsx(sheets, asText);
    }

    private void put(Map<String, Paper> sheets, String name, String table, Paper paper) {
        sheets.put(name, paper);
        tables.put(name, table);
    }

    private String heads(String column) {
        int at = List.of(Tongue.values()).indexOf(tongue);
        List<String> words = switch (column) {
            case "supplier" -> List.of("Supplier", "Lieferant", "Fournisseur", "Fornitore", "Proveedor");
            case "freight" ->
                List.of(
                        "Delivery cost per order",
                        "Fracht pro Bestellung",
                        "Frais de port par commande",
                        "Spese di trasporto per ordine",
                        "Portes por pedido");
            case "currency" -> List.of("Currency", "Währung", "Devise", "Valuta", "Moneda");
            case "product" -> List.of("Product", "Produkt", "Produit", "Prodotto", "Producto");
            case "formula" -> List.of("Formula", "Rezeptur", "Formule", "Formula", "Fórmula");
            case "fill" -> List.of("Fill", "Füllmenge", "Contenance", "Contenuto", "Contenido");
            case "units" -> List.of("How many", "Stückzahl", "Quantité", "Pezzi", "Unidades");
            case "material" ->
                List.of("Raw material", "Rohstoff", "Matière première", "Materia prima", "Materia prima");
            case "percent" -> List.of("% w/w", "Gew.-%", "% m/m", "% p/p", "% p/p");
            case "phase" -> List.of("Phase", "Phase", "Phase", "Fase", "Fase");
            default -> throw new IllegalArgumentException(column);
        };
        return words.get(at);
    }

    private Paper formula() {
        Paper paper = new Paper();
        if (word % 2 == 0) {
            paper.row(Val.of("Day cream"));
            paper.blank();
        }
        List<Val> heads = new ArrayList<>();
        boolean column = phases == Phases.COLUMN || phases == Phases.ONLY_FIRST_ROW;
        if (column) {
            heads.add(Val.of(heads("phase")));
        }
        heads.add(Val.of(heads("material")));
        heads.add(Val.of(heads("percent")));
        paper.row(heads.toArray(Val[]::new));
        String before = "";
        for (Line line : lines) {
            boolean begins = !line.phase().equals(before);
            if (phases == Phases.HEADING_ROWS && begins) {
                paper.row(Val.of(heads("phase") + " " + line.phase()));
            }
            List<Val> row = new ArrayList<>();
            if (column) {
                row.add(Val.of(phases == Phases.COLUMN || begins ? line.phase() : ""));
            }
            row.add(Val.of(line.material()));
            row.add(percent(line.percent()));
            paper.row(row.toArray(Val[]::new));
            before = line.phase();
        }
        if (total) {
            List<Val> row = new ArrayList<>();
            if (column) {
                row.add(Val.BLANK);
            }
            row.add(Val.of(any("Total", "Summe", "Σ")));
            row.add(percent(new BigDecimal(100)));
            paper.row(row.toArray(Val[]::new));
        }
        return paper;
    }

    private Val percent(BigDecimal percent) {
        String text = percent.toPlainString().replace('.', tongue.decimal);
        return percentFormat && !asText
                ? Val.number(percent.movePointLeft(2), text, "0.0%")
                : Val.number(percent, percentFormat ? text + " %" : text, "");
    }

    private Paper offers(List<Offer> some, boolean withSupplier) {
        List<Map<String, Val>> rows = new ArrayList<>();
        for (Offer offer : some) {
            Map<String, Val> row = new LinkedHashMap<>();
            if (withSupplier) {
                row.put(heads("supplier"), Val.of(offer.supplier()));
            }
            row.put(one(tongue.heads("item")), Val.of(offer.item()));
            pack(row, offer);
            switch (offersLayout) {
                case A_ROW_A_BREAK, A_SHEET_A_SUPPLIER -> {
                    for (int at = 0; at < offer.prices().size(); at++) {
                        Map<String, Val> own = new LinkedHashMap<>(row);
                        BigDecimal from =
                                at == 0 ? offer.size() : offer.size().multiply(BigDecimal.valueOf(secondBreak));
                        own.put(one(tongue.heads("from")), Val.of(from.toPlainString() + " kg"));
                        own.put(priceHead(), price(offer.prices().get(at)));
                        terms(own, offer);
                        rows.add(own);
                    }
                }
                case BREAKS_AS_COLUMNS -> {
                    String per = perCell ? "" : " (EUR/kg)";
                    row.put(
                            tongue.from + "1 " + one(tongue.packs) + per,
                            price(offer.prices().get(0)));
                    row.put(
                            tongue.from + secondBreak + " " + one(tongue.packs) + per,
                            price(offer.prices().get(1)));
                    terms(row, offer);
                    rows.add(row);
                }
                case PAIRS -> {
                    for (int at = 0; at < offer.prices().size(); at++) {
                        BigDecimal count = BigDecimal.valueOf(at == 0 ? 1 : secondBreak);
                        row.put(
                                one(tongue.heads("quantity")) + " " + (at + 1) + " (" + one(tongue.packs) + ")",
                                Val.number(count, count.toPlainString(), ""));
                        row.put(
                                one(tongue.heads("price")) + " " + (at + 1) + (perCell ? "" : " (EUR/kg)"),
                                price(offer.prices().get(at)));
                    }
                    terms(row, offer);
                    rows.add(row);
                }
            }
        }
        return paper(rows);
    }

    private void terms(Map<String, Val> row, Offer offer) {
        if (terms == Terms.ON_OFFERS && offersLayout != Offers.A_SHEET_A_SUPPLIER) {
            BigDecimal charge = freight.getOrDefault(offer.supplier(), BigDecimal.ZERO);
            row.put(heads("freight"), Val.number(charge, charge.toPlainString(), ""));
        }
    }

    private String priceHead() {
        return one(tongue.heads("price")) + (perCell ? "" : " (EUR/kg)");
    }

    private Val price(BigDecimal price) {
        String text = price.toPlainString().replace('.', tongue.decimal);
        return perCell ? Val.of(text + " €/kg") : Val.number(price, text, "");
    }

    private void pack(Map<String, Val> row, Offer offer) {
        String head = one(tongue.heads("pack"));
        String size = offer.size().toPlainString();
        switch (packText) {
            case OWN_COLUMN -> {
                row.put(head, Val.number(offer.size(), size, ""));
                row.put(one(tongue.heads("unit")), Val.of("kg"));
            }
            case BESIDE -> row.put(head, Val.of(size + " kg"));
            case WITH_CONTAINER -> row.put(head, Val.of(size + " kg " + one(tongue.containers)));
            case HEADER -> row.put(head + " (kg)", Val.number(offer.size(), size, ""));
        }
    }

    private String one(List<String> words) {
        return words.get(word % words.size());
    }

    private Paper runs() {
        List<Map<String, Val>> rows = new ArrayList<>();
        if (runsLayout == Runs.ROWS) {
            sizes.forEach(
                    size -> rows.add(row(heads("product"), "Cream jar", heads("units"), BigDecimal.valueOf(size))));
        } else {
            Map<String, Val> row = new LinkedHashMap<>();
            row.put(heads("product"), Val.of("Cream jar"));
            for (int at = 0; at < sizes.size(); at++) {
                BigDecimal size = BigDecimal.valueOf(sizes.get(at));
                row.put(heads("units") + " " + (at + 1), Val.number(size, size.toPlainString(), ""));
            }
            rows.add(row);
        }
        return paper(rows);
    }
}
