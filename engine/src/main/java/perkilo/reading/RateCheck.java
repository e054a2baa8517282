package perkilo.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
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
import perkilo.units.DatedRate;
import perkilo.units.EuroFixedRates;
import perkilo.units.ExchangeRates;

/**
 * Whether every currency that is paid or reported can be converted on the costing date, and by rates that make sense.
 */
final class RateCheck {

    /** A fresher cross that differs by one per cent or more from the rate it replaces (common practice, no source). */
    private static final BigDecimal WORTH_A_WARNING = new BigDecimal("0.01");

    /** So far a typed rate may be rounded and still be the one of the law, as a part of it. */
    private static final BigDecimal SAME = new BigDecimal("1e-5");

    private final Book book;
    private final BookChecks.Items items;
    private final Origin reports;
    private final Findings findings;
    private final LocalDate date;
    private final CurrencyUnit home;
    private final OppositeRates opposites;
    private final Map<List<CurrencyUnit>, Boolean> told = new HashMap<>();
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

    /** Reports missing and old rates; the offers that can be paid. */
    List<Offer> payable() {
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
        return used || (goods && charges && between);
    }

    private boolean check(CurrencyUnit from, CurrencyUnit to, Origin origin, boolean needed) {
        List<CurrencyUnit> pair = List.of(from, to);
        Boolean known = told.get(pair);
        if (known != null) {
            return known;
        }
        Optional<Conversion> conversion = book.rates().on(date, from, to);
        told.put(pair, conversion.isPresent());
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
                    "the rate from %s to %s is %d days older than the costing date %s"
                            .formatted(conversion.from(), conversion.to(), conversion.ageInDays(date), date));
        }
    }

    /**
     * Says at which rate a currency is converted that the euro has replaced, and that another one in the table is not
     * used.
     *
     * @return whether the euro has replaced it
     */
    private boolean fixed(CurrencyUnit currency, Origin origin) {
        Optional<DatedRate> rate = EuroFixedRates.on(date, currency);
        if (rate.isEmpty() || !fixed.add(currency)) {
            return rate.isPresent();
        }
        CurrencyUnit euro = rate.get().from();
        String law = "%s for 1 EUR, fixed by law (%s)"
                .formatted(
                        rate.get().rate().value().toPlainString() + " " + currency,
                        rate.get().source());
        findings.note(origin, "the euro has replaced %s; amounts are converted at %s".formatted(currency, law));
        book.rates().betweenOn(date, euro, currency).ifPresent(typed -> {
            BigDecimal exact = rate.get().rate().value();
            if (typed.factor().subtract(exact).abs().compareTo(exact.multiply(SAME)) > 0) {
                findings.warning(
                        typed.legs().get(0).rate().rate().origin(),
                        "the rate between EUR and %s in the table is not used, as the rate is %s"
                                .formatted(currency, law));
            }
        });
        return true;
    }

    /** Says that a rate between the two currencies gave way to a fresher cross. */
    private void passedOver(Conversion used) {
        if (used.legs().size() < 2) {
            return;
        }
        book.rates().betweenOn(date, used.from(), used.to()).ifPresent(direct -> {
            BigDecimal change =
                    used.factor().divide(direct.factor(), MathContext.DECIMAL64).subtract(BigDecimal.ONE);
            DatedRate left = direct.legs().get(0).rate();
            String text =
                    "the rate from %s to %s of %s is not used, as a cross through %s of %s is fresher; that one is %s"
                            .formatted(
                                    left.from(),
                                    left.to(),
                                    left.date(),
                                    used.legs().get(0).alone().to(),
                                    date.minusDays(used.ageInDays(date)),
                                    words(direct.legs().get(0).inverted() ? inverse(change) : change));
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

    private static String words(BigDecimal change) {
        String percent = change.abs().movePointRight(2).setScale(2, RoundingMode.HALF_UP) + " % ";
        return change.signum() == 0 ? "the same" : percent + (change.signum() > 0 ? "higher" : "lower");
    }

    private void missing(CurrencyUnit from, CurrencyUnit to, Origin origin, boolean needed) {
        String what = "no rate leads from %s to %s on or before %s; add one to a Rates sheet, or name a file of rates"
                .formatted(from, to, date);
        if (needed) {
            findings.error(origin, what);
        } else {
            told.remove(List.of(from, to));
            findings.warning(origin, what + ". The offer is left out, as it is not used");
        }
    }

    private static Origin oldest(Conversion conversion) {
        return conversion.legs().stream()
                .min((one, other) -> one.rate().date().compareTo(other.rate().date()))
                .map(leg -> leg.rate().rate().origin())
                .orElse(Origin.NONE);
    }
}
