package perkilo.page.browser;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Start: files, workbooks of the folder, templates. */
final class StartView {

    private final Browser browser;

    StartView(Browser browser) {
        this.browser = browser;
    }

    /** Gives files to the page, as a person chooses them. */
    void choose(Path... files) {
        browser.driver()
                .findElement(By.id("files"))
                .sendKeys(Arrays.stream(files).map(Path::toString).collect(Collectors.joining("\n")));
    }

    /** What the page says about the files that arrived. */
    List<String> arrived() {
        browser.shown("#arrived-heading");
        return browser.all("section[aria-labelledby=arrived-heading] li").stream()
                .map(WebElement::getText)
                .toList();
    }

    List<String> books() {
        browser.shown("#books-heading");
        return browser.all("section[aria-labelledby=books-heading] tbody th").stream()
                .map(WebElement::getText)
                .toList();
    }

    /** Begins with a template, by its place in the list. */
    CostView begin(int at) {
        browser.click("#templates-heading ~ ul li:nth-child(" + at + ") button");
        return new CostView(browser).whenCosted();
    }
}
