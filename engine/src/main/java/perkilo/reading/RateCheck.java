package perkilo.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import perkilo.model.Book;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.units.Conversion;
import perkilo.units.Currencies;
import perkilo.units.DatedRate;
import perkilo.units.EuroFixedRates;
import perkilo.units.ExchangeRates;

/** Checks that every currency that is paid or reported can be converted on the costing date, by plausible rates. */
final class RateCheck {

    /**
     * The least difference between a rate and the more recent conversion that replaces it that is a warning (common
     * practice, no source).
     */
    private static final BigDecimal WORTH_A_WARNING = new BigDecimal("0.01");

    /** A typed rate that differs by no more than this part of the fixed rate is the fixed rate, rounded. */
    private static final BigDecimal SAME = new BigDecimal("1e-5");

    private final Book book;
    private final BookChecks.Items items;
    private final Origin reports;
    private final Findings findings;
    private final LocalDate date;
    private final CurrencyUnit home;
    private final OppositeRates opposites;
    private final Map<List<CurrencyUnit>, Boolean> checked = new HashMap<>();
    private final Set<CurrencyUnit> fixed = new HashSet<>();

    RateCheck(Book book, BookChecks.Items items, Origin reports, Findings findings) {
        this.reports = reports;
        this.book = book;
        this.items = items;
        this.findings = findings;
        this.date = book.settings().costingDate();
        this.home = book.settings().home();
        this.opposites = new OppositeRates(book.rates(), date, findings);
    }

    /** Reports missing and old rates; returns the offers that can be paid. */
    List<Offer> payable() {
        if (Currencies.isUnknown(home)) {
            return book.offers(); // no rate can be missing before the home currency is known
        }
        for (CurrencyUnit report : book.settings().reportCurrencies()) {
            check(home, report, reports, true);
        }
        return book.offers().stream().filter(this::isPayable).toList();
    }

    private boolean isPayable(Offer offer) {
        boolean used = items.isUsed(offer) && !offer.isExpiredOn(date);
        Origin origin = offer.breaks().get(0).price().origin();
        CurrencyUnit supplier =
                book.supplier(offer.supplier()).map(Supplier::currency).orElse(offer.currency());
        boolean goods = check(offer.currency(), home, origin, used);
        boolean charges = check(supplier, home, origin, used);
        boolean between = check(offer.currency(), supplier, origin, used);
        return goods && charges && between;
    }

    private boolean check(CurrencyUnit from, CurrencyUnit to, Origin origin, boolean needed) {
        List<CurrencyUnit> pair = List.of(from, to);
        Boolean known = checked.get(pair);
        if (known != null) {
            return known;
        }
        Optional<Conversion> conversion = book.rates().on(date, from, to);
        checked.put(pair, conversion.isPresent());
        if (conversion.isEmpty()) {
            missing(from, to, origin, needed);
        } else {
            age(conversion.get());
            boolean fromFixed = fixed(from, origin);
            boolean toFixed = fixed(to, origin);
            if (!fromFixed && !toFixed) {
                passedOver(conversion.get());
            }
            conversion.get().legs().forEach(leg -> opposites.check(leg.rate()));
        }
        return conversion.isPresent();
    }

    private void age(Conversion conversion) {
        if (conversion.ageInDays(date) > ExchangeRates.DAYS_UNTIL_OLD) {
            findings.warning(
                    oldest(conversion),
                    RateTableMessages.old(
                            conversion.from().getCurrencyCode(),
                            conversion.to().getCurrencyCode(),
                            conversion.ageInDays(date),
                            date));
        }
    }

    /**
     * Reports the fixed rate of a currency that the euro has replaced, and another rate in the table, which is ignored.
     *
     * @return whether the euro has replaced it
     */
    private boolean fixed(CurrencyUnit currency, Origin origin) {
        Optional<DatedRate> rate = EuroFixedRates.on(date, currency);
        if (rate.isEmpty() || !fixed.add(currency)) {
            return rate.isPresent();
        }
        CurrencyUnit euro = rate.get().from();
        BigDecimal exact = rate.get().rate().value();
        String code = currency.getCurrencyCode();
        String law = rate.get().source();
        findings.note(origin, RateTableMessages.fixed(code, exact, law));
        book.rates().betweenOn(date, euro, currency).ifPresent(typed -> {
            if (typed.factor().subtract(exact).abs().compareTo(exact.multiply(SAME)) > 0) {
                findings.warning(
                        typed.legs().get(0).rate().rate().origin(), RateTableMessages.fixedInstead(code, exact, law));
            }
        });
        return true;
    }

    /** Reports a rate between the two currencies if a more recent conversion through a third one replaces it. */
    private void passedOver(Conversion used) {
        if (used.legs().size() < 2) {
            return;
        }
        book.rates().betweenOn(date, used.from(), used.to()).ifPresent(direct -> {
            BigDecimal change =
                    used.factor().divide(direct.factor(), MathContext.DECIMAL64).subtract(BigDecimal.ONE);
            DatedRate left = direct.legs().get(0).rate();
            String text = RateTableMessages.fresherCross(
                    left.from().getCurrencyCode(),
                    left.to().getCurrencyCode(),
                    left.date(),
                    used.legs().get(0).alone().to().getCurrencyCode(),
                    date.minusDays(used.ageInDays(date)),
                    direct.legs().get(0).inverted() ? inverse(change) : change);
            if (change.abs().compareTo(WORTH_A_WARNING) >= 0) {
                findings.warning(left.rate().origin(), text);
            } else {
                findings.note(left.rate().origin(), text);
            }
        });
    }

    private static BigDecimal inverse(BigDecimal change) {
        return BigDecimal.ONE
                .divide(BigDecimal.ONE.add(change), MathContext.DECIMAL64)
                .subtract(BigDecimal.ONE);
    }

    private void missing(CurrencyUnit from, CurrencyUnit to, Origin origin, boolean needed) {
        String here = from.getCurrencyCode();
        String there = to.getCurrencyCode();
        if (needed) {
            findings.error(origin, RateTableMessages.noRate(here, there, date));
        } else {
            checked.remove(List.of(from, to));
            findings.warning(origin, RateTableMessages.noRateUnused(here, there, date));
        }
    }

    private static Origin oldest(Conversion conversion) {
        return conversion.legs().stream()
                .min((one, other) -> one.rate().date().compareTo(other.rate().date()))
                .map(leg -> leg.rate().rate().origin())
                .orElse(Origin.NONE);
    }
}
