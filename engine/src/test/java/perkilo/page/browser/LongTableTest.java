package perkilo.page.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import perkilo.Scratch;

/** A table of 5,000 rows: only those in sight are in the document, and the last can be reached. */
@Tag("browser")
final class LongTableTest {

    private static final String MADE = """
            const done = arguments[0];
            Promise.all([import('/page/longtable.js'), import('/lib/lit-html/lit-html.js')]).then(([table, lit]) => {
              const rows = Array.from({ length: 5000 }, (_, at) => `offer ${at + 1}`);
              const head = lit.html`<th scope="col">Offer</th>`;
              const row = (one) => lit.html`<td>${one}</td>`;
              const place = document.createElement('div');
              document.getElementById('main').append(place);
              lit.render(table.longTable({ label: 'Offers', columns: 1, head, rows, row }), place);
              done(place.querySelectorAll('tr.row').length);
            });
            """;

    @Test
    void of_five_thousand_rows() {
        try (OpenPage page = OpenPage.of(Scratch.folder())) {
            Browser browser = page.browser;
            browser.shown("#drop-heading");
            Object rows = browser.driver().executeAsyncScript(MADE);
            assertThat(rows).asInstanceOf(InstanceOfAssertFactories.LONG).isBetween(20L, 120L);
            assertThat(browser.shown("long-table table").getAttribute("aria-rowcount"))
                    .isEqualTo("5001");
            assertThat(browser.text("long-table")).contains("offer 1").doesNotContain("offer 5000");
            browser.script("const at = document.querySelector('long-table .scroll'); at.scrollTop = at.scrollHeight");
            browser.says("long-table", "offer 5000");
            assertThat(browser.all("long-table tr.row")).hasSizeLessThan(120);
        }
    }
}
