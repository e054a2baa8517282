package perkilo.report.decision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import perkilo.decision.TargetCost;
import perkilo.decision.TargetMove;
import perkilo.report.part.Lines;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.swaps.Cautions;

/** Target cost: from the shop price down to the allowed cost, the gap, and what closes it. */
public final class TargetSheet {

    private static final String NAME = "Target cost";

    private TargetSheet() {}

    /**
     * The sheet.
     *
     * @param home code of the home currency
     */
    public static ResultSheet of(String home, List<TargetCost> targets) {
        SheetBuilder sheet = new SheetBuilder(NAME).landscape();
        sheet.title(0, NAME);
        sheet.hint(
                1,
                "Allowed unit cost = target retail price ÷ (1 + VAT) × (1 − retailer margin) × (1 − distributor margin) × (1 −"
                        + " target margin). It is live; costs are values of this run.");
        sheet.hint(
                2,
                "Up to three changes together: one run size, swaps, one blend, other offers. Each set is planned and costed as a"
                        + " whole; swaps must pass every gate with the others in. Of those that reach the allowed cost, the one that"
                        + " takes the least cash is shown. Trials are not in it.");
        Lines lines = new Lines(sheet, 4);
        lines.write(lines.place(new TargetTable(home).onSheet(), targets));
        Set<String> cautions = new LinkedHashSet<>();
        for (TargetCost target : targets) {
            if (target.sets().isCut()) {
                lines.hint(DecisionMessages.setsLeftOut(
                        target.cost().needs().title(),
                        target.sets().planned(),
                        target.sets().possible()));
            }
        }
        for (TargetCost target : targets) {
            if (!target.candidates().isEmpty()) {
                lines.skip(1);
                lines.section(target.cost().needs().title() + ": what each change does alone");
                lines.write(lines.place(candidates(home), target.candidates()));
            }
            for (TargetMove move : target.chosen()) {
                move.cautions().forEach(caution -> cautions.add(move.what() + ": " + caution));
            }
        }
        if (!cautions.isEmpty()) {
            lines.skip(1);
            lines.section("Before you swap");
            List<String> all = new ArrayList<>(Cautions.ALWAYS);
            all.addAll(cautions);
            for (String caution : all) {
                sheet.text(lines.next(), SheetBuilder.FIRST_COLUMN, caution, Look.PLAIN);
                lines.skip(1);
            }
        }
        return sheet.build();
    }

    private static Table<TargetMove> candidates(String home) {
        NumberFormat fine = NumberFormat.money(home, 4);
        return Table.of(
                Column.<TargetMove>of("what", "Change").words(TargetMove::what).look(Look.LABEL),
                Column.<TargetMove>of("kind", "Kind").words(move -> word(move.kind())),
                Column.<TargetMove>of("effect", "Change of unit cost")
                        .value(TargetMove::effect)
                        .format(fine),
                Column.<TargetMove>of("unitCost", "Unit cost alone")
                        .value(move -> move.alone().unitCost().orElse(null))
                        .format(fine),
                Column.<TargetMove>of("cash", "Cash for the run")
                        .value(move -> move.alone().cash())
                        .format(NumberFormat.money(home, 2)));
    }

    private static String word(TargetMove.Kind kind) {
        return switch (kind) {
            case RUN_SIZE -> "size";
            case SWAP -> "swap";
            case BLEND -> "blend";
            case OFFER -> "offer";
        };
    }
}
