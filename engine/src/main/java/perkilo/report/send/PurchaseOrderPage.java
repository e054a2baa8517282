package perkilo.report.send;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Buyer;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.report.part.Landing;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;
import perkilo.units.Currencies;

/**
 * One purchase order on a sheet, as the supplier gets it: the two addresses, days and terms, the lines, and the value
 * of the goods.
 *
 * <p>Of the charges it has only the supplier's own charge for a small order. Freight, insurance, duty and taxes are not
 * on it: who invoices them, and how much, depends on the carrier and on the supplier's invoice.
 */
final class PurchaseOrderPage {

    private static final int MOST_PRICE_DIGITS = 6;
    private static final int MOST_QUANTITY_DIGITS = 3;
    private static final int LETTERS_LEFT = 46;
    private static final int LETTERS_RIGHT = 46;
    private static final int LEAST_ADDRESS_ROWS = 3;

    /**
     * Where the packs and prices of lines come from.
     *
     * @param packs of a line
     * @param price of one pack of a line, in the offer's currency
     */
    record Figures(Function<OrderToSend.Line, Expr> packs, Function<OrderToSend.Line, Expr> price) {

        /** As the plan has them, as plain numbers. */
        static final Figures FIXED = new Figures(line -> Expr.of(line.packs()), PurchaseOrderPage::pricePerPack);
    }

    /** A line of the upper part: words on the left, and a name with words on the right. */
    private record Fact(String name, String words, @Nullable LocalDate day) {

        static Fact of(String name, String words) {
            return new Fact(name, words, null);
        }
    }

    /** A figure below the lines. */
    private record Sum(String name, Expr figure, CurrencyUnit currency, Look look) {}

    private final SheetBuilder sheet;
    private final Buyer buyer;
    private final OrderToSend order;
    private final int first;
    private int headRow;

    private final Column<OrderToSend.Line> number = Column.<OrderToSend.Line>of("number", "No.")
            .value(line -> BigDecimal.valueOf(line.number()))
            .format(NumberFormat.WHOLE)
            .width(5);
    private final Column<OrderToSend.Line> article = Column.<OrderToSend.Line>of("article", "Article number")
            .words(line -> line.article().isEmpty() ? null : line.article())
            .width(15);
    private final Column<OrderToSend.Line> item = Column.<OrderToSend.Line>of("item", "Item")
            .words(OrderToSend.Line::item)
            .width(37);
    private final Column<OrderToSend.Line> pack = Column.<OrderToSend.Line>of("pack", "Pack")
            .words(OrderToSend.Line::pack)
            .width(12);
    private final Column<OrderToSend.Line> packs;
    private final Column<OrderToSend.Line> quantity;
    private final Column<OrderToSend.Line> price;
    private final Column<OrderToSend.Line> total;

    /**
     * An order's page; nothing is written yet.
     *
     * @param row the first, from zero
     */
    PurchaseOrderPage(SheetBuilder sheet, Buyer buyer, OrderToSend order, Figures figures, int row) {
        this.sheet = sheet;
        this.buyer = buyer;
        this.order = order;
        this.first = row;
        packs = Column.<OrderToSend.Line>of("packs", "Packs")
                .value(line -> BigDecimal.valueOf(line.packs()))
                .formula(line -> figures.packs().apply(line.entry()))
                .format(NumberFormat.WHOLE)
                .width(8);
        quantity = Column.<OrderToSend.Line>of("quantity", "Quantity")
                .formula(line -> line.ref(packs)
                        .times(Expr.of(line.entry().listing().offer().packSize().value())))
                .format(PurchaseOrderPage::quantityFormat)
                .width(14);
        price = Column.<OrderToSend.Line>of("price", "Price per pack")
                .formula(line -> figures.price().apply(line.entry()))
                .format(PurchaseOrderPage::priceFormat)
                .width(16);
        total = Column.<OrderToSend.Line>of("total", "Total")
                .value(OrderToSend.Line::goods)
                .formula(line ->
                        line.ref(packs).times(line.ref(price)).rounded(Currencies.minorDigits(currency(line.entry()))))
                .format(line -> money(currency(line)))
                .width(17);
    }

    /** Writes the page, and returns the row after it, from zero. */
    int write() {
        sheet.title(first, "Purchase order " + order.number());
        int upper = blocks(first + 2, "To", to(), facts());
        int lower = blocks(upper + 1, "From", from(), deliverTo());
        Placed<OrderToSend.Line> lines = Table.of(number, article, item, pack, packs, quantity, price, total)
                .at(sheet, lower + 1, order.lines());
        headRow = lower + 1;
        lines.write();
        int sums = sums(lines);
        sheet.hint(sums + 1, "Prices are without taxes, freight and duty unless the delivery terms say otherwise.");
        sheet.hint(sums + 2, "Please confirm the order, its prices and the day of delivery.");
        return sums + 3;
    }

    /** The row with the heads of the lines' columns; known once the page is written. */
    int headRow() {
        return headRow;
    }

    private int blocks(int row, String name, List<String> left, List<Fact> right) {
        sheet.hint(row, name);
        Column<String> words = Column.<String>of("words", "")
                .words(line -> line)
                .look(line -> !left.isEmpty() && line.equals(left.get(0)) ? Look.ANSWER : Look.LETTER);
        Table.of(words).withoutHeadings(sheet, row + 1, left).write();
        Column<Fact> names = Column.<Fact>of("name", "")
                .words(fact -> fact.name().isEmpty() ? null : fact.name())
                .look(Look.HINT);
        Column<Fact> says = Column.<Fact>of("says", "")
                .words(fact -> fact.words().isEmpty() ? null : fact.words())
                .formula(fact -> {
                    LocalDate day = fact.entry().day();
                    return day == null ? null : Expr.day(day);
                })
                .format(NumberFormat.DATE)
                .look(Look.LETTER);
        int column = placeOf(pack);
        Table.of(names).withoutHeadings(sheet, row, column, right).write();
        Table.of(says).withoutHeadings(sheet, row, placeOf(quantity), right).write();
        return row + 1 + Math.max(Math.max(left.size(), LEAST_ADDRESS_ROWS), right.size());
    }

    /** Where a column of the lines is on the sheet. */
    private int placeOf(Column<OrderToSend.Line> column) {
        return Table.of(number, article, item, pack, packs, quantity, price, total)
                .at(sheet, first, List.of())
                .column(column);
    }

    private List<String> to() {
        Supplier supplier = order.supplier();
        List<String> lines = new ArrayList<>(Letters.wrapped(supplier.name(), LETTERS_LEFT));
        lines.addAll(Letters.address(supplier.details().address(), LETTERS_LEFT));
        Letters.add(lines, "Attention: ", supplier.details().contact(), LETTERS_LEFT);
        Letters.add(lines, "", supplier.details().email(), LETTERS_LEFT);
        return lines;
    }

    private List<String> from() {
        List<String> lines = new ArrayList<>(Letters.wrapped(buyer.name(), LETTERS_LEFT));
        lines.addAll(Letters.address(buyer.address(), LETTERS_LEFT));
        Letters.add(lines, "Contact: ", buyer.contact(), LETTERS_LEFT);
        Letters.add(lines, "", buyer.email(), LETTERS_LEFT);
        Letters.add(lines, "VAT number: ", buyer.taxNumber(), LETTERS_LEFT);
        return lines;
    }

    private List<Fact> facts() {
        Supplier supplier = order.supplier();
        List<Fact> facts = new ArrayList<>();
        facts.add(Fact.of("Order number", order.number()));
        facts.add(new Fact("Order date", "", order.orderedOn()));
        facts.add(new Fact("Deliver by", "", order.arrivesOn()));
        add(facts, "Delivery terms", supplier.details().deliveryTerms());
        add(facts, "Payment terms", PaymentWords.of(supplier.payment()));
        add(facts, "Customer number", supplier.details().ourNumber());
        return facts;
    }

    private List<Fact> deliverTo() {
        List<Fact> facts = new ArrayList<>();
        List<String> address =
                buyer.deliverTo().isEmpty() ? List.of("") : Letters.address(buyer.deliverTo(), LETTERS_RIGHT);
        for (String line : address) {
            facts.add(Fact.of(facts.isEmpty() ? "Deliver to" : "", line));
        }
        return facts;
    }

    private static void add(List<Fact> facts, String name, String words) {
        String rest = name;
        for (String line : words.isEmpty() ? List.<String>of() : Letters.lines(words, LETTERS_RIGHT)) {
            facts.add(Fact.of(rest, line));
            rest = "";
        }
    }

    /** Writes the sums, and returns the row after them, from zero. */
    private int sums(Placed<OrderToSend.Line> lines) {
        List<Sum> sums = new ArrayList<>();
        Map<CurrencyUnit, List<Expr>> goods = new LinkedHashMap<>();
        for (OrderToSend.Line line : lines.rows()) {
            goods.computeIfAbsent(currency(line), any -> new ArrayList<>()).add(lines.ref(line, total));
        }
        boolean one = goods.size() == 1;
        CurrencyUnit charged = order.supplier().currency();
        boolean charge = order.smallOrderCharge().signum() > 0;
        goods.forEach((currency, terms) -> sums.add(
                new Sum("Goods", one ? lines.sum(total) : Expr.sum(terms), currency, charge ? Look.TOTAL : Look.KEY)));
        if (charge) {
            sums.add(new Sum("Small-order charge", Expr.of(order.smallOrderCharge()), charged, Look.PLAIN));
        }
        Column<Sum> names = Column.<Sum>of("name", "").words(Sum::name).look(Look.LETTER);
        Column<Sum> figures = Column.<Sum>of("figure", "")
                .formula(sum -> sum.entry().figure())
                .format(sum -> money(sum.currency()))
                .look(Sum::look);
        int column = lines.column(total);
        Placed<Sum> placed = Table.of(figures).withoutHeadings(sheet, lines.next(), column, sums);
        Table.of(names)
                .withoutHeadings(sheet, lines.next(), lines.column(price), sums)
                .write();
        placed.write();
        if (!charge || !goods.keySet().equals(Set.of(charged))) {
            return placed.next();
        }
        List<Sum> all = List.of(new Sum("Order total", placed.sum(figures), charged, Look.KEY));
        Table.of(names)
                .withoutHeadings(sheet, placed.next(), lines.column(price), all)
                .write();
        return Table.of(figures)
                .withoutHeadings(sheet, placed.next(), column, all)
                .write()
                .next();
    }

    private static CurrencyUnit currency(OrderToSend.Line line) {
        return line.listing().offer().currency();
    }

    /** The price of a pack at the price break of the line's quantity, as a plain number. */
    private static Expr pricePerPack(OrderToSend.Line line) {
        Expr inPackUnit = Landing.inPackUnit(line.listing(), Expr.of(line.packs()));
        return Expr.of(Landing.price(line.listing(), inPackUnit).value());
    }

    private static NumberFormat money(CurrencyUnit currency) {
        return NumberFormat.money(currency.getCurrencyCode(), Currencies.minorDigits(currency));
    }

    /** Shows all decimals of a price, up to six. */
    private static NumberFormat priceFormat(OrderToSend.Line line) {
        CurrencyUnit currency = currency(line);
        int exact = pricePerPack(line).value().stripTrailingZeros().scale();
        int digits = Math.max(Currencies.minorDigits(currency), Math.min(exact, MOST_PRICE_DIGITS));
        return NumberFormat.money(currency.getCurrencyCode(), digits);
    }

    /** In the pack's unit, with the decimals of the pack size. */
    private static NumberFormat quantityFormat(OrderToSend.Line line) {
        Offer offer = line.listing().offer();
        int decimals = Math.min(
                Math.max(0, offer.packSize().value().stripTrailingZeros().scale()), MOST_QUANTITY_DIGITS);
        String number =
                decimals == 0 ? NumberFormat.WHOLE.code() : NumberFormat.WHOLE.code() + "." + "0".repeat(decimals);
        return new NumberFormat(number + "\\ \"" + line.unit() + "\"");
    }
}
