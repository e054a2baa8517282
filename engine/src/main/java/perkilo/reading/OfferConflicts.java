package perkilo.reading;

import java.util.List;
import perkilo.offers.Conflict;
import perkilo.offers.JoinedOffer;
import perkilo.offers.Offer;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.schema.InputColumn;
import perkilo.schema.OffersSheet;

/** Reports rows of one offer that do not agree, with their cells. */
final class OfferConflicts {

    private OfferConflicts() {}

    /** The offers that rows make up; rows that do not agree are reported. */
    static List<Offer> reported(List<JoinedOffer<OfferRow>> offers, Findings findings) {
        return offers.stream()
                .map(one -> {
                    report(one, findings);
                    return one.offer();
                })
                .toList();
    }

    static void report(JoinedOffer<OfferRow> offer, Findings findings) {
        for (Conflict<OfferRow> conflict : offer.conflicts()) {
            report(conflict, findings);
        }
    }

    private static void report(Conflict<OfferRow> conflict, Findings findings) {
        if (conflict instanceof Conflict.Differs<OfferRow> differs) {
            InputColumn column = column(differs.field());
            findings.error(
                    differs.row().row().origin(column), OfferMessages.differs(column.header(), where(differs.other())));
        } else if (conflict instanceof Conflict.SamePrice<OfferRow> same) {
            findings.warning(same.row().offer().origin(), OfferMessages.samePrice(where(same.other())));
        } else if (conflict instanceof Conflict.OtherPrice<OfferRow> other) {
            findings.error(
                    price(other.row()),
                    OfferMessages.secondPrice(price(other.other()).where()));
        } else if (conflict instanceof Conflict.Dearer<OfferRow> dearer) {
            findings.warning(
                    price(dearer.row()),
                    OfferMessages.dearer(
                            dearer.from(),
                            dearer.row().offer().packUnit().symbol(),
                            price(dearer.other()).where()));
        } else {
            throw new AssertionError(conflict);
        }
    }

    private static InputColumn column(Conflict.Field field) {
        return switch (field) {
            case CURRENCY -> OffersSheet.CURRENCY_OF_PRICE;
            case MINIMUM_ORDER -> OffersSheet.MINIMUM_ORDER;
            case ORDER_MULTIPLE -> OffersSheet.ORDER_MULTIPLE;
            case DUTY -> OffersSheet.DUTY;
            case VALID_UNTIL -> OffersSheet.VALID_UNTIL;
        };
    }

    private static Origin price(OfferRow row) {
        return row.row().origin(OffersSheet.PRICE);
    }

    private static String where(OfferRow row) {
        return row.offer().origin().where();
    }
}
