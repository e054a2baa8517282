package perkilo.report.prices;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.offers.history.PriceChange;
import perkilo.offers.history.PriceChanges;
import perkilo.offers.history.QuotedPrice;
import perkilo.origin.Decimals;
import perkilo.report.part.QuoteDates;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Table;

/** The changed prices, the largest changes first. */
public final class PriceTable {

    static final int DECIMALS = 4;

    private static final Table<QuotedPrice> PRICE = Table.of(
            Column.<QuotedPrice>of("price", "").json(QuotedPrice::perUnit),
            Column.<QuotedPrice>of("per", "").json(price -> price.unit().symbol()),
            Column.<QuotedPrice>of("currency", "")
                    .json(price -> price.offer().currency().getCurrencyCode()),
            Column.<QuotedPrice>of("quotedOn", "")
                    .json(price -> String.valueOf(price.offer().quotedOn())));

    private final List<PriceChange> rows;

    final Column<PriceChange> item = Column.<PriceChange>of("item", "Item")
            .words(change -> change.offer().item())
            .look(Look.LABEL)
            .link(change -> change.offer().origin())
            .width(30)
            .json()
            .terminal(change -> change.offer().item());

    private final Column<PriceChange> supplier = Column.<PriceChange>of("supplier", "Supplier")
            .words(change -> change.offer().supplier())
            .width(30)
            .json()
            .terminal(change -> change.offer().supplier());

    private final Column<PriceChange> pack = Column.<PriceChange>of("pack", "Pack")
            .words(change -> change.offer().pack())
            .width(12)
            .json()
            .terminal(change -> change.offer().pack());

    final Column<PriceChange> from = Column.<PriceChange>of("from", "From")
            .words(change -> isFromFirst(change)
                    ? "first pack"
                    : quantity(change) + " " + change.offer().packUnit().symbol())
            .width(12)
            .json(PriceChange::from)
            .terminal(change -> isFromFirst(change) ? "" : quantity(change));

    final Column<PriceChange> per =
            Column.<PriceChange>of("per", "Price per").words(PriceTable::unit).width(9);

    private final Column<PriceChange> before =
            price("before", "Price before", PriceChange::before).terminal("Before", change -> words(change.before()));

    private final Column<PriceChange> now =
            price("now", "Price now", PriceChange::now).terminal("Now", change -> words(change.now()));

    private final Column<PriceChange> change = Column.<PriceChange>of("change", "Change")
            .formula(row -> isComparable(row.entry()) ? row.ref(now).minus(row.ref(before)) : null)
            .format(change -> money(change.offer().currency().getCurrencyCode()))
            .width(15);

    final Column<PriceChange> fraction = Column.<PriceChange>of("changePercent", "Change %")
            .value(change -> change.fraction().orElse(null))
            .formula(row -> isComparable(row.entry()) ? row.ref(change).over(row.ref(before)) : null)
            .format(NumberFormat.PERCENT)
            .width(11)
            .mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.WARNING))
            .json(change ->
                    change.fraction().map(part -> part.movePointRight(2)).orElse(null))
            .terminal(
                    "Change",
                    change -> change.fraction()
                            .map(PriceTable::percent)
                            .orElse(change.kind().word()));

    final Column<PriceChange> kind = Column.<PriceChange>of("kind", "What happened")
            .words(change -> change.kind().word())
            .width(24)
            .json();

    /** The columns. */
    public PriceTable(PriceChanges changes) {
        rows = changes.changed();
    }

    /** The table on a sheet. */
    Placed<PriceChange> at(SheetBuilder sheet, int headRow, QuoteDates dates) {
        Column<PriceChange> beforeOn = QuoteDates.dates("beforeOn", "Before, of", day(PriceChange::before));
        Column<PriceChange> nowOn = dates.quotedOn("nowOn", "Now, of", day(PriceChange::now));
        Column<PriceChange> validUntil = dates.validUntil("validUntil", "Valid until", change -> {
            QuotedPrice price = change.now();
            return price == null ? null : price.offer().validUntil();
        });
        return Table.of(
                        item,
                        supplier,
                        pack,
                        from,
                        per,
                        beforeOn.words(unknown(PriceChange::before)).width(13),
                        before,
                        nowOn.words(unknown(PriceChange::now)).width(13),
                        now,
                        change,
                        fraction,
                        validUntil.words(unknown(PriceChange::now)).width(12),
                        kind)
                .at(sheet, headRow, rows);
    }

    /** The table for JSON. */
    public Table.Filled<PriceChange> inJson() {
        return Table.of(supplier, item, pack, from, kind, before, now, fraction).with(rows);
    }

    /**
     * The table for the terminal.
     *
     * @param most the largest number of rows
     */
    public Table.Filled<PriceChange> onTerminal(int most) {
        return Table.of(item, supplier, pack, from, before, now, fraction)
                .with(rows.subList(0, Math.min(most, rows.size())));
    }

    /** A change in per cent: {@code +6.08 %}. */
    static String percent(BigDecimal fraction) {
        return (fraction.signum() > 0 ? "+" : "") + Decimals.amount(fraction.movePointRight(2), 2) + " %";
    }

    static NumberFormat money(String currency) {
        return NumberFormat.money(currency, DECIMALS);
    }

    private static Column<PriceChange> price(
            String key, String heading, Function<PriceChange, @Nullable QuotedPrice> price) {
        return Column.<PriceChange>of(key, heading)
                .value(change -> {
                    QuotedPrice one = price.apply(change);
                    return one == null ? null : one.perUnit();
                })
                .formula(row -> {
                    QuotedPrice one = price.apply(row.entry());
                    return one == null ? null : perUnit(one);
                })
                .format(change -> {
                    QuotedPrice one = price.apply(change);
                    return one == null
                            ? NumberFormat.GENERAL
                            : money(one.offer().currency().getCurrencyCode());
                })
                .width(17)
                .json(change -> {
                    QuotedPrice one = price.apply(change);
                    return one == null ? null : PRICE.one(one);
                });
    }

    private static Expr perUnit(QuotedPrice price) {
        Expr quoted = Expr.input(price.at().price());
        if (price.at().per() == null) {
            return quoted.over(Expr.input(price.offer().packSize()));
        }
        return price.factor().compareTo(BigDecimal.ONE) == 0 ? quoted : quoted.times(Expr.of(price.factor()));
    }

    private static Function<PriceChange, @Nullable LocalDate> day(Function<PriceChange, @Nullable QuotedPrice> price) {
        return change -> {
            QuotedPrice one = price.apply(change);
            return one == null ? null : one.offer().quotedOn();
        };
    }

    /** The words for an unknown day; null if there is no price. */
    private static Function<PriceChange, @Nullable String> unknown(Function<PriceChange, @Nullable QuotedPrice> price) {
        return change -> price.apply(change) == null ? null : QuoteDates.UNKNOWN;
    }

    private static boolean isComparable(PriceChange change) {
        return change.fraction().isPresent();
    }

    private static boolean isFromFirst(PriceChange change) {
        return change.from().signum() == 0;
    }

    private static String quantity(PriceChange change) {
        return Decimals.readable(change.from(), 3);
    }

    private static String unit(PriceChange change) {
        QuotedPrice now = change.now();
        QuotedPrice shown = now == null ? change.before() : now;
        return shown == null ? "" : shown.unit().symbol();
    }

    private static String words(@Nullable QuotedPrice price) {
        return price == null
                ? "–"
                : Decimals.readable(price.perUnit(), DECIMALS) + " "
                        + price.offer().currency().getCurrencyCode() + "/"
                        + price.unit().symbol();
    }
}
