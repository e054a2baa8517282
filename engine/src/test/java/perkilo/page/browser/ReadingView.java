package perkilo.page.browser;

import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Reading: the account, questions, findings. */
final class ReadingView {

    private final Browser browser;

    ReadingView(Browser browser) {
        this.browser = browser;
    }

    ReadingView whenRead() {
        browser.shown("#sheets-heading");
        return this;
    }

    String summary() {
        return browser.text("main .lead");
    }

    List<String> questions() {
        return browser.all("fieldset.question legend").stream()
                .map(WebElement::getText)
                .toList();
    }

    /** Chooses an answer by its words. */
    void choose(String question, String answer) {
        browser.click(
                answer,
                () -> of(question).findElements(By.cssSelector("label.choice")).stream()
                        .filter(one -> one.getText().startsWith(answer))
                        .findFirst()
                        .orElseThrow());
    }

    /** Types an answer, where the page offers some, too. */
    void type(String question, String answer) {
        By closed = By.cssSelector("details.other:not([open]) > summary");
        browser.until("a place to type an answer", any -> {
            of(question).findElements(closed).forEach(WebElement::click);
            return true;
        });
        of(question).findElement(By.cssSelector("input[type=text]")).sendKeys(answer + "\t");
    }

    private WebElement of(String question) {
        return browser.all("fieldset.question").stream()
                .filter(one -> one.getText().contains(question))
                .findFirst()
                .orElseThrow();
    }

    /** Saves the answers; the page goes on to the cost when none is missing. */
    void save() {
        browser.click(".questions button[type=submit]");
    }

    /** What became of a sheet. */
    String fate(String sheet) {
        return browser.all("details[data-sheet]").stream()
                .filter(one -> sheet.equals(one.getAttribute("data-sheet")))
                .map(one -> one.findElement(By.cssSelector(".fate")).getText())
                .findFirst()
                .orElseThrow();
    }

    List<String> findings() {
        return browser.all(".findings tr.row").stream().map(WebElement::getText).toList();
    }

    CostView goOn() {
        browser.click("main .actions a.button");
        return new CostView(browser).whenCosted();
    }
}
