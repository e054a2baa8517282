package perkilo.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import perkilo.origin.Origin;
import perkilo.pricelists.ListColumn;
import perkilo.pricelists.PriceLine;
import perkilo.pricelists.RowNotRead;
import perkilo.pricelists.TakenIn;
import perkilo.review.Asked;
import perkilo.review.prices.ReviewTexts;

/** The result of taking price lists in, as JSON. */
public final class ListsJson {

    private ListsJson() {}

    /**
     * The result of all lists.
     *
     * @param review the workbook with the questions
     */
    public static ObjectNode of(List<TakenIn> lists, Path review) {
        ObjectNode answer = Json.object().put("review", review.toString());
        answer.set("lists", Json.array(lists, ListsJson::list));
        Set<String> seen = new HashSet<>();
        ArrayNode questions = answer.putArray("questions");
        ArrayNode prices = answer.putArray("prices");
        ArrayNode notRead = answer.putArray("notRead");
        for (TakenIn list : lists) {
            list.seen().asked().stream()
                    .filter(asked -> seen.add(asked.key()))
                    .forEach(asked -> questions.add(question(asked)));
            list.seen().prices().forEach(price -> prices.add(price(price)));
            list.seen().notRead().stream().filter(row -> seen.add(row.key())).forEach(row -> notRead.add(row(row)));
            list.seen().columns().stream()
                    .filter(column -> column.isNotRead() && seen.add(column.key()))
                    .forEach(column -> notRead.add(column(column)));
        }
        return answer;
    }

    private static ObjectNode list(TakenIn list) {
        var kept = list.kept();
        ObjectNode json = Json.object()
                .put("file", list.source().toString())
                .put("state", ReviewTexts.state(list))
                .put("supplier", list.supplier())
                .put("quotedOn", Objects.toString(list.quotedOn(), null))
                .put("validUntil", Objects.toString(list.validUntil(), null))
                .put("items", list.items())
                .put("prices", list.prices())
                .put("keptIn", kept == null ? null : kept.file().toString())
                .put("waitsFor", list.waitsFor());
        json.set("messages", Json.messages(list.findings()));
        return json;
    }

    private static ObjectNode placed(String key, Origin where) {
        String cell = where.sheet().isEmpty() || where.cell().isEmpty()
                ? where.sheet() + where.cell()
                : where.sheet() + "!" + where.cell();
        return Json.object().put("key", key).put("file", where.file()).put("cell", cell);
    }

    private static ObjectNode question(Asked asked) {
        ObjectNode json = placed(asked.key(), asked.where()).put("text", asked.text());
        json.set("choices", Json.texts(asked.choices()));
        return json.put("answer", asked.isOpen() ? null : asked.answer()).put("remark", asked.remark());
    }

    private static ObjectNode price(PriceLine price) {
        return placed(price.key(), price.where())
                .put("theirs", price.theirs())
                .put("ours", price.ours())
                .put("how", price.how())
                .put("pack", price.pack())
                .put("from", price.from().isEmpty() ? null : price.from())
                .put("price", Json.amountOrNull(price.price()))
                .put("per", price.per())
                .put("currency", price.currency())
                .put("quotedOn", price.quotedOn())
                .put("validUntil", price.validUntil().isEmpty() ? null : price.validUntil())
                .put("before", Json.amountOrNull(price.before()));
    }

    private static ObjectNode row(RowNotRead row) {
        return placed(row.key(), row.where())
                .put("kind", "row")
                .put("text", row.why())
                .put("answer", row.said().isEmpty() ? null : row.said());
    }

    private static ObjectNode column(ListColumn column) {
        ObjectNode json = placed(column.key(), column.where())
                .put("kind", "column")
                .put("text", column.heading())
                .put("answer", column.said().isEmpty() ? null : column.said());
        json.set("samples", Json.texts(column.samples()));
        return json;
    }
}
