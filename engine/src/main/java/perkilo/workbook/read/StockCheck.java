package perkilo.workbook.read;

import java.time.LocalDate;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.model.StockLot;
import perkilo.units.Measure;
import perkilo.workbook.read.table.Findings;

/** Whether stock is measured in units that fit its items, and may still be used. */
final class StockCheck {

    private final Book book;
    private final BookChecks.Items items;
    private final Findings findings;

    StockCheck(Book book, BookChecks.Items items, Findings findings) {
        this.book = book;
        this.items = items;
        this.findings = findings;
    }

    void run() {
        LocalDate date = book.settings().costingDate();
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
        if (items.components().containsKey(Names.key(lot.item()))) {
            checkPieces(lot);
        } else {
            book.material(lot.item()).ifPresent(material -> checkWeight(lot, material));
        }
    }

    private void checkPieces(StockLot lot) {
        if (lot.unit().kind() != Measure.Kind.COUNT) {
            findings.error(
                    lot.quantity().origin(),
                    "the stock of \"%s\" is in %s, but it is a component; expected pieces, with each as the unit"
                            .formatted(lot.item(), lot.unit().symbol()));
        }
    }

    private void checkWeight(StockLot lot, Material material) {
        if (lot.unit().kind() == Measure.Kind.COUNT) {
            findings.error(
                    lot.quantity().origin(),
                    "the stock of \"%s\" is in pieces, but it is a raw material; expected a unit such as kg"
                            .formatted(lot.item()));
        }
        if (lot.unit().kind() == Measure.Kind.VOLUME && material.density() == null) {
            findings.error(
                    lot.quantity().origin(),
                    "the stock of \"%s\" is in %s, but its density is not known; fill Density g/mL in Materials"
                            .formatted(lot.item(), lot.unit().symbol()));
        }
    }
}
