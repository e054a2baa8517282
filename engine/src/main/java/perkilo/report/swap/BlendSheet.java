package perkilo.report.swap;

import java.util.List;
import perkilo.origin.Counted;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;

/** The sheet Blend: all materials of one function at once, now and at the cheapest levels. */
final class BlendSheet {

    /** Letters that fit beside each other on the sheet's columns. */
    private static final int WIDE = 160;

    /** About how many rows fit on a printed page. */
    private static final int ROWS_ON_A_PAGE = 58;

    /** Title, heads, total and ingredients of a blend, in rows. */
    private static final int AROUND_TABLES = 11;

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder("Blend");
    private final Page page = new Page(sheet);
    private final String currency;
    private int number;
    private int pageTop;
    private boolean anyStudy;

    private BlendSheet(SwapOutcome.Found found) {
        this.found = found;
        this.currency = found.book().settings().home().getCurrencyCode();
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new BlendSheet(found).write();
    }

    private ResultSheet write() {
        page.title(
                "Blend",
                "All materials of one function at once. The levels are the cheapest at straight-line prices that keep the"
                        + " rules below; run costs are fixed values from full purchase plans.");
        if (!found.blends().isEmpty()) {
            page.line(
                    "To write one as its own formula, ready to cost, run the same command with --apply \"blend 1\".",
                    Look.HINT);
        }
        page.cautions();
        if (found.studies().isEmpty()) {
            page.line("No formula has two materials of one function.", Look.ANSWER);
        }
        found.studies().forEach(this::study);
        return sheet.build();
    }

    /** A study with blends begins a printed page; a refusal takes a line or two. */
    private void study(BlendStudy study) {
        if (study.isSought() && anyStudy) {
            beginPage();
        }
        anyStudy = true;
        page.section(
                study.phase().isBlank()
                        ? "%s: %s".formatted(study.formula(), study.function())
                        : "%s, phase %s: %s".formatted(study.formula(), study.phase(), study.function()));
        if (study.isSought()) {
            sought(study);
        } else {
            page.paragraph(WIDE, study.refusal(), Look.PLAIN);
        }
        page.skip(1);
    }

    private void sought(BlendStudy study) {
        study.kept().forEach(words -> page.paragraph(WIDE, "Rule: " + words, Look.HINT));
        if (study.blends().isEmpty()) {
            page.line("No cheaper blend was found.", Look.ANSWER);
            page.paragraph(
                    WIDE,
                    "None of the blends that are cheapest at straight-line prices makes a run cheaper. Other blends within"
                            + " these rules were not costed.",
                    Look.PLAIN);
        }
        for (int i = 0; i < study.blends().size(); i++) {
            Blend blend = study.blends().get(i);
            boolean fits = page.next() - pageTop + rows(blend) <= ROWS_ON_A_PAGE;
            if (i > 0 && !fits) {
                beginPage();
            }
            blend(blend);
        }
        if (!study.leftOut().isEmpty() || !study.notOffered().isEmpty()) {
            page.skip(1);
            page.line("Left out, and why", Look.LABEL);
            study.notOffered().forEach(why -> page.paragraph(WIDE, why, Look.HINT));
            study.leftOut().forEach((why, materials) -> page.paragraph(WIDE, leftOut(why, materials), Look.HINT));
        }
    }

    private void beginPage() {
        pageTop = page.next();
        sheet.pageBreakBefore(pageTop);
    }

    /** About how many rows a blend takes: those of its two tables, and what is around them. */
    private static int rows(Blend blend) {
        return blend.parts().size() + blend.runs().size() + blend.cautions().size() + AROUND_TABLES;
    }

    /** Names first: people look for a material at the beginning of the row. */
    private static String leftOut(String why, List<String> materials) {
        return String.join(", ", materials) + ": " + why;
    }

    private void blend(Blend blend) {
        page.skip(1);
        page.line(title(blend, ++number), Look.ANSWER);
        page.paragraph(WIDE, answer(blend), Look.PLAIN);
        page.table(new PartTable(blend, currency).at(sheet, page.next()));
        page.table(new BlendRunTable(currency).at(sheet, page.next(), blend.runs()));
        blend.cautions().forEach(caution -> page.line("Caution: " + caution, Look.WARNING));
        page.paragraph(WIDE, "Ingredients: " + blend.label().after().text(), Look.HINT);
    }

    private static String title(Blend blend, int number) {
        StringBuilder title = new StringBuilder("Blend " + number + ":");
        if (!blend.leaving().isEmpty()) {
            title.append(" without ").append(String.join(" and ", blend.leaving()));
        }
        if (!blend.entering().isEmpty()) {
            title.append(blend.leaving().isEmpty() ? " with " : ", with ")
                    .append(String.join(" and ", blend.entering()));
        }
        return blend.leaving().isEmpty() && blend.entering().isEmpty()
                ? title + " the same materials at other levels"
                : title.toString();
    }

    private static String answer(Blend blend) {
        String run = blend.runs().stream()
                .filter(change -> change.key().equals(blend.pricedAt()))
                .map(change -> change.before().needs().title())
                .findFirst()
                .orElse(blend.pricedAt());
        String changes = blend.mostChanged() == 0
                ? "with the same materials"
                : "with at most %s in and %d out"
                        .formatted(Counted.of(blend.mostChanged(), "material"), blend.mostChanged());
        return blend.proven()
                ? "Proven at the straight-line prices of %s: no blend %s costs less.".formatted(run, changes)
                : "The best blend found at the straight-line prices of %s, %s. A cheaper one may exist."
                        .formatted(run, changes);
    }
}
