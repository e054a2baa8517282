package perkilo.decision;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.model.Settings;
import perkilo.names.Names;
import perkilo.origin.Figure;
import perkilo.units.Currencies;

/** Understands what a person wants changed in a book. */
final class ChangeText {

    /** A change in per cent; a decimal comma or point with one or two digits behind it. */
    private static final Pattern PER_CENT = Pattern.compile("([+\\-\u2212]?)\\s*(\\d{1,4}(?:[.,]\\d{1,2})?)\\s*%");

    /** A number that can be read in one way only. */
    private static final Pattern VALUE = Pattern.compile("\\d{1,9}(?:[.,]\\d{1,2})?");

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final Book book;
    private final String what;
    private final String key;

    ChangeText(Book book, String what) {
        this.book = book;
        this.what = what;
        this.key = Names.key(what);
    }

    /**
     * What a text means.
     *
     * @param edit null if it is not understood
     * @param problem why it is not understood, in a sentence; empty if it is
     * @param ofWhat whether the problem is what should change, not how much
     */
    record Understood(@Nullable UnaryOperator<Book> edit, String problem, boolean ofWhat) {

        private Understood(UnaryOperator<Book> edit) {
            this(edit, "", false);
        }
    }

    /** What a change means, such as {@code +10 %}. */
    Understood understand(String change) {
        String text = change.strip();
        if (isOneOf("labour rate", "labor rate", "wage", "wages", "hourly rate")) {
            return withValue(text, Edits::wage, (old, value) -> labourRate(old, value));
        }
        if (isOneOf("run size", "run sizes", "units")) {
            return withValue(text, ChangeText::sized, ChangeText::units);
        }
        if (isOneOf("freight")) {
            return inPerCent(text, Edits::freight);
        }
        if (isOneOf("fill")) {
            return inPerCent(text, (old, factor) -> eachProduct(old, factor, Edits::fill));
        }
        if (isOneOf("fill loss", "fill losses")) {
            return signed(text, (old, factor) -> eachProduct(old, factor, Edits::fillLoss));
        }
        if (isItem()) {
            return isPriced()
                    ? inPerCent(text, (old, factor) -> Edits.price(old, what, factor))
                    : nothing(ScenarioMessages.noPrice(what));
        }
        if (isSupplier()) {
            return inPerCent(text, (old, factor) -> Edits.pricesOf(old, what, factor));
        }
        Optional<CurrencyUnit> currency = Currencies.find(what.strip());
        return currency.isPresent() ? currency(currency.get(), text) : nothing(ScenarioMessages.unknown(what));
    }

    private Understood currency(CurrencyUnit currency, String text) {
        Settings settings = book.settings();
        if (currency.equals(settings.home())) {
            return nothing(ScenarioMessages.homeCurrency(currency.getCurrencyCode()));
        }
        if (book.rates().on(settings.costingDate(), currency, settings.home()).isEmpty()) {
            return nothing(ScenarioMessages.noRate(currency.getCurrencyCode()));
        }
        return inPerCent(text, (old, factor) -> Edits.currency(old, currency, factor));
    }

    private boolean isOneOf(String... words) {
        return List.of(words).contains(key);
    }

    private boolean isItem() {
        return book.materials().containsKey(key)
                || !book.offersFor(what).isEmpty()
                || book.products().values().stream()
                        .flatMap(product -> product.components().stream())
                        .map(Product.Component::name)
                        .anyMatch(name -> Names.key(name).equals(key));
    }

    private boolean isPriced() {
        Material material = book.materials().get(key);
        return !book.offersFor(what).isEmpty()
                || (material != null && (material.housePrice() != null || material.isWater()));
    }

    private boolean isSupplier() {
        return book.suppliers().containsKey(key)
                || book.offers().stream()
                        .anyMatch(offer -> Names.key(offer.supplier()).equals(key));
    }

    /** There is nothing that could change. */
    private static Understood nothing(String text) {
        return new Understood(null, text, true);
    }

    private static Understood problem(String text) {
        return new Understood(null, text, false);
    }

    /** A change in per cent with a sign. */
    private Understood signed(String text, BiFunction<Book, BigDecimal, Book> edit) {
        Matcher percent = PER_CENT.matcher(text);
        return percent.matches() && percent.group(1).isEmpty()
                ? problem(ScenarioMessages.noSign(text, what))
                : inPerCent(text, edit);
    }

    private Understood inPerCent(String text, BiFunction<Book, BigDecimal, Book> edit) {
        Matcher percent = PER_CENT.matcher(text);
        if (!percent.matches()) {
            return problem(ScenarioMessages.notAChange(text, what));
        }
        BigDecimal change = new BigDecimal(percent.group(2).replace(',', '.')).divide(HUNDRED);
        boolean down = !percent.group(1).isEmpty() && !percent.group(1).equals("+");
        BigDecimal factor = BigDecimal.ONE.add(down ? change.negate() : change);
        return factor.signum() <= 0
                ? problem(ScenarioMessages.belowZero(text, what))
                : new Understood(old -> edit.apply(old, factor));
    }

    /** A change in per cent, or a new value. */
    private Understood withValue(
            String text, BiFunction<Book, BigDecimal, Book> edit, BiFunction<Book, BigDecimal, Book> value) {
        if (text.endsWith("%")) {
            return signed(text, edit);
        }
        if (!VALUE.matcher(text).matches()) {
            return problem(ScenarioMessages.notAValue(text, what));
        }
        BigDecimal number = new BigDecimal(text.replace(',', '.'));
        return number.signum() == 0
                ? problem(ScenarioMessages.belowZero(text, what))
                : new Understood(old -> value.apply(old, number));
    }

    private static Book labourRate(Book book, BigDecimal value) {
        Settings.Making making = book.settings().making();
        Figure rate = making.labourRate().withValue(value);
        return book.withSettings(
                book.settings().withMaking(new Settings.Making(rate, making.overhead(), making.processWaterPerKg())));
    }

    private static Book sized(Book book, BigDecimal factor) {
        return book.withRuns(
                book.runs().stream().map(run -> Edits.resized(run, factor)).toList());
    }

    /** Runs of bulk have no units, and stay. */
    private static Book units(Book book, BigDecimal units) {
        BigDecimal whole = Edits.whole(units);
        return book.withRuns(book.runs().stream()
                .map(run -> run instanceof Run.OfProduct ? Edits.sized(run, whole) : run)
                .toList());
    }

    private static Book eachProduct(Book book, BigDecimal factor, EditOfProduct edit) {
        Book edited = book;
        for (Product product : book.products().values()) {
            edited = edit.of(edited, product.name(), factor);
        }
        return edited;
    }

    @FunctionalInterface
    private interface EditOfProduct {

        Book of(Book book, String product, BigDecimal factor);
    }
}
