package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import perkilo.model.Settings;
import perkilo.offers.JoinedOffer;
import perkilo.offers.Offer;
import perkilo.offers.OrderDays;
import perkilo.offers.QuoteLife;
import perkilo.offers.Unpriced;
import perkilo.reading.table.Findings;
import perkilo.schema.OffersSheet;

/** Reports quotes that are superseded, withdrawn, expired, old or announced on the costing date. */
final class OfferLives {

    // what many rows of a list have in common
    private static final String SUPERSEDED = "superseded ";
    private static final String UNDATED = "undated ";
    private static final String LOW_DUTY = "low duty";
    private static final String OLD = "old ";
    private static final String COMING = "coming ";
    private static final String ENDED = "ended ";
    private static final String AGAIN = "again ";

    private final LocalDate costingDate;
    private final BigDecimal ageLimitDays;
    private final Findings findings;
    private final OncePerList oncePerList = new OncePerList();
    private final Set<Unpriced> reportedWithdrawals = new HashSet<>();

    OfferLives(Settings settings, Findings findings) {
        this.costingDate = settings.costingDate();
        this.ageLimitDays = settings.priceAgeLimitDays().value();
        this.findings = findings;
    }

    /** Reports one quote. */
    void report(JoinedOffer<OfferRow> quote, QuoteLife life) {
        if (life instanceof QuoteLife.Withdrawn withdrawn) {
            withdrawn(withdrawn);
        } else if (life instanceof QuoteLife.Superseded superseded) {
            if (superseded.days().isEmpty()) {
                superseded(quote.offer(), superseded);
            }
            again(quote.offer(), superseded.days());
        } else if (life instanceof QuoteLife.Holds holds) {
            ended(quote.offer(), holds.days());
            again(quote.offer(), holds.days());
            checkDuty(quote);
            checkAge(quote);
        } else if (life instanceof QuoteLife.Announced announced) {
            ended(quote.offer(), announced.days());
            checkDuty(quote);
            announced(quote, announced);
            again(quote.offer(), announced.days());
        } else if (life instanceof QuoteLife.Expired expired) {
            checkDuty(quote);
            if (expired.again() == null) {
                expired(quote);
                checkAge(quote);
            }
        } else if (life instanceof QuoteLife.Never) {
            checkDuty(quote);
            never(quote);
        } else {
            throw new AssertionError(life);
        }
    }

    /** Adds what many rows share to the findings. */
    void done() {
        oncePerList.report(findings);
    }

    private void withdrawn(QuoteLife.Withdrawn life) {
        Unpriced by = life.by();
        if (!reportedWithdrawals.add(by)) {
            return;
        }
        Offer newest = life.newest();
        findings.warning(
                by.origin(),
                OfferMessages.withoutPrice(
                        newest.item(),
                        newest.pack(),
                        newest.supplier(),
                        by.quotedOn(),
                        newest.origin().where()));
    }

    private void ended(Offer offer, List<OrderDays> all) {
        OrderDays days = all.get(all.size() - 1);
        Unpriced by = days.endedBy();
        if (by == null) {
            return;
        }
        findings.warning(
                by.origin(),
                OfferMessages.endsBefore(
                        offer.item(),
                        offer.pack(),
                        offer.supplier(),
                        by.quotedOn(),
                        costingDate,
                        offer.origin().where(),
                        days.last()));
    }

    private void superseded(Offer old, QuoteLife.Superseded life) {
        Offer newer = life.by();
        LocalDate day = newer.quotedOn();
        String by = (life.byCounts() ? "" : ENDED) + day + " " + listOf(newer);
        String where = newer.origin().where();
        if (old.quotedOn() != null) {
            oncePerList.note(
                    old.origin(),
                    SUPERSEDED + by,
                    life.byCounts()
                            ? OfferMessages.superseded(day, where)
                            : OfferMessages.followed(day, where, costingDate));
        } else {
            oncePerList.warning(
                    old.origin(),
                    UNDATED + by,
                    life.byCounts()
                            ? OfferMessages.undated(day, where)
                            : OfferMessages.undatedFollowed(day, where, costingDate));
        }
    }

    /** A warning that names both quotes where an older one counts again, today or later. */
    private void again(Offer old, List<OrderDays> all) {
        for (OrderDays days : all) {
            OrderDays.After after = days.after();
            if (after != null) {
                Offer newer = after.newer();
                String about = AGAIN + days.first() + " " + newer.quotedOn() + " " + listOf(newer);
                oncePerList.warning(old.origin(), about, again(old, after, days));
            }
        }
    }

    private String again(Offer old, OrderDays.After after, OrderDays days) {
        Offer newer = after.newer();
        String where = newer.origin().where();
        LocalDate last = days.last();
        boolean byAge = last != null && days.next() == null && days.endedBy() == null && old.validUntil() == null;
        return days.contains(costingDate)
                ? OfferMessages.usedAgain(old.quotedOn(), newer.quotedOn(), where, after.ended(), last, byAge)
                : OfferMessages.plannedAgain(old.quotedOn(), newer.quotedOn(), where, days.first(), last, byAge);
    }

    private static String listOf(Offer offer) {
        return offer.origin().file() + " " + offer.origin().sheet();
    }

    private void checkDuty(JoinedOffer<OfferRow> quote) {
        for (OfferRow row : quote.rows()) {
            SuspectedFractions.in(row.row(), OffersSheet.DUTY, row.offer().duty())
                    .ifPresent(text -> oncePerList.warning(row.row().origin(OffersSheet.DUTY), LOW_DUTY, text));
        }
    }

    private void expired(JoinedOffer<OfferRow> quote) {
        Offer offer = quote.offer();
        findings.warning(
                quote.first().row().origin(OffersSheet.VALID_UNTIL),
                OfferMessages.expired(offer.item(), offer.supplier(), offer.validUntil(), costingDate));
    }

    private void checkAge(JoinedOffer<OfferRow> quote) {
        LocalDate quoted = quote.offer().quotedOn();
        if (quoted == null) {
            return;
        }
        long age = ChronoUnit.DAYS.between(quoted, costingDate);
        if (BigDecimal.valueOf(age).compareTo(ageLimitDays) > 0) {
            oncePerList.warning(
                    quote.first().row().origin(OffersSheet.QUOTED_ON),
                    OLD + quoted,
                    OfferMessages.old(quoted, age, ageLimitDays));
        }
    }

    private void never(JoinedOffer<OfferRow> quote) {
        Offer offer = quote.offer();
        findings.warning(
                quote.first().row().origin(OffersSheet.VALID_UNTIL),
                OfferMessages.neverValid(offer.item(), offer.supplier(), offer.quotedOn(), offer.validUntil()));
    }

    private void announced(JoinedOffer<OfferRow> quote, QuoteLife.Announced life) {
        LocalDate quoted = quote.offer().quotedOn();
        Offer holds = life.before();
        oncePerList.warning(
                quote.first().row().origin(OffersSheet.QUOTED_ON),
                holds == null ? COMING + quoted : COMING + quoted + listOf(holds),
                holds == null
                        ? OfferMessages.announced(quoted, costingDate)
                        : OfferMessages.announced(
                                quoted, costingDate, holds.origin().where()));
    }
}
