package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.util.List;
import perkilo.names.Names;

/**
 * What a phase dissolves.
 *
 * <p>Derived from its lines by weight: water if the water-soluble lines outweigh the oil-soluble ones, oil if it is the
 * other way round; lines that dissolve in both or in neither, or are not known, do not count. A phase that is cooler
 * than the hottest one, in a formula with both water and oil, is added to the finished emulsion, which takes both.
 */
public enum PhaseNature {
    WATER("water phase"),
    OIL("oil phase"),
    EMULSION("finished emulsion"),
    UNKNOWN("phase");

    private final String words;

    PhaseNature(String words) {
        this.words = words;
    }

    /** The nature as a person reads it. */
    public String words() {
        return words;
    }

    /** The nature of what all these lines make together. */
    static PhaseNature of(List<Portion> lines) {
        BigDecimal water = weightOf(lines, "water");
        BigDecimal oil = weightOf(lines, "oil");
        int heavier = water.compareTo(oil);
        return heavier > 0 ? WATER : heavier < 0 ? OIL : UNKNOWN;
    }

    /** How much of these lines dissolves in something, as a fraction of the formula. */
    static BigDecimal weightOf(List<Portion> lines, String solubleIn) {
        return lines.stream()
                .filter(line -> Names.key(line.material().traits().solubleIn()).equals(solubleIn))
                .map(Portion::level)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
