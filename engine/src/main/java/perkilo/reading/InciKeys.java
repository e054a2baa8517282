package perkilo.reading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import perkilo.model.Material;
import perkilo.names.Names;

/** When two INCI names mean the same: in any order of a blend's parts, with or without shares and explanations. */
final class InciKeys {

    private static final Pattern AND = Pattern.compile("(?iu)\\(\\s*(?:and|und|et|e|y)\\s*\\)");

    /** A common name in brackets, as American labels have it: {@code Butyrospermum Parkii (Shea) Butter}. */
    private static final Pattern EXPLAINED = Pattern.compile("\\([^()]*\\)");

    private static final Pattern SHARE = Pattern.compile("\\d+(?:[.,]\\d+)?\\s*%");
    private static final Pattern BETWEEN = Pattern.compile("(?iu);|,\\s|\\s[&+]\\s|\\s(?:and|und)\\s");

    private InciKeys() {}

    /** The same text for the same INCI names; empty for none. */
    static String of(String inci) {
        String plain = SHARE.matcher(
                        EXPLAINED.matcher(AND.matcher(inci).replaceAll(";")).replaceAll(" "))
                .replaceAll(" ");
        List<String> parts = new ArrayList<>();
        for (String part : BETWEEN.split(plain, -1)) {
            String key = Names.key(part);
            if (!key.isEmpty()) {
                parts.add(Material.isWaterOfLabels(part) ? "aqua" : key);
            }
        }
        Collections.sort(parts);
        return String.join(";", parts);
    }
}
