package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How long a person waits, as the browser measures it. It is written down; nothing fails for being slow. */
@Tag("browser")
final class TimesTest {

    private static final String MEASURES =
            "return performance.getEntriesByType('measure').map((one) => `${one.name}: ${Math.round(one.duration)} ms`)";

    @Test
    void first_view_and_what_ifs_of_the_demo() throws Exception {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            for (String change : List.of("+5 %", "+10 %", "+15 %", "+20 %", "+25 %")) {
                cost.whatIf("Shea butter refined", change);
                page.browser.says("#status .said", "Shea butter refined " + change);
            }
            Object measures = page.browser.script(MEASURES);
            assertThat(measures)
                    .asInstanceOf(InstanceOfAssertFactories.list(String.class))
                    .anyMatch(line -> line.startsWith("first view"))
                    .filteredOn(line -> line.startsWith("what-if"))
                    .hasSize(5);
            Path folder = Files.createDirectories(Path.of("target", "screens"));
            Files.writeString(folder.resolve("times.txt"), String.valueOf(measures));
        }
    }
}
