package perkilo.swaps.closeness;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import perkilo.model.Material;
import perkilo.names.Names;
import perkilo.swaps.facts.FactTable;
import perkilo.swaps.facts.Functions;

/**
 * How close a material is to another, 0 to 100, judged by the traits that matter for the function of the other.
 *
 * <p>Each trait has a weight (the project's own choice, {@code weights.csv}) and adds the part of it by which the two
 * are alike. A trait that is not known for both adds nothing: unknown counts as far. Two materials with the same name
 * in the ingredient list differ only in their active matter, unless the name stands for any fragrance.
 *
 * @param score the sum of all shares
 * @param shares what each trait adds
 */
public record Closeness(BigDecimal score, List<TraitShare> shares) {

    private static final String ANY = "any";
    private static final String SOLID = "solid emollient";

    /** Names in the ingredient list that any mixture of fragrances or flavours may have. */
    private static final Set<String> ANY_SCENT = Set.of("parfum", "aroma", "fragrance", "flavor");

    private static final int SAME_SUBSTANCE = 90;
    private static final int SAME_ACTIVE = 10;
    private static final double FAR_ACTIVE = 4;
    private static final Map<String, List<Weight>> BY_WORK = FactTable.read(Closeness.class, "weights.csv").stream()
            .map(Weight::parse)
            .collect(Collectors.groupingBy(Weight::work, LinkedHashMap::new, Collectors.toList()));

    public Closeness {
        shares = List.copyOf(shares);
    }

    /** How close one material is to another that is in the formula. */
    public static Closeness of(Material from, Material to) {
        String inci = Names.key(from.inci());
        if (!inci.isEmpty() && !ANY_SCENT.contains(inci) && inci.equals(Names.key(to.inci()))) {
            return sameSubstance(from, to);
        }
        List<Weight> any = Objects.requireNonNull(BY_WORK.get(ANY));
        List<Weight> weights = BY_WORK.getOrDefault(judgedAs(from), any);
        return of(weights.stream().map(weight -> weight.share(from, to)).toList());
    }

    /** The traits of an oil are not those of a wax: solid emollients have their own table. */
    private static String judgedAs(Material from) {
        String work = Functions.work(from);
        return work.equals(Functions.EMOLLIENT) && Functions.isSolid(from) ? SOLID : work;
    }

    /** The shares in words, one after the other. */
    public String words() {
        return shares.stream().map(TraitShare::toString).collect(Collectors.joining(", "));
    }

    private static Closeness sameSubstance(Material from, Material to) {
        List<TraitShare> shares = new ArrayList<>();
        shares.add(new TraitShare("same INCI name", SAME_SUBSTANCE, BigDecimal.valueOf(SAME_SUBSTANCE), true));
        shares.add(new Weight("", Trait.ACTIVE_MATTER, SAME_ACTIVE, FAR_ACTIVE).share(from, to));
        return of(shares);
    }

    private static Closeness of(List<TraitShare> shares) {
        return new Closeness(shares.stream().map(TraitShare::share).reduce(BigDecimal.ZERO, BigDecimal::add), shares);
    }

    private record Weight(String work, Trait trait, int weight, double far) {

        static Weight parse(List<String> row) {
            return new Weight(
                    row.get(0),
                    Trait.named(row.get(1)),
                    Integer.parseInt(row.get(2)),
                    row.get(3).isEmpty() ? 1 : Double.parseDouble(row.get(3)));
        }

        TraitShare share(Material from, Material to) {
            OptionalDouble likeness = trait.likeness(from, to, far);
            BigDecimal share = BigDecimal.valueOf(weight * likeness.orElse(0)).setScale(1, RoundingMode.HALF_UP);
            return new TraitShare(trait.words(), weight, share, likeness.isPresent());
        }
    }
}
