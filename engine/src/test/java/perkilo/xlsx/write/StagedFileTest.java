package perkilo.xlsx.write;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** If writing a file fails, the old file stays and nothing is left behind. */
final class StagedFileTest {

    @TempDir
    private Path folder = Path.of("");

    private Path target = Path.of("");

    @BeforeEach
    void something_stands_there() throws IOException {
        target = Files.writeString(folder.resolve("costs.xlsx"), "old");
    }

    @Test
    void a_complete_file_takes_its_place() throws IOException {
        try (StagedFile staged = StagedFile.write(target, channel -> put(channel, "new"))) {
            assertThat(target).hasContent("old");
            staged.moveToItsPlace();
        }
        assertThat(target).hasContent("new");
        assertNothingElse();
    }

    @Test
    void a_file_that_is_not_moved_leaves_nothing() throws IOException {
        StagedFile.write(target, channel -> put(channel, "new")).close();
        assertThat(target).hasContent("old");
        assertNothingElse();
    }

    @Test
    void a_full_disk() {
        assertFails(
                new IOException("No space left on device"),
                "%s cannot be written because the disk is full. Make room or choose another place.");
        assertFails(
                new IOException("There is not enough space on the disk"),
                "%s cannot be written because the disk is full. Make room or choose another place.");
    }

    @Test
    void a_read_only_folder() {
        assertFails(
                new AccessDeniedException("/somewhere"),
                "%s cannot be written because the file or its folder is write-protected. Choose another place.");
    }

    @Test
    void a_file_that_another_program_holds() {
        assertFails(
                new FileSystemException(
                        "costs.xlsx",
                        null,
                        "The process cannot access the file because it is being used by another process"),
                "%s is open in another program. Close it there and run again.");
    }

    @Test
    void anything_else() {
        assertFails(
                new IOException("Input/output error"),
                "%s cannot be written (Input/output error). Choose another place.");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void links_and_permissions_stay() throws IOException {
        Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), target);
        try (StagedFile staged = StagedFile.write(link, channel -> put(channel, "new"))) {
            staged.moveToItsPlace();
        }
        assertThat(link).isSymbolicLink().hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(target)))
                .isEqualTo("rw-rw----");
    }

    private void assertFails(IOException fault, String message) {
        assertThatThrownBy(() -> StagedFile.write(target, channel -> {
                    put(channel, "half of it");
                    throw fault;
                }))
                .isInstanceOf(UnwritableFileException.class)
                .hasMessage(message, target);
        assertThat(target).hasContent("old");
        assertNothingElse();
    }

    private void assertNothingElse() {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(target);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void put(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(UTF_8));
    }
}
