package perkilo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Folders of tests are in one folder, and can be deleted with what is in them. */
final class ScratchTest {

    @Test
    void a_folder_is_deleted_with_all_that_is_in_it() throws IOException {
        Path one = Scratch.folder();
        Path other = Scratch.folder();
        Files.writeString(Files.createDirectory(one.resolve("inner")).resolve("file.txt"), "text");

        Scratch.delete(one);

        assertThat(one).doesNotExist();
        assertThat(other).exists().hasParent(one.getParent());
    }
}
