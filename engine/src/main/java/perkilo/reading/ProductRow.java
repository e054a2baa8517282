package perkilo.reading;

import static perkilo.schema.ProductsSheet.DENSITY;
import static perkilo.schema.ProductsSheet.FILL;
import static perkilo.schema.ProductsSheet.FILL_UNIT;
import static perkilo.schema.ProductsSheet.FORMULA;
import static perkilo.schema.ProductsSheet.PRODUCT;

import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.reading.table.Amount;
import perkilo.reading.table.TableRow;
import perkilo.schema.ProductsSheet;
import perkilo.units.Measure;

/** Reads a product. */
final class ProductRow {

    private ProductRow() {}

    /**
     * The product of a row; empty if its formula or fill was reported.
     *
     * @param components its packaging
     * @param home the currency of prices and costs
     */
    static Optional<Product> read(TableRow row, List<Product.Component> components, CurrencyUnit home) {
        boolean complete = row.require(FORMULA, FILL);
        Amount fill = row.amount(FILL);
        Measure unit = QuantityCells.unit(row, FILL_UNIT, FILL, fill);
        Gallons.Asked gallons =
                unit == Measure.US_GAL ? Gallons.of(row, FILL_UNIT, FILL, ProductsSheet.FILLER_SD) : null;
        if (gallons != null) {
            gallons.report(row);
        }
        Figure density = row.figure(DENSITY);
        if (unit != null) {
            checkUnit(row, unit);
        }
        SuspectedFractions.warn(row);
        Product product = fill == null || unit == null
                ? null
                : product(row, QuantityCells.in(row, FILL_UNIT, fill, unit), unit, density, components, home);
        return complete ? Optional.ofNullable(product) : Optional.empty();
    }

    private static void checkUnit(TableRow row, Measure unit) {
        if (unit.isCount()) {
            row.findings().error(row.origin(FILL_UNIT), ProductMessages.fillInPieces(unit.symbol()));
        }
        if (unit.kind() == Measure.Kind.VOLUME && row.isBlank(DENSITY)) {
            row.findings().error(row.origin(DENSITY), ProductMessages.noDensity(row.text(PRODUCT)));
        }
    }

    private static Product product(
            TableRow row,
            Figure fill,
            Measure unit,
            @Nullable Figure density,
            List<Product.Component> components,
            CurrencyUnit home) {
        return new Product(
                row.text(PRODUCT),
                row.text(FORMULA),
                new Product.Filling(
                        fill,
                        unit,
                        density,
                        row.figure(ProductsSheet.OVERFILL),
                        QuantityCells.in(row, ProductsSheet.FILLER_SD, unit),
                        row.figure(ProductsSheet.FILL_LOSS, Figure.ZERO)),
                new Product.FillingWork(
                        row.figure(ProductsSheet.SET_UP_HOURS, Figure.ZERO),
                        row.figure(ProductsSheet.UNITS_PER_HOUR),
                        row.figure(ProductsSheet.FILLING_PEOPLE, Figure.ONE)),
                new Product.Pricing(
                        row.figure(ProductsSheet.TARGET_MARGIN),
                        row.figure(ProductsSheet.DISTRIBUTOR_MARGIN, Figure.ZERO),
                        row.figure(ProductsSheet.RETAILER_MARGIN, Figure.ZERO),
                        row.figure(ProductsSheet.VAT, Figure.ZERO),
                        Amounts.in(row, ProductsSheet.TARGET_RETAIL_PRICE, home)),
                new Product.OneOffs(
                        Amounts.in(row, ProductsSheet.ONE_OFF_COSTS, home, Figure.ZERO),
                        row.figure(ProductsSheet.SPREAD_OVER)),
                row.figure(ProductsSheet.YEARLY_UNITS),
                new Product.Claims(
                        row.list(ProductsSheet.REQUIRED_TAGS), row.figure(ProductsSheet.NATURAL_ORIGIN_TARGET)),
                components,
                row.figure(ProductsSheet.LEAD_DAYS),
                row.origin(PRODUCT));
    }
}
