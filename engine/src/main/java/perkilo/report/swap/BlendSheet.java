package perkilo.report.swap;

import java.util.List;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.blend.Blend;
import perkilo.swaps.blend.BlendStudy;
import perkilo.swaps.money.RunChange;

/** Blend: all materials of one function at once, now and at the levels that cost least. */
final class BlendSheet {

    /** Letters that fit beside each other on the sheet's columns. */
    private static final int WIDE = 160;

    /** About so many fit on a printed page. */
    private static final int ROWS_ON_A_PAGE = 58;

    /** Title, heads, total and ingredients of a blend, in rows. */
    private static final int AROUND_TABLES = 11;

    private final SwapOutcome.Found found;
    private final SheetBuilder sheet = new SheetBuilder("Blend");
    private final Page page = new Page(sheet);
    private final NumberFormat money;
    private int number;
    private int pageTop;
    private boolean anyStudy;

    private BlendSheet(SwapOutcome.Found found) {
        this.found = found;
        this.money = NumberFormat.money(found.book().settings().home().getCurrencyCode(), 4);
    }

    static ResultSheet of(SwapOutcome.Found found) {
        return new BlendSheet(found).write();
    }

    private ResultSheet write() {
        sheet.widths(34, 14, 16, 16, 16, 16, 16, 16);
        page.title(
                "Blend",
                "All materials of one function at once. Levels are those that cost least at straight-line prices and keep"
                        + " what is said below; costs of runs are values out of full purchase plans.");
        if (!found.blends().isEmpty()) {
            sheet.text(
                    page.take(),
                    0,
                    "To have one written as a formula of its own, ready to cost, run the same command with --apply \"blend 1\".",
                    Look.HINT);
        }
        page.cautions();
        if (found.studies().isEmpty()) {
            sheet.text(page.take(), 0, "No two materials of one function stand together.", Look.ANSWER);
        }
        found.studies().forEach(this::study);
        return sheet.build();
    }

    /** What was sought begins a printed page; a refusal takes a line or two. */
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
            page.paragraph(0, WIDE, study.refusal(), Look.PLAIN);
        }
        page.skip(1);
    }

    private void sought(BlendStudy study) {
        study.kept().forEach(words -> page.paragraph(0, WIDE, "Kept: " + words + ".", Look.HINT));
        if (study.blends().isEmpty()) {
            sheet.text(page.take(), 0, "No cheaper blend was found.", Look.ANSWER);
            page.paragraph(
                    0,
                    WIDE,
                    "None of the blends that cost least at straight-line prices makes a run cheaper; others within these"
                            + " bounds were not costed.",
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
            sheet.text(page.take(), 0, "Left out, and why", Look.LABEL);
            study.notOffered().forEach(why -> page.paragraph(0, WIDE, why, Look.HINT));
            study.leftOut().forEach((why, materials) -> page.paragraph(0, WIDE, leftOut(why, materials), Look.HINT));
        }
    }

    private void beginPage() {
        pageTop = page.next();
        sheet.pageBreakBefore(pageTop);
    }

    /** About how many rows a blend takes: those of its two tables, and what stands around them. */
    private static int rows(Blend blend) {
        return blend.parts().size() + blend.runs().size() + blend.cautions().size() + AROUND_TABLES;
    }

    /** Names first: who looks for a material finds it at the beginning. */
    private static String leftOut(String why, List<String> materials) {
        return "%s: %s.".formatted(String.join(", ", materials), why);
    }

    private void blend(Blend blend) {
        page.skip(1);
        sheet.text(page.take(), 0, title(blend, ++number), Look.ANSWER);
        page.paragraph(0, WIDE, answer(blend), Look.PLAIN);
        page.heads(List.of(
                "Material",
                "Level now",
                "Level then",
                "Straight-line price per kg",
                ShownTrait.of(blend).words(),
                "Cost now",
                "Cost then"));
        int first = page.next();
        for (Blend.Part part : blend.parts()) {
            int row = page.take();
            sheet.text(
                    row, 0, part.material().name(), Look.LABEL, part.material().origin());
            Expr now = page.number(row, 1, part.before(), NumberFormat.PERCENT);
            Expr then = sheet.value(row, 2, Expr.of(part.after()), NumberFormat.PERCENT, Look.CHOICE);
            Expr price = page.number(row, 3, part.perKg(), money);
            ShownTrait.of(blend).write(sheet, page, row, 4, part.material());
            sheet.value(row, 5, now.times(price), money, Look.PLAIN);
            sheet.value(row, 6, then.times(price), money, Look.PLAIN);
        }
        int last = page.next() - 1;
        int total = page.take();
        sheet.text(total, 0, "Together, for one kilogram of bulk", Look.TOTAL);
        for (int column : new int[] {1, 2, 5, 6}) {
            sheet.value(
                    total,
                    column,
                    sheet.sumOfColumn(column, first, last),
                    column < 3 ? NumberFormat.PERCENT : money,
                    Look.TOTAL);
        }
        runs(blend);
        blend.cautions().forEach(caution -> sheet.text(page.take(), 0, "Look at: " + caution, Look.WARNING));
        page.paragraph(0, WIDE, "Ingredients: " + blend.label().after().text(), Look.HINT);
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
                : "with at most %d in and %d out".formatted(blend.mostChanged(), blend.mostChanged());
        return blend.proven()
                ? "At the straight-line prices of %s no levels cost less, %s: proven.".formatted(run, changes)
                : "The best found at the straight-line prices of %s, %s; a cheaper one may exist."
                        .formatted(run, changes);
    }

    private void runs(Blend blend) {
        page.heads(List.of(
                "Run",
                "Unit cost now",
                "Unit cost then",
                "Unit cost change",
                "Outlay now",
                "Outlay then",
                "Outlay change"));
        for (RunChange run : blend.runs()) {
            int row = page.take();
            sheet.text(row, 0, run.before().needs().title(), Look.LABEL);
            run.before().unitCost().ifPresent(before -> {
                Expr now = page.number(row, 1, before, money);
                Expr then = page.number(row, 2, run.after().unitCost().orElseThrow(), money);
                sheet.value(row, 3, then.minus(now), money, Look.KEY);
            });
            NumberFormat cents =
                    NumberFormat.money(found.book().settings().home().getCurrencyCode(), 2);
            Expr now = page.number(row, 4, run.before().outlay(), cents);
            Expr then = page.number(row, 5, run.after().outlay(), cents);
            sheet.value(row, 6, then.minus(now), cents, Look.PLAIN);
        }
    }
}
