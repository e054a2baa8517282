package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import perkilo.Scratch;

/** The keyboard alone: from the start to a what-if that is kept; where the focus is can be seen everywhere. */
@Tag("browser")
final class KeyboardTest {

    private static final int MOST_STEPS = 120;

    private final Browser browser = Browser.get();

    @Test
    void from_a_template_to_a_what_if() {
        try (OpenPage page = OpenPage.of(Scratch.folder())) {
            page.browser.shown("#templates-heading");
            String first = browser.text("#templates-heading ~ ul button");
            goTo("button", first);
            press(Keys.ENTER);
            CostView cost = new CostView(browser).whenCosted();
            assertThat(focus().getTagName()).as("the focus on a new view").isEqualTo("h1");

            goTo("button", "What if");
            press(Keys.ENTER);
            assertThat(focus().getAttribute("id")).isEqualTo("what");
            press("Labour rate", Keys.TAB, "+10 %", Keys.ENTER);
            browser.says("#status .said", "Labour rate +10 %");
            assertThat(cost.sentences()).isNotEmpty();
            goTo("input", "");
            while (!"whatif-name".equals(focus().getAttribute("id"))) {
                press(Keys.TAB);
            }
            press("Dear work", Keys.ENTER);
            browser.says("table.side-by-side thead", "Dear work");
        }
    }

    /** Every stop of the tabulator can be seen: it has an outline, or its label has. */
    @Test
    void the_focus_can_be_seen() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            page.cost("launch.xlsx");
            List<String> unseen = new ArrayList<>();
            int stops = 0;
            press(Keys.TAB);
            while (stops < MOST_STEPS && !"body".equals(focus().getTagName())) {
                Object outline = browser.script(
                        "const at = document.activeElement; const shown = (one) => one && getComputedStyle(one).outlineStyle !== 'none';"
                                + " return shown(at) || shown(at.closest('label'))");
                if (!Boolean.TRUE.equals(outline)) {
                    unseen.add(focus().getTagName() + " " + focus().getText());
                }
                press(Keys.TAB);
                stops++;
            }
            assertThat(stops).isGreaterThan(20);
            assertThat(unseen).isEmpty();
        }
    }

    /** Goes on with the tabulator to a control by its words. */
    private void goTo(String tag, String words) {
        for (int step = 0; step < MOST_STEPS; step++) {
            press(Keys.TAB);
            if (focus().getTagName().equals(tag) && focus().getText().contains(words)) {
                return;
            }
        }
        throw new AssertionError(tag + " \"" + words + "\" is not reached by the tabulator");
    }

    private void press(CharSequence... keys) {
        new Actions(browser.driver()).sendKeys(keys).perform();
    }

    private WebElement focus() {
        return browser.driver().switchTo().activeElement();
    }
}
