package perkilo.swaps.trial;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.ProductKind;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.Allergens;
import perkilo.swaps.facts.Functions;
import perkilo.swaps.facts.Hlb;
import perkilo.swaps.facts.NaturalOrigin;
import perkilo.swaps.law.Law;
import perkilo.swaps.role.Roles;

/**
 * A formula with what is known about its materials, and what its products require.
 *
 * @param formula as typed, or as changed
 * @param portions one per line, in the order of the formula
 * @param requiredTags of all products made of it, as they are compared
 * @param naturalOriginTarget the highest of its products, as a fraction; null for none
 * @param day whose law holds
 */
public record Recipe(
        Formula formula,
        List<Portion> portions,
        Set<String> requiredTags,
        @Nullable BigDecimal naturalOriginTarget,
        LocalDate day) {

    /** At most so much is in a phase that is added last. Own choice. */
    private static final BigDecimal SMALL_PHASE = new BigDecimal("0.15");

    private static final String[] OILS = {
        "emollient ester",
        "triglyceride oil",
        "hydrocarbon",
        "silicone",
        "volatile emollient",
        "butter",
        "wax",
        "fatty alcohol"
    };

    public Recipe {
        portions = List.copyOf(portions);
    }

    /** A formula of a book. */
    public static Recipe of(Book book, Formula formula) {
        List<Product> products = book.products().values().stream()
                .filter(product -> Names.key(product.formula()).equals(Names.key(formula.name())))
                .toList();
        Set<String> tags = new LinkedHashSet<>();
        products.forEach(product -> product.requiredTags().forEach(tag -> tags.add(Names.key(tag))));
        BigDecimal target = products.stream()
                .map(Product::naturalOriginTarget)
                .filter(Objects::nonNull)
                .map(Figure::value)
                .max(BigDecimal::compareTo)
                .orElse(null);
        return new Recipe(
                formula, portions(book, formula), tags, target, book.settings().costingDate());
    }

    /** Another formula for the same products. */
    public Recipe with(Book book, Formula other) {
        return new Recipe(other, portions(book, other), requiredTags, naturalOriginTarget, day);
    }

    /** Another formula for the same products, whose materials are known already. */
    public Recipe with(Formula other, List<Portion> lines) {
        return new Recipe(other, lines, requiredTags, naturalOriginTarget, day);
    }

    /** The level of a material over all lines, as a fraction. */
    public BigDecimal levelOf(Material material) {
        String key = Names.key(material.name());
        return portions.stream()
                .filter(portion -> Names.key(portion.material().name()).equals(key))
                .map(Portion::level)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What the phase of a line dissolves. */
    public PhaseNature natureOf(int line) {
        Formula.Line at = portions.get(line).line();
        boolean both = PhaseNature.weightOf(portions, "water").signum() > 0
                && PhaseNature.weightOf(portions, "oil").signum() > 0;
        if (both && (isCooler(at) || isAddedLast(line))) {
            return PhaseNature.EMULSION;
        }
        if (both && at.phase().isBlank()) {
            return PhaseNature.UNKNOWN;
        }
        return PhaseNature.of(phaseOf(at));
    }

    /** What kind of system it is. */
    public FormulaSystem system() {
        return FormulaSystem.of(this);
    }

    /** What the material of a line is there for. */
    public RoleOfLine roleOf(int line) {
        return RoleOfLine.of(this, line);
    }

    /** Whether the formula holds water. */
    public boolean hasWater() {
        return portions.stream()
                .anyMatch(portion ->
                        portion.material().isWater() && portion.level().signum() > 0);
    }

    /** What kind of product it makes. */
    public ProductKind kind() {
        return formula.batching().kind();
    }

    /** The law for what it contains. */
    public Law law() {
        Figure ph = formula.batching().finalPh();
        return new Law(
                kind(),
                day,
                ph == null ? null : ph.value(),
                portions.stream()
                        .map(portion -> new Law.Dosed(portion.material(), portion.level()))
                        .toList());
    }

    /** Natural origin content by ISO 16128. */
    public NaturalOrigin naturalOrigin() {
        NaturalOrigin content = NaturalOrigin.NOTHING;
        for (Portion portion : portions) {
            content = content.plus(portion.level(), portion.material().traits().naturalOriginIndex());
        }
        return content;
    }

    /** Fragrance allergens. */
    public Allergens allergens() {
        Allergens all = new Allergens();
        portions.forEach(
                portion -> all.add(portion.level(), portion.material().traits().allergens()));
        return all;
    }

    /** What the oils require: all emollients, and whatever else has a required HLB. */
    public Hlb requiredHlb() {
        Hlb oils = Hlb.NOTHING;
        for (Portion portion : portions) {
            Figure required = portion.material().traits().requiredHlb();
            if (required != null || isOil(portion.material())) {
                oils = oils.plus(portion.level(), required);
            }
        }
        return oils;
    }

    /** What the emulsifiers have together. */
    public Hlb emulsifierHlb() {
        Hlb emulsifiers = Hlb.NOTHING;
        for (Portion portion : portions) {
            if (emulsifies(portion.material())) {
                emulsifiers = emulsifiers.plus(
                        portion.level(), portion.material().traits().hlb());
            }
        }
        return emulsifiers;
    }

    /** By its first role; without a role, by its function. */
    private static boolean emulsifies(Material material) {
        return Roles.first(material)
                .map(role -> Roles.isEmulsifier(role) || role.isOneOf("co-emulsifier"))
                .orElseGet(() -> Functions.work(material).equals(Functions.EMULSIFYING));
    }

    private static boolean isOil(Material material) {
        return Roles.first(material)
                .map(role -> role.isOneOf(OILS))
                .orElseGet(() -> Functions.work(material).equals(Functions.EMOLLIENT));
    }

    private List<Portion> phaseOf(Formula.Line line) {
        String phase = Names.key(line.phase());
        return portions.stream()
                .filter(portion -> Names.key(portion.line().phase()).equals(phase))
                .toList();
    }

    /**
     * Whether a phase without a temperature is a small one, without process water, that follows a water phase and an
     * oil phase: it is added to the finished emulsion. Common practice.
     */
    private boolean isAddedLast(int line) {
        Formula.Line at = portions.get(line).line();
        if (at.phaseC() != null || at.phase().isBlank()) {
            return false;
        }
        List<Portion> phase = phaseOf(at);
        boolean isSmall = phase.stream()
                                .map(Portion::level)
                                .reduce(BigDecimal.ZERO, BigDecimal::add)
                                .compareTo(SMALL_PHASE)
                        <= 0
                && phase.stream().noneMatch(portion -> portion.material().isWater());
        if (!isSmall) {
            return false;
        }
        Set<PhaseNature> before = EnumSet.noneOf(PhaseNature.class);
        for (Portion portion : portions) {
            if (phase.contains(portion)) {
                break;
            }
            before.add(PhaseNature.of(phaseOf(portion.line())));
        }
        return before.contains(PhaseNature.WATER) && before.contains(PhaseNature.OIL);
    }

    private boolean isCooler(Formula.Line line) {
        Figure own = line.phaseC();
        return own != null
                && portions.stream()
                        .map(portion -> portion.line().phaseC())
                        .filter(Objects::nonNull)
                        .anyMatch(other -> other.value().compareTo(own.value()) > 0);
    }

    private static List<Portion> portions(Book book, Formula formula) {
        List<Portion> portions = new ArrayList<>();
        for (Formula.Line line : formula.lines()) {
            Material material = book.material(line.material()).orElseGet(() -> Material.of(line.material()));
            portions.add(new Portion(line, material, formula.levelOf(line)));
        }
        return portions;
    }
}
