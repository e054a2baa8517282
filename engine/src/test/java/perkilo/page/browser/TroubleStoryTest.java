package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WindowType;
import perkilo.Scratch;

/** Two tabs at once, and a program that ends in the middle: nothing is lost, and the page says what to do. */
@Tag("browser")
final class TroubleStoryTest {

    @Test
    void a_tab_says_when_the_other_has_changed_the_workbook() {
        Path folder = Scratch.folder();
        OwnBook.handCream(folder);
        String book = "my costing.xlsx";
        try (OpenPage page = OpenPage.of(folder)) {
            ReadingView first = page.reading(book);
            first.type("density", "1");
            String tab = page.browser.driver().getWindowHandle();
            page.browser.driver().switchTo().newWindow(WindowType.TAB).get(page.address());
            ReadingView second = page.reading(book);
            second.type("density", "0.98");
            second.save();
            new CostView(page.browser).whenCosted();
            page.browser.driver().close();
            page.browser.driver().switchTo().window(tab);

            first.save();
            page.browser.says(".banner", "The file has changed meanwhile. Read it again.");
            page.browser.log(); // the browser notes that the request was refused
            page.browser.click(".banner button");
            page.browser.says("#status .said", "was read");
            assertThat(page.browser.has(".banner")).isFalse();
            assertThat(page.browser.all("fieldset.question.open")).isEmpty();
            first.type("density", "1");
            first.save();
            new CostView(page.browser).whenCosted();
        }
    }

    @Test
    void a_program_that_has_ended_is_said_and_the_folder_is_whole() throws Exception {
        try (OpenPage page = OpenPage.ofTemplate("launch")) {
            CostView cost = page.cost("launch.xlsx");
            cost.save();
            Map<String, Integer> before = contents(page.folder);
            page.endServer();
            page.browser.says(".banner", "Perkilo has ended");
            page.browser.says(".banner", "Start Perkilo again");
            page.browser.click("main .actions button");
            page.browser.says(".banner", "all that you saved are in your folder");
            assertThat(cost.sentences()).hasSize(3);
            assertThat(contents(page.folder)).isEqualTo(before);
            page.browser.log(); // the browser notes that nothing answers
        }
    }

    private static Map<String, Integer> contents(Path folder) throws Exception {
        Map<String, Integer> all = new TreeMap<>();
        for (String name : folder.toFile().list()) {
            all.put(name, java.util.Arrays.hashCode(Files.readAllBytes(folder.resolve(name))));
        }
        return all;
    }
}
