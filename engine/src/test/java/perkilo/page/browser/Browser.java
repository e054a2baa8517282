package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.logging.Level;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.ElementClickInterceptedException;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Debian's Chromium without a window, one for all tests of a process. */
final class Browser {

    private static final List<String> OPTIONS = List.of(
            "--headless=new",
            "--no-sandbox",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--hide-scrollbars");

    /** Only against hanging. */
    private static final Duration LONG = Duration.ofMinutes(2);

    /** WCAG 2.2 A and AA, and what is usual beside them. */
    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

    private static @Nullable Browser only;

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    static synchronized Browser get() {
        Browser browser = only;
        if (browser == null) {
            browser = new Browser(started());
            only = browser;
            Runtime.getRuntime().addShutdownHook(new Thread(browser.driver::quit));
        }
        return browser;
    }

    private static ChromeDriver started() {
        System.setProperty("webdriver.chrome.driver", "/usr/bin/chromedriver");
        ChromeOptions options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments(OPTIONS);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        return new ChromeDriver(options);
    }

    ChromeDriver driver() {
        return driver;
    }

    /** Opens an address in the light theme, at a usual size, as if for the first time. */
    void open(String address) {
        theme("light");
        size(1280, 900);
        driver.get("about:blank");
        log();
        driver.get(address);
    }

    /**
     * The theme that the person's computer has: light or dark. Nothing moves, so that a click meets what it is meant
     * for.
     */
    void theme(String theme) {
        List<Map<String, String>> features = List.of(
                Map.of("name", "prefers-color-scheme", "value", theme),
                Map.of("name", "prefers-reduced-motion", "value", "reduce"));
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", features));
    }

    /** The size of the window's content, in pixels. */
    void size(int width, int height) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Waits until something is so. */
    void until(String what, Predicate<ChromeDriver> isSo) {
        new WebDriverWait(driver, LONG)
                .ignoreAll(List.of(
                        StaleElementReferenceException.class,
                        NoSuchElementException.class,
                        ElementClickInterceptedException.class))
                .withMessage(() -> what + " was waited for; the page shows:\n" + text("body"))
                .until(any -> isSo.test(driver));
    }

    /** Waits until a thing is there and shown. */
    WebElement shown(String selector) {
        until(selector, any -> driver.findElement(By.cssSelector(selector)).isDisplayed());
        return driver.findElement(By.cssSelector(selector));
    }

    /** Waits until a thing says something. */
    void says(String selector, String words) {
        until(
                "\"" + words + "\" at " + selector,
                any -> all(selector).stream().anyMatch(one -> one.getText().contains(words)));
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    String text(String selector) {
        return driver.findElement(By.cssSelector(selector)).getText();
    }

    boolean has(String selector) {
        return !all(selector).isEmpty();
    }

    /** Clicks a thing once it is shown and nothing lies over it. */
    void click(String selector) {
        click(selector, () -> shown(selector));
    }

    /** Clicks a thing once nothing lies over it, as while a page is still being laid out. */
    void click(String what, Supplier<WebElement> thing) {
        until(what, any -> {
            thing.get().click();
            return true;
        });
    }

    /** Replaces the text of a field. */
    void type(String selector, String words) {
        WebElement field = shown(selector);
        field.clear();
        field.sendKeys(words);
    }

    @Nullable Object script(String code, Object... arguments) {
        return driver.executeScript(code, arguments);
    }

    /** What the browser complained of since it was last asked, such as scripts that the page's own policy forbids. */
    List<String> log() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .toList();
    }

    /** Checks that what is shown can be used by all. */
    void isAccessible(String view) {
        List<Rule> broken = new AxeBuilder().withTags(RULES).analyze(driver).getViolations();
        assertThat(broken)
                .as(view)
                .extracting(rule -> rule.getId() + ": " + rule.getHelp() + "\n" + rule.getNodes())
                .isEmpty();
    }

    /** Keeps a picture of the whole page among the build's results, for a person to look at. */
    void picture(String name, int width) {
        size(width, 900);
        Number height = (Number) script("return document.documentElement.scrollHeight");
        size(width, height == null ? 900 : Math.min(height.intValue(), 9000));
        try {
            Path folder = Files.createDirectories(Path.of("target", "screens"));
            Files.write(folder.resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        size(width, 900);
    }

    /** What the printer would get, as PDF. */
    byte[] printed() {
        Object data = driver.executeCdpCommand(
                        "Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true))
                .get("data");
        return Base64.getDecoder().decode(String.valueOf(data));
    }
}
