package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.origin.Figure;
import perkilo.swaps.Kit;
import perkilo.swaps.Varied;
import perkilo.swaps.role.Role;
import perkilo.swaps.role.Roles;
import perkilo.swaps.trial.Portion;
import perkilo.swaps.trial.Recipe;

/**
 * A formula with a blend in it, and what might come in: materials of the catalogue, some of whose facts are taken away.
 * Levels, ranges and prices are invented, and so are facts where the catalogue has too few of a kind.
 *
 * @param recipe the formula; without water in one case of four, but for emulsifiers; with a natural origin target in
 *     every second
 * @param group the lines of the blend
 * @param pantry what is in the blend, then what might come in, whether or not enough is known of it
 */
record BlendCase(Recipe recipe, Group group, List<Ingredient> pantry) {

    private static final int HELD = 4;
    private static final int PANTRY = 14;
    private static final int MOST_TRIES = 100;
    private static final BlendFinder.Bounds BOUNDS =
            new BlendFinder.Bounds(3, new BigDecimal("0.1"), BigDecimal.ONE, BigDecimal.ZERO);

    /** The case of a kind with a number. */
    static BlendCase of(Kind kind, int number) {
        return new Maker(kind, number).make();
    }

    /** The engine's answer; it has to find one, as the levels are good as they are. */
    BlendSearch.Answer solved(SolveLinear solver, int mostChanged) {
        List<Keeps> rules = new BlendRules(recipe, group, BOUNDS).rules();
        List<Ingredient> admitted = pantry.stream()
                .filter(one -> one.isIn()
                        || rules.stream()
                                .allMatch(rule -> rule.keepsOut(one.material()).isEmpty()))
                .toList();
        return BlendSearch.find(new BlendProgram(admitted, rules).program(mostChanged), solver)
                .orElseThrow();
    }

    /** Makes a case by chance, always the same one for a number. */
    private static final class Maker {

        private final Kind kind;
        private final int number;
        private final Random random;
        private final List<Material> ofKind;

        Maker(Kind kind, int number) {
            this.kind = kind;
            this.number = number;
            this.random = new Random(31L * kind.name().hashCode() + number);
            this.ofKind = Kit.catalogue().stream()
                    .filter(material -> Kind.of(material).filter(kind::equals).isPresent())
                    .toList();
        }

        /**
         * A case in which all that is held is one blend: what a line is there for depends on the rest of its formula.
         */
        BlendCase make() {
            for (int tries = 0; tries < MOST_TRIES; tries++) {
                Optional<BlendCase> made = tried();
                if (made.isPresent()) {
                    return made.get();
                }
            }
            throw new IllegalStateException("no formula holds a blend of " + kind);
        }

        private Optional<BlendCase> tried() {
            List<Material> catalogue = playersOfOneRole();
            List<Material> materials = new ArrayList<>();
            List<BigDecimal> levels = new ArrayList<>();
            for (int i = 0; i < PANTRY; i++) {
                Material material = known(catalogue, i);
                materials.add(i == 0 ? material : lessKnown(material, i < HELD));
                levels.add(i < HELD ? BigDecimal.valueOf(10 + random.nextInt(50), 3) : BigDecimal.ZERO);
            }
            Recipe recipe = recipe(materials, levels);
            Optional<Group> group = new Groups(recipe, null, null)
                    .sought().stream()
                            .filter(one -> one.kind() == kind && one.lines().size() == HELD)
                            .findFirst();
            if (group.isEmpty()) {
                return Optional.empty();
            }
            List<Ingredient> pantry = new ArrayList<>();
            for (int i = 0; i < PANTRY; i++) {
                pantry.add(ingredient(materials.get(i), levels.get(i)));
            }
            return Optional.of(new BlendCase(recipe, group.get(), pantry));
        }

        /** Materials of the kind; of one role where only such are blended together. */
        private List<Material> playersOfOneRole() {
            if (!kind.byRole()) {
                return ofKind;
            }
            Role role = Roles.first(ofKind.get(random.nextInt(ofKind.size()))).orElseThrow();
            return ofKind.stream()
                    .filter(material ->
                            Roles.first(material).filter(role::equals).isPresent())
                    .toList();
        }

        private Recipe recipe(List<Material> materials, List<BigDecimal> levels) {
            Kit kit = new Kit();
            for (int i = 0; i < HELD; i++) {
                kit.line("A", "", levels.get(i).movePointRight(2).toPlainString(), materials.get(i));
            }
            if (kind == Kind.EMULSIFIERS && random.nextBoolean()) {
                kit.line("B", "", "8", oil("Isopropyl myristate")).line("B", "", "5", oil("Decyl oleate"));
            } else {
                kit.line("B", "", "6", oil("Sweet almond oil"));
            }
            boolean dry = number % 4 == 3 && kind != Kind.EMULSIFIERS;
            kit.line("C", "", "q.s.", Kit.catalogued(dry ? "Sodium chloride" : "Water"));
            Recipe recipe = kit.recipe();
            return number / 4 % 2 == 1
                    ? recipe
                    : new Recipe(
                            recipe.formula(), recipe.portions(), recipe.requiredTags(), target(recipe), recipe.day());
        }

        /** Now and then missed as it is. */
        private BigDecimal target(Recipe recipe) {
            return recipe.naturalOrigin().known().add(BigDecimal.valueOf(random.nextInt(16) - 10L, 3));
        }

        /** An oil beside the blend; what it requires is not always known. */
        private Material oil(String name) {
            return random.nextInt(4) == 0
                    ? Varied.trait(Kit.catalogued(name), "requiredHlb", null)
                    : Varied.trait(Kit.catalogued(name), "requiredHlb", figure(70 + random.nextInt(60), 1));
        }

        private Material known(List<Material> catalogue, int place) {
            Material one = catalogue.get(random.nextInt(catalogue.size()));
            Material other = Varied.of(one, "name", one.name() + " " + place);
            other = Varied.trait(other, "useMin", random.nextInt(4) == 0 ? null : figure(1 + random.nextInt(10), 3));
            other = Varied.trait(other, "useMax", figure(30 + random.nextInt(80), 3));
            other = Varied.trait(other, "active", figure(30 + random.nextInt(70), 2));
            other = filled(other, "viscosity", other.traits().viscosity(), figure(8 + random.nextInt(80), 0));
            Figure required = figure(40 + random.nextInt(100), 1);
            boolean oil = kind == Kind.OILS || kind == Kind.BODY;
            other = oil
                    ? filled(other, "requiredHlb", other.traits().requiredHlb(), required)
                    : Varied.trait(other, "requiredHlb", null);
            other = filled(other, "hlb", other.traits().hlb(), figure(20 + random.nextInt(160), 1));
            return filled(
                    other, "naturalOriginIndex", other.traits().naturalOriginIndex(), figure(random.nextInt(11), 1));
        }

        private static Material filled(Material material, String trait, @Nullable Figure known, Figure invented) {
            return known == null ? Varied.trait(material, trait, invented) : material;
        }

        private Material lessKnown(Material known, boolean held) {
            Material less = known;
            for (String trait : List.of("viscosity", "requiredHlb", "hlb", "active", "naturalOriginIndex")) {
                less = random.nextInt(6) == 0 ? Varied.trait(less, trait, null) : less;
            }
            for (String trait : List.of("spreadingClass", "charge")) {
                less = random.nextInt(8) == 0 ? Varied.trait(less, trait, "") : less;
            }
            if (kind == Kind.OILS && random.nextInt(8) == 0) {
                less = Varied.trait(Varied.trait(less, "meltsAtC", null), "viscosity", null);
                less = Varied.trait(less, "spreadingClass", "");
            }
            return held && random.nextInt(8) == 0 ? Varied.trait(less, "useMax", null) : less;
        }

        private Ingredient ingredient(Material material, BigDecimal now) {
            double level = now.doubleValue();
            double least = Pantry.least(material);
            return new Ingredient(
                    material,
                    now,
                    now.signum() > 0 ? Math.min(least, level) : least,
                    Math.max(Pantry.most(material), level),
                    BigDecimal.valueOf(200 + random.nextInt(3000), 2),
                    0);
        }

        private static Figure figure(int digits, int decimals) {
            return Figure.of(BigDecimal.valueOf(digits, decimals));
        }
    }

    /** Lines that are not of the blend. */
    List<Portion> others() {
        List<Portion> others = new ArrayList<>(recipe.portions());
        group.lines().stream().map(recipe.portions()::get).forEach(others::remove);
        return others;
    }
}
