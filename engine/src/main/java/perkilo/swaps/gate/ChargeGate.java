package perkilo.swaps.gate;

import java.util.List;
import java.util.stream.IntStream;
import perkilo.names.Names;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/** The gate that keeps anionic and cationic materials apart: together they would precipitate. */
final class ChargeGate implements Gate {

    private static final String ANIONIC = "anionic";
    private static final String CATIONIC = "cationic";

    @Override
    public String name() {
        return "charge";
    }

    @Override
    public boolean judgesPlace() {
        return true;
    }

    @Override
    public Verdict judge(Trial trial) {
        String own = Names.key(trial.to().traits().charge());
        if (own.isEmpty()) {
            return unknown(trial);
        }
        String opposite = own.equals(ANIONIC) ? CATIONIC : own.equals(CATIONIC) ? ANIONIC : "";
        List<String> others = opposite.isEmpty() ? List.of() : others(trial, opposite);
        return others.isEmpty()
                ? Verdict.pass(this, GateMessages.noOppositeCharge(own))
                : Verdict.fail(this, GateMessages.oppositeCharges(trial.to().name(), own, others, opposite));
    }

    private Verdict unknown(Trial trial) {
        List<String> cationic = others(trial, CATIONIC);
        return cationic.isEmpty()
                ? Verdict.pass(this, GateMessages.nothingCationic())
                : Verdict.passWithCaution(
                        this, GateMessages.chargeUnknown(trial.to().name(), cationic));
    }

    private static List<String> others(Trial trial, String charge) {
        List<Portion> portions = trial.after().portions();
        return IntStream.range(0, portions.size())
                .filter(line -> line != trial.line())
                .mapToObj(line -> portions.get(line).material())
                .filter(material -> Names.key(material.traits().charge()).equals(charge))
                .map(material -> material.name())
                .distinct()
                .toList();
    }
}
