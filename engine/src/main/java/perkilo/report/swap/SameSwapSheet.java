package perkilo.report.swap;

import java.util.stream.Collectors;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.swaps.SwapOutcome;
import perkilo.swaps.next.NextSteps;
import perkilo.swaps.next.SameSwap;

/** The sheet Same swap in all formulas. */
final class SameSwapSheet {

    private static final int WIDE = 150;

    private SameSwapSheet() {}

    static ResultSheet of(SwapOutcome.Found found, NextSteps next) {
        SheetBuilder sheet = new SheetBuilder("Same swap in all formulas").landscape();
        Page page = new Page(sheet);
        page.title(
                "Same swap in all formulas",
                WIDE,
                "The best swaps of materials that several formulas have. The smallest runs of all these formulas are bought"
                        + " together in one purchase, then the second smallest, and so on: packs, freight and minimum orders"
                        + " are shared. Outlay is everything paid, with what is left over; used up is the part that goes into"
                        + " the products. Amounts are fixed values from full purchase plans; savings are formulas.");
        page.cautions();
        SameSwapTable table = new SameSwapTable(found, next);
        if (table.isEmpty()) {
            page.line("No swap that saves fits in two formulas.", Look.ANSWER);
            return sheet.build();
        }
        page.table(table.at(sheet, page.next()));
        page.skip(1);
        for (SameSwap swap : next.everywhere()) {
            for (SameSwap.Left left : swap.left()) {
                page.paragraph(
                        WIDE,
                        "%s → %s not in %s: %s"
                                .formatted(
                                        swap.from().name(),
                                        swap.to().name(),
                                        left.formula(),
                                        left.why().isEmpty() ? "it was not compared there." : left.why()),
                        Look.HINT);
            }
            page.paragraph(
                    WIDE,
                    "%s → %s: %s."
                            .formatted(
                                    swap.from().name(),
                                    swap.to().name(),
                                    swap.numbers().stream()
                                            .map(number -> "swap " + number)
                                            .collect(Collectors.joining(", "))),
                    Look.HINT);
        }
        return sheet.build();
    }
}
