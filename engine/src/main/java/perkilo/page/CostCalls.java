package perkilo.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import perkilo.desk.CostAnswer;
import perkilo.desk.CostBook;
import perkilo.desk.CostWishes;
import perkilo.desk.Destination;
import perkilo.desk.OpenedBook;
import perkilo.desk.RunSizes;
import perkilo.desk.TryChanges;
import perkilo.json.Json;
import perkilo.model.ScenarioLine;
import perkilo.origin.Finding;
import perkilo.origin.Origin;
import perkilo.page.http.Answer;
import perkilo.page.http.Call;
import perkilo.page.http.Refusal;
import perkilo.page.http.Routes;
import perkilo.page.http.Status;
import perkilo.page.view.CostView;
import perkilo.page.work.Work;
import perkilo.page.work.WorkList;
import perkilo.xlsx.write.Written;

/** What the page asks about costs, as they are and with changes on trial. */
final class CostCalls {

    private static final Pattern WHOLE = Pattern.compile("[1-9]\\d{0,8}");
    private static final int MOST_CHANGES = 100;
    private static final int MOST_SIZES = 20;

    private final Desk desk;
    private final WorkList works;

    CostCalls(Desk desk, WorkList works) {
        this.desk = desk;
        this.works = works;
    }

    void addTo(Routes routes) {
        routes.add("POST", "books/*/cost", (call, name) -> followed(call, name, this::cost));
        routes.add("POST", "books/*/save", (call, name) -> followed(call, name, this::save));
    }

    @FunctionalInterface
    private interface OnBook {

        ObjectNode answer(OpenedBook opened, JsonNode body, Work work) throws Refusal, IOException;
    }

    private Answer followed(Call call, String name, OnBook task) throws Refusal, IOException {
        JsonNode body = call.body();
        Work work = works.begin(call);
        try {
            OpenedBook opened = desk.open(desk.sources(call, name, body), work);
            ObjectNode answer = task.answer(opened, body, work);
            return new Answer.Data(answer.put("stamp", Desk.stamp(opened.book())));
        } finally {
            works.end(work);
        }
    }

    private ObjectNode cost(OpenedBook opened, JsonNode body, Work work) throws Refusal {
        TryChanges.Tried tried = new TryChanges().cost(opened, sizes(body), changes(body), work);
        if (!tried.problems().isEmpty()) {
            List<String> why = tried.problems().stream().map(Finding::text).toList();
            throw new Refusal(Status.NO_ANSWER, String.join(" ", why));
        }
        return CostView.of(tried.answer());
    }

    private ObjectNode save(OpenedBook opened, JsonNode body, Work work) throws Refusal, IOException {
        String what = Call.text(body, "what");
        if (!what.equals("cost")) {
            throw new Refusal(Status.BAD_REQUEST, PageMessages.onlyCost(what));
        }
        Desk.checkStamp(opened, body);
        Path book = opened.sources().book();
        CostAnswer answer = new CostBook()
                .cost(book, opened.reading(), sizes(body), new CostWishes(false, false, changes(body)), work);
        if (!(answer instanceof CostAnswer.Costed costed)) {
            List<String> errors = answer.findings().stream()
                    .filter(Finding::isError)
                    .map(Finding::text)
                    .toList();
            throw new Refusal(Status.NO_ANSWER, String.join(" ", errors));
        }
        Written written = desk.write(
                opened.book(),
                () -> Destination.USUAL.write(opened.book(), Destination.COSTED, costed.report(), desk.today()));
        ObjectNode json = Json.object()
                .put("written", name(written.file()))
                .put("place", String.valueOf(written.file().getParent()));
        Path backup = written.backup();
        return json.put("backup", backup == null ? null : name(backup));
    }

    private static RunSizes sizes(JsonNode body) throws Refusal {
        List<String> typed = Call.texts(body, "sizes");
        if (typed.isEmpty()) {
            return RunSizes.OF_THE_BOOK;
        }
        List<BigDecimal> units = new ArrayList<>();
        for (String one : typed) {
            if (!WHOLE.matcher(one).matches() || typed.size() > MOST_SIZES) {
                throw new Refusal(Status.BAD_REQUEST, PageMessages.badSize(one));
            }
            units.add(new BigDecimal(one));
        }
        return new RunSizes(units, List.of());
    }

    /** The changes on trial; together they are a scenario that is called by what was typed. */
    static List<ScenarioLine> changes(JsonNode body) throws Refusal {
        List<JsonNode> typed = Call.objects(body, "changes");
        if (typed.size() > MOST_CHANGES) {
            throw new Refusal(Status.BAD_REQUEST, PageMessages.tooManyChanges(MOST_CHANGES));
        }
        List<String> words = new ArrayList<>();
        for (JsonNode one : typed) {
            words.add(Call.text(one, "what").strip() + " "
                    + Call.text(one, "change").strip());
        }
        List<ScenarioLine> changes = new ArrayList<>();
        for (JsonNode one : typed) {
            changes.add(new ScenarioLine(
                    String.join("; ", words),
                    Call.text(one, "what").strip(),
                    Call.text(one, "change").strip(),
                    Origin.NONE));
        }
        return changes;
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
