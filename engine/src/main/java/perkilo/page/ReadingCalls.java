package perkilo.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import perkilo.desk.CheckBook;
import perkilo.desk.Checked;
import perkilo.desk.Destination;
import perkilo.desk.OpenedBook;
import perkilo.desk.ReviewReading;
import perkilo.desk.Watch;
import perkilo.page.http.Answer;
import perkilo.page.http.Call;
import perkilo.page.http.Refusal;
import perkilo.page.http.Routes;
import perkilo.page.http.Status;
import perkilo.page.view.ReadingView;
import perkilo.page.work.Work;
import perkilo.page.work.WorkList;
import perkilo.reading.Sources;
import perkilo.reading.arrange.Proposals.Proposal;
import perkilo.sheet.Report;

/** What the page asks about how a workbook is read, and the answers that a person gives. */
final class ReadingCalls {

    private final Desk desk;
    private final WorkList works;

    ReadingCalls(Desk desk, WorkList works) {
        this.desk = desk;
        this.works = works;
    }

    void addTo(Routes routes) {
        routes.add("GET", "books/*/reading", (call, name) -> {
            List<String> rates = call.all("rates");
            Sources sources = desk.sources(call, name, call.all("prices"), rates.isEmpty() ? "" : rates.get(0));
            return reading(call, sources);
        });
        routes.add("POST", "books/*/answers", this::answers);
    }

    private Answer reading(Call call, Sources sources) throws IOException {
        Work work = works.begin(call);
        try {
            return new Answer.Data(view(desk.open(sources, work)));
        } finally {
            works.end(work);
        }
    }

    private ObjectNode view(OpenedBook opened) throws IOException {
        Checked checked = new CheckBook().check(opened.reading());
        ObjectNode view = ReadingView.of(checked, new ReviewReading().rows(opened.sources(), opened.today()));
        return view.put("stamp", Desk.stamp(opened.book()));
    }

    private Answer answers(Call call, String name) throws Refusal, IOException {
        JsonNode body = call.body();
        Sources sources = desk.sources(call, name, body);
        OpenedBook opened = desk.open(sources, Watch.NONE);
        Desk.checkStamp(opened, body);
        ReviewReading service = new ReviewReading();
        ReviewReading.Proposed proposed = service.rows(sources, opened.today());
        Map<String, String> answers = new HashMap<>();
        for (JsonNode one : Call.objects(body, "answers")) {
            String id = Call.text(one, "id");
            if (proposed.proposals().stream().map(Proposal::id).noneMatch(id::equals)) {
                throw new Refusal(Status.BAD_REQUEST, PageMessages.noQuestion(id));
            }
            answers.put(id, Call.textOrEmpty(one, "value"));
        }
        Destination inPlace = new Destination(null, true, false);
        Report report = service.answered(proposed, answers);
        desk.write(opened.book(), () -> inPlace.write(opened.book(), Destination.REVIEW, report, desk.today()));
        return new Answer.Data(view(desk.open(sources, Watch.NONE)));
    }
}
