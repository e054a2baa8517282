package perkilo.costing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.Formula;
import perkilo.model.Product;
import perkilo.model.Run;

/**
 * What one run makes and needs.
 *
 * @param run what was asked for
 * @param product null for bulk that is not filled
 * @param formula what is made
 * @param units null for bulk that is not filled
 * @param fill null for bulk that is not filled
 * @param batches how it is made
 * @param items materials in the order of the formula, then components in the order of their list; of each name one
 */
public record RunNeeds(
        Run run,
        @Nullable Product product,
        Formula formula,
        @Nullable BigDecimal units,
        @Nullable FillTarget fill,
        Batches batches,
        List<Item> items) {

    public RunNeeds {
        items = List.copyOf(items);
    }

    /**
     * What a single run needs, by {@link Recipes}.
     *
     * @throws IllegalArgumentException if the run names a product or formula that the book lacks, or one that cannot be
     *     made
     */
    public static RunNeeds of(Book book, Run run) {
        return new Recipes(book).needs(run);
    }

    /** What is made, as a person calls it: the product, or the formula for bulk. */
    public String name() {
        return product == null ? formula.name() : product.name();
    }

    /** The run as a person says it: {@code 1,000 × Hand balm}, {@code 25 kg of Hand balm}. */
    public String title() {
        return units == null
                ? "%s kg of %s".formatted(plain(batches.charged()), formula.name())
                : "%,d × %s".formatted(units.longValue(), name());
    }

    private static String plain(BigDecimal kg) {
        BigDecimal shortest = kg.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        return (shortest.scale() < 0 ? shortest.setScale(0) : shortest).toPlainString();
    }
}
