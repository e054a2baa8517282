package perkilo.report.cost;

import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Missing;
import perkilo.costing.RunAnswer;
import perkilo.costing.RunCost;
import perkilo.costing.RunNeeds;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Row;
import perkilo.sheet.table.Table;

/** The runs that are not complete: what is known of each, what is missing and why. */
public final class IncompleteTable {

    /** The words for the known part of a cost. */
    static final String KNOWN = "Known so far";

    private static final int WIDTH = 13;

    private final IdentityHashMap<RunAnswer, PartCells> cells = new IdentityHashMap<>();
    private final Function<@Nullable BigDecimal, Map<String, BigDecimal>> inCurrencies;

    final Column<RunAnswer> run = Column.<RunAnswer>of("run", "Run")
            .words(RunAnswer::title)
            .look(Look.LABEL)
            .link(answer -> cells(answer).title())
            .width(30);

    final Column<RunAnswer> rawMaterialPerKg = Column.<RunAnswer>of("rawMaterialPerKg", "Raw material per kg")
            .formula(live(PartCells::rawMaterialPerKg))
            .value(answer -> answer.rawMaterialPerKg().orElse(null))
            .words(answer -> "not known")
            .wordsLook(Look.HINT)
            .width(WIDTH)
            .json(answer -> inCurrencies().apply(answer.rawMaterialPerKg().orElse(null)))
            .jsonWhere(answer -> answer.rawMaterialPerKg().isPresent());

    final Column<RunAnswer> bulkPerKg = Column.<RunAnswer>of("bulkPerKg", "Bulk per kg")
            .formula(live(PartCells::bulkPerKg))
            .value(answer -> answer.bulkPerKg().orElse(null))
            .words(answer -> "not known")
            .wordsLook(Look.HINT)
            .width(WIDTH)
            .json(answer -> inCurrencies().apply(answer.bulkPerKg().orElse(null)))
            .jsonWhere(answer -> answer.bulkPerKg().isPresent());

    final Column<RunAnswer> knownSoFar = Column.<RunAnswer>of("knownSoFar", KNOWN + ", whole run")
            .formula(live(PartCells::knownSoFar))
            .value(RunAnswer::knownSoFar)
            .words(answer -> "nothing")
            .wordsLook(Look.HINT)
            .width(WIDTH)
            .json(answer -> inCurrencies().apply(answer.knownSoFar()));

    final Column<RunAnswer> missing = Column.<RunAnswer>of("missing", "Missing")
            .sentence(row -> List.of(new ResultSheet.Words(words(row.entry()))))
            .look(Look.HINT)
            .link(answer -> answer.missing().get(0).origin())
            .json(RunAnswer::missingNames);

    private final Column<RunAnswer> product =
            Column.<RunAnswer>of("product", "").json(answer -> answer.isBulk() ? null : answer.name());

    private final Column<RunAnswer> formula = Column.<RunAnswer>of("formula", "")
            .json(answer -> answer.cost() == null
                    ? answer.isBulk() ? answer.name() : null
                    : answer.cost().needs().formula().name());

    private final Column<RunAnswer> complete =
            Column.<RunAnswer>of("complete", "").json(answer -> false);

    private final Column<RunAnswer> items = Column.<RunAnswer>of("items", "")
            .json(answer -> new ItemTable(cost(answer)).inJson())
            .jsonWhere(answer -> answer.cost() != null);

    /**
     * The columns.
     *
     * @param home code of the home currency
     * @param inCurrencies an amount in home currency in all currencies that are shown; none for null
     * @param blocks the cells of each run on the detail sheet; none for JSON
     */
    IncompleteTable(
            String home, Function<@Nullable BigDecimal, Map<String, BigDecimal>> inCurrencies, List<PartCells> blocks) {
        this.inCurrencies = inCurrencies;
        blocks.forEach(block -> cells.put(block.answer(), block));
        NumberFormat money = NumberFormat.money(home, 2);
        List.of(rawMaterialPerKg, bulkPerKg, knownSoFar).forEach(column -> column.format(money));
        missing.mark(Mark.attention(missing, Look.ERROR));
    }

    /** The table for the summary. */
    Table<RunAnswer> onSheet() {
        return Table.of(run, rawMaterialPerKg, bulkPerKg, knownSoFar, missing);
    }

    /** The columns for JSON. */
    Table<RunAnswer> inJson() {
        return Table.of(
                product,
                formula,
                ofNeeds("units", RunNeeds::units),
                ofNeeds("batches", needs -> needs.batches().count()),
                ofNeeds("batchKg", needs -> needs.batches().batchKg()),
                ofNeeds("bulkOverKg", needs -> needs.batches().over()),
                Column.<RunAnswer>of("targetFillG", "")
                        .json(answer -> RunTable.targetFillG(cost(answer)))
                        .jsonWhere(answer -> answer.cost() != null),
                rawMaterialPerKg,
                bulkPerKg,
                complete,
                missing,
                knownSoFar,
                items);
    }

    private static Column<RunAnswer> ofNeeds(String key, Function<RunNeeds, @Nullable Object> figure) {
        return Column.<RunAnswer>of(key, "")
                .json(answer -> figure.apply(cost(answer).needs()))
                .jsonWhere(answer -> answer.cost() != null);
    }

    private static String words(RunAnswer answer) {
        return Sign.ATTENTION + " "
                + answer.missing().stream().map(Missing::words).distinct().collect(Collectors.joining("; "));
    }

    private static RunCost cost(RunAnswer answer) {
        return Objects.requireNonNull(answer.cost());
    }

    private Function<@Nullable BigDecimal, Map<String, BigDecimal>> inCurrencies() {
        return inCurrencies;
    }

    private PartCells cells(RunAnswer answer) {
        return Objects.requireNonNull(cells.get(answer));
    }

    private Function<Row<RunAnswer>, @Nullable Expr> live(Function<PartCells, @Nullable Expr> which) {
        return row -> which.apply(cells(row.entry()));
    }
}
