package perkilo.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import perkilo.desk.FileKinds;
import perkilo.desk.ResultNames;
import perkilo.desk.Template;
import perkilo.json.Json;
import perkilo.page.folder.OpenFolder;
import perkilo.page.folder.RecentFolders;
import perkilo.page.http.Answer;
import perkilo.page.http.Call;
import perkilo.page.http.Refusal;
import perkilo.page.http.Routes;
import perkilo.page.http.Status;

/** What the page asks about the folder and the files in it. */
final class FolderCalls {

    private static final int MOST_BYTES = 50 << 20;
    private static final int MOST_FILES = 200;

    private final Desk desk;
    private final String version;
    private final AtomicInteger added = new AtomicInteger();

    FolderCalls(Desk desk, String version) {
        this.desk = desk;
        this.version = version;
    }

    void addTo(Routes routes) {
        routes.add("GET", "start", (call, name) -> start());
        routes.add("POST", "folder", (call, name) -> {
            desk.open(desk.recent().find(Call.text(call.body(), "id")));
            return start();
        });
        routes.add("POST", "files", (call, name) -> add(call));
        routes.add(
                "GET",
                "files/*",
                (call, name) -> new Answer.Download(desk.folder(call).file(name), name));
        routes.add("POST", "new", (call, name) -> begin(call));
    }

    private Answer start() throws IOException {
        OpenFolder folder = desk.folder();
        if (Files.isDirectory(folder.path())) {
            desk.recent().opened(folder.path());
        }
        ObjectNode start = Json.object()
                .put("version", version)
                .put("today", desk.today().toString())
                .put("folder", folder.path().toString())
                .put("folderId", RecentFolders.id(folder.path()))
                .put("book", desk.book());
        ArrayNode books = start.putArray("books");
        for (Path book : folder.books()) {
            books.add(file(book).put("result", ResultNames.isResult(name(book))));
        }
        ArrayNode lists = start.putArray("lists");
        for (Path list : folder.lists()) {
            lists.add(file(list));
        }
        ArrayNode recent = start.putArray("recentFolders");
        for (Path other : desk.recent().all()) {
            recent.addObject().put("id", RecentFolders.id(other)).put("display", other.toString());
        }
        ArrayNode templates = start.putArray("templates");
        for (Template template : Template.values()) {
            int colon = template.purpose().indexOf(':');
            String title = template.purpose().substring(0, colon);
            templates
                    .addObject()
                    .put("name", template.word())
                    .put("title", title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1))
                    .put("about", template.purpose().substring(colon + 1).strip());
        }
        return new Answer.Data(start);
    }

    private static ObjectNode file(Path file) throws IOException {
        return Json.object()
                .put("name", name(file))
                .put("bytes", Files.size(file))
                .put(
                        "changed",
                        Files.getLastModifiedTime(file)
                                .toInstant()
                                .truncatedTo(ChronoUnit.SECONDS)
                                .toString());
    }

    private Answer add(Call call) throws Refusal, IOException {
        OpenFolder folder = desk.folder(call);
        String name = call.one("name");
        byte[] content = call.file(MOST_BYTES);
        if (added.incrementAndGet() > MOST_FILES) {
            throw new Refusal(Status.TOO_LARGE, PageMessages.tooManyFiles(MOST_FILES));
        }
        folder.checkName(name);
        FileKinds.Kind kind = new FileKinds().of(name, content, desk.today());
        return added(folder.add(name, content), kind);
    }

    private Answer begin(Call call) throws Refusal, IOException {
        OpenFolder folder = desk.folder(call);
        String word = Call.text(call.body(), "template");
        Optional<Template> template = Template.find(word);
        if (template.isEmpty()) {
            throw new Refusal(Status.NOT_FOUND, PageMessages.noTemplate(word));
        }
        return added(
                folder.addAnew(
                        word.toLowerCase(Locale.ROOT) + ".xlsx", template.get().content()),
                FileKinds.Kind.WORKBOOK);
    }

    private static Answer added(OpenFolder.Added added, FileKinds.Kind kind) {
        ObjectNode answer = Json.object()
                .put("name", name(added.file()))
                .put("kind", kind.name().toLowerCase(Locale.ROOT));
        if (added.note() != null) {
            answer.put("note", added.note());
        }
        return new Answer.Data(answer);
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
