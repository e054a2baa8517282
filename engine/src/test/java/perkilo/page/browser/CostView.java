package perkilo.page.browser;

import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Cost: the answer, and what-ifs. */
final class CostView {

    private final Browser browser;

    CostView(Browser browser) {
        this.browser = browser;
    }

    CostView whenCosted() {
        browser.shown("#answer-heading, main .sentence.problem");
        browser.until("the end of all work", any -> !browser.has(".work"));
        return this;
    }

    List<String> sentences() {
        return browser.all(".sentences .sentence").stream()
                .map(WebElement::getText)
                .toList();
    }

    /** Shows the details of a product. */
    void choose(String product) {
        browser.click(
                product,
                () -> browser.all(".sentences li").stream()
                        .filter(one -> one.getText().startsWith(product + "."))
                        .findFirst()
                        .orElseThrow()
                        .findElement(By.tagName("button")));
        browser.says("#sizes-heading", product);
    }

    /** Shows the details of a run. */
    void chooseRun(String key) {
        browser.click("table.runs tr[data-run='" + key + "'] input");
    }

    /** A figure of a run: its full value and what is shown. */
    Shown figure(String run, String name) {
        return Shown.of(browser.shown("main table.runs tr[data-run='" + run + "'] data[data-name='" + name + "']"));
    }

    /** The figure of a place on the page. */
    Shown figure(String selector) {
        return Shown.of(browser.shown(selector));
    }

    /**
     * A figure.
     *
     * @param value as the engine gives it
     * @param text as it is shown
     */
    record Shown(String value, String text) {

        private static Shown of(WebElement data) {
            return new Shown(String.valueOf(data.getAttribute("value")), data.getText());
        }
    }

    /** Tries a change. */
    void whatIf(String what, String change) {
        browser.type("#what", what);
        browser.type("#change", change);
        browser.click("form.change button[type=submit]");
    }

    /** What a run costs with the changes. */
    Shown after(String run) {
        return figure("table.before-after tr[data-run='" + run + "'] data[data-name=after]");
    }

    void keep(String name) {
        browser.type("#whatif-name", name);
        browser.click("form.keep button");
        browser.says("table.side-by-side thead", name);
    }

    /** Saves a what-if that was kept. */
    void saveKept(String name) {
        browser.click("table.side-by-side button[aria-label='Save " + name + " to the workbook']");
        browser.says("table.side-by-side", "on the sheet Scenarios");
    }

    /** Writes the result workbook; gives its name. */
    String save() {
        browser.click("main .actions button");
        browser.shown(".saved a");
        return browser.text(".saved strong");
    }

    List<String> messages() {
        return browser.all("#messages-heading ~ .findings tr.row").stream()
                .map(WebElement::getText)
                .toList();
    }
}
