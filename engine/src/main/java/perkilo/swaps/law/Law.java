package perkilo.swaps.law;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.model.ProductKind;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.swaps.facts.InciName;
import perkilo.swaps.law.KindCondition.Truth;
import perkilo.swaps.law.LegalRule.Bound;
import perkilo.swaps.law.Ruling.Outcome;

/**
 * The limits of Regulation (EC) No 1223/2009, Annexes II, III, V and VI, and of REACH, Annex XVII, for a formula.
 *
 * <p>A material counts with its active matter, as supplied where that is not known. An amount of a salt or an ester is
 * counted as what the limit is expressed as, by molar mass: 0.59 % sodium benzoate is 0.5 % benzoic acid. Substances of
 * a group are added up. The state of the tables is {@link StateOfLaw#DATE}.
 */
public final class Law {

    private static final BigDecimal ROUNDING = new BigDecimal("1e-9");
    private static final String PRESERVATIVE = "preservative";

    private final ProductKind kind;
    private final LocalDate day;
    private final @Nullable BigDecimal finalPh;
    private final List<Dosed> contents;

    /**
     * The law for a formula.
     *
     * @param kind of product
     * @param day on which the product is to be placed on the market
     * @param finalPh null if it is not known
     * @param contents the materials with their levels
     */
    public Law(ProductKind kind, LocalDate day, @Nullable BigDecimal finalPh, List<Dosed> contents) {
        this.kind = kind;
        this.day = day;
        this.finalPh = finalPh;
        this.contents = List.copyOf(contents);
    }

    /**
     * A material in a formula.
     *
     * @param material what it is
     * @param level as supplied, as a fraction
     */
    public record Dosed(Material material, BigDecimal level) {}

    /** One substance that a material brings; the share is null if it is not known. */
    private record Brought(
            Material material,
            LegalTable.Substance substance,
            @Nullable BigDecimal amount,
            BigDecimal most) {}

    /** Whether the tables have a rule about a material, whatever the kind of product. */
    public static boolean knows(Material material) {
        return !groupsOf(material).isEmpty();
    }

    /** What the law says about everything in the formula, a ruling for each group. */
    public List<Ruling> rulings() {
        Set<String> groups = new LinkedHashSet<>();
        contents.forEach(dosed -> groups.addAll(groupsOf(dosed.material())));
        return groups.stream().map(group -> ruling(group, false)).toList();
    }

    /**
     * What the law says about the groups that a material is in.
     *
     * @param asPreservative whether it is there to preserve, so that limits for other purposes do not count
     */
    public List<Ruling> rulings(Material material, boolean asPreservative) {
        return groupsOf(material).stream()
                .map(group -> ruling(group, asPreservative))
                .toList();
    }

    /**
     * The highest level of a material as supplied, as a fraction, if nothing else of its groups is in the formula.
     *
     * @return empty if no rule with a number is known to apply
     */
    public static Optional<BigDecimal> most(Material material, ProductKind kind, LocalDate day) {
        return LegalTable.substances(inci(material)).stream()
                .map(substance -> mosts(
                                material,
                                day,
                                rule -> rule.group().equals(substance.group())
                                        && rule.kinds().holds(kind) == Truth.YES)
                        .max(Comparator.naturalOrder()))
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder());
    }

    /**
     * Whether a maximum that a person typed is that of another kind of product.
     *
     * @param typed as supplied, as a fraction
     */
    public static boolean isOfOtherKind(Material material, BigDecimal typed, ProductKind kind, LocalDate day) {
        BigDecimal near = new BigDecimal("0.015");
        return mosts(material, day, rule -> rule.kinds().holds(kind) == Truth.NO)
                .anyMatch(most -> most.subtract(typed).abs().compareTo(most.multiply(near)) <= 0);
    }

    private static Stream<BigDecimal> mosts(Material material, LocalDate day, Predicate<LegalRule> wanted) {
        if (InciName.parts(inci(material)).size() > 1) {
            return Stream.empty();
        }
        BigDecimal active = active(material);
        return LegalTable.substances(inci(material)).stream()
                .flatMap(substance -> LegalTable.rules(substance.group()).stream()
                        .filter(rule -> rule.bound() == Bound.MAX && rule.holdsOn(day) && wanted.test(rule))
                        .map(rule -> number(rule).divide(substance.factor().multiply(active), MathContext.DECIMAL64)));
    }

    private Ruling ruling(String group, boolean asPreservative) {
        List<Brought> brought = brought(group);
        List<LegalRule> rules = LegalTable.rules(group);
        Set<String> purposes = new LinkedHashSet<>();
        rules.stream().map(LegalRule::purpose).filter(one -> !one.isEmpty()).forEach(purposes::add);
        if (asPreservative && purposes.contains(PRESERVATIVE)) {
            purposes.retainAll(Set.of(PRESERVATIVE));
        }
        if (purposes.isEmpty()) {
            return ruling(group, rules, brought, "");
        }
        List<Ruling> all = purposes.stream()
                .map(purpose -> ruling(
                        group,
                        rules.stream()
                                .filter(rule -> rule.purpose().isEmpty()
                                        || rule.purpose().equals(purpose))
                                .toList(),
                        brought,
                        purpose))
                .toList();
        Ruling best = all.get(0);
        for (Ruling other : all) {
            best = other.outcome().compareTo(best.outcome()) < 0 ? other : best;
        }
        boolean notAsPreservative = all.size() > 1
                && best.outcome() == Outcome.KEPT
                && purposes.contains(PRESERVATIVE)
                && all.get(0).outcome() != Outcome.KEPT;
        return notAsPreservative
                ? with(best, LawMessages.otherPurpose(all.get(0).words()))
                : best;
    }

    private static Ruling with(Ruling ruling, String caution) {
        List<String> cautions = new ArrayList<>(ruling.cautions());
        cautions.add(caution);
        return new Ruling(
                ruling.group(),
                ruling.outcome(),
                ruling.rule(),
                ruling.level(),
                ruling.materials(),
                ruling.words(),
                cautions);
    }

    private Ruling ruling(String group, List<LegalRule> rules, List<Brought> brought, String purpose) {
        List<String> cautions = new ArrayList<>();
        List<LegalRule> maybe = new ArrayList<>();
        LegalRule broken = null;
        LegalRule blend = null;
        LegalRule kept = null;
        for (LegalRule rule : rules) {
            Truth holds = rule.kinds().holds(kind);
            if (holds == Truth.NO) {
                continue;
            }
            if (!rule.holdsOn(day)) {
                if (holds == Truth.YES && isBroken(rule, brought, true)) {
                    cautions.add(LawMessages.later(group, LimitWords.of(rule), rule.from(), rule.where()));
                }
                continue;
            }
            if (holds == Truth.UNKNOWN) {
                maybe.add(rule);
                continue;
            }
            if (isBroken(rule, brought, false)) {
                broken = broken == null ? rule : broken;
            } else if (isBroken(rule, brought, true)) {
                blend = rule;
            } else {
                kept = rule.most() != null && (kept == null || number(rule).compareTo(number(kept)) < 0) ? rule : kept;
                if (!rule.words().isEmpty()) {
                    cautions.add(LawMessages.condition(group, rule.words(), rule.where()));
                }
            }
        }
        List<LegalRule> mayBreak =
                maybe.stream().filter(rule -> isBroken(rule, brought, true)).toList();
        if (broken == null && !mayBreak.isEmpty() && mayBreak.size() == maybe.size() && leavesNoPartOut(maybe)) {
            broken = mayBreak.stream()
                    .max(Comparator.comparing(Law::number))
                    .filter(rule -> isBroken(rule, brought, false))
                    .orElse(null);
        }
        if (broken != null) {
            return new Ruling(
                    group,
                    Outcome.BROKEN,
                    broken,
                    sum(broken, brought, false),
                    names(brought),
                    broken(broken, brought),
                    List.of());
        }
        if (blend != null) {
            return unclear(
                    group,
                    blend,
                    brought,
                    LawMessages.shareUnknown(blendNames(brought), LimitWords.of(blend), blend.where()));
        }
        if (!mayBreak.isEmpty()) {
            LegalRule strictest =
                    mayBreak.stream().min(Comparator.comparing(Law::number)).orElseThrow();
            return unclear(group, strictest, brought, kindDecides(strictest, mayBreak, maybe, brought));
        }
        return new Ruling(
                group,
                Outcome.KEPT,
                kept,
                kept == null ? BigDecimal.ZERO : sum(kept, brought, false),
                names(brought),
                kept == null || kept.bound() == Bound.PH
                        ? LawMessages.noNumber(group)
                        : LawMessages.within(
                                sum(kept, brought, false),
                                kept.expressed(),
                                LimitWords.of(kept),
                                purpose,
                                kept.where()),
                cautions);
    }

    /** Whether each part of the body that a person may mean has one of the rules. */
    private boolean leavesNoPartOut(List<LegalRule> rules) {
        return kind.possible().stream()
                .allMatch(
                        possible -> rules.stream().anyMatch(rule -> rule.kinds().holds(possible) == Truth.YES));
    }

    private static Ruling unclear(String group, LegalRule rule, List<Brought> brought, String words) {
        return new Ruling(group, Outcome.UNCLEAR, rule, sum(rule, brought, false), names(brought), words, List.of());
    }

    private String broken(LegalRule rule, List<Brought> brought) {
        String words = switch (rule.bound()) {
            case PROHIBITED -> LawMessages.prohibited(inBrackets(brought), kind.words(), rule.where());
            case PH -> LawMessages.phTooHigh(inBrackets(brought), finalPh, number(rule), rule.where());
            default ->
                LawMessages.above(
                        sum(rule, brought, false),
                        rule.expressed(),
                        LimitWords.of(rule),
                        inBrackets(brought),
                        rule.where());
        };
        return withMore(words, rule);
    }

    private static String withMore(String words, LegalRule rule) {
        return rule.words().isEmpty() ? words : words + " " + rule.words();
    }

    private String kindDecides(
            LegalRule strictest, List<LegalRule> mayBreak, List<LegalRule> maybe, List<Brought> brought) {
        String wider = maybe.stream()
                .filter(rule -> !mayBreak.contains(rule))
                .max(Comparator.comparing(Law::number))
                .map(LimitWords::of)
                .orElse("");
        String words = LawMessages.kindDecides(
                sum(strictest, brought, false),
                strictest.expressed(),
                inBrackets(brought),
                LimitWords.of(strictest),
                wider,
                strictest.where());
        return withMore(words, strictest);
    }

    private List<Brought> brought(String group) {
        List<Brought> all = new ArrayList<>();
        for (Dosed dosed : contents) {
            if (dosed.level().signum() <= 0) {
                continue;
            }
            BigDecimal active = dosed.level().multiply(active(dosed.material()));
            for (InciName.Part part : InciName.parts(inci(dosed.material()))) {
                for (LegalTable.Substance substance : LegalTable.substances(part.name())) {
                    if (substance.group().equals(group)) {
                        BigDecimal share = part.share();
                        all.add(new Brought(
                                dosed.material(),
                                substance,
                                share == null ? null : active.multiply(share).multiply(substance.factor()),
                                active.multiply(substance.factor())));
                    }
                }
            }
        }
        all.sort(Comparator.comparing(Brought::most).reversed());
        return all;
    }

    private boolean isBroken(LegalRule rule, List<Brought> brought, boolean worst) {
        return switch (rule.bound()) {
            case PROHIBITED -> !brought.isEmpty();
            case PH -> finalPh != null && finalPh.compareTo(number(rule)) >= 0;
            case MAX -> sum(rule, brought, worst).subtract(ROUNDING).compareTo(number(rule)) > 0;
            case BELOW -> sum(rule, brought, worst).compareTo(number(rule)) >= 0;
            case FREE, NOTE -> false;
        };
    }

    /** The sum that a rule limits; for a rule about each substance, the largest. */
    private static BigDecimal sum(LegalRule rule, List<Brought> brought, boolean worst) {
        Map<String, BigDecimal> sums = new LinkedHashMap<>();
        for (Brought one : brought) {
            BigDecimal amount = one.amount();
            BigDecimal counted = amount != null ? amount : worst ? one.most() : BigDecimal.ZERO;
            sums.merge(rule.each() ? Names.key(one.substance().inci()) : "", counted, BigDecimal::add);
        }
        return sums.values().stream().max(Comparator.naturalOrder()).orElse(BigDecimal.ZERO);
    }

    /** The number of a rule; zero for a prohibition, and more than anything where there is none. */
    private static BigDecimal number(LegalRule rule) {
        BigDecimal most = rule.most();
        return most != null ? most : rule.bound() == Bound.PROHIBITED ? BigDecimal.ZERO : BigDecimal.TEN;
    }

    private static List<String> names(List<Brought> brought) {
        return brought.stream().map(one -> one.material().name()).distinct().toList();
    }

    private static List<String> blendNames(List<Brought> brought) {
        return brought.stream()
                .filter(one -> one.amount() == null)
                .map(one -> one.material().name())
                .distinct()
                .toList();
    }

    private static String inBrackets(List<Brought> brought) {
        return String.join(", ", names(brought));
    }

    private static Set<String> groupsOf(Material material) {
        Set<String> groups = new LinkedHashSet<>();
        for (InciName.Part part : InciName.parts(inci(material))) {
            LegalTable.substances(part.name()).forEach(one -> groups.add(one.group()));
        }
        return groups;
    }

    /** Without an INCI name, the material's own name may be one. */
    private static String inci(Material material) {
        return material.inci().isBlank() ? material.name() : material.inci();
    }

    private static BigDecimal active(Material material) {
        Figure active = material.traits().active();
        return active == null || active.value().signum() <= 0 ? BigDecimal.ONE : active.value();
    }
}
