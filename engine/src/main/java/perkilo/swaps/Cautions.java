package perkilo.swaps;

import java.util.List;

/** What holds for every swap, whatever its figures. */
public final class Cautions {

    /** Said on every list of swaps. */
    public static final List<String> ALWAYS = List.of(
            "A swap is a candidate for the bench, not a release.",
            "Make a bench batch; check pH and viscosity the next day, then stability, preservative efficacy and"
                    + " compatibility with the pack.",
            "The safety assessment has to be done anew by a qualified safety assessor; local rules decide.",
            "Claims stay cosmetic: what a product does to appearance.",
            "Traits are those of the materials sheet; the supplier's specification and certificate decide.");

    private Cautions() {}
}
