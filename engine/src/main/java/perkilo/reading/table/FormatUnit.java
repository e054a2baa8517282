package perkilo.reading.table;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The unit that a number format shows beside its numbers: {@code 0.00 "kg"}, {@code #,##0.00 "€/kg"}. */
final class FormatUnit {

    private static final int MOST_KNOWN = 1000;
    private static final Map<String, UnitText> KNOWN = new ConcurrentHashMap<>();

    private FormatUnit() {}

    /** The unit in a format, without its currency; none if it shows none that is known. */
    static UnitText of(String format) {
        if (format.indexOf('"') < 0 && format.indexOf('\\') < 0 && format.indexOf("[$") < 0) {
            return UnitText.NONE;
        }
        UnitText known = KNOWN.get(format);
        if (known == null) {
            known = UnitText.parse(words(format))
                    .filter(unit -> unit.measure() != null || unit.pack())
                    .map(unit -> unit.in(null))
                    .orElse(UnitText.NONE);
            if (KNOWN.size() < MOST_KNOWN) {
                KNOWN.put(format, known);
            }
        }
        return known;
    }

    /** What the first section of a format shows beside the number. */
    private static String words(String format) {
        StringBuilder words = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < format.length(); i++) {
            char c = format.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (quoted) {
                words.append(c);
            } else if (c == ';') {
                break;
            } else if (c == '\\' && i + 1 < format.length()) {
                words.append(format.charAt(++i));
            } else if (c == '_' || c == '*') {
                i++;
            } else if (c == '[') {
                int end = format.indexOf(']', i);
                if (end < 0) {
                    break;
                }
                if (format.startsWith("[$", i)) {
                    int dash = format.indexOf('-', i);
                    words.append(format, i + 2, dash > 0 && dash < end ? dash : end);
                }
                i = end;
            } else if ("0#?.,% ".indexOf(c) < 0) {
                words.append(c);
            }
        }
        return words.toString().replace('\u00A0', ' ').strip();
    }
}
