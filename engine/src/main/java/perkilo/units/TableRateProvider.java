package perkilo.units;

import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.NumberValue;
import javax.money.convert.ConversionContext;
import javax.money.convert.ConversionContextBuilder;
import javax.money.convert.ConversionQuery;
import javax.money.convert.CurrencyConversionException;
import javax.money.convert.ExchangeRate;
import javax.money.convert.ProviderContext;
import javax.money.convert.ProviderContextBuilder;
import javax.money.convert.RateType;
import org.javamoney.moneta.spi.AbstractRateProvider;
import org.javamoney.moneta.spi.DefaultNumberValue;

/**
 * A table of dated rates as a JSR 354 {@link javax.money.convert.ExchangeRateProvider}.
 *
 * <p>The date of a query is a {@link LocalDate} in it; a query without one uses the date that the provider was made
 * with.
 */
public final class TableRateProvider extends AbstractRateProvider {

    private static final ProviderContext CONTEXT = ProviderContextBuilder.of("PERKILO", RateType.HISTORIC)
            .set("providerDescription", "A dated table of exchange rates")
            .build();

    private final ExchangeRates table;
    private final LocalDate usualDate;

    /**
     * A provider over a table.
     *
     * @param table the rates
     * @param usualDate the date for queries without one
     */
    public TableRateProvider(ExchangeRates table, LocalDate usualDate) {
        super(CONTEXT);
        this.table = table;
        this.usualDate = usualDate;
    }

    /**
     * The rate for a query.
     *
     * @throws CurrencyConversionException if no rate on or before the date leads from the base to the term currency
     */
    @Override
    public ExchangeRate getExchangeRate(ConversionQuery query) {
        LocalDate asked = query.get(LocalDate.class);
        LocalDate date = asked == null ? usualDate : asked;
        ConversionContext context = ConversionContextBuilder.create(CONTEXT, RateType.HISTORIC)
                .set(date)
                .build();
        Conversion conversion = table.on(date, query.getBaseCurrency(), query.getCurrency())
                .orElseThrow(() -> new CurrencyConversionException(
                        query.getBaseCurrency(), query.getCurrency(), context, "no rate on or before " + date));
        return new TableRate(context, conversion);
    }

    private record TableRate(ConversionContext context, Conversion conversion) implements ExchangeRate {

        @Override
        public ConversionContext getContext() {
            return context;
        }

        @Override
        public CurrencyUnit getBaseCurrency() {
            return conversion.from();
        }

        @Override
        public CurrencyUnit getCurrency() {
            return conversion.to();
        }

        @Override
        public NumberValue getFactor() {
            return DefaultNumberValue.of(conversion.factor());
        }

        /** The rates of the chain, each in the direction in which it is used; a single rate is its own chain. */
        @Override
        public List<ExchangeRate> getExchangeRateChain() {
            if (conversion.legs().size() < 2) {
                return List.of(this);
            }
            return conversion.legs().stream()
                    .map(leg -> new TableRate(context, leg.alone()))
                    .map(ExchangeRate.class::cast)
                    .toList();
        }
    }
}
