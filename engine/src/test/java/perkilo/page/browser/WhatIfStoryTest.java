package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A what-if is planned anewand kept beside others. */
@Tag("browser")
final class WhatIfStoryTest {

    @Test
    void planned_anew_and_kept() throws Exception {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            Path book = page.folder.resolve("launch.xlsx");
            byte[] before = Files.readAllBytes(book);
            CostView cost = page.cost("launch.xlsx");
            JsonNode scenario = page.json("cost", "launch.xlsx", "--what", "Shea butter refined +40 %; Labour rate 30")
                    .get("scenarios")
                    .get(0);

            cost.whatIf("Shea butter refined", "+40 %");
            page.browser.says(".changes", "Shea butter refined");
            cost.whatIf("Labour rate", "30");
            page.browser.says(".changes", "Labour rate 30");
            page.browser.says("#status .said", "Labour rate 30");
            assertThat(scenario.get("runs")).hasSize(9).allSatisfy(run -> {
                String key =
                        run.get("product").asText() + "|" + run.get("units").asText();
                assertThat(cost.after(key).value())
                        .as(key)
                        .isEqualTo(run.get("cost").asText());
            });
            assertThat(Files.readAllBytes(book)).as("the workbook while trying").isEqualTo(before);

            cost.keep("Dear butter");
        }
    }

    @Test
    void several_side_by_side_until_they_are_dropped() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            for (String change : List.of("+10 %", "-10 %")) {
                cost.whatIf("Labour rate", change);
                page.browser.says("#status .said", "Labour rate " + change);
                cost.keep("wage " + change);
            }
            assertThat(page.browser.text("table.side-by-side thead")).contains("wage +10 %", "wage -10 %");
            page.browser.click("button[aria-label='Drop wage +10 % from this page']");
            page.browser.until(
                    "one what-if alone",
                    any -> !page.browser.text("table.side-by-side thead").contains("wage +10 %"));
            assertThat(page.browser.text("table.side-by-side thead")).contains("wage -10 %");
        }
    }

    @Test
    void what_is_not_understood_is_said() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            cost.whatIf("Moon dust", "+10 %");
            page.browser.says("#whatif .problem", "Moon dust");
            page.browser.log(); // the browser notes that the request was refused
            cost.whatIf("Labour rate", "+10 %");
            page.browser.says("#status .said", "Labour rate +10 %");
            assertThat(page.browser.has("#whatif .problem")).isFalse();
        }
    }
}
