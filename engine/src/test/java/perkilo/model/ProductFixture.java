package perkilo.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * A product of which a test says what matters to it; nothing else is known, costs anything or takes any time.
 *
 * <p>What a product gains is added here once, so that no test has to say that it does not have it.
 */
public final class ProductFixture {

    private final String name;
    private final String formula;
    private Product.Filling filling;
    private Product.FillingWork work = Product.FillingWork.NONE;
    private Product.Pricing pricing = Product.Pricing.NONE;
    private Product.OneOffs oneOffs = Product.OneOffs.NONE;
    private @Nullable Figure yearlyUnits;
    private Product.Claims claims = Product.Claims.NONE;
    private List<Product.Component> components = List.of();
    private Origin origin = Origin.NONE;

    private ProductFixture(String name, String formula, Product.Filling filling) {
        this.name = name;
        this.formula = formula;
        this.filling = filling;
    }

    /** A product that is filled without loss. */
    public static ProductFixture of(String name, String formula, String fill, Measure unit) {
        return new ProductFixture(
                name, formula, new Product.Filling(Figure.of(fill), unit, null, null, null, Figure.ZERO));
    }

    /** A product like another one. */
    public static ProductFixture like(Product product) {
        return new ProductFixture(product.name(), product.formula(), product.filling())
                .work(product.work())
                .pricing(product.pricing())
                .oneOffs(product.oneOffs())
                .yearlyUnits(product.yearlyUnits())
                .claims(product.claims())
                .components(product.components())
                .origin(product.origin());
    }

    public ProductFixture filling(Product.Filling other) {
        this.filling = other;
        return this;
    }

    public ProductFixture work(Product.FillingWork other) {
        this.work = other;
        return this;
    }

    public ProductFixture pricing(Product.Pricing other) {
        this.pricing = other;
        return this;
    }

    public ProductFixture oneOffs(Product.OneOffs other) {
        this.oneOffs = other;
        return this;
    }

    public ProductFixture yearlyUnits(@Nullable Figure other) {
        this.yearlyUnits = other;
        return this;
    }

    public ProductFixture claims(Product.Claims other) {
        this.claims = other;
        return this;
    }

    public ProductFixture components(List<Product.Component> other) {
        this.components = other;
        return this;
    }

    public ProductFixture origin(Origin other) {
        this.origin = other;
        return this;
    }

    /** The product. */
    public Product product() {
        return new Product(name, formula, filling, work, pricing, oneOffs, yearlyUnits, claims, components, origin);
    }
}
