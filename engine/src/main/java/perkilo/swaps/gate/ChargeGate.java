package perkilo.swaps.gate;

import java.util.List;
import java.util.stream.IntStream;
import perkilo.names.Names;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Trial;

/** No anionic with cationic: they would fall out together. */
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
        String enemy = own.equals(ANIONIC) ? CATIONIC : own.equals(CATIONIC) ? ANIONIC : "";
        List<String> enemies = enemy.isEmpty() ? List.of() : others(trial, enemy);
        return enemies.isEmpty()
                ? Verdict.pass(this, own + ", nothing of the opposite charge in the formula")
                : Verdict.fail(
                        this,
                        "%s is %s, but %s is %s".formatted(trial.to().name(), own, String.join(", ", enemies), enemy));
    }

    private Verdict unknown(Trial trial) {
        List<String> cationic = others(trial, CATIONIC);
        return cationic.isEmpty()
                ? Verdict.pass(this, "charge is not known; nothing cationic in the formula")
                : Verdict.passWithCaution(
                        this,
                        "the charge of %s is not known, and %s is cationic"
                                .formatted(trial.to().name(), String.join(", ", cationic)));
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
