package perkilo.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.page.Served;
import perkilo.page.Visitor;

/** Files that are made to do harm, dropped onto the page: refused by the reader of the commands, and not kept. */
final class PageUploadsTest {

    @TempDir
    private Path place = Path.of("");

    private Path folder = Path.of("");
    private Served served;
    private Visitor page;

    @BeforeEach
    void start() throws Exception {
        folder = place.resolve("folder");
        served = new Served(folder);
        page = served.visitor();
    }

    @AfterEach
    void end() {
        assertThat(served.faults()).isEmpty();
        served.close();
    }

    /** All that the command refuses, with its words. */
    static Stream<Arguments> files() throws Exception {
        return HostileFilesTest.files();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void a_file_that_cannot_be_read_is_refused_in_the_words_of_the_command(String what, byte[] bytes, String expected)
            throws Exception {
        assertThat(Visitor.refusal(page.upload("book.xlsx", bytes))).isEqualTo("422 book.xlsx " + expected);
        assertThat(folder).doesNotExist();
    }

    @Test
    void a_file_that_came_into_the_folder_in_another_way_is_refused_when_it_is_read() throws Exception {
        Files.createDirectories(folder);
        Files.write(folder.resolve("book.xlsx"), HostileFilesTest.entities());
        assertThat(page.refused("/api/books/book.xlsx/cost", Visitor.object()))
                .startsWith("422 book.xlsx holds a DOCTYPE declaration");
    }

    @Test
    void words_of_a_workbook_come_back_as_json_text_alone() throws Exception {
        String evil = "</script><script>alert(1)</script>\"'\u2028{{7*7}}";
        RawBook book = RawBook.sound()
                .sheet("Evil <b>", List.of("Item", evil), List.of(evil, 1))
                .set("Offers", "H1", RawBook.text(evil));
        JsonNode added = Visitor.answered(page.upload("evil.xlsx", book.bytes()));
        assertThat(added.get("kind").textValue()).isEqualTo("workbook");
        for (String path : List.of("/api/books/evil.xlsx/reading", "/api/files/evil.xlsx")) {
            var answer = page.answer(path);
            assertThat(answer.headers().firstValue("Content-Type").orElse(""))
                    .isIn("application/json; charset=utf-8", "application/octet-stream");
            assertThat(answer.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        }
        assertThat(page.get("/api/books/evil.xlsx/reading").toString()).contains("alert(1)");
    }

    @Test
    void a_price_list_and_rates_are_read_with_the_workbook_if_the_page_says_so() throws Exception {
        Files.createDirectories(folder);
        Files.write(folder.resolve("book.xlsx"), RawBook.sound().bytes());
        byte[] list = """
                Supplier,Item,Pack size,Pack unit,Price,Price per,Currency
                Brayle Traders,Shea butter,1,kg,0.5,kg,EUR
                """.getBytes(UTF_8);
        page.upload("list.csv", list);
        var asked = Visitor.object();
        asked.putArray("prices").add("list.csv");

        JsonNode with = page.post("/api/books/book.xlsx/cost", asked);
        JsonNode without = page.post("/api/books/book.xlsx/cost", Visitor.object());

        assertThat(with.toString()).contains("Brayle Traders");
        assertThat(without.toString()).doesNotContain("Brayle Traders");
        asked.putArray("prices").add("../list.csv");
        assertThat(page.refused("/api/books/book.xlsx/cost", asked)).startsWith("400 ");
    }
}
