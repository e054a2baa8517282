package perkilo.workbook.read;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.model.Offer;
import perkilo.model.Settings;
import perkilo.workbook.read.table.Findings;
import perkilo.workbook.read.table.TableRow;
import perkilo.workbook.schema.OffersSheet;

/**
 * Makes offers of price breaks: of one supplier's quotes for one item in one pack the newest holds, older ones are
 * history.
 */
final class OfferBook {

    private final LocalDate costingDate;
    private final BigDecimal ageLimitDays;
    private final Findings findings;
    private final OncePerList oncePerList = new OncePerList();

    OfferBook(Settings settings, Findings findings) {
        this.costingDate = settings.costingDate();
        this.ageLimitDays = settings.priceAgeLimitDays().value();
        this.findings = findings;
    }

    /** The offers that hold, in the order of their first rows. */
    List<Offer> offers(List<OfferRow> rows) {
        List<Offer> offers = new ArrayList<>();
        for (List<OfferRow> pack : byPack(rows)) {
            Collection<List<OfferRow>> quotes = byDay(pack);
            List<OfferRow> holds = holding(quotes);
            for (List<OfferRow> quote : quotes) {
                Offer offer = new OneOffer(quote, findings).offer();
                if (quote == holds) {
                    offers.add(offer);
                    quote.forEach(this::checkDuty);
                    checkDates(offer, quote.get(0).row());
                } else {
                    superseded(quote.get(0), holds.get(0));
                }
            }
        }
        oncePerList.report(findings);
        return offers;
    }

    /** The rows of each pack of each supplier; most packs of a long list have one. */
    static Collection<List<OfferRow>> byPack(List<OfferRow> rows) {
        Map<OfferRow.Pack, List<OfferRow>> packs = new LinkedHashMap<>();
        for (OfferRow row : rows) {
            packs.merge(row.pack(), List.of(row), OfferBook::joined);
        }
        return packs.values();
    }

    private static List<OfferRow> joined(List<OfferRow> before, List<OfferRow> more) {
        List<OfferRow> all = before.size() == 1 ? new ArrayList<>(before) : before;
        all.addAll(more);
        return all;
    }

    /** The quotes of one pack, each the rows of one day. */
    static Collection<List<OfferRow>> byDay(List<OfferRow> pack) {
        if (pack.size() == 1) {
            return List.of(pack);
        }
        Map<Optional<LocalDate>, List<OfferRow>> quotes = new LinkedHashMap<>();
        for (OfferRow row : pack) {
            quotes.computeIfAbsent(row.quoted(), day -> new ArrayList<>()).add(row);
        }
        return quotes.values();
    }

    /** The newest quote on or before the costing date; the earliest of all where there is none. */
    private List<OfferRow> holding(Collection<List<OfferRow>> quotes) {
        if (quotes.size() == 1) {
            return quotes.iterator().next();
        }
        Comparator<List<OfferRow>> byDay =
                Comparator.comparing(quote -> quote.get(0).quoted().orElse(LocalDate.MIN));
        return quotes.stream()
                .filter(quote -> !isFuture(quote.get(0)))
                .max(byDay)
                .or(() -> quotes.stream().min(byDay))
                .orElseThrow();
    }

    private boolean isFuture(OfferRow row) {
        return row.quoted().map(day -> day.isAfter(costingDate)).orElse(false);
    }

    private void superseded(OfferRow old, OfferRow holds) {
        if (isFuture(old)) {
            oncePerList.warning(
                    old.origin(),
                    "future " + old.quotedOn() + listOf(holds),
                    "quoted on %s, after the costing date %s, so the quote in %s holds"
                            .formatted(
                                    old.quotedOn(), costingDate, holds.origin().where()));
            return;
        }
        String newer = holds.quoted().map(day -> "of " + day + " ").orElse("");
        String text = "the newer quote %sin %s holds; this one is history"
                .formatted(newer, holds.origin().where());
        if (old.quoted().isPresent()) {
            oncePerList.note(old.origin(), "superseded " + newer + listOf(holds), text);
        } else {
            oncePerList.warning(
                    old.origin(),
                    "undated " + newer + listOf(holds),
                    "the quote %sin %s holds, as this one has no date"
                            .formatted(newer, holds.origin().where()));
        }
    }

    private static String listOf(OfferRow row) {
        return row.origin().file() + " " + row.origin().sheet();
    }

    private void checkDuty(OfferRow row) {
        SuspectedFractions.in(row.row(), OffersSheet.DUTY, row.duty())
                .ifPresent(text -> oncePerList.warning(row.row().origin(OffersSheet.DUTY), "low duty", text));
    }

    private void checkDates(Offer offer, TableRow row) {
        LocalDate until = offer.validUntil();
        if (until != null && until.isBefore(costingDate)) {
            findings.warning(
                    row.origin(OffersSheet.VALID_UNTIL),
                    "the offer of \"%s\" by %s expired on %s, before the costing date %s, and is not used"
                            .formatted(offer.item(), offer.supplier(), until, costingDate));
        }
        LocalDate quoted = offer.quotedOn();
        if (quoted == null) {
            return;
        }
        if (quoted.isAfter(costingDate)) {
            oncePerList.warning(
                    row.origin(OffersSheet.QUOTED_ON),
                    "future " + quoted,
                    "quoted on %s, after the costing date %s, so it is not used".formatted(quoted, costingDate));
        }
        long age = ChronoUnit.DAYS.between(quoted, costingDate);
        if (BigDecimal.valueOf(age).compareTo(ageLimitDays) > 0) {
            oncePerList.warning(
                    row.origin(OffersSheet.QUOTED_ON),
                    "old " + quoted,
                    "quoted on %s, %d days before the costing date; the limit is %s days, ask for a new quote"
                            .formatted(quoted, age, ageLimitDays.toPlainString()));
        }
    }

    /** Whether two decimals are the same number. */
    static boolean same(BigDecimal one, BigDecimal other) {
        return one.compareTo(other) == 0;
    }
}
