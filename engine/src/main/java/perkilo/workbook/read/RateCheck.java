package perkilo.workbook.read;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import perkilo.model.Book;
import perkilo.model.Offer;
import perkilo.model.Supplier;
import perkilo.origin.Origin;
import perkilo.units.Conversion;
import perkilo.units.ExchangeRates;
import perkilo.workbook.read.table.Findings;

/** Whether every currency that is paid or reported can be converted on the costing date. */
final class RateCheck {

    private final Book book;
    private final BookChecks.Items items;
    private final Origin reports;
    private final Findings findings;
    private final LocalDate date;
    private final CurrencyUnit home;
    private final Set<List<CurrencyUnit>> told = new LinkedHashSet<>();

    RateCheck(Book book, BookChecks.Items items, Origin reports, Findings findings) {
        this.reports = reports;
        this.book = book;
        this.items = items;
        this.findings = findings;
        this.date = book.settings().costingDate();
        this.home = book.settings().home();
    }

    /** Reports missing and old rates; the offers that can be paid. */
    List<Offer> payable() {
        for (CurrencyUnit report : book.settings().reportCurrencies()) {
            check(home, report, reports, true);
        }
        return book.offers().stream().filter(this::isPayable).toList();
    }

    private boolean isPayable(Offer offer) {
        boolean used = items.isUsed(offer);
        Origin origin = offer.breaks().get(0).price().origin();
        CurrencyUnit supplier =
                book.supplier(offer.supplier()).map(Supplier::currency).orElse(offer.currency());
        boolean goods = check(offer.currency(), home, origin, used);
        boolean charges = check(supplier, home, origin, used);
        boolean between = check(offer.currency(), supplier, origin, used);
        return used || (goods && charges && between);
    }

    private boolean check(CurrencyUnit from, CurrencyUnit to, Origin origin, boolean needed) {
        Optional<Conversion> conversion = book.rates().on(date, from, to);
        if (!told.add(List.of(from, to))) {
            return conversion.isPresent();
        }
        if (conversion.isEmpty()) {
            missing(from, to, origin, needed);
        } else if (conversion.get().ageInDays(date) > ExchangeRates.DAYS_UNTIL_OLD) {
            findings.warning(
                    oldest(conversion.get()),
                    "the rate from %s to %s is %d days older than the costing date %s"
                            .formatted(from, to, conversion.get().ageInDays(date), date));
        }
        return conversion.isPresent();
    }

    private void missing(CurrencyUnit from, CurrencyUnit to, Origin origin, boolean needed) {
        String what = "no rate leads from %s to %s on or before %s; add one to a Rates sheet, or name a file of rates"
                .formatted(from, to, date);
        if (needed) {
            findings.error(origin, what);
        } else {
            told.remove(List.of(from, to));
            findings.warning(origin, what + ". The offer is left out, as nothing uses its item");
        }
    }

    private static Origin oldest(Conversion conversion) {
        return conversion.legs().stream()
                .min((one, other) -> one.rate().date().compareTo(other.rate().date()))
                .map(leg -> leg.rate().rate().origin())
                .orElse(Origin.NONE);
    }
}
