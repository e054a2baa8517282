package perkilo.page.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.desk.ResultNames;
import perkilo.page.http.Refusal;
import perkilo.page.http.Status;
import perkilo.xlsx.write.SavedFile;

/** The folder that the page works in. Only files directly in it are seen, and no name leads elsewhere. Thread-safe. */
public final class OpenFolder {

    private static final int MOST_ALIKE = 1000;

    private final Path folder;

    /**
     * A folder, which is made once a file is put into it.
     *
     * @param folder with a whole path
     */
    public OpenFolder(Path folder) {
        this.folder = folder;
    }

    /** Its path. */
    public Path path() {
        return folder;
    }

    /** The workbooks in the folder; neither backups nor what office suites keep while a workbook is open. */
    public List<Path> books() throws IOException {
        return all(name -> FileNames.isBook(name) && !ResultNames.isBackup(name));
    }

    /** The files in the folder that can be price lists or exchange rates. */
    public List<Path> lists() throws IOException {
        return all(name -> FileNames.isList(name) && !ResultNames.isBackup(name));
    }

    private List<Path> all(java.util.function.Predicate<String> kind) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.filter(file -> kind.test(name(file)) && isSound(name(file)) && isHere(file))
                    .sorted(Comparator.comparing(OpenFolder::name, String.CASE_INSENSITIVE_ORDER))
                    .toList();
        }
    }

    /**
     * A file of the folder.
     *
     * @param name as the page sent it
     * @throws Refusal if there is none of that name, or the name leads elsewhere
     */
    public Path file(String name) throws Refusal {
        FileNames.check(name);
        Path file = folder.resolve(name);
        if (!isHere(file)) {
            throw new Refusal(Status.NOT_FOUND, FolderMessages.noSuchFile(name));
        }
        return file;
    }

    /** Several files of the folder. */
    public List<Path> files(List<String> names) throws Refusal {
        List<Path> files = new ArrayList<>();
        for (String name : names) {
            files.add(file(name));
        }
        return files;
    }

    /**
     * A file that was put into the folder.
     *
     * @param note what the person should know about its name; null for nothing
     */
    public record Added(Path file, @Nullable String note) {}

    /**
     * Puts a file into the folder, never over another one: a file with the same content is left alone, and beside one
     * with another content it gets a number.
     *
     * @throws Refusal if it must not have that name
     * @throws IOException whose message is a sentence for a person, if it cannot be written
     */
    public Added add(String name, byte[] content) throws Refusal, IOException {
        return add(name, content, true);
    }

    /** The same, but a file with the same content does not count as this one. */
    public Added addAnew(String name, byte[] content) throws Refusal, IOException {
        return add(name, content, false);
    }

    /**
     * Checks a name that a page sent.
     *
     * @throws Refusal if a file must not have it
     */
    public void checkName(String name) throws Refusal {
        FileNames.check(name);
    }

    private synchronized Added add(String name, byte[] content, boolean once) throws Refusal, IOException {
        FileNames.check(name);
        Files.createDirectories(folder);
        for (int number = 1; number <= MOST_ALIKE; number++) {
            String used = number == 1 ? name : FileNames.numbered(name, number);
            Path file = folder.resolve(used);
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                SavedFile.write(file, content);
                return new Added(file, number == 1 ? null : FolderMessages.otherFile(name, used));
            }
            if (once
                    && isHere(file)
                    && Files.size(file) == content.length
                    && Arrays.equals(Files.readAllBytes(file), content)) {
                return new Added(file, FolderMessages.sameFile(used));
            }
        }
        throw new Refusal(Status.NO_ANSWER, FolderMessages.noFreeName(name));
    }

    private static boolean isSound(String name) {
        try {
            FileNames.check(name);
            return true;
        } catch (Refusal refused) {
            return false;
        }
    }

    /** Whether a file is in this folder, also once links are followed. */
    private boolean isHere(Path file) {
        try {
            return Files.isRegularFile(file)
                    && folder.toRealPath().equals(file.toRealPath().getParent());
        } catch (IOException e) {
            return false;
        }
    }

    /** A sentence about a file, without the path of the folder. */
    public String without(String sentence) {
        return sentence.replace(folder + folder.getFileSystem().getSeparator(), "");
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }
}
