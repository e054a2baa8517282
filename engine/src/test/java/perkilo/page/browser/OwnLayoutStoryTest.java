package perkilo.page.browser;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import perkilo.Scratch;

/** A brand owner with a workbook of her own layout, from the file to the printed page, without a terminal. */
@Tag("browser")
final class OwnLayoutStoryTest {

    private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b");

    /** A4 is 210 × 297 mm; a point is 1/72 inch. */
    private static final Pattern BOX = Pattern.compile("/MediaBox\\s*\\[\\s*0 0 ([0-9.]+) ([0-9.]+)\\s*]");

    private static final double POINTS_PER_MM = 72 / 25.4;

    @Test
    void from_the_file_to_the_printed_page() throws Exception {
        Path desk = Scratch.folder();
        Path file = OwnBook.handCream(desk);
        byte[] original = Files.readAllBytes(file);
        Path folder = Scratch.folder();
        try (OpenPage page = OpenPage.of(folder)) {
            page.browser.shown("#drop-heading");
            page.start().choose(file);
            ReadingView reading = new ReadingView(page.browser).whenRead();
            assertThat(reading.questions()).hasSize(1);
            reading.type("density", "1");
            reading.save();
            CostView cost = new CostView(page.browser).whenCosted();

            // 5 % at 21.50 for 5 kg, 6 % at 47 for 5 kg; 96 of labour on 200 units; a tube 0.45, a label 0.085
            double unit = 0.075 * (0.05 * 21.5 / 5 + 0.06 * 47.0 / 5) + 96.0 / 200 + 0.45 + 0.085;
            String shown = cost.figure("main .sentences data").value();
            assertThat(Double.parseDouble(shown)).isCloseTo(unit, within(1e-6));
            assertThat(cost.sentences()).hasSize(1).first().asString().contains("A unit costs 1.07 GBP at 200");

            byte[] pdf = page.browser.printed();
            String text = new String(pdf, ISO_8859_1);
            assertThat(PAGE.matcher(text).results().count()).isEqualTo(1);
            assertThat(BOX.matcher(text).results().findFirst()).hasValueSatisfying(box -> {
                assertThat(Double.parseDouble(box.group(1))).isCloseTo(210 * POINTS_PER_MM, within(1.0));
                assertThat(Double.parseDouble(box.group(2))).isCloseTo(297 * POINTS_PER_MM, within(1.0));
            });
            assertThat(cost.save()).isEqualTo("my costing-costed.xlsx");
            assertThat(folder.resolve("my costing-costed.xlsx")).isRegularFile();
        }
        assertThat(Files.readAllBytes(file)).as("the file that was dropped").isEqualTo(original);
    }

    @Test
    void a_page_of_paper_for_each_product() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            page.cost("launch.xlsx");
            String text = new String(page.browser.printed(), ISO_8859_1);
            assertThat(PAGE.matcher(text).results().count()).isEqualTo(3);
        }
    }
}
