package perkilo.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import perkilo.desk.CostAnswer;
import perkilo.desk.EditBook;
import perkilo.desk.KeepScenario;
import perkilo.desk.OpenedBook;
import perkilo.desk.RunSizes;
import perkilo.desk.TryChanges;
import perkilo.desk.Watch;
import perkilo.json.Json;
import perkilo.model.ScenarioLine;
import perkilo.page.http.Answer;
import perkilo.page.http.Call;
import perkilo.page.http.Refusal;
import perkilo.page.http.Routes;
import perkilo.page.view.CostView;
import perkilo.page.work.Work;
import perkilo.page.work.WorkList;
import perkilo.reading.Sources;
import perkilo.xlsx.write.Written;

/** What the page keeps in the person's workbook: scenarios, and what they type into their own cells. */
final class KeepCalls {

    private final Desk desk;
    private final WorkList works;

    KeepCalls(Desk desk, WorkList works) {
        this.desk = desk;
        this.works = works;
    }

    void addTo(Routes routes) {
        routes.add(
                "GET", "books/*/scenarios", (call, name) -> scenarios(call, desk.sources(call, name, List.of(), "")));
        routes.add("POST", "books/*/scenarios", this::keep);
        routes.add("POST", "books/*/edit", this::edit);
    }

    private Answer scenarios(Call call, Sources sources) throws IOException {
        Work work = works.begin(call);
        try {
            return scenarios(desk.open(sources, work), work);
        } finally {
            works.end(work);
        }
    }

    private static Answer scenarios(OpenedBook opened, Watch watch) {
        CostAnswer answer = new TryChanges()
                .cost(opened, RunSizes.OF_THE_BOOK, List.of(), watch)
                .answer();
        Map<String, JsonNode> runs = new LinkedHashMap<>();
        CostView.answer(answer)
                .path("scenarios")
                .forEach(one -> runs.put(one.path("name").asText(), one.path("runs")));
        Map<String, ObjectNode> all = new LinkedHashMap<>();
        for (ScenarioLine line : opened.reading().value().scenarios()) {
            ObjectNode one =
                    all.computeIfAbsent(line.name(), name -> Json.object().put("name", name));
            one.withArray("changes").addObject().put("what", line.what()).put("change", line.change());
        }
        ObjectNode json = Json.object().put("stamp", Desk.stamp(opened.book()));
        ArrayNode array = json.putArray("scenarios");
        all.forEach((name, one) -> array.add(one.set("runs", runs.get(name))));
        return new Answer.Data(json);
    }

    private Answer keep(Call call, String name) throws Refusal, IOException {
        JsonNode body = call.body();
        OpenedBook opened = read(call, name, body);
        String called = Call.text(body, "name");
        List<ScenarioLine> changes = CostCalls.changes(body);
        desk.write(opened.book(), () -> new KeepScenario().keep(opened, called, changes, desk.today()));
        return scenarios(desk.open(opened.sources(), Watch.NONE), Watch.NONE);
    }

    private Answer edit(Call call, String name) throws Refusal, IOException {
        JsonNode body = call.body();
        OpenedBook opened = read(call, name, body);
        List<EditBook.Typed> typed = new ArrayList<>();
        for (JsonNode cell : Call.objects(body, "cells")) {
            String words = cell.path("value").isNumber()
                    ? plain(cell.path("value").decimalValue())
                    : Call.textOrEmpty(cell, "value");
            typed.add(new EditBook.Typed(Call.text(cell, "sheet"), Call.text(cell, "cell"), words));
        }
        Written written = desk.write(opened.book(), () -> new EditBook().edit(opened, typed, desk.today()));
        OpenedBook now = desk.open(opened.sources(), Watch.NONE);
        ObjectNode json = Json.object().put("stamp", Desk.stamp(now.book()));
        if (written.backup() != null) {
            json.put("backup", String.valueOf(written.backup().getFileName()));
        }
        return new Answer.Data(json);
    }

    /** A number so that it has one meaning: three decimals could be thousands. */
    private static String plain(BigDecimal number) {
        return (number.scale() == 3 ? number.setScale(4) : number).toPlainString();
    }

    private OpenedBook read(Call call, String name, JsonNode body) throws Refusal, IOException {
        OpenedBook opened = desk.open(desk.sources(call, name, body), Watch.NONE);
        Desk.checkStamp(opened, body);
        return opened;
    }
}
