package perkilo.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Account;
import perkilo.origin.Finding;
import perkilo.report.cost.MessagesSheet;
import perkilo.report.cost.WhatWasRead;

/** Helpers for all answers in JSON. */
public final class Json {

    private static final int PLACES = 6;
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Json() {}

    /** An empty object. */
    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** A number as text: plain decimal, rounded half up to six places, without trailing zeros. */
    public static String amount(BigDecimal value) {
        BigDecimal rounded = value.setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    /** A number as text, or null if there is none. */
    public static @Nullable String amountOrNull(@Nullable BigDecimal value) {
        return value == null ? null : amount(value);
    }

    /** A list of things as an array of objects. */
    public static <T> ArrayNode array(List<T> things, Function<T, ObjectNode> shape) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        things.forEach(thing -> array.add(shape.apply(thing)));
        return array;
    }

    /** Texts, or things by their {@code toString}, as an array. */
    public static ArrayNode texts(List<?> words) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        words.forEach(word -> array.add(word.toString()));
        return array;
    }

    /** Findings as {@code messages}. */
    public static ArrayNode messages(List<Finding> findings) {
        return TableJson.array(MessagesSheet.TABLE.with(findings));
    }

    /** What became of everything in the files, as {@code reading}. */
    public static ArrayNode reading(Account account) {
        return TableJson.array(WhatWasRead.JSON.with(account.groups()));
    }

    /** An answer with messages only, if nothing could be computed. */
    public static ObjectNode onlyMessages(Account account, List<Finding> findings) {
        ObjectNode answer = object();
        answer.set("reading", reading(account));
        answer.set("messages", messages(findings));
        return answer;
    }

    /** The answer as it is printed. */
    public static String print(JsonNode answer) {
        try {
            return MAPPER.writeValueAsString(answer);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
