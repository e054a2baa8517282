package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import perkilo.Scratch;

/** Every view, in light and dark, narrow and wide: usable by all, and a picture of each for a person to look at. */
@Tag("browser")
final class AccessTest {

    private static final List<Integer> WIDTHS = List.of(390, 1280, 2560);

    /** WCAG 2.2, 1.4.10: no scrolling in two directions at this width. */
    private static final int NARROWEST = 320;

    @Test
    void start() {
        Path folder = Scratch.folder();
        OpenPage.run("new", "launch", folder.resolve("launch.xlsx").toString());
        OwnBook.withErrors(folder);
        try (OpenPage page = OpenPage.of(folder)) {
            page.browser.shown("#books-heading");
            look(page.browser, "start");
        }
    }

    @Test
    void reading() {
        Path folder = Scratch.folder();
        OwnBook.comparison(folder);
        try (OpenPage page = OpenPage.of(folder)) {
            page.reading("comparison.xlsx").choose("one pack", "kg");
            look(page.browser, "reading");
        }
    }

    @Test
    void cost() {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            cost.whatIf("Labour rate", "+10 %");
            page.browser.says("#status .said", "Labour rate +10 %");
            cost.keep("Dear work");
            cost.whatIf("Shea butter refined", "+25 %");
            page.browser.says("#status .said", "Shea butter refined +25 %");
            cost.save();
            look(page.browser, "cost");
        }
    }

    @Test
    void cost_with_errors() {
        Path folder = Scratch.folder();
        OwnBook.withErrors(folder);
        try (OpenPage page = OpenPage.of(folder)) {
            page.cost("with errors.xlsx");
            look(page.browser, "errors");
        }
    }

    private static void look(Browser browser, String view) {
        for (String theme : List.of("light", "dark")) {
            browser.theme(theme);
            browser.size(1280, 900);
            browser.isAccessible(view + " in " + theme);
            browser.size(390, 900);
            browser.isAccessible(view + " in " + theme + ", narrow");
            for (int width : WIDTHS) {
                browser.picture(view + "-" + theme + "-" + width, width);
            }
        }
        browser.size(NARROWEST, 900);
        Object width = browser.script("return document.documentElement.scrollWidth");
        assertThat(width).as("width of %s at %s px", view, NARROWEST).isEqualTo((long) NARROWEST);
    }
}
