package perkilo.swaps.blend;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.Traits;
import perkilo.oracle.LpText;
import perkilo.origin.Figure;
import perkilo.swaps.Kit;
import perkilo.swaps.trial.Portion;

/**
 * A blend as a mixed-integer program, stated from the method alone: levels in per cent {@code x}, in or out {@code y}.
 *
 * <p>It knows nothing of how the engine writes its rows. What a blend keeps stands in parts by name, so that each can
 * be left out to see whether it matters.
 */
final class BlendModel {

    private static final double TOLERANCE = 0.1;
    private static final double HLB_BAND = 1;
    private static final double MELTING_BAND = 3;
    private static final double VISCOSITY_FACTOR = 1.5;

    /** Costs are blown up by this, so that what a solver thinks close enough is close. */
    private static final double FINE = 1000;

    /** Terms that nearly every material has, and that no blend has to keep. */
    private static final Set<String> ACCOMPANYING =
            Set.of("solvent", "skin conditioning", "masking", "antistatic", "denaturant", "surfactant");

    private final Kind kind;
    private final List<Ingredient> pantry;
    private final List<Portion> others;
    private final @Nullable BigDecimal naturalTarget;
    private final Map<String, Runnable> parts = new LinkedHashMap<>();
    private LpText lp = new LpText();

    BlendModel(BlendCase blend) {
        this.kind = blend.group().kind();
        this.pantry = blend.pantry();
        this.others = blend.others();
        this.naturalTarget = blend.recipe().naturalOriginTarget();
        state();
    }

    /** What such a blend keeps, by name. */
    Set<String> parts() {
        return parts.keySet();
    }

    private void state() {
        switch (kind) {
            case OILS -> {
                parts.put("total", this::total);
                parts.put("liquid", () -> untouchable(one -> isAllUnknown(one.traits())));
                parts.put("spreading", this::spreading);
                parts.put("viscosity", this::viscosity);
                requiredHlb();
            }
            case BODY -> {
                parts.put("total", this::total);
                parts.put("melting", this::melting);
                parts.put("besides", () -> besides("emollient", one -> 1));
                parts.put("spreading", this::spreading);
                requiredHlb();
            }
            case EMULSIFIERS -> {
                parts.put("total", this::total);
                parts.put("HLB", this::emulsifierHlb);
                parts.put("charges", () -> charges(one -> 1));
            }
            case HUMECTANTS -> parts.put("active", this::active);
            case THICKENERS -> {
                parts.put("total", this::total);
                parts.put("strength", this::strength);
                parts.put("besides", () -> besides("viscosity controlling", one -> 1));
                parts.put("charges", () -> charges(one -> 1));
            }
            case ANTIOXIDANTS -> {
                parts.put("total", this::total);
                parts.put("strength", this::strength);
            }
            case CHELATORS -> {
                parts.put("active", this::active);
                parts.put("strength", this::strength);
            }
            case SURFACTANTS -> {
                ToDoubleFunction<Ingredient> active =
                        one -> orZero(one.material().traits().active());
                parts.put("active", this::active);
                parts.put("besides", () -> besides("cleansing", active));
                parts.put("charges", () -> charges(active));
            }
        }
        if (naturalTarget != null) {
            parts.put("natural origin", () -> natural(naturalTarget.doubleValue()));
        }
    }

    private static boolean isAllUnknown(Traits traits) {
        return traits.meltsAtC() == null
                && traits.viscosity() == null
                && traits.spreadingClass().isEmpty();
    }

    private void total() {
        keep(one -> 1, 0);
    }

    /**
     * The shares of light, medium and heavy within a tenth of the blend; the unknown no more, and no less than that.
     */
    private void spreading() {
        double allowed = TOLERANCE * now(one -> 1);
        for (String spreading : List.of("light", "medium", "heavy")) {
            keep(one -> one.material().traits().spreadingClass().equals(spreading) ? 1 : 0, allowed);
        }
        ToDoubleFunction<Ingredient> unknown =
                one -> one.material().traits().spreadingClass().isEmpty() ? 1 : 0;
        sum(unknown).atMost(now(unknown));
        sum(unknown).atLeast(now(unknown) - allowed);
    }

    /** The mean logarithm of what is known within that of the factor; the unknown no more. */
    private void viscosity() {
        notMore(one -> one.traits().viscosity() == null);
        band(0, 0, one -> logarithm(one.traits().viscosity()), Math.log(VISCOSITY_FACTOR));
    }

    private static @Nullable Double logarithm(@Nullable Figure figure) {
        return figure == null ? null : Math.log(figure.value().doubleValue());
    }

    private void melting() {
        band(0, 0, one -> Kit.number(one.traits().meltsAtC()), MELTING_BAND);
    }

    /** Where there is water: of all oils of the formula, so far as known of any. */
    private void requiredHlb() {
        if (water() > 0) {
            parts.put("required HLB", () -> {
                List<Portion> known = others.stream()
                        .filter(other -> other.material().traits().requiredHlb() != null)
                        .toList();
                double mass = mass(known);
                double weighted = weighted(known);
                if (mass + now(one -> one.material().traits().requiredHlb() == null ? 0 : 1) > 0) {
                    band(mass, weighted, one -> number(one.traits().requiredHlb()), HLB_BAND);
                    notMore(one -> one.traits().requiredHlb() == null);
                }
            });
        }
    }

    private static double mass(List<Portion> portions) {
        return portions.stream().mapToDouble(BlendModel::percent).sum();
    }

    private static double weighted(List<Portion> portions) {
        return portions.stream()
                .mapToDouble(
                        one -> percent(one) * Kit.number(one.material().traits().requiredHlb()))
                .sum();
    }

    private static double percent(Portion portion) {
        return 100 * portion.level().doubleValue();
    }

    /** Within the band of what the oils require, where that is known of all and met; else of what it is. */
    private void emulsifierHlb() {
        untouchable(one -> one.traits().hlb() == null);
        ToDoubleFunction<Ingredient> known = one -> one.material().traits().hlb() == null ? 0 : 1;
        double own = now(one -> orZero(one.material().traits().hlb())) / now(known);
        List<Portion> oils = others.stream()
                .filter(other -> other.material().functions().contains("emollient"))
                .toList();
        boolean all = oils.stream().allMatch(oil -> oil.material().traits().requiredHlb() != null);
        double required = all && !oils.isEmpty() ? weighted(oils) / mass(oils) : own;
        double middle = Math.abs(required - own) <= HLB_BAND ? required : own;
        around(middle, 0, 0, one -> number(one.traits().hlb()), HLB_BAND);
    }

    /** Each share within a tenth; no new charge, and what is not known stays. */
    private void charges(ToDoubleFunction<Ingredient> measure) {
        Set<String> present = new TreeSet<>();
        pantry.stream().filter(Ingredient::isIn).forEach(one -> present.add(charge(one.material())));
        for (String charge : present) {
            keep(
                    one -> charge(one.material()).equals(charge) ? measure.applyAsDouble(one) : 0,
                    TOLERANCE * now(measure));
        }
        untouchable(one -> charge(one).isEmpty());
        pantry.stream().filter(one -> !present.contains(charge(one.material()))).forEach(this::shutOut);
    }

    private static String charge(Material material) {
        return material.traits().charge();
    }

    /** The active matter; water takes the difference in level, and without water there may be none. */
    private void active() {
        untouchable(one -> one.traits().active() == null);
        keep(one -> orZero(one.material().traits().active()), 0);
        if (water() > 0) {
            sum(one -> 1).atMost(now(one -> 1) + water());
        } else {
            total();
        }
    }

    private double water() {
        return others.stream()
                .filter(other -> other.material().name().equals("Water"))
                .mapToDouble(BlendModel::percent)
                .sum();
    }

    /** Levels as parts of usual maxima. */
    private void strength() {
        untouchable(one -> one.traits().useMax() == null);
        ToDoubleFunction<Ingredient> part = one -> one.material().traits().useMax() == null
                ? 0
                : 1 / Kit.number(one.material().traits().useMax());
        keep(part, TOLERANCE * now(part));
    }

    /** The share of each secondary function falls by no more than a tenth of its value. */
    private void besides(String work, ToDoubleFunction<Ingredient> measure) {
        Set<String> words = new TreeSet<>();
        pantry.stream()
                .filter(Ingredient::isIn)
                .forEach(one -> words.addAll(one.material().functions()));
        words.remove(work);
        words.removeAll(ACCOMPANYING);
        for (String word : words) {
            ToDoubleFunction<Ingredient> does =
                    one -> one.material().functions().contains(word) ? measure.applyAsDouble(one) : 0;
            sum(does).atLeast((1 - TOLERANCE) * now(does));
        }
    }

    /** The content stays at its target, or where it is missed does not fall; then what is not known stays. */
    private void natural(double target) {
        double content = 0;
        for (Portion other : others) {
            content += percent(other) * index(other.material());
        }
        content += now(one -> index(one.material()));
        boolean missed = content < 100 * target - 1e-9;
        boolean gives =
                Set.of(Kind.HUMECTANTS, Kind.CHELATORS, Kind.SURFACTANTS).contains(kind) && water() > 0;
        double water = gives ? index(Kit.catalogued("Water")) : 0;
        ToDoubleFunction<Ingredient> brings = one -> index(one.material()) - water;
        sum(brings).atLeast(now(brings) - (missed ? 0 : content - 100 * target));
        if (missed) {
            pantry.stream()
                    .filter(one -> one.isIn() && one.material().traits().naturalOriginIndex() == null)
                    .forEach(this::stay);
        }
    }

    /** What is natural by half or less counts for nothing. */
    private static double index(Material material) {
        double index = orZero(material.traits().naturalOriginIndex());
        return index <= 0.5 ? 0 : index;
    }

    /**
     * The text of the program, with at most so many in and as many out.
     *
     * @param without a part that is not kept; empty for none
     */
    String text(int mostChanged, String without) {
        lp = new LpText();
        parts.forEach((name, part) -> {
            if (!name.equals(without)) {
                part.run();
            }
        });
        LpText.Row in = lp.row();
        LpText.Row out = lp.row();
        long held = pantry.stream().filter(Ingredient::isIn).count();
        for (int i = 0; i < pantry.size(); i++) {
            Ingredient one = pantry.get(i);
            lp.cost("x" + i, one.perKg().doubleValue() * FINE / 100);
            lp.binary("y" + i);
            lp.row().plus(1, "x" + i).plus(-100 * one.most(), "y" + i).atMost(0);
            lp.row().plus(1, "x" + i).plus(-100 * lowest(one), "y" + i).atLeast(0);
            (one.isIn() ? out : in).plus(1, "y" + i);
        }
        in.atMost(mostChanged);
        out.atLeast((double) (held - mostChanged));
        return lp.text();
    }

    /** What stays keeps a quarter of its level at least, also where no lowest usual level is known. */
    private static double lowest(Ingredient one) {
        return Math.max(one.least(), one.now().doubleValue() / 4);
    }

    /** What a solver's levels cost for one kilogram of bulk. */
    double cost(Map<String, Double> values) {
        double cost = 0;
        for (int i = 0; i < pantry.size(); i++) {
            cost += values.getOrDefault("x" + i, 0.0)
                    / 100
                    * pantry.get(i).perKg().doubleValue();
        }
        return cost;
    }

    /** What the blend costs as it is. */
    double costNow() {
        return now(one -> one.perKg().doubleValue()) / 100;
    }

    private double now(ToDoubleFunction<Ingredient> weight) {
        return pantry.stream()
                .mapToDouble(one -> weight.applyAsDouble(one) * 100 * one.now().doubleValue())
                .sum();
    }

    private void keep(ToDoubleFunction<Ingredient> weight, double allowed) {
        double now = now(weight);
        sum(weight).atLeast(now - allowed);
        sum(weight).atMost(now + allowed);
    }

    private void notMore(Predicate<Material> which) {
        ToDoubleFunction<Ingredient> counts = one -> which.test(one.material()) ? 1 : 0;
        sum(counts).atMost(now(counts));
    }

    /** Of which too little is known: what is in keeps its level, what is not stays out. */
    private void untouchable(Predicate<Material> unknown) {
        pantry.stream().filter(one -> unknown.test(one.material())).forEach(one -> {
            if (one.isIn()) {
                stay(one);
            } else {
                shutOut(one);
            }
        });
    }

    private void stay(Ingredient one) {
        lp.row().plus(1, "x" + pantry.indexOf(one)).atLeast(100 * one.now().doubleValue());
        lp.row().plus(1, "x" + pantry.indexOf(one)).atMost(100 * one.now().doubleValue());
    }

    private void shutOut(Ingredient one) {
        lp.row().plus(1, "y" + pantry.indexOf(one)).atMost(0);
    }

    /**
     * The mean of a trait, over the blend and the rest of the formula, stays within a band around its present value.
     */
    private void band(double otherMass, double otherWeighted, Function<Material, @Nullable Double> trait, double band) {
        ToDoubleFunction<Ingredient> known = one -> trait.apply(one.material()) == null ? 0 : 1;
        double mass = otherMass + now(known);
        if (mass > 0) {
            around((otherWeighted + now(one -> above(trait, one, 0))) / mass, otherMass, otherWeighted, trait, band);
        }
    }

    private void around(
            double middle,
            double otherMass,
            double otherWeighted,
            Function<Material, @Nullable Double> trait,
            double band) {
        double high = middle + band;
        double low = middle - band;
        sum(one -> above(trait, one, high)).atMost(high * otherMass - otherWeighted);
        sum(one -> above(trait, one, low)).atLeast(low * otherMass - otherWeighted);
    }

    private static double above(Function<Material, @Nullable Double> trait, Ingredient one, double value) {
        Double known = trait.apply(one.material());
        return known == null ? 0 : known - value;
    }

    private static @Nullable Double number(@Nullable Figure figure) {
        return figure == null ? null : figure.value().doubleValue();
    }

    private static double orZero(@Nullable Figure figure) {
        return figure == null ? 0 : figure.value().doubleValue();
    }

    private LpText.Row sum(ToDoubleFunction<Ingredient> weight) {
        LpText.Row row = lp.row();
        for (int i = 0; i < pantry.size(); i++) {
            row.plus(weight.applyAsDouble(pantry.get(i)), "x" + i);
        }
        return row;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s, %d materials", kind, pantry.size());
    }
}
