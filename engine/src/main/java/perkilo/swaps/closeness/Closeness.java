package perkilo.swaps.closeness;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import perkilo.model.Material;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.RoleFact;

/**
 * How close a material is to another in a role, 0 to 100.
 *
 * <p>Each fact of the role has a weight (the project's own choice, {@code role-facts.csv}) and adds the part of it by
 * which the two are alike. A fact that is not known of both may be anything: at worst it adds nothing, at best its
 * whole weight. Whatever is ranked or compared with a bound uses the worst.
 *
 * @param shares what each fact adds
 */
public record Closeness(List<TraitShare> shares) {

    public Closeness {
        shares = List.copyOf(shares);
    }

    /**
     * How close one material is to another.
     *
     * @param role of the one that is in the formula
     */
    public static Closeness of(Role role, Material from, Material to) {
        return new Closeness(
                role.facts().stream().map(fact -> share(role, fact, from, to)).toList());
    }

    /** The closeness if every unknown fact is as far as can be. */
    public BigDecimal worst() {
        return shares.stream().map(TraitShare::share).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** The closeness if every unknown fact is alike. */
    public BigDecimal best() {
        int open = shares.stream()
                .filter(share -> !share.known())
                .mapToInt(TraitShare::weight)
                .sum();
        return worst().add(BigDecimal.valueOf(open));
    }

    /** The closeness that ranks and bounds use: the worst. */
    public BigDecimal score() {
        return worst();
    }

    /** How many facts are not known of both. */
    public int unknown() {
        return (int) shares.stream().filter(share -> !share.known()).count();
    }

    /** The range in words: {@code 62–81, 2 facts unknown}, or {@code 81}. */
    public String range() {
        int unknown = unknown();
        return unknown == 0
                ? plain(worst())
                : plain(worst()) + "–" + plain(best()) + ", " + unknown + (unknown == 1 ? " fact" : " facts")
                        + " unknown";
    }

    /** The shares in words, one after the other. */
    public String words() {
        return shares.stream().map(TraitShare::toString).collect(Collectors.joining(", "));
    }

    private static String plain(BigDecimal score) {
        return score.setScale(0, RoundingMode.FLOOR).toPlainString();
    }

    private static TraitShare share(Role role, RoleFact fact, Material from, Material to) {
        String key = fact.oneOf().stream()
                .filter(one -> Compared.isKnown(one, from) && Compared.isKnown(one, to))
                .findFirst()
                .orElse("");
        if (!key.isEmpty()) {
            double likeness = Compared.likeness(key, role, from, to, fact.far());
            BigDecimal share = BigDecimal.valueOf(fact.weight() * likeness).setScale(1, RoundingMode.HALF_UP);
            return new TraitShare(
                    Compared.words(key),
                    fact.weight(),
                    share,
                    true,
                    Compared.value(key, from),
                    Compared.value(key, to));
        }
        String shown = fact.oneOf().stream()
                .filter(one -> Compared.isKnown(one, from) || Compared.isKnown(one, to))
                .findFirst()
                .orElse(fact.oneOf().get(0));
        return new TraitShare(
                Compared.words(shown),
                fact.weight(),
                BigDecimal.ZERO,
                false,
                Compared.value(shown, from),
                Compared.value(shown, to));
    }
}
