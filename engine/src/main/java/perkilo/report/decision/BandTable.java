package perkilo.report.decision;

import java.util.List;
import java.util.Objects;
import perkilo.costing.RunCost;
import perkilo.decision.RiskBand;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;

/** Risk bands as JSON shows them: a row for each run. */
public final class BandTable {

    private BandTable() {}

    /** A band with its figures. */
    public static Table.Filled<RiskBand> inJson(RiskBand band) {
        RunCost cost = band.cost();
        RiskBand.Figures known = Objects.requireNonNull(band.figures());
        RunKeys<RiskBand> keys = new RunKeys<>(cost);
        return Table.of(
                        keys.product,
                        keys.formula,
                        keys.units,
                        keys.batchKg,
                        Column.<RiskBand>of("horizonDays", "").json(RiskBand::horizonDays),
                        Column.<RiskBand>of("windows", "").json(one -> known.windows()),
                        Column.<RiskBand>of("from", "").json(one -> known.from()),
                        Column.<RiskBand>of("to", "").json(one -> known.to()),
                        Column.<RiskBand>of("p5", "").json(one -> known.p5()),
                        Column.<RiskBand>of("p50", "").json(one -> known.p50()),
                        Column.<RiskBand>of("p95", "").json(one -> known.p95()),
                        Column.<RiskBand>of("pricesThatStay", "").json(RiskBand::still))
                .with(List.of(band));
    }

    /** Why a run has no band. */
    public static Table.Filled<RiskBand> missingInJson(RiskBand band) {
        RunKeys<RiskBand> keys = new RunKeys<>(band.cost());
        return Table.of(
                        keys.product,
                        keys.formula,
                        keys.units,
                        keys.batchKg,
                        Column.<RiskBand>of("why", "").json(BandWords::missing))
                .with(List.of(band));
    }
}
