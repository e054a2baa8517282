package perkilo.report.send;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import perkilo.model.Buyer;
import perkilo.model.Supplier;
import perkilo.orderplan.OrderOutcome;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/** What purchase orders cannot say, because no cell says it. */
public final class Unsaid {

    private static final int MOST_NAMES = 5;

    private Unsaid() {}

    /** One message about the buyer and one about all suppliers, where something is missing. */
    public static List<Finding> of(OrderOutcome.Planned planned) {
        List<Finding> findings = new ArrayList<>();
        List<OrderToSend> orders = OrderToSend.of(planned.plan());
        if (orders.isEmpty()) {
            return findings;
        }
        Buyer buyer = planned.book().settings().buyer();
        List<String> unset = new ArrayList<>();
        if (buyer.name().isEmpty()) {
            unset.add("Company");
        }
        if (buyer.address().isEmpty()) {
            unset.add("Company address");
        }
        if (buyer.contact().isEmpty() && buyer.email().isEmpty()) {
            unset.add("Company contact");
        }
        if (!unset.isEmpty()) {
            findings.add(Finding.warning(buyer.settings(), SendMessages.buyerUnknown(unset)));
        }
        List<Supplier> homeless = orders.stream()
                .map(OrderToSend::supplier)
                .distinct()
                .filter(supplier -> supplier.details().address().isEmpty())
                .toList();
        if (!homeless.isEmpty()) {
            Origin first = homeless.get(0).origin();
            findings.add(Finding.warning(first, SendMessages.addressesUnknown(names(homeless))));
        }
        return findings;
    }

    /**
     * The message about orders of an earlier plan.
     *
     * @param files their names, at least one
     */
    public static Finding notOfThisPlan(String folder, List<String> files) {
        return Finding.warning(Origin.NONE, SendMessages.notOfThisPlan(folder, firstOf(files)));
    }

    private static List<String> names(List<Supplier> suppliers) {
        return firstOf(suppliers.stream().map(Supplier::name).toList());
    }

    private static List<String> firstOf(List<String> names) {
        return names.size() <= MOST_NAMES
                ? names
                : Stream.concat(names.stream().limit(MOST_NAMES), Stream.of((names.size() - MOST_NAMES) + " more"))
                        .toList();
    }
}
