package perkilo.review.prices;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import perkilo.layouts.Meaning;
import perkilo.origin.Origin;
import perkilo.pricelists.ListColumn;
import perkilo.pricelists.ReviewWords;
import perkilo.pricelists.RowNotRead;
import perkilo.pricelists.TakenIn;
import perkilo.review.ChoiceLists;
import perkilo.review.ReviewSheet;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;

/**
 * The sheets of what is not read, and of what columns are read as.
 *
 * @param lists the lists that arrived
 */
record ColumnsSheet(List<TakenIn> lists) {

    /**
     * A column, a row or a sheet.
     *
     * @param key tells it apart
     * @param what it is
     * @param readAs what it is read as, or why it is not read
     * @param said what a person said
     * @param choices what they can say
     */
    private record Part(
            String key,
            Origin where,
            String what,
            String samples,
            String readAs,
            String said,
            String remark,
            List<String> choices) {}

    private static List<String> meanings() {
        List<String> words = new ArrayList<>();
        Arrays.stream(Meaning.values())
                .filter(meaning -> meaning != Meaning.NOTHING)
                .forEach(meaning -> words.add(meaning.word()));
        words.add("price from 25 kg");
        words.add("price of 25 kg");
        words.add(RowNotRead.IGNORE);
        return words;
    }

    ResultSheet notRead(ChoiceLists choices) {
        Map<String, Part> parts = new LinkedHashMap<>();
        for (TakenIn list : lists) {
            for (RowNotRead row : list.seen().notRead()) {
                parts.putIfAbsent(
                        row.key(),
                        new Part(
                                row.key(), row.where(), "row", "", row.why(), row.said(), row.remark(), row.choices()));
            }
        }
        addColumns(ListColumn::isNotRead, parts);
        for (TakenIn list : lists) {
            for (Origin sheet : list.seen().otherSheets()) {
                String key = list.key() + sheet.sheet();
                parts.putIfAbsent(key, new Part(key, sheet, "sheet", "", "holds no price table", "", "", List.of()));
            }
        }
        return sheet(ReviewWords.NOT_READ, "Not read", ReviewTexts.notRead(), "Why", parts, choices);
    }

    ResultSheet readAs(ChoiceLists choices) {
        Map<String, Part> parts = new LinkedHashMap<>();
        addColumns(column -> !column.isNotRead(), parts);
        return sheet(ReviewWords.READ_AS, "What columns are read as", ReviewTexts.readAs(), "Read as", parts, choices);
    }

    private void addColumns(Predicate<ListColumn> which, Map<String, Part> parts) {
        List<String> meanings = meanings();
        for (TakenIn list : lists) {
            list.seen().columns().stream()
                    .filter(which)
                    .forEach(column -> parts.putIfAbsent(column.key(), part(column, meanings)));
        }
    }

    private static Part part(ListColumn column, List<String> meanings) {
        String readAs = !column.use().isEmpty() ? column.use() : column.said().isEmpty() ? "not recognised" : "";
        return new Part(
                column.key(),
                column.where(),
                "column \"" + column.heading() + "\"",
                String.join(" | ", column.samples()),
                readAs,
                column.said(),
                column.remark(),
                meanings);
    }

    private static ResultSheet sheet(
            String name, String title, String hint, String readAs, Map<String, Part> parts, ChoiceLists choices) {
        List<Column<Part>> columns = List.of(
                Column.<Part>of("file", ReviewWords.FILE)
                        .words(part -> part.where().file())
                        .look(Look.LABEL)
                        .width(26),
                Column.<Part>of("cell", "Where")
                        .words(part -> PricesSheet.place(part.where()))
                        .width(14),
                Column.<Part>of("what", "What").words(Part::what).width(34),
                Column.<Part>of("samples", "Holds, for example")
                        .words(part -> part.samples().isEmpty() ? null : part.samples())
                        .width(40),
                Column.<Part>of("readAs", readAs).words(Part::readAs).width(34),
                Column.<Part>of("said", ReviewWords.IT_IS)
                        .words(Part::said)
                        .fillIn(part -> choices.of(part.choices()))
                        .width(24),
                Column.<Part>of("remark", "Remark")
                        .words(part -> part.remark().isEmpty() ? null : part.remark())
                        .look(Look.HINT)
                        .width(14));
        return new ReviewSheet<>(name, title, hint, columns, Part::key).with(List.copyOf(parts.values()));
    }
}
