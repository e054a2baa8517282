package perkilo.workbook.read;

import java.time.LocalDate;
import java.util.Optional;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Material;
import perkilo.model.StockLot;
import perkilo.units.Measure;
import perkilo.workbook.read.table.Findings;

/** Whether demand and stock can be planned with. */
final class PlanningCheck {

    private final Book book;
    private final Findings findings;

    PlanningCheck(Book book, Findings findings) {
        this.book = book;
        this.findings = findings;
    }

    void run() {
        LocalDate date = book.settings().costingDate();
        for (Demand demand : book.demand()) {
            if (demand.neededBy().isBefore(date)) {
                findings.warning(
                        demand.origin(), "needed by %s, before the costing date %s".formatted(demand.neededBy(), date));
            }
        }
        for (StockLot lot : book.stock()) {
            check(lot, date);
        }
    }

    private void check(StockLot lot, LocalDate date) {
        LocalDate expires = lot.expires();
        if (expires != null && expires.isBefore(date)) {
            findings.warning(
                    lot.origin(),
                    "\"%s\" expired on %s, before the costing date %s, and is not used"
                            .formatted(lot.item(), expires, date));
        }
        Optional<Material> material = book.material(lot.item());
        if (material.isPresent() && lot.unit().kind() == Measure.Kind.COUNT) {
            findings.error(
                    lot.quantity().origin(),
                    "the stock of \"%s\" is in pieces, but it is a raw material; expected a unit such as kg"
                            .formatted(lot.item()));
        }
        if (material.isPresent()
                && lot.unit().kind() == Measure.Kind.VOLUME
                && material.get().density() == null) {
            findings.error(
                    lot.quantity().origin(),
                    "the stock of \"%s\" is in %s, but its density is not known; fill Density g/mL in Materials"
                            .formatted(lot.item(), lot.unit().symbol()));
        }
    }
}
