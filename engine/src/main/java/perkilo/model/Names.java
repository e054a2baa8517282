package perkilo.model;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** How names of items, suppliers, formulas and products are compared. */
public final class Names {

    private static final Pattern SPACES = Pattern.compile("[\\s\\p{Z}\\u200B\\uFEFF]+");

    private Names() {}

    /**
     * What two spellings of one name have in common: letters and digits in lower case, spaces of any kind and number as
     * one.
     *
     * @param name as typed
     */
    public static String key(String name) {
        return SPACES.matcher(Normalizer.normalize(name, Normalizer.Form.NFKC))
                .replaceAll(" ")
                .strip()
                .toLowerCase(Locale.ROOT);
    }
}
