package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starting a workbook. */
final class StartBookTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_template_is_written_where_nothing_is_yet() throws IOException {
        Path file = new StartBook().start(Template.MINIMAL, folder.resolve("balm.xlsx"));
        byte[] written = Files.readAllBytes(file);

        assertThat(written).startsWith('P', 'K');
        assertThatThrownBy(() -> new StartBook().start(Template.LAUNCH, file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("already exists and is not changed. Choose another name.");
        assertThat(file).hasBinaryContent(written);
        assertThatThrownBy(() -> new StartBook().start(Template.LAUNCH, folder.resolve("none/balm.xlsx")))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("does not exist. Create it first.");
    }
}
