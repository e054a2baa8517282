package perkilo.swaps.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One ingredient of a material.
 *
 * @param name as the label has it
 * @param share of the material, as a fraction
 */
record Component(String name, BigDecimal share) {

    private static final Pattern AND = Pattern.compile("\\s+\\(and\\)\\s+", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHARE = Pattern.compile("(.*\\S)\\s+(\\d+(?:\\.\\d+)?)\\s*%");

    /** The ingredients in a material's INCI name; one alone where the name has several without their shares. */
    static List<Component> of(String inci, List<String> notes) {
        String[] names = AND.split(inci, -1);
        if (names.length < 2) {
            return List.of(new Component(inci, BigDecimal.ONE));
        }
        List<Component> parts = new ArrayList<>();
        for (String name : names) {
            Matcher share = SHARE.matcher(name.strip());
            if (!share.matches()) {
                notes.add(LabelMessages.sharesUnknown(inci));
                return List.of(new Component(inci, BigDecimal.ONE));
            }
            parts.add(new Component(share.group(1), new BigDecimal(share.group(2)).movePointLeft(2)));
        }
        return parts;
    }
}
