package perkilo.report.portfolio;

import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.table.Column;

/** Columns that several tables of a portfolio have. */
final class PortfolioColumns {

    private PortfolioColumns() {}

    /** A book's name, with a link to its result, or to the book if there is none. */
    static <R> Column<R> book(Function<R, PortfolioBook> book) {
        return Column.<R>of("book", "Book")
                .words(entry -> book.apply(entry).name())
                .look(Look.LABEL)
                .link(entry -> {
                    Origin result = book.apply(entry).result();
                    return result == null ? Origin.NONE : result;
                })
                .file(entry ->
                        book.apply(entry).result() == null ? book.apply(entry).address() : null);
    }

    /** An amount. */
    static <R> Column<R> amount(
            String key, String heading, NumberFormat money, Function<R, @Nullable BigDecimal> value) {
        return Column.<R>of(key, heading).value(value).format(money);
    }

    /** One column as a fraction of another; empty if that is zero. */
    static <R> Column<R> share(Column<R> part, Column<R> whole) {
        return Column.<R>of("leftOfOutlay", "Left of outlay")
                .formula(row -> ratio(row.ref(part), row.ref(whole)))
                .format(NumberFormat.PERCENT);
    }

    /** One divided by another; null if that is zero. */
    static @Nullable Expr ratio(Expr part, Expr whole) {
        return whole.value().signum() == 0 ? null : part.over(whole);
    }
}
