package perkilo.reading;

import static perkilo.schema.OffersSheet.CURRENCY_OF_PRICE;
import static perkilo.schema.OffersSheet.PRICE;
import static perkilo.schema.OffersSheet.PRICE_PER;
import static perkilo.schema.OffersSheet.SUPPLIER;

import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.reading.table.Amount;
import perkilo.reading.table.CurrencySign;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.reading.table.UnitText;

/**
 * The currency of a price: its own column, else the sign beside it, its header, its number format, else the supplier's.
 *
 * <p>The supplier's currency decides a sign that several currencies share; a dollar sign that nothing decides means US
 * dollars, with a warning.
 */
final class OfferCurrency {

    private final Map<String, SupplierRow> suppliers;
    private final Findings findings;

    /**
     * Decides with the help of the rows of suppliers.
     *
     * @param suppliers by {@link Names#key}
     */
    OfferCurrency(Map<String, SupplierRow> suppliers, Findings findings) {
        this.suppliers = suppliers;
        this.findings = findings;
    }

    /** The currency of a row's price; null if it was reported. */
    @Nullable CurrencyUnit of(TableRow row, Amount price) {
        CurrencySign column = row.currency(CURRENCY_OF_PRICE);
        if (column == null && !row.isBlank(CURRENCY_OF_PRICE)) {
            return null;
        }
        CurrencySign said = Optional.ofNullable(column)
                .or(() -> ofPricePer(row))
                .or(price::currency)
                .orElse(null);
        CurrencyUnit suppliers = supplierCurrency(row);
        if (said == null) {
            return suppliers != null ? suppliers : unknown(row);
        }
        CurrencyUnit settled = settled(row, said, price.currency().orElse(null), suppliers);
        contradiction(row, price, settled);
        return settled;
    }

    /** The currency in which a row's supplier invoices; empty if it is not known. */
    Optional<CurrencyUnit> invoiced(TableRow row) {
        return Optional.ofNullable(supplierCurrency(row));
    }

    /** Whether a price would be in the same currency without the sign beside it. */
    boolean isSaidWithoutSign(TableRow row, Amount price, CurrencyUnit settled) {
        CurrencySign header = price.header().currency();
        if (!row.isBlank(CURRENCY_OF_PRICE) || price.beside().currency() == null) {
            return true;
        }
        return header == null ? settled.equals(supplierCurrency(row)) : header.canMean(settled);
    }

    private @Nullable CurrencyUnit settled(
            TableRow row, CurrencySign said, @Nullable CurrencySign price, @Nullable CurrencyUnit suppliers) {
        if (said.isClear()) {
            return said.meanings().get(0);
        }
        if (price != null && price.isClear() && said.canMean(price.meanings().get(0))) {
            return price.meanings().get(0);
        }
        if (suppliers != null && said.canMean(suppliers)) {
            return suppliers;
        }
        if (said.isDollar()) {
            findings.warning(row.origin(PRICE), OfferMessages.dollars(said.text()));
            return said.meanings().get(0);
        }
        findings.error(
                row.origin(PRICE),
                OfferMessages.sharedSign(
                        said.text(),
                        said.meanings().get(0).getCurrencyCode(),
                        said.meanings().get(1).getCurrencyCode()));
        return null;
    }

    private void contradiction(TableRow row, Amount price, @Nullable CurrencyUnit settled) {
        CurrencySign sign = price.currency().orElse(null);
        if (settled == null || sign == null || sign.canMean(settled)) {
            return;
        }
        String code = settled.getCurrencyCode();
        if (sign.equals(price.format())) {
            findings.warning(row.origin(PRICE), OfferMessages.otherFormat(sign.text(), code));
        } else {
            findings.error(row.origin(PRICE), OfferMessages.twoCurrencies(sign.text(), code));
        }
    }

    private static Optional<CurrencySign> ofPricePer(TableRow row) {
        return UnitText.parse(row.text(PRICE_PER)).map(UnitText::currency);
    }

    private @Nullable CurrencyUnit supplierCurrency(TableRow row) {
        SupplierRow supplier = suppliers.get(Names.key(row.text(SUPPLIER)));
        return supplier == null ? null : supplier.currency().orElse(null);
    }

    private @Nullable CurrencyUnit unknown(TableRow row) {
        findings.error(
                row.table().has(CURRENCY_OF_PRICE) ? row.origin(CURRENCY_OF_PRICE) : row.origin(PRICE),
                OfferMessages.noCurrency());
        return null;
    }
}
