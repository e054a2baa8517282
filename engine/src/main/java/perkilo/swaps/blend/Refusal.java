package perkilo.swaps.blend;

import perkilo.swaps.facts.Functions;

/** The reason why materials of a function are not blended anew for a saving. */
final class Refusal {

    private Refusal() {}

    /** The reason in full sentences. */
    static String of(String work) {
        return switch (work) {
            case Functions.PRESERVATIVE -> BlendMessages.noPreservatives();
            case "uv filter", "uv absorber" -> BlendMessages.noUvFilters();
            case "perfuming" -> BlendMessages.noFragrances();
            case Functions.COLORANT -> BlendMessages.noColourants();
            default -> BlendMessages.noRules(work);
        };
    }
}
