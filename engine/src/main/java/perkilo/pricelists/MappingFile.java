package perkilo.pricelists;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Mapping;
import perkilo.layouts.Question;
import perkilo.layouts.QuestionMessages;
import perkilo.xlsx.grid.UnreadableFileException;
import perkilo.xlsx.write.SavedFile;

/** Mappings as JSON files, short enough to be edited by hand. */
final class MappingFile {

    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final String ABOUT = "How this supplier's price lists are read. Replace each null by an answer"
            + " (the questions are under \"open\"), correct what is wrong, save, and run perkilo prices on the list"
            + " again. Under names, \"is\" is the name that your formulas use. Leave it null to keep the supplier's own"
            + " name.";
    private static final Set<String> KNOWN = Set.of("about", "open", "supplier", "columns", "names");

    private MappingFile() {}

    /**
     * Reads a mapping.
     *
     * @throws UnreadableFileException if the file is not a mapping; its message says where and why
     */
    static Mapping read(Path file) throws IOException {
        JsonNode root;
        try {
            root = JSON.readTree(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new UnreadableFileException(
                    ListMessages.mappingNotJson(file, e.getLocation().getLineNr(), e.getOriginalMessage()), e);
        }
        if (!root.isObject()) {
            throw new UnreadableFileException(ListMessages.notAMapping(file));
        }
        Map<String, @Nullable String> answers = new LinkedHashMap<>();
        root.properties().forEach(field -> {
            if (!KNOWN.contains(field.getKey())) {
                answers.put(field.getKey(), text(field.getValue()));
            }
        });
        Map<String, @Nullable String> columns = new LinkedHashMap<>();
        root.path("columns").properties().forEach(column -> columns.put(column.getKey(), text(column.getValue())));
        Map<String, Mapping.NameAnswer> names = new LinkedHashMap<>();
        for (JsonNode name : root.path("names")) {
            names.put(
                    name.path("on the list").asText(),
                    new Mapping.NameAnswer(
                            text(name.path("is")),
                            name.path("by").asText(""),
                            name.path("perhaps").asText(""),
                            name.path("likeness").asDouble()));
        }
        return new Mapping(root.path("supplier").asText(""), answers, columns, names);
    }

    private static @Nullable String text(JsonNode node) {
        return node.isNull() || node.isMissingNode() ? null : node.asText();
    }

    /**
     * Writes a mapping.
     *
     * @param questions what is open; their fields are null in the file
     */
    static void write(Path file, Mapping mapping, List<Question> questions) throws IOException {
        ObjectNode root = JSON.createObjectNode().put("about", ABOUT);
        Set<String> open = new LinkedHashSet<>();
        questions.forEach(question -> open.add(question.where().where() + ": " + question.text() + " "
                + QuestionMessages.choices(question.choices())));
        if (!open.isEmpty()) {
            ArrayNode asked = root.putArray("open");
            open.forEach(asked::add);
        }
        root.put("supplier", mapping.supplier());
        mapping.answers().forEach(root::put);
        for (Question question : questions) {
            if (question.key().isEmpty() && !root.has(question.field())) {
                root.putNull(question.field());
            }
        }
        ObjectNode columns = root.putObject("columns");
        mapping.columns().forEach(columns::put);
        questions.stream()
                .filter(question -> !question.key().isEmpty())
                .forEach(question -> columns.putNull(question.key()));
        ArrayNode names = root.putArray("names");
        mapping.names().forEach((listed, answer) -> names.add(name(listed, answer)));
        SavedFile.write(file, JSON.writeValueAsBytes(root));
    }

    private static ObjectNode name(String listed, Mapping.NameAnswer answer) {
        ObjectNode name = JSON.createObjectNode().put("on the list", listed).put("is", answer.is());
        if (!answer.by().isEmpty()) {
            name.put("by", answer.by());
        }
        if (!answer.perhaps().isEmpty()) {
            name.put("perhaps", answer.perhaps());
            name.put("likeness", BigDecimal.valueOf(answer.likeness()).setScale(2, RoundingMode.HALF_UP));
        }
        return name;
    }
}
