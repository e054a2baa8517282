package perkilo.review.prices;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import perkilo.origin.Origin;
import perkilo.pricelists.PriceLine;
import perkilo.pricelists.ReviewWords;
import perkilo.pricelists.TakenIn;
import perkilo.review.ChoiceLists;
import perkilo.review.ReviewSheet;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;

/**
 * The sheet of prices, one row each.
 *
 * @param lists the lists that hold them
 * @param items the names of known items, to choose from
 */
record PricesSheet(List<TakenIn> lists, List<String> items) {

    private static final NumberFormat NUMBER = new NumberFormat("#,##0.00####");
    private static final int MOST = 10_000;

    ResultSheet sheet(ChoiceLists choices) {
        List<PriceLine> rows = new ArrayList<>();
        int all = 0;
        for (TakenIn list : lists) {
            all += Math.max(list.prices(), list.seen().prices().size());
            list.seen().prices().stream().limit(MOST - rows.size()).forEach(rows::add);
        }
        List<Column<PriceLine>> columns = List.of(
                words("file", ReviewWords.FILE, 24, line -> line.where().file()).look(Look.LABEL),
                words("cell", "Where", 12, line -> place(line.where())),
                words("theirs", ReviewWords.THEIRS, 30, PriceLine::theirs),
                words("ours", ReviewWords.OURS, 30, PriceLine::ours).fillIn(line -> choices.of(items)),
                words("how", ReviewWords.HOW, 20, PriceLine::how),
                words("pack", "Pack", 11, PriceLine::pack),
                words("from", "From", 9, PriceLine::from),
                Column.<PriceLine>of("price", "Price")
                        .value(PriceLine::price)
                        .words(line -> "no price")
                        .format(NUMBER)
                        .width(12),
                words("per", "Per", 7, PriceLine::per),
                words("currency", "Currency", 10, PriceLine::currency),
                words("quotedOn", "Dated", 12, PriceLine::quotedOn),
                words("validUntil", "Valid to", 12, PriceLine::validUntil),
                Column.<PriceLine>of("before", "Before")
                        .value(PriceLine::before)
                        .format(NUMBER)
                        .width(12),
                Column.<PriceLine>of("change", "Change")
                        .value(PriceLine::change)
                        .format(NumberFormat.PERCENT)
                        .mark(Mark.where(ResultSheet.Condition.ABOVE_ZERO, Look.WARNING))
                        .width(10));
        return new ReviewSheet<>(
                        ReviewWords.PRICES, "Prices", ReviewTexts.prices(all - rows.size()), columns, PriceLine::key)
                .with(rows);
    }

    private static Column<PriceLine> words(String key, String heading, int width, Function<PriceLine, String> text) {
        return Column.<PriceLine>of(key, heading)
                .words(line -> {
                    String words = text.apply(line);
                    return words.isEmpty() ? null : words;
                })
                .width(width);
    }

    static String place(Origin where) {
        return where.sheet().isEmpty() || where.cell().isEmpty()
                ? where.sheet() + where.cell()
                : where.sheet() + "!" + where.cell();
    }
}
