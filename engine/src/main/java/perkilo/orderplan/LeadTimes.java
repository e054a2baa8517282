package perkilo.orderplan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Formula;
import perkilo.model.Product;
import perkilo.model.Supplier;
import perkilo.names.Names;
import perkilo.offers.Offer;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** Suppliers without a lead time who sell what the demand needs: plans assume that they deliver at once. */
public final class LeadTimes {

    private LeadTimes() {}

    /** A warning for each supplier without a lead time who could be ordered from for the demand of a book. */
    public static List<Finding> unknown(Book book) {
        Set<String> wanted = wanted(book);
        LocalDate today = book.settings().costingDate();
        LocalDate lastDay = book.demand().stream()
                .map(demand -> demand.neededBy().date())
                .max(Comparator.naturalOrder())
                .orElse(today);
        Set<String> said = new HashSet<>();
        List<Finding> findings = new ArrayList<>();
        for (Offer offer : book.prices().orderableUntil(lastDay)) {
            Supplier supplier = book.supplier(offer.supplier()).orElse(null);
            if (supplier != null
                    && supplier.leadTimeDays() == null
                    && wanted.contains(Names.key(offer.item()))
                    && said.add(Names.key(supplier.name()))) {
                findings.add(unknown(supplier, offer));
            }
        }
        return findings;
    }

    private static Finding unknown(Supplier supplier, Offer offer) {
        boolean hasRow = supplier.origin().isKnown();
        Origin origin = hasRow ? supplier.origin() : offer.origin();
        return Finding.warning(
                origin,
                hasRow ? OrderMessages.noLeadTime(supplier.name()) : OrderMessages.notInSuppliers(supplier.name()));
    }

    private static Set<String> wanted(Book book) {
        Set<String> wanted = new TreeSet<>();
        for (Demand demand : book.demand()) {
            Product product = book.product(demand.product()).orElse(null);
            if (product != null) {
                product.components().forEach(component -> wanted.add(Names.key(component.name())));
                book.formula(product.formula())
                        .map(Formula::lines)
                        .orElse(List.of())
                        .forEach(line -> wanted.add(Names.key(line.material())));
            }
        }
        return wanted;
    }
}
