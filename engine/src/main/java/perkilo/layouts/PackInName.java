package perkilo.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.units.Measure;

/**
 * A pack that stands in the name of an item: {@code Glycerin 99.5 % 25 kg can}, {@code Jojobaöl 5 l}.
 *
 * @param name the name without the pack
 * @param pack the pack
 */
record PackInName(String name, PackText pack) {

    private static final Pattern QUANTITY = Pattern.compile(
            "(?<![\\d.,/\\p{L}])((?:\\d{1,3}\\s?[x×]\\s?)?\\d(?:[\\d.,]*\\d)?\\s?-?(\\p{L}{1,6})\\.?)(?![\\p{L}\\d/])",
            Pattern.UNICODE_CASE);
    private static final Pattern ENDS = Pattern.compile("^[\\s,;:(\\[/–-]+|[\\s,;:)\\](/–-]+$");
    private static final Pattern EMPTY_BRACKETS = Pattern.compile("[(\\[]\\s*[)\\]]");

    /** The pack in a name; empty if there is none, or more than one. */
    static Optional<PackInName> of(String item, DecimalMark mark) {
        List<PackInName> found = new ArrayList<>();
        Matcher quantity = QUANTITY.matcher(item);
        while (quantity.find()) {
            @Nullable Measure unit =
                    Quantity.unit(quantity.group(2)).map(Quantity::measure).orElse(null);
            if (unit == null || !isOfPack(unit)) {
                continue;
            }
            int start = wordsBefore(item, quantity.start());
            int end = wordsAfter(item, quantity.end());
            String text = ENDS.matcher(item.substring(start, end)).replaceAll("");
            String rest = EMPTY_BRACKETS
                    .matcher(item.substring(0, start) + " " + item.substring(end))
                    .replaceAll(" ");
            String name = ENDS.matcher(ListWords.tidy(rest)).replaceAll("");
            PackText.of(text, mark, null)
                    .filter(pack -> !name.isEmpty())
                    .ifPresent(pack -> found.add(new PackInName(name, pack)));
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** Whether a unit is one of packs; 100 ml in a name is mostly what a bottle holds that is sold empty. */
    private static boolean isOfPack(Measure unit) {
        return switch (unit) {
            case G, OZ, ML, US_FL_OZ -> false;
            default -> true;
        };
    }

    /** Where words for the kind of pack begin that end at a place: {@code drum 190 kg}. */
    private static int wordsBefore(String item, int end) {
        int at = end;
        for (int words = 0; words < 2; words++) {
            int space = item.substring(0, at).stripTrailing().lastIndexOf(' ');
            String word = item.substring(Math.max(0, space), at)
                    .replaceAll("[(\\[]", "")
                    .strip();
            if (space > 0 && ListWords.is("container", word)) {
                return space;
            }
            if (space <= 0 || !PackText.isLink(word)) {
                return end;
            }
            at = space;
        }
        return end;
    }

    private static int wordsAfter(String item, int start) {
        String after = item.substring(start);
        Matcher word = WORD_AFTER.matcher(after);
        return word.lookingAt() && ListWords.is("container", word.group(1)) ? start + word.end() : start;
    }

    private static final Pattern WORD_AFTER = Pattern.compile("[\\s(-]*(\\p{L}+)");
}
