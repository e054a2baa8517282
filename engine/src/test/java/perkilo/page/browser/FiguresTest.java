package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** The page shows what the command prints, figure by figure. */
@Tag("browser")
final class FiguresTest {

    @Test
    void every_figure_of_every_run() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            JsonNode answer = page.json("cost", "launch.xlsx");
            String last = "";
            for (JsonNode run : answer.get("runs")) {
                String product = run.get("product").asText();
                if (!product.equals(last)) {
                    cost.choose(product);
                    last = product;
                }
                String key = product + "|" + run.get("units").asText();
                expected(run).forEach((name, value) -> {
                    CostView.Shown shown = cost.figure(key, name);
                    assertThat(shown.value()).as("%s of %s", name, key).isEqualTo(value);
                    assertThat(shown.text()).as("%s of %s", name, key).isEqualTo(rounded(name, value));
                });
            }
        }
    }

    @Test
    void the_items_of_a_run() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            JsonNode answer = page.json("cost", "launch.xlsx");
            cost.choose("Face oil");
            cost.chooseRun("Face oil|1000");
            page.browser.says("#items-heading", "1,000");
            Map<String, String> shares = new LinkedHashMap<>();
            for (JsonNode share : answer.get("shares")) {
                if (share.get("product").asText().equals("Face oil")
                        && share.get("units").asText().equals("1000")) {
                    shares.put(share.get("item").asText(), share.get("perUnit").asText());
                }
            }
            Map<String, String> shown = new LinkedHashMap<>();
            for (WebElement row : page.browser.all("#items-heading ~ long-table tr.row")) {
                shown.put(
                        row.findElement(By.tagName("th")).getText().replaceAll(" ?what if", ""),
                        String.valueOf(row.findElement(By.cssSelector("data[data-name=perUnit]"))
                                .getAttribute("value")));
            }
            assertThat(shown).hasSizeGreaterThan(10).containsExactlyEntriesOf(shares);
        }
    }

    @Test
    void shop_price_and_margin_in_both_directions() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            page.cost("launch.xlsx");
            JsonNode run = page.json("cost", "launch.xlsx").get("runs").get(0);
            JsonNode ladder = run.get("ladder");
            Browser browser = page.browser;
            // the margin that the engine finds at the target price, and the price that it finds for the target margin
            assertThat(browser.text("data[data-name='tried margin']"))
                    .isEqualTo(percent(ladder.get("margin").asText()));
            browser.type("#margin", "55\t");
            String price = ladder.get("retail").asText();
            browser.says("data[data-name='tried price']", amount(price));
            assertThat(browser.text("data[data-name='tried wholesale']"))
                    .isEqualTo(amount(ladder.get("wholesale").asText()));
            browser.type("#shop-price", "24.90\t");
            browser.says(
                    "data[data-name='tried margin']",
                    percent(ladder.get("margin").asText()));
        }
    }

    private static Map<String, String> expected(JsonNode run) {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("unitCost", run.get("unitCost").get("EUR").asText());
        all.put("unitCost USD", run.get("unitCost").get("USD").asText());
        all.put("cash", run.get("cash").asText());
        all.put("outlay", run.get("outlay").get("EUR").asText());
        all.put("stockLeft", run.get("stockLeft").asText());
        for (String name : List.of("shopPrice", "margin", "profitPerRun", "breakEvenUnits")) {
            all.put(name, run.get("ladder").get(name).asText());
        }
        return all;
    }

    private static String rounded(String name, String value) {
        return switch (name) {
            case "margin" -> percent(value);
            case "breakEvenUnits" ->
                String.format(java.util.Locale.ROOT, "%,d", half(value, 0).longValueExact());
            default -> amount(value);
        };
    }

    private static String percent(String fraction) {
        return half(new BigDecimal(fraction).movePointRight(2).toPlainString(), 1) + " %";
    }

    private static String amount(String value) {
        return String.format(java.util.Locale.ROOT, "%,.2f", half(value, 2));
    }

    private static BigDecimal half(String value, int places) {
        return new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
    }
}
