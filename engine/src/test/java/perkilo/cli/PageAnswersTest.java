package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.page.Served;
import perkilo.page.Visitor;

/** The page gives the figures of the commands, and writes what the commands write. */
final class PageAnswersTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    private Path place = Path.of("");

    private Path folder = Path.of("");
    private Path other = Path.of("");
    private Served served;
    private Visitor page;

    @BeforeEach
    void start() throws Exception {
        folder = Files.createDirectory(place.resolve("folder"));
        other = Files.createDirectory(place.resolve("other"));
        served = new Served(folder);
        page = served.visitor();
    }

    @AfterEach
    void end() {
        assertThat(served.faults()).isEmpty();
        served.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"launch", "orders", "emollients"}) // each with its costing date
    void costs_are_those_of_the_command(String template) throws Exception {
        page.post("/api/new", Visitor.object().put("template", template));
        Path same = copy(template + ".xlsx");

        JsonNode answer = page.post("/api/books/" + template + ".xlsx/cost", Visitor.object());

        assertThat(answer.get("answer")).isEqualTo(json("cost", same));
    }

    @Test
    void sizes_are_those_of_the_command() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "launch"));
        ObjectNode asked = Visitor.object();
        asked.putArray("sizes").add("700").add(2000);

        JsonNode answer = page.post("/api/books/launch.xlsx/cost", asked);

        assertThat(answer.get("answer")).isEqualTo(json("cost", copy("launch.xlsx"), "--units", "700,2000"));
        asked.putArray("sizes").add("1.5");
        assertThat(page.refused("/api/books/launch.xlsx/cost", asked))
                .isEqualTo("400 \"1.5\" is not a number of units. Type whole numbers above zero.");
    }

    @Test
    void a_book_with_errors_has_the_answer_of_the_command() throws Exception {
        byte[] book = RawBook.sound().set("Offers", "F2", RawBook.text("soon")).bytes();
        Files.write(folder.resolve("book.xlsx"), book);

        JsonNode answer = page.post("/api/books/book.xlsx/cost", Visitor.object());
        JsonNode reading = page.get("/api/books/book.xlsx/reading");

        Path same = copy("book.xlsx");
        assertThat(answer.get("answer")).isEqualTo(json("cost", same));
        JsonNode check = json("check", same);
        assertThat(reading.get("findings")).isEqualTo(check.get("messages"));
        assertThat(reading.get("account")).isEqualTo(check.get("reading"));
    }

    /** Every number that can be changed, against the scenario of the command. */
    @Test
    void a_change_on_trial_costs_what_the_scenario_of_the_command_costs() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "launch"));
        Path same = copy("launch.xlsx");
        JsonNode controls =
                page.post("/api/books/launch.xlsx/cost", Visitor.object()).get("controls");
        assertThat(controls.size()).isGreaterThan(20);
        int tried = 0;
        for (JsonNode control : controls) {
            if (tried++ % 6 != 0) {
                continue; // some of each kind
            }
            String what = control.get("what").textValue();
            JsonNode changed = page.post("/api/books/launch.xlsx/cost", changes(what, "+10 %"));
            JsonNode scenario = json("cost", same, "--what", what + " +10 %").at("/scenarios/0/runs");
            assertThat(scenario).as(what).hasSize(9);
            for (int run = 0; run < scenario.size(); run++) {
                assertThat(changed.at("/answer/runs/" + run + "/unitCost/EUR"))
                        .as(what)
                        .isEqualTo(scenario.get(run).get("cost"));
            }
        }
    }

    @Test
    void every_number_that_can_be_changed_is_understood() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "launch"));
        JsonNode controls =
                page.post("/api/books/launch.xlsx/cost", Visitor.object()).get("controls");
        ObjectNode all = Visitor.object();
        for (JsonNode control : controls) {
            all.withArray("changes")
                    .addObject()
                    .put("what", control.get("what").textValue())
                    .put("change", "+1 %");
        }
        assertThat(page.post("/api/books/launch.xlsx/cost", all).at("/answer/runs"))
                .hasSize(9);
        assertThat(page.refused("/api/books/launch.xlsx/cost", changes("Moon dust", "+1 %")))
                .startsWith("422 The scenario changes \"Moon dust\", which is not in the workbook");
    }

    @Test
    void targets_are_those_of_the_command() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "launch"));
        assertThat(page.post("/api/books/launch.xlsx/cost", Visitor.object())
                        .get("decides")
                        .booleanValue())
                .isTrue();
        ObjectNode asked = Visitor.object();
        asked.putArray("sizes").add("300");
        JsonNode found = page.post("/api/books/launch.xlsx/decide", asked);
        JsonNode command = json("target", copy("launch.xlsx"), "--units", "300");
        assertThat(found.get("targets")).isEqualTo(command.get("products")).isNotEmpty();
    }

    @Test
    void without_a_target_there_is_none() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "minimal"));
        JsonNode found = page.post("/api/books/minimal.xlsx/decide", Visitor.object());
        assertThat(found.has("targets")).isFalse();
        assertThat(found.get("curve")).hasSize(1);
    }

    @Test
    void the_points_of_the_curve_are_costs_of_the_command() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "launch"));
        JsonNode curve =
                page.post("/api/books/launch.xlsx/decide", Visitor.object()).get("curve");
        assertThat(curve).hasSize(3);
        List<String> between = new ArrayList<>();
        curve.get(0).get("points").forEach(point -> {
            if (!point.get("own").booleanValue()) {
                between.add(point.get("units").textValue());
            }
        });
        assertThat(between).containsExactly("400", "530", "700", "920", "1200", "1600", "2100", "2800", "3800");
        JsonNode command = json("cost", copy("launch.xlsx"), "--units", String.join(",", between));
        for (int at = 0; at < between.size(); at++) {
            assertThat(curve.at("/0/points/" + (at + 3) + "/unitCost"))
                    .isEqualTo(command.at("/runs/" + at + "/unitCost/EUR"));
        }
    }

    @Test
    void what_is_saved_is_what_the_command_writes() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "launch"));
        JsonNode cost = page.post("/api/books/launch.xlsx/cost", Visitor.object());
        ObjectNode asked = changes("USD", "+10 %").put("what", "cost");
        asked.set("stamp", cost.get("stamp"));

        JsonNode saved = page.post("/api/books/launch.xlsx/save", asked);

        assertThat(saved.get("written").textValue()).isEqualTo("launch-costed.xlsx");
        assertThat(saved.get("place").textValue()).isEqualTo(folder.toString());
        Path result = folder.resolve("launch-costed.xlsx");
        byte[] written = Files.readAllBytes(result);
        Files.delete(result);
        Path book = folder.resolve("launch.xlsx");
        assertThat(CommandLineRun.of("cost", book, "--what", "USD +10 %", "-q").exit())
                .isEqualTo(Exit.DONE);
        assertThat(Arrays.equals(Files.readAllBytes(result), written)).isTrue();
    }

    @Test
    void nothing_is_written_if_the_workbook_was_changed_meanwhile() throws Exception {
        page.post("/api/new", Visitor.object().put("template", "minimal"));
        JsonNode cost = page.post("/api/books/minimal.xlsx/cost", Visitor.object());
        CommandLineRun.of("cost", folder.resolve("minimal.xlsx"), "--in-place", "-q");
        ObjectNode asked = Visitor.object().put("what", "cost");
        asked.set("stamp", cost.get("stamp"));

        assertThat(page.refused("/api/books/minimal.xlsx/save", asked))
                .isEqualTo(
                        "409 minimal.xlsx was changed since the page read it. Read it again, then repeat what you did.");
        assertThat(page.refused("/api/books/minimal.xlsx/save", Visitor.object().put("what", "cost")))
                .startsWith("400 ");
        assertThat(folder.resolve("minimal-costed.xlsx")).doesNotExist();
    }

    private static ObjectNode changes(String what, String change) {
        ObjectNode asked = Visitor.object();
        asked.putArray("changes").addObject().put("what", what).put("change", change);
        return asked;
    }

    private Path copy(String name) throws IOException {
        return Files.copy(folder.resolve(name), other.resolve(name));
    }

    private static JsonNode json(String command, Path book, String... more) throws IOException {
        Object[] arguments = new Object[more.length + 3];
        arguments[0] = command;
        arguments[1] = book;
        arguments[2] = "--json";
        System.arraycopy(more, 0, arguments, 3, more.length);
        return MAPPER.readTree(CommandLineRun.of(arguments).out());
    }
}
