package perkilo.swaps.blend;

import perkilo.swaps.facts.Functions;

/** The reason why materials in a role are not blended anew for a saving. */
final class Refusal {

    private Refusal() {}

    /** The reason in full sentences. */
    static String of(String role) {
        return switch (role) {
            case Functions.PRESERVATIVE -> BlendMessages.noPreservatives();
            case "organic UV filter", "mineral UV filter" -> BlendMessages.noUvFilters();
            case "fragrance", "essential oil" -> BlendMessages.noFragrances();
            case "colourant" -> BlendMessages.noColourants();
            default -> BlendMessages.noRules(role);
        };
    }
}
