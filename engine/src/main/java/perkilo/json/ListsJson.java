package perkilo.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Objects;
import perkilo.layouts.Question;
import perkilo.pricelists.TakenIn;

/** The result of taking price lists in, as JSON. */
public final class ListsJson {

    private ListsJson() {}

    /** The result for each list. */
    public static ObjectNode of(List<TakenIn> lists) {
        ObjectNode answer = Json.object();
        answer.set("lists", Json.array(lists, ListsJson::list));
        return answer;
    }

    private static ObjectNode list(TakenIn list) {
        var kept = list.kept();
        ObjectNode json = Json.object()
                .put("file", list.source().toString())
                .put("supplier", list.supplier())
                .put("quotedOn", Objects.toString(list.quotedOn(), null))
                .put("validUntil", Objects.toString(list.validUntil(), null))
                .put("items", list.items())
                .put("prices", list.prices())
                .put("keptIn", kept == null ? null : kept.file().toString())
                .put("mapping", Objects.toString(list.mapping(), null));
        json.set("questions", Json.array(list.questions(), ListsJson::question));
        json.set("messages", Json.messages(list.findings()));
        return json;
    }

    private static ObjectNode question(Question question) {
        ObjectNode json = Json.object()
                .put("field", question.field())
                .put("at", question.key())
                .put("where", question.where().where())
                .put("text", question.text());
        json.set("choices", Json.texts(question.choices()));
        return json;
    }
}
