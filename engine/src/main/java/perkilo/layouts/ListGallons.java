package perkilo.layouts;

import java.util.Locale;
import java.util.function.Consumer;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * Settles gallons of which a list does not say whose. They are US gallons where the price is in US dollars; elsewhere a
 * person says so once for the supplier.
 */
final class ListGallons {

    private static final String US_DOLLAR = "USD";
    private static final String US = "US";
    private static final String IMPERIAL = "imperial";

    private final @Nullable Measure answer;
    private final Consumer<Question> ask;

    ListGallons(Mapping mapping, Consumer<Question> ask) {
        this.answer = answer(mapping.answer(Mapping.GALLONS).orElse(""));
        this.ask = ask;
    }

    private static @Nullable Measure answer(String words) {
        return switch (words.strip().toLowerCase(Locale.ROOT)) {
            case "us" -> Measure.US_GAL;
            case "imperial" -> Measure.IMP_GAL;
            default ->
                Measure.parse(words)
                        .filter(measure -> measure == Measure.US_GAL || measure == Measure.IMP_GAL)
                        .filter(measure -> !Measure.isBareGallon(words))
                        .orElse(null);
        };
    }

    /**
     * A quantity whose unit is clear.
     *
     * @param currency of the price; null if there is none
     * @return null if it was asked about
     */
    @Nullable Quantity settled(Quantity quantity, @Nullable CurrencyUnit currency, Origin origin) {
        if (!quantity.bareGallon()) {
            return quantity;
        }
        boolean dollars = currency != null && currency.getCurrencyCode().equals(US_DOLLAR);
        Measure gallon = answer != null ? answer : dollars ? Measure.US_GAL : null;
        if (gallon == null) {
            ask.accept(Question.of(
                    Mapping.GALLONS, origin, QuestionMessages.whoseGallons(quantity.amount()), US, IMPERIAL));
            return null;
        }
        return new Quantity(quantity.amount(), gallon);
    }
}
