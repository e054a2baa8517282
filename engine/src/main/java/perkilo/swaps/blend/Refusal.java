package perkilo.swaps.blend;

import perkilo.swaps.facts.Functions;

/** Why materials of a function are not blended anew for a saving. */
final class Refusal {

    private Refusal() {}

    /** The reason in a sentence. */
    static String of(String work) {
        return switch (work) {
            case Functions.PRESERVATIVE ->
                "Preservatives are not blended anew for a saving: only a preservative efficacy"
                        + " (challenge) test shows whether a preservative system protects the product, and a qualified safety"
                        + " assessor decides.";
            case "uv filter", "uv absorber" ->
                "UV filters are not blended anew for a saving: only a measurement shows what"
                        + " a combination protects from, and a qualified safety assessor decides.";
            case "perfuming" ->
                "Fragrances are not blended anew: what they would have to keep, the scent, is not among the"
                        + " facts.";
            case Functions.COLORANT ->
                "Colourants are not blended anew: what they would have to keep, the shade, is not"
                        + " among the facts.";
            default ->
                "No blend is sought: what materials for \"%s\" would have to keep together is not among the facts."
                        .formatted(work);
        };
    }
}
