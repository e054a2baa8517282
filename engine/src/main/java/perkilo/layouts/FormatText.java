package perkilo.layouts;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words that a number format shows beside the number: {@code €/kg} in {@code 0.00 "€/kg"}. */
final class FormatText {

    private static final Pattern QUOTED =
            Pattern.compile("\"([^\"]*)\"|\\\\(.)|\\[\\$([^\\]-]*)(?:-[0-9A-Fa-f]+)?]|([€£¥/])");
    private static final Pattern BRACKETS = Pattern.compile("\\[(?!\\$)[^\\]]*]");

    private FormatText() {}

    /** The words of a format; empty if it has none. */
    static String of(String format) {
        int end = format.indexOf(';');
        String first =
                BRACKETS.matcher(end < 0 ? format : format.substring(0, end)).replaceAll("");
        StringBuilder words = new StringBuilder();
        Matcher part = QUOTED.matcher(first);
        while (part.find()) {
            for (int group = 1; group <= part.groupCount(); group++) {
                words.append(part.group(group) == null ? "" : part.group(group));
            }
        }
        return ListWords.tidy(words.toString());
    }
}
