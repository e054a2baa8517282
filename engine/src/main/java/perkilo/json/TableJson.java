package perkilo.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** Declared tables as JSON: an array of objects, one for each row, with a member for each column that JSON shows. */
public final class TableJson {

    private TableJson() {}

    /** The rows of a table. */
    public static <R> ArrayNode array(Table.Filled<R> filled) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        for (R entry : filled.rows()) {
            array.add(object(filled.table(), entry));
        }
        return array;
    }

    /** One row of a table. */
    public static <R> ObjectNode object(Table<R> table, R entry) {
        ObjectNode object = Json.object();
        for (Column<R> column : table.columns()) {
            if (column.isInJsonOf(entry)) {
                object.set(column.key(), node(column.jsonOf(entry)));
            }
        }
        return object;
    }

    /** One row of a table. */
    public static <R> ObjectNode object(Table.One<R> one) {
        return object(one.table(), one.entry());
    }

    /** A value as {@link Column#json} allows it; decimals become texts. */
    private static @Nullable JsonNode node(@Nullable Object value) {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        if (value == null) {
            return nodes.nullNode();
        }
        if (value instanceof BigDecimal decimal) {
            return nodes.textNode(Json.amount(decimal));
        }
        if (value instanceof Integer whole) {
            return nodes.numberNode(whole);
        }
        if (value instanceof Long whole) {
            return nodes.numberNode(whole);
        }
        if (value instanceof Boolean truth) {
            return nodes.booleanNode(truth);
        }
        if (value instanceof Map<?, ?> map) {
            ObjectNode object = Json.object();
            map.forEach((key, member) -> object.set(String.valueOf(key), node(member)));
            return object;
        }
        if (value instanceof List<?> list) {
            ArrayNode array = nodes.arrayNode();
            list.forEach(member -> array.add(node(member)));
            return array;
        }
        if (value instanceof Table.Filled<?> filled) {
            return array(filled);
        }
        if (value instanceof Table.One<?> one) {
            return object(one);
        }
        return nodes.textNode(value.toString());
    }
}
