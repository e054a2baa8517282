package perkilo.report.decision;

import java.util.List;
import perkilo.decision.PlanAndActual;
import perkilo.origin.Decimals;
import perkilo.report.part.Lines;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** Plan and actual: what each run really took, item by item, with its quantity and price variance. */
public final class ActualSheet {

    private static final String NAME = "Plan and actual";

    private ActualSheet() {}

    /**
     * The sheet.
     *
     * @param home code of the home currency
     */
    public static ResultSheet of(String home, List<PlanAndActual> runs) {
        SheetBuilder sheet = new SheetBuilder(NAME).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "For the whole run. Quantity variance = (actual − standard quantity) × standard price. Price variance = (actual −"
                        + " standard price) × actual quantity, at the plan's exchange rates. Above zero costs more.");
        sheet.hint(
                2,
                "The standard is the plan for the units made, at its landed prices. Where nothing was written down, the plan counts."
                        + " Quantities, amounts and variances are live; standards are values of the last run.");
        Lines lines = new Lines(sheet, 4);
        for (PlanAndActual run : runs) {
            lines.section(run.variance().title() + ": " + Decimals.readable(run.made(), 0) + " made");
            lines.write(lines.place(new ActualTable(home).onSheet(), run.items()));
            lines.skip(1);
        }
        return sheet.build();
    }
}
