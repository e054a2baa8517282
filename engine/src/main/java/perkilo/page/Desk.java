package perkilo.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.desk.BookShelf;
import perkilo.desk.OpenedBook;
import perkilo.desk.Watch;
import perkilo.page.folder.OpenFolder;
import perkilo.page.folder.RecentFolders;
import perkilo.page.http.Call;
import perkilo.page.http.Refusal;
import perkilo.page.http.Status;
import perkilo.reading.Sources;
import perkilo.xlsx.parts.FileStamp;
import perkilo.xlsx.write.Written;

/** What all requests share: the folder, the workbooks that were read, the day. Thread-safe. */
final class Desk {

    private final PageSettings settings;
    private final RecentFolders recent;
    private final BookShelf shelf = new BookShelf();
    private volatile OpenFolder folder;

    Desk(PageSettings settings) {
        this.settings = settings;
        this.folder = new OpenFolder(settings.folder());
        this.recent = new RecentFolders(settings.recent());
    }

    /** The folder, for a page that has not asked for another one. */
    OpenFolder folder() {
        return folder;
    }

    /**
     * The folder, for a request that may name it.
     *
     * @throws Refusal if the request is about another folder
     */
    OpenFolder folder(Call call) throws Refusal {
        OpenFolder now = folder;
        String meant = call.header("X-Folder");
        if (meant != null && !meant.equals(RecentFolders.id(now.path()))) {
            throw new Refusal(Status.CHANGED, PageMessages.otherFolder());
        }
        return now;
    }

    /** Works in another folder from now on. */
    void open(Path other) {
        folder = new OpenFolder(other);
    }

    RecentFolders recent() {
        return recent;
    }

    /** The file that the page begins with; null for none, or if another folder was opened. */
    @Nullable String book() {
        return folder.path().equals(settings.folder()) ? settings.book() : null;
    }

    LocalDate today() {
        return LocalDate.now(settings.clock());
    }

    /** A sentence about files, as the page shows it. */
    String shown(String sentence) {
        return folder.without(sentence);
    }

    /** A workbook, with the price lists and rates that the request names. */
    Sources sources(Call call, String name, List<String> prices, String rates) throws Refusal {
        OpenFolder here = folder(call);
        return new Sources(here.file(name), here.files(prices), rates.isEmpty() ? null : here.file(rates), null);
    }

    /** A workbook, with the price lists and rates that the body of the request names. */
    Sources sources(Call call, String name, JsonNode body) throws Refusal {
        return sources(call, name, Call.texts(body, "prices"), Call.textOrEmpty(body, "rates"));
    }

    OpenedBook open(Sources sources, Watch watch) throws IOException {
        return shelf.open(sources, today(), watch);
    }

    /**
     * Checks that a workbook is still what the page has read.
     *
     * @param body with the stamp that the page got
     * @throws Refusal if it is not
     */
    static void checkStamp(OpenedBook opened, JsonNode body) throws Refusal {
        if (!Call.text(body, "stamp").equals(stamp(opened.book()))) {
            throw changed(opened.book().file());
        }
    }

    /** Writes a file. */
    @FunctionalInterface
    interface Writing {

        Written write() throws IOException;
    }

    /**
     * Writes a file that depends on a workbook; one at a time.
     *
     * @throws Refusal if the workbook was changed meanwhile
     */
    synchronized Written write(FileStamp book, Writing writing) throws Refusal, IOException {
        try {
            return writing.write();
        } catch (IOException failed) {
            if (book.isCurrent()) {
                throw failed;
            }
            throw changed(book.file());
        }
    }

    /** The refusal to write into a workbook that was changed meanwhile. */
    static Refusal changed(Path book) {
        return new Refusal(Status.CHANGED, PageMessages.changedMeanwhile(String.valueOf(book.getFileName())));
    }

    /** What the page remembers of a workbook, to say later which state it is about. */
    static String stamp(FileStamp stamp) {
        return Long.toHexString(stamp.length()) + "-" + Long.toHexString(stamp.sum());
    }
}
