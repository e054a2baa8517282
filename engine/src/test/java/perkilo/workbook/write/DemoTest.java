package perkilo.workbook.write;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

final class DemoTest {
    @Test
    void demo() throws Exception {
        Path folder = Files.createDirectories(Path.of("target/demo"));
        Path book = SampleBook.in(folder);
        new WorkbookWriter().write(book, SampleReport.build(), folder.resolve("cream-costed.xlsx"));
    }
}
