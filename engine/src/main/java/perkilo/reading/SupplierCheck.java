package perkilo.reading;

import org.jspecify.annotations.Nullable;
import perkilo.model.Book;
import perkilo.model.DeliveryTerm;
import perkilo.model.Supplier;
import perkilo.offers.Offer;
import perkilo.origin.Figure;
import perkilo.reading.table.Findings;

/** Checks that the charges of suppliers fit their delivery terms and each other. */
final class SupplierCheck {

    private final Book book;
    private final Findings findings;

    SupplierCheck(Book book, Findings findings) {
        this.book = book;
        this.findings = findings;
    }

    void run() {
        for (Supplier supplier : book.suppliers().values()) {
            Figure charge = supplier.smallOrderCharge();
            if (charge != null && supplier.minimumOrderValue() == null) {
                findings.warning(charge.origin(), SupplierMessages.chargeWithoutMinimum());
            }
            DeliveryTerm terms = supplier.terms();
            if (terms != null) {
                checkTerms(supplier, terms);
            }
        }
        for (Offer offer : book.offers()) {
            book.supplier(offer.supplier())
                    .map(Supplier::terms)
                    .filter(terms -> !terms.buyerPaysDuty())
                    .ifPresent(terms -> contradiction(offer.duty(), "Duty %", "duty", terms));
        }
    }

    private void checkTerms(Supplier supplier, DeliveryTerm terms) {
        if (!terms.buyerPaysFreight()) {
            contradiction(supplier.freightPerOrder(), "Freight per order", "freight", terms);
            contradiction(supplier.freightPerKg(), "Freight per kg", "freight", terms);
        }
        if (terms.buyerPaysOnCarriageAlone()) {
            onCarriage(supplier.freightPerOrder(), "Freight per order", terms);
            onCarriage(supplier.freightPerKg(), "Freight per kg", terms);
        }
        if (!terms.buyerPaysInsurance()) {
            contradiction(supplier.insurance(), "Insurance %", "insurance", terms);
        }
        if (!terms.buyerPaysDuty()) {
            contradiction(supplier.duty(), "Duty %", "duty", terms);
        }
    }

    private void onCarriage(Figure freight, String column, DeliveryTerm terms) {
        if (!freight.isZero()) {
            findings.warning(freight.origin(), SupplierMessages.freightFromPort(column, terms.name()));
        }
    }

    private void contradiction(@Nullable Figure charge, String column, String what, DeliveryTerm terms) {
        if (charge != null && !charge.isZero()) {
            findings.warning(charge.origin(), SupplierMessages.sellerPays(column, terms.name(), what));
        }
    }
}
