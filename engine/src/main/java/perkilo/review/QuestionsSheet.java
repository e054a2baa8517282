package perkilo.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.table.Column;

/** The sheet of questions: one row each, with a cell for the answer. */
public final class QuestionsSheet {

    /** Its name. */
    public static final String NAME = "Questions";

    /** The heading of the cells for answers. */
    public static final String ANSWER = "Answer";

    private QuestionsSheet() {}

    /**
     * The sheet, with open questions first.
     *
     * @param title at its top
     * @param hint what to do, in a sentence
     * @param lists the drop-down lists of the workbook
     */
    public static ResultSheet of(String title, String hint, List<Asked> questions, ChoiceLists lists) {
        List<Column<Asked>> columns = List.of(
                Column.<Asked>of("file", "File")
                        .words(asked -> asked.where().file())
                        .look(Look.LABEL)
                        .width(26),
                Column.<Asked>of("cell", "Where")
                        .words(asked -> place(asked.where()))
                        .width(14),
                Column.<Asked>of("says", "What is there")
                        .words(asked -> filled(asked.says()))
                        .width(28),
                Column.<Asked>of("question", "Question").words(Asked::text).width(58),
                Column.<Asked>of("answer", ANSWER)
                        .words(Asked::answer)
                        .fillIn(asked -> lists.of(asked.choices()))
                        .width(28),
                Column.<Asked>of("remark", "Remark")
                        .words(asked -> filled(asked.remark()))
                        .look(Look.HINT)
                        .width(22));
        return new ReviewSheet<>(NAME, title, hint, columns, Asked::key).with(openFirst(questions));
    }

    private static List<Asked> openFirst(List<Asked> questions) {
        List<Asked> sorted = new ArrayList<>(questions);
        sorted.sort(Comparator.comparing(asked -> !asked.isOpen()));
        return sorted;
    }

    private static @Nullable String filled(String words) {
        return words.isEmpty() ? null : words;
    }

    private static String place(Origin where) {
        return where.sheet().isEmpty() || where.cell().isEmpty()
                ? where.sheet() + where.cell()
                : where.sheet() + "!" + where.cell();
    }
}
