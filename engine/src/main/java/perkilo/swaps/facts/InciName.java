package perkilo.swaps.facts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The INCI name of a material that is one substance or a blend: {@code A 70 % (and) B 30 %}. */
public final class InciName {

    private static final Pattern AND = Pattern.compile("\\s+\\(and\\)\\s+", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHARE = Pattern.compile("(.*\\S)\\s+(\\d+(?:\\.\\d+)?)\\s*%");

    private InciName() {}

    /**
     * One substance of a material.
     *
     * @param name without its share
     * @param share of the material, as a fraction; null if it is not stated in a blend
     */
    public record Part(String name, @Nullable BigDecimal share) {}

    /** The substances of a material; a name that is no blend is one part that has the whole share. */
    public static List<Part> parts(String inci) {
        if (!inci.contains("(")) {
            return List.of(new Part(inci.strip(), BigDecimal.ONE)); // nearly all materials
        }
        String[] names = AND.split(inci, -1);
        if (names.length < 2) {
            return List.of(new Part(inci.strip(), BigDecimal.ONE));
        }
        List<Part> parts = new ArrayList<>();
        for (String name : names) {
            Matcher share = SHARE.matcher(name.strip());
            parts.add(
                    share.matches()
                            ? new Part(share.group(1), new BigDecimal(share.group(2)).movePointLeft(2))
                            : new Part(name.strip(), null));
        }
        return parts;
    }
}
