package perkilo.review.prices;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import perkilo.pricelists.ReviewWords;
import perkilo.pricelists.TakenIn;
import perkilo.review.ChoiceLists;
import perkilo.review.ReviewSheet;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;

/** The sheet of lists: one row for each file, with what became of it. */
final class ListsSheet {

    private ListsSheet() {}

    static ResultSheet of(List<TakenIn> lists, ChoiceLists choices) {
        List<String> suppliers = lists.stream()
                .map(TakenIn::supplier)
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted()
                .toList();
        List<Column<TakenIn>> columns = List.of(
                Column.<TakenIn>of("file", ReviewWords.FILE)
                        .words(list -> String.valueOf(list.source().getFileName()))
                        .look(Look.LABEL)
                        .width(32),
                Column.<TakenIn>of("state", ReviewWords.STATE)
                        .words(ReviewTexts::state)
                        .width(48),
                Column.<TakenIn>of("supplier", ReviewWords.SUPPLIER)
                        .words(TakenIn::supplier)
                        .fillIn(list -> choices.of(suppliers))
                        .width(26),
                Column.<TakenIn>of("quotedOn", ReviewWords.QUOTED_ON)
                        .words(list -> Objects.toString(list.quotedOn(), ""))
                        .fillIn(list -> null)
                        .width(13),
                Column.<TakenIn>of("validUntil", ReviewWords.VALID_UNTIL)
                        .words(list -> Objects.toString(list.validUntil(), ""))
                        .fillIn(list -> null)
                        .width(13),
                Column.<TakenIn>of("kept", "Kept in")
                        .words(list -> Stream.ofNullable(list.kept())
                                .map(kept -> String.valueOf(kept.file().getFileName()))
                                .findFirst()
                                .orElse(""))
                        .width(34),
                Column.<TakenIn>of("folder", ReviewWords.FOLDER)
                        .words(list -> folder(list.source()))
                        .look(Look.HINT)
                        .width(40));
        return new ReviewSheet<>(ReviewWords.LISTS, "Price lists", ReviewTexts.lists(), columns, TakenIn::key)
                .with(lists);
    }

    private static String folder(Path file) {
        return String.valueOf(file.toAbsolutePath().normalize().getParent());
    }
}
