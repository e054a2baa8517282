package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import perkilo.Scratch;

/** What was read, what is asked, and what is wrong. */
@Tag("browser")
final class ReadingStoryTest {

    @Test
    void answers_are_kept_in_the_workbook() {
        Path folder = Scratch.folder();
        OwnBook.comparison(folder);
        try (OpenPage page = OpenPage.of(folder)) {
            ReadingView reading = page.reading("comparison.xlsx");
            assertThat(reading.questions()).hasSize(2);
            assertThat(page.browser.all(".picture td.is-question")).isNotEmpty();
            reading.choose("Kestrel", "yes");
            reading.choose("one pack", "kg");
            reading.save();
            CostView cost = new CostView(page.browser).whenCosted();
            // 60 % at 4.10, 40 % at 9.80
            assertThat(Double.parseDouble(cost.figure("main .sentences data").value()))
                    .isCloseTo(0.6 * 4.1 + 0.4 * 9.8, within(1e-6));
            assertThat(page.json("cost", "comparison.xlsx").get("runs")).hasSize(1);
            assertThat(page.reading("comparison.xlsx").questions()).hasSize(2);
            assertThat(page.browser.all("fieldset.question.open")).isEmpty();
        }
    }

    @Test
    void errors_are_named_with_their_cells_and_the_rest_is_costed() {
        Path folder = Scratch.folder();
        OwnBook.withErrors(folder);
        try (OpenPage page = OpenPage.of(folder)) {
            ReadingView reading = page.reading("with errors.xlsx");
            assertThat(reading.findings()).anyMatch(line -> line.contains("Offers!E3") && line.contains("3,2o"));
            CostView cost = reading.goOn();
            // 100 × 30 g at 9.00 per kg, in packs of 1 kg
            assertThat(cost.sentences())
                    .anyMatch(line -> line.startsWith("Balm 30.") && line.contains("0.2700 EUR at 100"))
                    .anyMatch(line -> line.startsWith("Cream 50.") && line.contains("unknown"));
            assertThat(cost.messages()).anyMatch(line -> line.startsWith("Error") && line.contains("Offers!E3"));
        }
    }

    @Test
    void scripts_in_cells_stay_text() {
        Path folder = Scratch.folder();
        OwnBook.scripts(folder);
        try (OpenPage page = OpenPage.of(folder)) {
            page.reading("scripts.xlsx");
            page.browser.says("main", "<script>");
            assertThat(page.browser.all("main img, main script")).isEmpty();
            CostView cost = page.cost("scripts.xlsx");
            assertThat(cost.sentences()).anyMatch(line -> line.contains("<img src=x onerror=\"window.hit=1\">"));
            cost.save();
            assertThat(page.browser.all("main img, main script, #printed img, #printed script"))
                    .isEmpty();
            assertThat(page.browser.script("return window.hit ?? 'not hit'")).isEqualTo("not hit");
        }
    }
}
