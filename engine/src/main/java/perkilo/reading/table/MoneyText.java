package perkilo.reading.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A price with the number that it is for: {@code 3,20 €/100 g}, {@code 12.50 EUR per 10 kg}. */
final class MoneyText {

    private static final Pattern FOR = Pattern.compile(
            "(?iu)(.*?\\d.*?)\\s*(?:/|\\b(?:per|pro|je|für|par|por|al)\\b)\\s*(1(?:0){1,3}\\s*\\p{L}[^\\d]*)");

    private MoneyText() {}

    /** What a text says. */
    static NumberText parse(String text) {
        Matcher price = FOR.matcher(text.strip());
        if (!price.matches()) {
            return new NumberText.NotANumber();
        }
        String basis = "/" + price.group(2).strip();
        NumberText number = NumberText.parse(price.group(1));
        if (number instanceof NumberText.Parsed parsed) {
            return new NumberText.Parsed(parsed.value(), parsed.words() + basis);
        }
        return number instanceof NumberText.Ambiguous two
                ? new NumberText.Ambiguous(two.large(), two.small(), two.words() + basis)
                : number;
    }
}
