package perkilo.page.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.desk.Checked;
import perkilo.desk.ReviewReading;
import perkilo.json.Json;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.reading.arrange.Proposals.Kind;
import perkilo.reading.arrange.Proposals.Proposal;
import perkilo.reading.arrange.ReadingSheet;
import perkilo.xlsx.grid.Grid;

/** How a workbook was read: the account, what was found, pictures of the cells concerned, and what is asked. */
public final class ReadingView {

    private ReadingView() {}

    /**
     * The view.
     *
     * @param proposed the rows of the sheet Reading
     */
    public static ObjectNode of(Checked checked, ReviewReading.Proposed proposed) {
        ObjectNode view = Json.object();
        view.set("findings", Json.messages(checked.findings()));
        view.set("account", Json.reading(checked.reading().account()));
        boolean answered = ReadingSheet.earlier(proposed.sheets()).isPresent();
        Set<String> unknown = checked.reading().account().entries().stream()
                .filter(entry ->
                        entry.subject() == Account.Subject.SHEET && entry.fate() == Account.Fate.NOT_UNDERSTOOD)
                .map(entry -> entry.place().sheet())
                .collect(Collectors.toSet());
        List<Proposal> asked = proposed.proposals().stream()
                .filter(row -> isAsked(row, unknown))
                .toList();
        ArrayNode sheets = view.putArray("sheets");
        List<Origin> said = new ArrayList<>();
        checked.findings().stream().map(Finding::origin).forEach(said::add);
        Set<String> places = asked.stream()
                .filter(row -> row.kind() != Kind.SHEET)
                .map(row -> row.where().where())
                .collect(Collectors.toSet());
        asked.forEach(row -> said.add(row.where()));
        for (Grid sheet : proposed.sheets()) {
            ObjectNode one = sheets.addObject().put("sheet", sheet.sheet());
            one.set("cells", new Pictures(sheet, checked.reading().account(), said, places).json());
        }
        ArrayNode questions = view.putArray("questions");
        asked.forEach(row -> questions.add(question(row, answered)));
        ArrayNode more = view.putArray("more");
        proposed.proposals().stream()
                .filter(row -> !asked.contains(row))
                .forEach(row -> more.add(question(row, answered)));
        return view;
    }

    /**
     * Whether a row is asked about; the others can be corrected.
     *
     * @param unknown the sheets that were not understood
     */
    private static boolean isAsked(Proposal row, Set<String> unknown) {
        boolean isUnknown =
                row.kind() == Kind.SHEET && unknown.contains(row.where().sheet());
        return row.kind() == Kind.QUESTION
                || (row.recognised().isEmpty() && (isUnknown || !row.looksLike().isEmpty()));
    }

    private static ObjectNode question(Proposal row, boolean answered) {
        String answer = row.as();
        boolean guess = !answered && !answer.isEmpty() && answer.equals(row.looksLike());
        ObjectNode json = Json.object()
                .put("id", row.id())
                .put("kind", row.kind().name().toLowerCase(java.util.Locale.ROOT))
                .put("text", text(row))
                .put("where", row.where().where())
                .put("about", row.there())
                .put("recognised", row.recognised());
        ArrayNode choices = json.putArray("choices");
        for (String choice : row.choices()) {
            choices.addObject().put("value", choice).put("label", choice);
        }
        boolean known = row.choices().contains(row.looksLike());
        json.put("proposed", guess ? answer : known ? row.looksLike() : null);
        json.put("answer", guess || answer.isEmpty() ? null : answer);
        return json.put("free", row.kind() == Kind.QUESTION);
    }

    private static String text(Proposal row) {
        return switch (row.kind()) {
            case QUESTION -> row.looksLike();
            case SHEET -> ViewMessages.whichTable(row.where().sheet());
            case COLUMN -> ViewMessages.whichColumn(row.there(), row.where().sheet());
        };
    }
}
