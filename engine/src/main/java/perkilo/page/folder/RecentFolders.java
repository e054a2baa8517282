package perkilo.page.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.zip.CRC32C;
import perkilo.page.http.Refusal;
import perkilo.page.http.Status;
import perkilo.xlsx.write.SavedFile;

/** The folders that were opened before, newest first, kept in a file of one line each. Thread-safe. */
public final class RecentFolders {

    private static final int MOST = 8;
    private static final int LONGEST_FILE = 1 << 16;

    private final Path list;

    /**
     * The folders in a file.
     *
     * @param list the file; it may be missing
     */
    public RecentFolders(Path list) {
        this.list = list;
    }

    /** The folders that still exist. */
    public synchronized List<Path> all() {
        List<Path> folders = new ArrayList<>();
        try {
            if (Files.isRegularFile(list) && Files.size(list) < LONGEST_FILE) {
                for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
                    Path folder = Path.of(line);
                    if (folder.isAbsolute() && Files.isDirectory(folder) && folders.size() < MOST) {
                        folders.add(folder);
                    }
                }
            }
        } catch (IOException | InvalidPathException unreadable) {
            return List.copyOf(folders); // what is recent is a help only
        }
        return folders;
    }

    /** Puts a folder first. If the list cannot be written, it stays as it was. */
    public synchronized void opened(Path folder) {
        List<String> lines = new ArrayList<>(List.of(folder.toString()));
        for (Path other : all()) {
            if (!other.equals(folder) && lines.size() < MOST) {
                lines.add(other.toString());
            }
        }
        try {
            Path place = list.getParent();
            if (place != null) {
                Files.createDirectories(place);
            }
            SavedFile.write(list, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            return; // what is recent is a help only
        }
    }

    /** What the page calls a folder instead of its path. */
    public static String id(Path folder) {
        CRC32C sum = new CRC32C();
        sum.update(folder.toString().getBytes(StandardCharsets.UTF_8));
        return Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(Long.toString(sum.getValue()).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The folder that a page means.
     *
     * @throws Refusal if none of the folders has that name
     */
    public Path find(String id) throws Refusal {
        return all().stream()
                .filter(folder -> id(folder).equals(id))
                .findFirst()
                .orElseThrow(() -> new Refusal(Status.NOT_FOUND, FolderMessages.noSuchFolder()));
    }
}
