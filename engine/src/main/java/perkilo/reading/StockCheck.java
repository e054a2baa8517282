package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.StockLot;
import perkilo.names.Names;
import perkilo.origin.Day;
import perkilo.reading.table.Findings;
import perkilo.units.Measure;

/** Whether stock is measured in units that fit its items, may still be used, and is not overdue. */
final class StockCheck {

    private static final int DAYS_LATE = 31;
    private static final int NAMED = 8;

    private final List<StockLot> overdue = new ArrayList<>();
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
        tellOverdue(date);
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
            overdue.add(lot);
        }
    }

    private void tellOverdue(LocalDate date) {
        if (overdue.isEmpty()) {
            return;
        }
        Day first = Objects.requireNonNull(overdue.get(0).expected());
        if (overdue.size() == 1 && !isPlainlyThere(overdue.get(0), date)) {
            findings.warning(
                    first.origin(),
                    ("\"%s\" was expected on %s, and the costing date is %s: it is counted as there from this month on."
                                    + " Type a new date, or clear it once the goods are on the shelf")
                            .formatted(overdue.get(0).item(), first, date));
            return;
        }
        findings.warning(
                first.origin(),
                ("the day of delivery is not after the costing date %s in %s: %s counted as on the shelf."
                                + " Type a new date for what is still to come, and clear that of what is there")
                        .formatted(date, cells(), overdue.size() == 1 ? "this lot is" : "these lots are"));
    }

    /** What arrived long ago, or whose expiry was read off it, is on the shelf: its day is that of its arrival. */
    private static boolean isPlainlyThere(StockLot lot, LocalDate date) {
        Day expected = lot.expected();
        return lot.expires() != null || (expected != null && expected.date().isBefore(date.minusDays(DAYS_LATE)));
    }

    private String cells() {
        String named = overdue.stream()
                .limit(NAMED)
                .map(lot -> Objects.requireNonNull(lot.expected()).origin().cell())
                .collect(Collectors.joining(", "));
        int more = overdue.size() - NAMED;
        return more > 0 ? "%s and %d more cells".formatted(named, more) : named;
    }

    private void checkPieces(StockLot lot) {
        if (!lot.unit().isCount()) {
            findings.error(
                    lot.quantity().origin(),
                    "the stock of \"%s\" is in %s, but it is a component; expected pieces, with each as the unit"
                            .formatted(lot.item(), lot.unit().symbol()));
        }
    }

    private void checkWeight(StockLot lot, Material material) {
        if (lot.unit().isCount()) {
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
