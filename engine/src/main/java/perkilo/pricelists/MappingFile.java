package perkilo.pricelists;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Mapping;
import perkilo.xlsx.grid.UnreadableFileException;

/** Mappings as JSON files, in which an earlier version kept the answers about a supplier's lists. */
final class MappingFile {

    private static final ObjectMapper JSON = new ObjectMapper();
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
}
