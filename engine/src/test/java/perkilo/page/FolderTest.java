package perkilo.page;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.desk.Template;

/** Files in the folder of the page: listed, put in, started, given out; none is ever overwritten. */
final class FolderTest {

    private static final byte[] LIST =
            "Supplier,Item,Pack size,Pack unit,Price,Currency\nTarnholt Oleo,Shea butter,25,kg,160,EUR\n"
                    .getBytes(UTF_8);

    @TempDir
    private Path place = Path.of("");

    private Path folder = Path.of("");
    private Served served;
    private Visitor page;

    @BeforeEach
    void start() throws Exception {
        folder = place.resolve("My folder");
        served = new Served(folder);
        page = served.visitor();
    }

    @AfterEach
    void end() {
        assertThat(served.faults()).isEmpty();
        served.close();
    }

    @Test
    void the_folder_is_made_with_its_first_file() throws Exception {
        JsonNode before = page.get("/api/start");
        assertThat(folder).doesNotExist();
        assertThat(before.get("folder").textValue()).isEqualTo(folder.toString());
        assertThat(before.get("today").textValue()).isEqualTo("2026-11-20");
        assertThat(before.get("book").isNull()).isTrue();

        JsonNode made = page.post("/api/new", Visitor.object().put("template", "launch"));
        assertThat(made.get("name").textValue()).isEqualTo("launch.xlsx");
        assertThat(Files.readAllBytes(folder.resolve("launch.xlsx"))).isEqualTo(Template.LAUNCH.content());
        assertThat(names(page.get("/api/start"), "books")).containsExactly("launch.xlsx");
    }

    @Test
    void every_template_is_offered_and_a_second_one_gets_a_number() throws Exception {
        JsonNode templates = page.get("/api/start").get("templates");
        assertThat(templates).hasSize(Template.values().length);
        for (JsonNode template : templates) {
            assertThat(template.get("title").textValue()).isNotBlank();
            assertThat(template.get("about").textValue()).isNotBlank();
            page.post(
                    "/api/new",
                    Visitor.object().put("template", template.get("name").textValue()));
        }
        JsonNode again = page.post("/api/new", Visitor.object().put("template", "minimal"));
        assertThat(again.get("name").textValue()).isEqualTo("minimal (2).xlsx");
        assertThat(page.refused("/api/new", Visitor.object().put("template", "../x")))
                .isEqualTo("404 There is no template \"../x\".");
    }

    @Test
    void what_is_no_persons_file_is_not_listed() throws Exception {
        Files.createDirectories(folder.resolve("inner.xlsx"));
        for (String name : List.of(
                "b.xlsx",
                "A.xlsm",
                "b-costed.xlsx",
                "b.backup-2026-11-20-1.xlsx",
                "~$b.xlsx",
                ".hidden.xlsx",
                "list.csv",
                "notes.md",
                "old.backup-2026-11-20-2.csv")) {
            Files.write(folder.resolve(name), new byte[] {1});
        }
        JsonNode start = page.get("/api/start");
        assertThat(names(start, "books")).containsExactly("A.xlsm", "b-costed.xlsx", "b.xlsx");
        assertThat(start.at("/books/1/result").booleanValue()).isTrue();
        assertThat(start.at("/books/2/result").booleanValue()).isFalse();
        assertThat(start.at("/books/2/bytes").intValue()).isEqualTo(1);
        assertThat(names(start, "lists")).containsExactly("list.csv");
    }

    @Test
    void a_dropped_file_is_copied_and_recognised() throws Exception {
        byte[] book = Template.MINIMAL.content();
        assertThat(taken("Crème n° 5.xlsx", book)).isEqualTo("Crème n° 5.xlsx workbook");
        assertThat(taken("list.csv", LIST)).isEqualTo("list.csv list");
        assertThat(taken("rates.csv", "From,To,Rate,Date,Source\nUSD,EUR,0.9,2026-11-20,bank\n".getBytes(UTF_8)))
                .isEqualTo("rates.csv rates");
        HttpResponse<byte[]> back = page.download("/api/files/" + Visitor.encoded("Crème n° 5.xlsx"));
        assertThat(back.body()).isEqualTo(book);
        assertThat(back.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename*=UTF-8''Cr%C3%A8me%20n%C2%B0%205.xlsx");
        assertThat(back.headers().firstValue("Content-Type")).contains("application/octet-stream");
    }

    @Test
    void no_file_is_overwritten() throws Exception {
        taken("list.csv", LIST);
        JsonNode same = Visitor.answered(page.upload("list.csv", LIST));
        assertThat(same.get("name").textValue()).isEqualTo("list.csv");
        assertThat(same.get("note").textValue()).isEqualTo("list.csv is in the folder already.");
        byte[] other = (new String(LIST, UTF_8) + "Tarnholt Oleo,Argan oil,5,kg,90,EUR\n").getBytes(UTF_8);
        JsonNode beside = Visitor.answered(page.upload("list.csv", other));
        assertThat(beside.get("name").textValue()).isEqualTo("list (2).csv");
        assertThat(beside.get("note").textValue())
                .isEqualTo("Another file called list.csv is in the folder, so this one is kept as list (2).csv.");
        assertThat(Files.readAllBytes(folder.resolve("list.csv"))).isEqualTo(LIST);
        assertThat(Files.readAllBytes(folder.resolve("list (2).csv"))).isEqualTo(other);
    }

    @Test
    void what_cannot_be_read_is_not_kept() throws Exception {
        assertThat(Visitor.refusal(page.upload("book.xlsx", "words".getBytes(UTF_8))))
                .isEqualTo(
                        "422 book.xlsx is a text file (CSV), not a workbook. Open it in your spreadsheet program and save"
                                + " it as .xlsx.");
        assertThat(Visitor.refusal(page.upload("rates.xml", "<a/>".getBytes(UTF_8))))
                .startsWith("422 rates.xml ");
        assertThat(Visitor.refusal(page.upload("list.csv", new byte[0]))).startsWith("422 list.csv is empty.");
        assertThat(folder).doesNotExist();
    }

    @Test
    void what_is_too_large_is_refused() throws Exception {
        assertThat(Visitor.refusal(page.upload("list.csv", new byte[(50 << 20) + 1])))
                .isEqualTo("413 This is larger than 50 MB, the most that the page takes.");
        assertThat(folder).doesNotExist();
    }

    @Test
    void a_session_takes_200_files() throws Exception {
        for (int file = 0; file < 200; file++) {
            assertThat(page.upload("list.csv", LIST).statusCode()).isEqualTo(200);
        }
        assertThat(Visitor.refusal(page.upload("list.csv", LIST))).startsWith("413 The page takes 200 files");
    }

    @Test
    void folders_that_were_opened_are_offered_again_by_name() throws Exception {
        taken("list.csv", LIST);
        JsonNode here = page.get("/api/start");
        Path other = Files.createDirectory(place.resolve("Other"));
        try (Served next = new Served(other)) {
            Visitor there = next.visitor();
            JsonNode recent = there.get("/api/start").get("recentFolders");
            assertThat(recent)
                    .extracting(one -> one.get("display").textValue())
                    .containsExactly(other.toString(), folder.toString());
            String id = recent.get(1).get("id").textValue();
            assertThat(id).isEqualTo(here.get("folderId").textValue());
            JsonNode back = there.post("/api/folder", Visitor.object().put("id", id));
            assertThat(back.get("folder").textValue()).isEqualTo(folder.toString());
            assertThat(names(back, "lists")).containsExactly("list.csv");
            for (String path : List.of(place.toString(), "/", "", "..")) {
                assertThat(there.refused("/api/folder", Visitor.object().put("id", path)))
                        .startsWith("404 ");
            }
        }
    }

    @Test
    void a_page_that_means_another_folder_is_told() throws Exception {
        taken("list.csv", LIST);
        String id = page.get("/api/start").get("folderId").textValue();
        assertThat(page.send(page.own("/api/files/list.csv").header("X-Folder", id))
                        .statusCode())
                .isEqualTo(200);
        assertThat(Visitor.refusal(page.send(page.own("/api/files/list.csv").header("X-Folder", "x"))))
                .startsWith("409 Another page has opened another folder.");
    }

    private String taken(String name, byte[] content) throws IOException, InterruptedException {
        JsonNode answer = Visitor.answered(page.upload(name, content));
        return answer.get("name").textValue() + " " + answer.get("kind").textValue();
    }

    private static List<String> names(JsonNode start, String list) {
        List<String> names = new ArrayList<>();
        start.get(list).forEach(one -> names.add(one.get("name").textValue()));
        return names;
    }

    /** Nothing that was begun is left behind. */
    @AfterEach
    void only_whole_files_are_there() throws IOException {
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".tmp")))
                        .isEmpty();
            }
        }
    }
}
