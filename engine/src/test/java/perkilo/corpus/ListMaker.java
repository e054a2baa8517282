package perkilo.corpus;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Question;

/**
 * Invents a supplier's list and lays it out in one of very many ways: language, place of the currency and of what a
 * price is for, breaks, packs, numbers, dates, titles, footers and kind of file are chosen one by one.
 */
final class ListMaker {

    /** How the prices of an item are laid out. */
    enum Layout {
        A_ROW_A_PACK,
        A_ROW_A_BREAK,
        BREAKS_AS_COLUMNS,
        PACKS_AS_COLUMNS,
        PAIRS,
        BREAKS_AS_TEXT
    }

    /** What a price is for. */
    enum Basis {
        PACK,
        UNIT,
        HUNDRED
    }

    /** Where a list says what its prices are in. */
    enum Place {
        HEADER,
        COLUMN,
        CELL,
        FORMAT,
        TITLE
    }

    /** How a pack is written. */
    enum Packs {
        SIZE_AND_UNIT,
        TEXT,
        WITH_WORD,
        MULTIPLE,
        NUMBER_UNDER_UNIT
    }

    /** Where the list says its day. */
    enum Dated {
        TITLE,
        LABEL,
        COLUMN,
        FILE_NAME
    }

    /** Until when prices hold. */
    enum Validity {
        NONE,
        TITLE,
        COLUMN,
        FOOTER,
        DAYS
    }

    /** What the rows of further breaks say again of their item and pack. */
    enum GoesOn {
        SAYING_ALL,
        BLANK,
        DITTO
    }

    /** What a column adds to prices, or takes off. */
    enum Charge {
        NONE,
        DISCOUNT,
        FREIGHT
    }

    private static final BigDecimal DISCOUNT = new BigDecimal("2");
    private static final BigDecimal FREIGHT = new BigDecimal("0.5");

    /** How it is saved. */
    enum Kind {
        XLSX,
        XLSX_AS_TEXT,
        SEMICOLONS,
        COMMAS,
        TABS
    }

    /** How an item is named; CAS numbers and INCI names from memory. */
    private static final List<List<String>> ITEMS = List.of(
            List.of("Glycerin 99.5 %", "Glycerin", "56-81-5"),
            List.of("Cetyl alcohol C16", "Cetyl Alcohol", "36653-82-4"),
            List.of("Xanthan gum clear", "Xanthan Gum", "11138-66-2"),
            List.of("Niacinamide PC", "Niacinamide", "98-92-0"),
            List.of("Panthenol 75 %", "Panthenol", "81-13-0"),
            List.of("Citric acid monohydrate", "Citric Acid", "5949-29-1"),
            List.of("Squalane olive", "Squalane", "111-01-3"),
            List.of("Shea butter refined", "Butyrospermum Parkii Butter", "194043-92-0"),
            List.of("Shea butter unrefined", "Butyrospermum Parkii Butter", "194043-92-0"),
            List.of("Sweet almond oil", "Prunus Amygdalus Dulcis Oil", "8007-69-0"),
            List.of("Lactic acid 80 %", "Lactic Acid", "50-21-5"),
            List.of("Emulsifier 165", "Glyceryl Stearate (and) PEG-100 Stearate", ""));

    private static final List<String> SUPPLIERS = List.of(
            "Fen & Moor", "Havre Chimie", "Nordwind Rohstoffe", "Ostia Materie", "Sierra Clara", "Larch Oils Ltd");

    private final Random random;
    private final Tongue tongue;
    private final Layout layout;
    private final Basis basis;
    private final Place place;
    private final Packs packs;
    private final Dated dated;
    private final Validity validity;
    private final Kind kind;
    private final String unit;
    private final String currency;
    private final boolean breaksInPacks;
    private final List<Integer> steps = new ArrayList<>();
    private final List<Truth.Price> prices = new ArrayList<>();
    private final List<List<Truth.Price>> packsOfItems = new ArrayList<>();
    private final LocalDate day;
    private final @Nullable LocalDate until;
    private final int days;
    private final String supplier;
    private final int dateStyle;
    private final int word;
    private final GoesOn goesOn;
    private final Charge charge;

    ListMaker(long seed) {
        random = new Random(seed * 7919 + 17);
        tongue = any(Tongue.values());
        kind = any(Kind.values());
        layout = any(Layout.values());
        packs = layout == Layout.PACKS_AS_COLUMNS ? Packs.TEXT : any(Packs.values());
        basis = random.nextInt(3) == 0 ? Basis.PACK : any(Basis.values());
        Place somewhere = any(Place.values());
        place = somewhere == Place.FORMAT && kind != Kind.XLSX ? Place.HEADER : somewhere;
        dated = any(Dated.values());
        validity = any(Validity.values());
        unit = random.nextInt(6) == 0 ? "L" : "kg";
        currency = any("EUR", "EUR", "USD", "GBP", "CHF");
        breaksInPacks = random.nextBoolean();
        day = LocalDate.of(2026, 7 + random.nextInt(5), 1 + random.nextInt(28));
        days = any(30, 60, 90);
        until = switch (validity) {
            case NONE -> null;
            case DAYS -> day.plusDays(days);
            default -> LocalDate.of(2027, 1 + random.nextInt(6), 1 + random.nextInt(28));
        };
        supplier = SUPPLIERS.get(random.nextInt(SUPPLIERS.size()));
        dateStyle = random.nextInt(4);
        word = random.nextInt(100);
        Random more = new Random(seed * 6367 + 5);
        GoesOn going = GoesOn.values()[more.nextInt(GoesOn.values().length)];
        goesOn = layout == Layout.A_ROW_A_BREAK ? going : GoesOn.SAYING_ALL;
        boolean charged = layout == Layout.A_ROW_A_BREAK || layout == Layout.A_ROW_A_PACK;
        charge = charged && more.nextInt(3) == 0 ? Charge.values()[more.nextInt(Charge.values().length)] : Charge.NONE;
        invent();
    }

    @SafeVarargs
    private <T> T any(T... all) {
        return all[random.nextInt(all.length)];
    }

    private boolean hasBreaks() {
        return layout != Layout.A_ROW_A_PACK && layout != Layout.PACKS_AS_COLUMNS;
    }

    private void invent() {
        TreeSet<Integer> all = new TreeSet<>();
        int breaks = hasBreaks() ? 1 + random.nextInt(2) : 0;
        while (all.size() < breaks) {
            all.add(breaksInPacks ? 2 + random.nextInt(12) : 50 * (20 + random.nextInt(40)));
        }
        steps.addAll(all);
        List<String> sizes = new ArrayList<>(List.of("1", "5", "10", "25", "190"));
        if (packs == Packs.MULTIPLE) {
            sizes = new ArrayList<>(List.of("5", "10", "20"));
        }
        List<List<String>> names = new ArrayList<>(ITEMS);
        Collections.shuffle(names, random);
        int count = 4 + random.nextInt(4);
        List<String> fixed = null;
        for (List<String> name : names.subList(0, count)) {
            Collections.shuffle(sizes, random);
            List<String> own = new ArrayList<>(sizes.subList(0, 1 + random.nextInt(2)));
            if (layout == Layout.PACKS_AS_COLUMNS) {
                fixed = fixed == null ? List.of("5", "25", "190") : fixed;
                own = new ArrayList<>(fixed);
            }
            BigDecimal perUnit = BigDecimal.valueOf(200 + random.nextInt(4000), 2);
            for (String size : own) {
                List<Truth.Price> one = new ArrayList<>();
                one.add(price(name.get(0), size, BigDecimal.ZERO, perUnit));
                for (int step : steps) {
                    perUnit = perUnit.multiply(new BigDecimal("0.93")).setScale(2, RoundingMode.HALF_UP);
                    BigDecimal from = breaksInPacks
                            ? new BigDecimal(size).multiply(BigDecimal.valueOf(step))
                            : BigDecimal.valueOf(step);
                    one.add(price(name.get(0), size, from, perUnit));
                }
                packsOfItems.add(one);
                prices.addAll(one);
            }
        }
    }

    private Truth.Price price(String item, String size, BigDecimal from, BigDecimal perUnit) {
        BigDecimal pack = new BigDecimal(size);
        return switch (basis) {
            case PACK ->
                new Truth.Price(item, pack, unit, from, perUnit.multiply(pack).setScale(2, RoundingMode.HALF_UP), null);
            case UNIT -> new Truth.Price(item, pack, unit, from, perUnit, BigDecimal.ONE);
            case HUNDRED ->
                new Truth.Price(
                        item,
                        pack,
                        unit,
                        from,
                        perUnit.movePointLeft(1).setScale(3, RoundingMode.HALF_UP),
                        new BigDecimal("0.1"));
        };
    }

    /** The list, with what it says. */
    ListCase make() {
        Paper paper = new Paper();
        titles(paper);
        table(paper);
        footer(paper);
        String name = "list" + (dated == Dated.FILE_NAME ? "-" + day : "");
        Truth truth = new Truth(
                supplier,
                day,
                until,
                currency,
                prices.stream().map(this::charged).toList());
        return switch (kind) {
            case XLSX -> new ListCase(name + ".xlsx", paper.xlsx(false), truth, described());
            case XLSX_AS_TEXT -> new ListCase(name + ".xlsx", paper.xlsx(true), truth, described());
            case SEMICOLONS -> new ListCase(name + ".csv", paper.text(';'), truth, described());
            case COMMAS -> new ListCase(name + ".csv", paper.text(','), truth, described());
            case TABS -> new ListCase(name + ".txt", paper.text('\t'), truth, described());
        };
    }

    /** What a person who knows the list answers; empty where even they could not say. */
    Optional<String> answer(Question question) {
        String field = question.field();
        return switch (field) {
            case "decimals" -> Optional.of(tongue.decimal == ',' ? "comma" : "point");
            case "dates" -> Optional.of("day first");
            case "currency" -> Optional.of(currency);
            case "breaks in" -> Optional.of(breaksInPacks ? "packs" : unit);
            case "price per" -> Optional.of(basis == Basis.PACK ? "pack" : perText());
            case "blank items" -> Optional.of("as above");
            case "first day" -> Optional.of(day.toString());
            case "last day" -> Optional.of(until == null ? "none" : until.toString());
            case "quoted on" -> Optional.of(day.toString());
            case "columns of quantities" -> Optional.of("packs");
            case "columns" -> column(question);
            default ->
                question.choices().contains("as above")
                        ? Optional.of("as above")
                        : question.choices().contains("case") ? Optional.of("case") : Optional.empty();
        };
    }

    private Optional<String> column(Question question) {
        String header = question.key();
        if (header.equals(chargeHead())) {
            return question.choices().stream()
                    .filter(choice -> choice.endsWith("like the price"))
                    .findFirst();
        }
        String begin = layout == Layout.PACKS_AS_COLUMNS ? "price of" : "price from";
        if (layout == Layout.PAIRS && header.startsWith(one(tongue.heads("quantity")))) {
            begin = "from quantity";
        }
        String wanted = begin;
        return question.choices().stream()
                .filter(choice -> choice.startsWith(wanted))
                .findFirst();
    }

    private String described() {
        return String.join(
                " ",
                tongue.name(),
                kind.name(),
                layout.name(),
                "per " + basis,
                "said in " + place,
                "packs " + packs,
                "dated in " + dated,
                "valid " + validity,
                breaksInPacks ? "breaks in packs" : "breaks in " + unit,
                currency,
                "goes on " + goesOn,
                "charge " + charge);
    }

    /** The price with what the list adds or takes off. */
    private Truth.Price charged(Truth.Price one) {
        BigDecimal price = switch (charge) {
            case NONE -> one.price();
            case DISCOUNT -> one.price().multiply(BigDecimal.ONE.subtract(DISCOUNT.movePointLeft(2)));
            case FREIGHT -> one.price().add(FREIGHT);
        };
        return new Truth.Price(one.item(), one.size(), one.unit(), one.from(), price, one.per());
    }

    private String chargeHead() {
        boolean discount = charge == Charge.DISCOUNT;
        return switch (tongue) {
            case ENGLISH -> discount ? "Discount %" : "Freight";
            case GERMAN -> discount ? "Rabatt %" : "Fracht";
            case FRENCH -> discount ? "Remise %" : "Frais de port";
            case ITALIAN -> discount ? "Sconto %" : "Trasporto";
            case SPANISH -> discount ? "Descuento %" : "Portes";
        };
    }

    /** A row of a further break, with blank cells or ditto marks for what the one above says. */
    private void goOn(Map<String, Val> row, Set<String> own) {
        String ditto = switch (tongue) {
            case ENGLISH -> "ditto";
            case GERMAN -> "wie oben";
            case FRENCH, ITALIAN -> "idem";
            case SPANISH -> "ídem";
        };
        row.replaceAll((head, val) ->
                own.contains(head) || goesOn == GoesOn.SAYING_ALL || val.text().isEmpty()
                        ? val
                        : goesOn == GoesOn.DITTO ? Val.of(ditto) : Val.BLANK);
    }

    private void titles(Paper paper) {
        if (random.nextBoolean()) {
            paper.row(Val.of(supplier + " – " + one(tongue.titles)));
        } else {
            paper.row(Val.of(one(tongue.titles)));
            paper.row(Val.of(one(tongue.suppliers) + ": " + supplier));
        }
        switch (dated) {
            case TITLE -> paper.row(Val.of(one(tongue.asOf).formatted(written(day))));
            case LABEL -> paper.row(Val.of(one(tongue.heads("quoted")) + ":"), Val.day(day, written(day)));
            case COLUMN, FILE_NAME -> {}
        }
        if (validity == Validity.TITLE && until != null) {
            paper.row(Val.of(one(tongue.until).formatted(written(until))));
        }
        if (validity == Validity.DAYS) {
            paper.row(Val.of(one(tongue.days).formatted(days)));
        }
        if (place == Place.TITLE) {
            String whatFor = basis == Basis.PACK ? container() : perText();
            paper.row(Val.of(one(tongue.pricesIn).formatted(currency, whatFor)));
        }
        if (random.nextBoolean()) {
            paper.blank();
        }
    }

    private void footer(Paper paper) {
        if (validity == Validity.FOOTER && until != null) {
            if (random.nextBoolean()) {
                paper.blank();
            }
            paper.row(Val.of(one(tongue.until).formatted(written(until))));
        }
    }

    private String one(List<String> words) {
        return words.get(word % words.size());
    }

    private String container() {
        return one(tongue.containers);
    }

    private String perText() {
        return basis == Basis.HUNDRED ? unit.equals("L") ? "100 ml" : "100 g" : unit;
    }

    private String sign() {
        return switch (currency) {
            case "EUR" -> word % 2 == 0 ? "€" : "EUR";
            case "GBP" -> word % 2 == 0 ? "£" : "GBP";
            default -> currency;
        };
    }

    private String whatFor() {
        return basis == Basis.PACK ? container() : perText();
    }

    /** A day as this language writes it. */
    private String written(LocalDate date) {
        String month = tongue.months.get(date.getMonthValue() - 1);
        return switch (dateStyle) {
            case 0 -> date.toString();
            case 1 ->
                tongue == Tongue.ENGLISH
                        ? date.getDayOfMonth() + " " + month.substring(0, 3) + " " + date.getYear()
                        : String.format(
                                Locale.ROOT,
                                "%02d.%02d.%d",
                                date.getDayOfMonth(),
                                date.getMonthValue(),
                                date.getYear());
            case 2 ->
                String.format(
                        Locale.ROOT,
                        "%02d.%02d.%02d",
                        date.getDayOfMonth(),
                        date.getMonthValue(),
                        date.getYear() % 100);
            default ->
                switch (tongue) {
                    case ENGLISH, ITALIAN -> date.getDayOfMonth() + " " + month + " " + date.getYear();
                    case FRENCH ->
                        (date.getDayOfMonth() == 1 ? "1er" : date.getDayOfMonth()) + " " + month + " " + date.getYear();
                    case GERMAN -> date.getDayOfMonth() + ". " + month + " " + date.getYear();
                    case SPANISH -> date.getDayOfMonth() + " de " + month + " de " + date.getYear();
                };
        };
    }

    private String local(BigDecimal number) {
        String plain = number.toPlainString();
        int point = plain.indexOf('.');
        String whole = point < 0 ? plain : plain.substring(0, point);
        String rest = point < 0 ? "" : tongue.decimal + plain.substring(point + 1);
        StringBuilder grouped = new StringBuilder(whole);
        for (int at = whole.length() - 3; at > 0; at -= 3) {
            grouped.insert(at, tongue.thousands);
        }
        return grouped + rest;
    }

    private Val priceCell(Truth.Price price) {
        String text = local(price.price());
        return switch (place) {
            case CELL ->
                Val.of(word % 2 == 0 ? text + " " + sign() + "/" + whatFor() : sign() + " " + text + "/" + whatFor());
            case FORMAT -> {
                String shown = price.price().scale() == 3 ? "0.000" : "#,##0.00";
                yield Val.number(price.price(), text, shown + "\" " + sign() + "/" + whatFor() + "\"");
            }
            default -> Val.number(price.price(), text, "");
        };
    }

    private String priceHead() {
        String price = one(tongue.heads("price"));
        if (place != Place.HEADER) {
            return price;
        }
        return switch (word % 3) {
            case 0 -> price + " " + sign() + "/" + whatFor();
            case 1 -> price + " (" + sign() + "/" + whatFor() + ")";
            default ->
                price + " " + one(tongue.per).strip() + (one(tongue.per).equals("/") ? "" : " ") + whatFor() + " ("
                        + sign() + ")";
        };
    }

    private String breakHead(int step) {
        String count = breaksInPacks ? step + " " + one(tongue.packs) : step + " " + unit;
        String head = step == 0
                ? (breaksInPacks ? tongue.from + "1 " + one(tongue.packs) : tongue.from + "1 " + unit)
                : tongue.from + count;
        return place == Place.HEADER ? head + " (" + sign() + "/" + whatFor() + ")" : head;
    }

    private void packCells(Map<String, Val> row, Truth.Price price) {
        String size = local(price.size());
        String head = one(tongue.heads("pack"));
        switch (packs) {
            case SIZE_AND_UNIT -> {
                row.put(head, Val.number(price.size(), size, ""));
                row.put(one(tongue.heads("unit")), Val.of(unit));
            }
            case TEXT -> row.put(head, Val.of(size + " " + unit));
            case WITH_WORD ->
                row.put(
                        head,
                        Val.of(
                                word % 2 == 0
                                        ? size + " " + unit + " " + container()
                                        : container() + " " + size + " " + unit));
            case MULTIPLE ->
                row.put(
                        head,
                        Val.of("5 x "
                                + price.size()
                                        .divide(BigDecimal.valueOf(5))
                                        .stripTrailingZeros()
                                        .toPlainString()
                                + " " + unit));
            case NUMBER_UNDER_UNIT -> row.put(head + " (" + unit + ")", Val.number(price.size(), size, ""));
        }
    }

    private Map<String, Val> rowOf(Truth.Price price) {
        Map<String, Val> row = new LinkedHashMap<>();
        List<String> item = ITEMS.stream()
                .filter(known -> known.get(0).equals(price.item()))
                .findFirst()
                .orElseThrow();
        if (word % 3 == 0) {
            row.put(one(tongue.heads("code")), Val.of("RM-" + (1000 + ITEMS.indexOf(item))));
        }
        row.put(one(tongue.heads("item")), Val.of(item.get(0)));
        if (word % 4 < 2) {
            row.put(one(tongue.heads("inci")), Val.of(item.get(1)));
        }
        if (word % 5 == 0) {
            row.put(one(tongue.heads("cas")), Val.of(item.get(2)));
        }
        if (layout != Layout.PACKS_AS_COLUMNS) {
            packCells(row, price);
        }
        return row;
    }

    private void afterPrices(Map<String, Val> row) {
        if (place == Place.COLUMN) {
            row.put(one(tongue.heads("per")), Val.of(whatFor()));
            row.put(one(tongue.heads("currency")), Val.of(currency));
        }
        if (dated == Dated.COLUMN) {
            row.put(one(tongue.heads("quoted")), Val.day(day, written(day)));
        }
        if (validity == Validity.COLUMN && until != null) {
            row.put(one(tongue.heads("until")), Val.day(until, written(until)));
        }
        if (charge != Charge.NONE) {
            BigDecimal figure = charge == Charge.DISCOUNT ? DISCOUNT : FREIGHT;
            row.put(chargeHead(), Val.number(figure, local(figure), ""));
        }
        if (word % 7 < 3) {
            row.put(one(tongue.heads("remark")), Val.of(word % 2 == 0 ? "EU" : ""));
        }
    }

    private void table(Paper paper) {
        List<Map<String, Val>> rows = new ArrayList<>();
        if (layout == Layout.PACKS_AS_COLUMNS) {
            Map<String, Map<String, Val>> byItem = new LinkedHashMap<>();
            for (Truth.Price price : prices) {
                byItem.computeIfAbsent(price.item(), item -> rowOf(price))
                        .put(
                                local(price.size()) + " " + unit
                                        + (place == Place.HEADER ? " (" + sign() + "/" + whatFor() + ")" : ""),
                                priceCell(price));
            }
            rows.addAll(byItem.values());
            rows.forEach(this::afterPrices);
        } else {
            packsOfItems.forEach(breaks -> addRows(rows, breaks));
        }
        paper.table(rows);
    }

    private void addRows(List<Map<String, Val>> rows, List<Truth.Price> breaks) {
        switch (layout) {
            case A_ROW_A_BREAK -> {
                for (int at = 0; at < breaks.size(); at++) {
                    Map<String, Val> row = rowOf(breaks.get(at));
                    int step = at == 0 ? 1 : steps.get(at - 1);
                    String head = one(tongue.heads("from"));
                    if (breaksInPacks) {
                        row.put(head, Val.of(step + " " + one(tongue.packs)));
                    } else {
                        row.put(head, Val.of(local(BigDecimal.valueOf(step)) + " " + unit));
                    }
                    row.put(priceHead(), priceCell(breaks.get(at)));
                    afterPrices(row);
                    if (at > 0) {
                        goOn(row, Set.of(head, priceHead()));
                    }
                    rows.add(row);
                }
            }
            case BREAKS_AS_COLUMNS -> {
                Map<String, Val> row = rowOf(breaks.get(0));
                for (int at = 0; at < breaks.size(); at++) {
                    row.put(breakHead(at == 0 ? 0 : steps.get(at - 1)), priceCell(breaks.get(at)));
                }
                afterPrices(row);
                rows.add(row);
            }
            case PAIRS -> {
                Map<String, Val> row = rowOf(breaks.get(0));
                String per = place == Place.HEADER ? " (" + sign() + "/" + whatFor() + ")" : "";
                String counted = breaksInPacks ? one(tongue.packs) : unit;
                for (int at = 0; at < breaks.size(); at++) {
                    BigDecimal step = BigDecimal.valueOf(at == 0 ? 1 : steps.get(at - 1));
                    row.put(
                            one(tongue.heads("quantity")) + " " + (at + 1) + " (" + counted + ")",
                            Val.number(step, local(step), ""));
                    row.put(one(tongue.heads("price")) + " " + (at + 1) + per, priceCell(breaks.get(at)));
                }
                afterPrices(row);
                rows.add(row);
            }
            case BREAKS_AS_TEXT -> {
                Map<String, Val> row = rowOf(breaks.get(0));
                List<String> parts = new ArrayList<>();
                for (int at = 0; at < breaks.size(); at++) {
                    String counted = breaksInPacks ? one(tongue.packs) : unit;
                    String step = (at == 0 ? 1 : steps.get(at - 1)) + " " + counted;
                    parts.add(tongue.from + step + ": "
                            + priceCell(breaks.get(at)).text());
                }
                row.put(priceHead(), Val.of(String.join(" / ", parts)));
                afterPrices(row);
                rows.add(row);
            }
            default -> {
                Map<String, Val> row = rowOf(breaks.get(0));
                row.put(priceHead(), priceCell(breaks.get(0)));
                afterPrices(row);
                rows.add(row);
            }
        }
    }
}
