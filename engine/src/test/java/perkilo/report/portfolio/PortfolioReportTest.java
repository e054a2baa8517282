package perkilo.report.portfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import perkilo.costing.Head;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.sheet.Report;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.ResultSheet.Cell;

/** The sheets of a portfolio, from figures that were made up for the test. */
final class PortfolioReportTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    /** 1,000 balms at 2.50, paid 3,000 of which 600 stays; 5,000 at 2.00, paid 9,000 of which 900 stays. */
    private static final PortfolioBook BALMS = book(
            "balms.xlsx",
            "EUR",
            List.of(run("Balm", "1000", "2.50", "3000", "600"), run("Balm", "5000", "2", "9000", "900")));

    private static final PortfolioBook CREAMS =
            book("creams.xlsx", "EUR", List.of(run("Cream", "100", "4", "500", "50")));

    private static final PortfolioBook SOAPS =
            book("soaps.xlsx", "USD", List.of(run("Soap", "200", "1.25", "400", "0")));

    private static final PortfolioBook BROKEN = PortfolioBook.failed(
            "broken.xlsx",
            "broken.xlsx",
            List.of(
                    Finding.error(new Origin("broken.xlsx", "Offers", "F12"), "Price is \"12,5O\""),
                    Finding.warning(new Origin("prices.csv", "", "line 3"), "expired")));

    @Test
    void totals_are_those_of_the_runs() {
        ResultSheet sheet = sheet(BALMS, CREAMS);

        Map<Integer, Cell> all = row(sheet, 0, "All books");
        // 3 runs; 3,000 + 9,000 + 500; 600 + 900 + 50; 1,550 / 12,500
        assertThat(value(all, 2)).isEqualByComparingTo("3");
        assertThat(value(all, 4)).isEqualByComparingTo("12500");
        assertThat(value(all, 5)).isEqualByComparingTo("1550");
        assertThat(value(all, 6)).isEqualByComparingTo("0.124");
        assertThat(formula(all, 4)).startsWith("SUM(");
        assertThat(texts(sheet)).contains("2 books, 3 runs");
    }

    @Test
    void several_sizes_of_a_product_are_not_called_a_sum_that_anybody_pays() {
        assertThat(sentences(sheet(BALMS, CREAMS)))
                .containsExactly("If all runs were made, in all sizes, items would cost 12,500 EUR; 1,550 EUR"
                        + " of that stays in stock");
        assertThat(sentences(sheet(CREAMS, SOAPS)))
                .containsExactly(
                        "All runs together need 500 EUR for items; 50 EUR of that stays in stock",
                        "All runs together need 400 USD for items; 0 USD of that stays in stock");
    }

    @Test
    void a_whole_run_is_its_units_times_the_unit_cost_and_stays_live() {
        ResultSheet sheet = sheet(BALMS);

        Map<Integer, Cell> large = row(sheet, 2, "5000");
        assertThat(value(large, 6)).isEqualByComparingTo("10000");
        assertThat(formula(large, 6)).contains("*");
    }

    @Test
    void amounts_of_two_home_currencies_are_never_added() {
        ResultSheet sheet = sheet(BALMS, SOAPS, CREAMS);

        List<BigDecimal> totals = sheet.cells().values().stream()
                .filter(row -> "All books".equals(text(row.get(0))))
                .map(row -> value(row, 4))
                .toList();
        assertThat(totals)
                .usingElementComparator(BigDecimal::compareTo)
                .containsExactly(new BigDecimal("12500"), new BigDecimal("400"));
        assertThat(texts(sheet))
                .contains("3 books, 4 runs", "All runs, in EUR", "All runs, in USD")
                .containsSubsequence("balms.xlsx", "creams.xlsx", "soaps.xlsx");
        assertThat(sheet.charts()).hasSize(4);
    }

    @Test
    void a_product_is_shown_at_its_largest_run_and_its_heads_add_up() {
        ResultSheet sheet = sheet(BALMS);
        int total = 2 + Head.values().length;

        Map<Integer, Cell> balm = row(sheet, 1, "5000 × Balm");
        assertThat(value(balm, total)).isEqualByComparingTo("2");
        assertThat(value(balm, total + 1)).isEqualByComparingTo("8100");
        assertThat(value(balm, total + 2)).isEqualByComparingTo("900");
        assertThat(texts(sheet)).doesNotContain("1000 × Balm");
    }

    @Test
    void a_product_of_two_books_is_told_by_its_book() {
        PortfolioBook others = book("others.xlsx", "EUR", List.of(run("Balm", "10", "9", "100", "1")));

        assertThat(texts(sheet(BALMS, CREAMS, others))).contains("Balm (balms)", "Balm (others)", "Cream");
    }

    @Test
    void a_book_that_was_not_costed_is_named_first_with_a_link_to_it() {
        Report report = PortfolioReport.of(List.of(BALMS, BROKEN), List.of());
        ResultSheet sheet = report.sheets().get(0);

        Map<Integer, Cell> broken = row(sheet, 0, "broken.xlsx");
        assertThat(text(broken.get(1))).isEqualTo("not costed: 1 error, 1 warning");
        assertThat(link(broken, 0)).isEqualTo(new Origin("broken.xlsx", "", ""));
        assertThat(link(broken, 1).sheet()).isEqualTo("Messages");
        assertThat(texts(sheet)).contains("2 books, 2 runs, 1 not costed");
        assertThat(link(row(sheet, 0, "balms.xlsx"), 0))
                .isEqualTo(new Origin("balms-costed.xlsx", "Cost summary", "A1"));
    }

    @Test
    void what_is_said_of_shared_files_stands_first_and_once() {
        PortfolioBook again = PortfolioBook.failed(
                "again.xlsx",
                "again.xlsx",
                List.of(Finding.error(new Origin("again.xlsx", "Offers", "F12"), "Price is \"12,5O\"")));
        Finding shared = Finding.note(new Origin("words.csv", "", ""), "holds no price list");

        ResultSheet messages = PortfolioReport.of(List.of(BROKEN, again), List.of(shared))
                .sheets()
                .get(1);

        assertThat(texts(messages))
                .containsSubsequence("all", "words.csv", "holds no price list", "broken.xlsx", "again.xlsx");
        assertThat(texts(messages).stream().filter("holds no price list"::equals))
                .hasSize(1);
        assertThat(texts(messages).stream().filter("Price is \"12,5O\""::equals))
                .hasSize(2);
        assertThat(link(row(messages, 1, "again.xlsx"), 2)).isEqualTo(new Origin("again.xlsx", "Offers", "F12"));
        assertThat(link(row(messages, 2, "prices.csv line 3"), 2)).isEqualTo(Origin.NONE);
    }

    /** More than thirty columns cannot be told apart. */
    @Test
    void a_chart_of_very_many_products_shows_the_first_and_says_so() {
        List<PortfolioRun> runs = IntStream.rangeClosed(1, 45)
                .mapToObj(number -> run("Balm " + number, "10", "1", "10", "1"))
                .toList();

        ResultSheet sheet = sheet(book("many.xlsx", "EUR", runs));

        assertThat(sheet.charts().get(0).title()).endsWith(", the first 30 of 45 products");
        assertThat(sheet.charts())
                .allSatisfy(chart -> assertThat(chart.series()).isNotEmpty());
    }

    private static PortfolioBook book(String name, String home, List<PortfolioRun> runs) {
        Origin result = new Origin(name.replace(".xlsx", "-costed.xlsx"), "Cost summary", "A1");
        return new PortfolioBook(name, name, result, new PortfolioBook.Costs(home, DAY, runs, List.of()), List.of());
    }

    /** A unit's cost is half packaging, half raw materials. */
    private static PortfolioRun run(String product, String units, String unitCost, String outlay, String stockLeft) {
        BigDecimal cost = new BigDecimal(unitCost);
        Map<Head, BigDecimal> heads = new EnumMap<>(Head.class);
        heads.put(Head.RAW_MATERIALS, cost.divide(BigDecimal.valueOf(2)));
        heads.put(Head.PACKAGING, cost.divide(BigDecimal.valueOf(2)));
        return new PortfolioRun(
                product,
                units + " × " + product,
                new BigDecimal(units),
                BigDecimal.TEN,
                BigDecimal.ONE,
                cost,
                cost.add(BigDecimal.ONE),
                new BigDecimal(outlay),
                new BigDecimal(stockLeft),
                heads,
                true);
    }

    private static ResultSheet sheet(PortfolioBook... books) {
        return PortfolioReport.of(List.of(books), List.of()).sheets().get(0);
    }

    /** The first row whose cell in a column reads so. */
    private static Map<Integer, Cell> row(ResultSheet sheet, int column, String content) {
        return sheet.cells().values().stream()
                .filter(row -> content.equals(text(row.get(column))))
                .findFirst()
                .orElseThrow();
    }

    private static String text(@Nullable Cell cell) {
        if (cell == null) {
            return "";
        }
        return cell.content() instanceof ResultSheet.Text text
                ? text.text()
                : cell.content() instanceof ResultSheet.Value value
                        ? value.expr().value().toPlainString()
                        : "";
    }

    private static BigDecimal value(Map<Integer, Cell> row, int column) {
        return new BigDecimal(text(row.get(column)));
    }

    private static String formula(Map<Integer, Cell> row, int column) {
        return cell(row, column).content() instanceof ResultSheet.Value value
                ? value.expr().formula(name -> name)
                : "";
    }

    private static Origin link(Map<Integer, Cell> row, int column) {
        Origin link = cell(row, column).link();
        return link == null ? Origin.NONE : link;
    }

    private static Cell cell(Map<Integer, Cell> row, int column) {
        return Objects.requireNonNull(row.get(column));
    }

    private static List<String> sentences(ResultSheet sheet) {
        return sheet.cells().values().stream()
                .flatMap(row -> row.values().stream())
                .map(Cell::content)
                .filter(ResultSheet.Sentence.class::isInstance)
                .map(content -> ((ResultSheet.Sentence) content).text())
                .filter(text -> text.contains("stays in stock"))
                .toList();
    }

    private static List<String> texts(ResultSheet sheet) {
        return sheet.cells().values().stream()
                .flatMap(row -> row.values().stream())
                .map(PortfolioReportTest::text)
                .toList();
    }
}
