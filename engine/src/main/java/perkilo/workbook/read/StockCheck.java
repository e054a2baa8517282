package perkilo.workbook.read;

import java.time.LocalDate;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.Names;
import perkilo.model.StockLot;
import perkilo.origin.Day;
import perkilo.units.Measure;
import perkilo.workbook.read.table.Findings;

/** Whether stock is measured in units that fit its items, may still be used, and is not overdue. */
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
        checkDays(lot, date);
        if (items.components().containsKey(Names.key(lot.item()))) {
            checkPieces(lot);
        } else {
            book.material(lot.item()).ifPresent(material -> checkWeight(lot, material));
        }
    }

    private void checkDays(StockLot lot, LocalDate date) {
        Day expires = lot.expires();
        Day expected = lot.expected();
        if (expires != null && expires.date().isBefore(date)) {
            findings.warning(
                    lot.origin(),
                    "\"%s\" expired on %s, before the costing date %s, and is not used"
                            .formatted(lot.item(), expires, date));
        } else if (expires != null && expected != null && expires.date().isBefore(expected.date())) {
            findings.warning(
                    expires.origin(),
                    "\"%s\" expires on %s, before it is expected on %s, and is not used; correct one of the two"
                            .formatted(lot.item(), expires, expected));
        } else if (expected != null && !expected.date().isAfter(date)) {
            findings.warning(
                    expected.origin(),
                    ("\"%s\" was expected on %s, and the costing date is %s: it is counted as there from this month on."
                                    + " Type a new date, or clear it once the goods are on the shelf")
                            .formatted(lot.item(), expected, date));
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
