package perkilo.swaps.label;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.model.Material;
import perkilo.origin.Figure;

/**
 * One ingredient of a material.
 *
 * @param name as the label has it
 * @param share of the material, as a fraction; where it is not known, the most that it can be
 * @param atMost whether the share is not known
 */
record Component(String name, BigDecimal share, boolean atMost) {

    /** What separates names, outside of brackets: a comma inside of a name, as in 1,2-Hexanediol, has no blank. */
    private static final Pattern BETWEEN = Pattern.compile(
            "\\s*\\(\\s*(?:and|&)\\s*\\)\\s*|\\s*;\\s*|,\\s+|\\s+(?:and|&|\\+)\\s+|\\s*[\\r\\n]+\\s*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern SHARE_BEHIND = Pattern.compile("(.*[^\\s(])[\\s(]+(\\d+(?:[.,]\\d+)?)\\s*%\\s*\\)?");
    private static final Pattern SHARE_BEFORE = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*%\\s*(\\S.*)");

    /** The name of water in a list of ingredients. */
    private static final String WATER = "Aqua";

    /** A name with the share that is typed beside it. */
    private record Named(String name, @Nullable BigDecimal share) {}

    /**
     * The ingredients in a material's INCI name.
     *
     * @param material whose INCI name is known
     * @param notes receives what a person has to decide
     * @return shares of the material as supplied; they add up to its active matter where water is not among them
     */
    static List<Component> of(Material material, List<String> notes) {
        List<Named> named = named(material.inci().strip());
        Figure active = material.traits().active();
        BigDecimal whole = active == null ? BigDecimal.ONE : active.value();
        if (named.size() == 1) {
            BigDecimal typed = named.get(0).share();
            BigDecimal share = active == null && typed != null ? typed : whole;
            return List.of(new Component(named.get(0).name(), share, false));
        }
        boolean hasWater = named.stream().anyMatch(one -> one.name().equals(WATER));
        if (hasWater && active != null) {
            named = withWater(named, BigDecimal.ONE.subtract(whole));
        }
        return shared(material, named, hasWater ? BigDecimal.ONE : whole, notes);
    }

    /** Whether only a part of a material is in its ingredients, because the rest of it (mostly water) has no name. */
    static boolean leavesOut(Material material) {
        return named(material.inci().strip()).stream()
                .noneMatch(one -> one.name().equals(WATER));
    }

    private static List<Named> named(String inci) {
        List<Named> all = new ArrayList<>();
        for (String part : parts(inci)) {
            Matcher behind = SHARE_BEHIND.matcher(part);
            Matcher before = SHARE_BEFORE.matcher(part);
            if (behind.matches()) {
                all.add(new Named(label(behind.group(1)), fraction(behind.group(2))));
            } else if (before.matches()) {
                all.add(new Named(label(before.group(2)), fraction(before.group(1))));
            } else {
                all.add(new Named(label(part), null));
            }
        }
        return all;
    }

    /** The names of a list; what stands in brackets stays with its name. */
    private static List<String> parts(String inci) {
        List<String> parts = new ArrayList<>();
        Matcher between = BETWEEN.matcher(inci);
        int from = 0;
        while (between.find()) {
            String part = inci.substring(from, between.start());
            if (depth(part) == 0) {
                add(parts, part);
                from = between.end();
            }
        }
        add(parts, inci.substring(from));
        return parts.isEmpty() ? List.of(inci) : parts;
    }

    private static void add(List<String> parts, String part) {
        String name = part.strip();
        if (!name.isEmpty()) {
            parts.add(name);
        }
    }

    private static int depth(String part) {
        int depth = 0;
        for (int i = 0; i < part.length(); i++) {
            depth += part.charAt(i) == '(' ? 1 : part.charAt(i) == ')' ? -1 : 0;
        }
        return depth;
    }

    private static String label(String name) {
        return Material.isWaterOfLabels(name) ? WATER : name.strip();
    }

    private static BigDecimal fraction(String percent) {
        return new BigDecimal(percent.replace(',', '.')).movePointLeft(2);
    }

    private static List<Named> withWater(List<Named> named, BigDecimal share) {
        return named.stream()
                .map(one -> one.name().equals(WATER) && one.share() == null ? new Named(WATER, share) : one)
                .toList();
    }

    /**
     * Shares that are typed are kept. What is left is that of the only other name, or of several: then the first of
     * them has at most all of it, the second at most half, and so on, as such names stand by falling share.
     */
    private static List<Component> shared(Material material, List<Named> named, BigDecimal whole, List<String> notes) {
        BigDecimal typed = BigDecimal.ZERO;
        int unknown = 0;
        for (Named one : named) {
            BigDecimal share = one.share();
            typed = share == null ? typed : typed.add(share);
            unknown += share == null ? 1 : 0;
        }
        if (typed.compareTo(BigDecimal.ONE) > 0) {
            notes.add(LabelMessages.sharesAboveWhole(material.name(), material.inci()));
            return shared(
                    material,
                    named.stream().map(one -> new Named(one.name(), null)).toList(),
                    whole,
                    notes);
        }
        if (unknown == 0 && typed.compareTo(new BigDecimal("0.995")) < 0) {
            notes.add(LabelMessages.sharesBelowWhole(material.name(), typed.movePointRight(2)));
        }
        if (unknown > 1) {
            notes.add(LabelMessages.sharesUnknown(material.name(), material.inci()));
        }
        BigDecimal rest = BigDecimal.ONE.subtract(typed);
        List<Component> all = new ArrayList<>();
        int place = 0;
        for (Named one : named) {
            BigDecimal share = one.share();
            if (share == null) {
                place++;
                BigDecimal most = rest.divide(BigDecimal.valueOf(place), MathContext.DECIMAL64);
                all.add(new Component(one.name(), most.multiply(whole), unknown > 1));
            } else {
                all.add(new Component(one.name(), share.multiply(whole), false));
            }
        }
        return all;
    }
}
