package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.model.Settings;
import perkilo.offers.Offer;
import perkilo.offers.PackOffered;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.OffersSheet;

/**
 * Makes offers of price breaks: of one supplier's quotes for one item in one pack the newest on or before the costing
 * date holds; older ones are history, later ones announced.
 */
final class OfferBook {

    private final LocalDate costingDate;
    private final BigDecimal ageLimitDays;
    private final Findings findings;
    private final Map<PackOffered, Unpriced> unpriced = new HashMap<>();
    private final Map<PackOffered, NavigableMap<LocalDate, Unpriced>> withdrawals = new HashMap<>();
    private final OncePerList oncePerList = new OncePerList();

    /**
     * Ready to make offers.
     *
     * @param unpriced packs that lists name without a price
     */
    OfferBook(Settings settings, List<Unpriced> unpriced, Findings findings) {
        for (Unpriced one : unpriced) {
            if (one.quotedOn().isAfter(settings.costingDate())) {
                withdrawals.computeIfAbsent(one.pack(), pack -> new TreeMap<>()).putIfAbsent(one.quotedOn(), one);
            } else {
                this.unpriced.merge(
                        one.pack(), one, (first, other) -> other.quotedOn().isAfter(first.quotedOn()) ? other : first);
            }
        }
        this.costingDate = settings.costingDate();
        this.ageLimitDays = settings.priceAgeLimitDays().value();
        this.findings = findings;
    }

    /** The offers that hold on the costing date or are announced for later, in the order of their first rows. */
    List<Offer> offers(List<OfferRow> rows) {
        List<Offer> offers = new ArrayList<>();
        for (List<OfferRow> pack : byPack(rows)) {
            Collection<List<OfferRow>> quotes = byDay(pack);
            OfferRow holds = holding(quotes);
            boolean isUnpriced = holds != null && isUnpriced(holds);
            for (List<OfferRow> quote : quotes) {
                if (isUnpriced && !isFuture(quote.get(0))) {
                    continue;
                }
                Offer offer = new OneOffer(quote, findings).offer();
                OfferRow first = quote.get(0);
                if (holds == null || isFuture(first) || day(first).equals(day(holds))) {
                    offers.add(untilWithdrawn(offer, first, quotes));
                    quote.forEach(this::checkDuty);
                    checkDates(offer, first, holds);
                } else {
                    superseded(first, holds);
                }
            }
        }
        oncePerList.report(findings);
        return offers;
    }

    /** The rows of each pack of each supplier; most packs of a long list have one. */
    static Collection<List<OfferRow>> byPack(List<OfferRow> rows) {
        Map<PackOffered, List<OfferRow>> packs = new LinkedHashMap<>();
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

    /** The quotes of one pack, each the rows of one day whose breaks are in the same unit. */
    static Collection<List<OfferRow>> byDay(List<OfferRow> pack) {
        if (pack.size() == 1) {
            return List.of(pack);
        }
        Map<List<Object>, List<OfferRow>> quotes = new LinkedHashMap<>();
        for (OfferRow row : pack) {
            List<Object> quote = List.of(row.quoted(), row.packSize().value().stripTrailingZeros(), row.packUnit());
            quotes.computeIfAbsent(quote, any -> new ArrayList<>()).add(row);
        }
        return quotes.values();
    }

    /** The first row of the newest quote on or before the costing date; null where there is none. */
    private @Nullable OfferRow holding(Collection<List<OfferRow>> quotes) {
        OfferRow newest = null;
        for (List<OfferRow> quote : quotes) {
            OfferRow first = quote.get(0);
            if (!isFuture(first) && (newest == null || day(first).isAfter(day(newest)))) {
                newest = first;
            }
        }
        return newest;
    }

    /** Whether a list that is not older than a quote names its pack without a price; a warning says so. */
    private boolean isUnpriced(OfferRow holds) {
        Unpriced later = unpriced.isEmpty() ? null : unpriced.get(holds.pack());
        if (later == null
                || later.quotedOn().isBefore(day(holds))
                || later.origin().file().equals(holds.origin().file())) {
            return false;
        }
        findings.warning(
                later.origin(),
                "\"%s\" in packs of %s %s has no price on %s's list of %s, so the older one in %s is not used; ask him, and type what he says as an offer of a later day"
                        .formatted(
                                holds.item(),
                                holds.packSize().value().stripTrailingZeros().toPlainString(),
                                holds.packUnit().symbol(),
                                holds.supplier(),
                                later.quotedOn(),
                                holds.origin().where()));
        return true;
    }

    /** An offer that ends before the next list that names its pack without a price, if such a list is announced. */
    private Offer untilWithdrawn(Offer offer, OfferRow row, Collection<List<OfferRow>> quotes) {
        NavigableMap<LocalDate, Unpriced> ofPack = withdrawals.get(row.pack());
        Map.Entry<LocalDate, Unpriced> next = ofPack == null ? null : ofPack.higherEntry(day(row));
        if (next == null || isFollowed(row, next.getKey(), quotes)) {
            return offer;
        }
        LocalDate last = next.getKey().minusDays(1);
        LocalDate until = offer.validUntil();
        if (until != null && !until.isAfter(last)) {
            return offer;
        }
        findings.warning(
                next.getValue().origin(),
                "\"%s\" in packs of %s has no price on %s's list of %s, after the costing date %s: the price in %s is taken to end on %s"
                        .formatted(
                                offer.item(),
                                offer.pack(),
                                offer.supplier(),
                                next.getKey(),
                                costingDate,
                                row.origin().where(),
                                last));
        return offer.until(last);
    }

    /** Whether another price of the pack takes over from a row's up to a day. */
    private static boolean isFollowed(OfferRow row, LocalDate day, Collection<List<OfferRow>> quotes) {
        return quotes.stream()
                .map(quote -> quote.get(0))
                .filter(other -> !endsBeforeItBegins(other))
                .map(OfferBook::day)
                .anyMatch(other -> other.isAfter(day(row)) && !other.isAfter(day));
    }

    private static boolean endsBeforeItBegins(OfferRow row) {
        LocalDate until = row.validUntil();
        return until != null && until.isBefore(day(row));
    }

    private static LocalDate day(OfferRow row) {
        return row.quoted().orElse(LocalDate.MIN);
    }

    private boolean isFuture(OfferRow row) {
        return row.quoted().map(day -> day.isAfter(costingDate)).orElse(false);
    }

    private void superseded(OfferRow old, OfferRow holds) {
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

    private void checkDates(Offer offer, OfferRow first, @Nullable OfferRow holds) {
        LocalDate quoted = offer.quotedOn();
        if (quoted != null && isFuture(first)) {
            announced(offer, quoted, first, holds);
            return;
        }
        TableRow row = first.row();
        if (offer.isExpiredOn(costingDate)) {
            findings.warning(
                    row.origin(OffersSheet.VALID_UNTIL),
                    "the offer of \"%s\" by %s expired on %s, before the costing date %s, and is not used"
                            .formatted(offer.item(), offer.supplier(), offer.validUntil(), costingDate));
        }
        if (quoted == null) {
            return;
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

    private void announced(Offer offer, LocalDate quoted, OfferRow first, @Nullable OfferRow holds) {
        if (offer.isExpiredOn(quoted)) {
            findings.warning(
                    first.row().origin(OffersSheet.VALID_UNTIL),
                    "the offer of \"%s\" by %s is quoted on %s, but valid until %s, and is not used"
                            .formatted(offer.item(), offer.supplier(), quoted, offer.validUntil()));
            return;
        }
        oncePerList.warning(
                first.row().origin(OffersSheet.QUOTED_ON),
                "future " + quoted + (holds == null ? "" : listOf(holds)),
                "quoted on %s, after the costing date %s: orders placed from that day on are planned at this price; costs are not, %s"
                        .formatted(
                                quoted,
                                costingDate,
                                holds == null
                                        ? "as it does not hold yet"
                                        : "for them the quote in %s holds"
                                                .formatted(holds.origin().where())));
    }

    /** Whether two decimals are the same number. */
    static boolean same(BigDecimal one, BigDecimal other) {
        return one.compareTo(other) == 0;
    }
}
