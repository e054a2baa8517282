package perkilo.reading.table;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** Collects findings, each once. */
public final class Findings {

    /** Long texts get into cells by mistake; their beginning is enough to find them. */
    private static final int LONGEST_QUOTATION = 80;

    private static final Pattern QUOTATION = Pattern.compile("\"([^\"]*)\"");

    private final Set<Finding> all = new LinkedHashSet<>();

    /** Adds something that stops every computation. */
    public void error(Origin origin, String text) {
        all.add(Finding.error(origin, shortened(text)));
    }

    /** Adds something that a person should check. */
    public void warning(Origin origin, String text) {
        all.add(Finding.warning(origin, shortened(text)));
    }

    /** Adds something that is good to know. */
    public void note(Origin origin, String text) {
        all.add(Finding.note(origin, shortened(text)));
    }

    /** Adds what others found. */
    public void addAll(Collection<Finding> others) {
        all.addAll(others);
    }

    /** Everything found, in the order it was found. */
    public List<Finding> list() {
        return new ArrayList<>(all);
    }

    /** Shortens the text between each pair of quotation marks, and nothing else. */
    private static String shortened(String text) {
        return text.length() <= LONGEST_QUOTATION
                ? text
                : QUOTATION.matcher(text).replaceAll(quotation -> Matcher.quoteReplacement(shortened(quotation)));
    }

    private static String shortened(MatchResult quotation) {
        String words = quotation.group(1);
        return words.length() <= LONGEST_QUOTATION
                ? quotation.group()
                : "\"" + words.substring(0, LONGEST_QUOTATION) + "…\"";
    }
}
