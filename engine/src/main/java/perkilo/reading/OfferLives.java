package perkilo.reading;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.Set;
import perkilo.model.Settings;
import perkilo.offers.JoinedOffer;
import perkilo.offers.Offer;
import perkilo.offers.OrderDays;
import perkilo.offers.QuoteLife;
import perkilo.offers.Unpriced;
import perkilo.reading.table.Findings;
import perkilo.schema.OffersSheet;

/** Reports what quotes are good for on the costing date: superseded, withdrawn, expired, old, announced. */
final class OfferLives {

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
            superseded(quote.offer(), superseded.by());
        } else if (life instanceof QuoteLife.Holds holds) {
            ended(quote.offer(), holds.days());
            checkDuty(quote);
            checkAge(quote);
        } else if (life instanceof QuoteLife.Announced announced) {
            ended(quote.offer(), announced.days());
            checkDuty(quote);
            announced(quote, announced);
        } else if (life instanceof QuoteLife.Expired) {
            checkDuty(quote);
            expired(quote);
            checkAge(quote);
        } else if (life instanceof QuoteLife.Never) {
            checkDuty(quote);
            never(quote);
        } else {
            throw new AssertionError(life);
        }
    }

    /** Hands over what was found in many rows alike. */
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
                "\"%s\" in packs of %s %s has no price on %s's list of %s, so the older one in %s is not used; ask him, and type what he says as an offer of a later day"
                        .formatted(
                                newest.item(),
                                newest.packSize().value().stripTrailingZeros().toPlainString(),
                                newest.packUnit().symbol(),
                                newest.supplier(),
                                by.quotedOn(),
                                newest.origin().where()));
    }

    private void ended(Offer offer, OrderDays days) {
        Unpriced by = days.endedBy();
        if (by == null) {
            return;
        }
        findings.warning(
                by.origin(),
                "\"%s\" in packs of %s has no price on %s's list of %s, after the costing date %s: the price in %s is taken to end on %s"
                        .formatted(
                                offer.item(),
                                offer.pack(),
                                offer.supplier(),
                                by.quotedOn(),
                                costingDate,
                                offer.origin().where(),
                                days.last()));
    }

    private void superseded(Offer old, Offer holds) {
        String newer = holds.quotedOn() == null ? "" : "of " + holds.quotedOn() + " ";
        String text = "the newer quote %sin %s holds; this one is history"
                .formatted(newer, holds.origin().where());
        if (old.quotedOn() != null) {
            oncePerList.note(old.origin(), "superseded " + newer + listOf(holds), text);
        } else {
            oncePerList.warning(
                    old.origin(),
                    "undated " + newer + listOf(holds),
                    "the quote %sin %s holds, as this one has no date"
                            .formatted(newer, holds.origin().where()));
        }
    }

    private static String listOf(Offer offer) {
        return offer.origin().file() + " " + offer.origin().sheet();
    }

    private void checkDuty(JoinedOffer<OfferRow> quote) {
        for (OfferRow row : quote.rows()) {
            SuspectedFractions.in(row.row(), OffersSheet.DUTY, row.offer().duty())
                    .ifPresent(text -> oncePerList.warning(row.row().origin(OffersSheet.DUTY), "low duty", text));
        }
    }

    private void expired(JoinedOffer<OfferRow> quote) {
        Offer offer = quote.offer();
        findings.warning(
                quote.first().row().origin(OffersSheet.VALID_UNTIL),
                "the offer of \"%s\" by %s expired on %s, before the costing date %s, and is not used"
                        .formatted(offer.item(), offer.supplier(), offer.validUntil(), costingDate));
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
                    "old " + quoted,
                    "quoted on %s, %d days before the costing date; the limit is %s days, ask for a new quote"
                            .formatted(quoted, age, ageLimitDays.toPlainString()));
        }
    }

    private void never(JoinedOffer<OfferRow> quote) {
        Offer offer = quote.offer();
        findings.warning(
                quote.first().row().origin(OffersSheet.VALID_UNTIL),
                "the offer of \"%s\" by %s is quoted on %s, but valid until %s, and is not used"
                        .formatted(offer.item(), offer.supplier(), offer.quotedOn(), offer.validUntil()));
    }

    private void announced(JoinedOffer<OfferRow> quote, QuoteLife.Announced life) {
        LocalDate quoted = quote.offer().quotedOn();
        Offer holds = life.before();
        oncePerList.warning(
                quote.first().row().origin(OffersSheet.QUOTED_ON),
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
}
