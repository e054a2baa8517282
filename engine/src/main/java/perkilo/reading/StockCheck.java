package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import perkilo.model.Book;
import perkilo.model.Material;
import perkilo.model.StockLot;
import perkilo.names.Names;
import perkilo.origin.Day;
import perkilo.reading.table.Findings;
import perkilo.units.Measure;

/** Checks that stock is in units that fit its items, may still be used, and is not overdue. */
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
        reportOverdue(date);
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
            findings.warning(lot.origin(), PlanMessages.expired(lot.item(), expires.date(), date));
        } else if (expires != null && expected != null && expires.date().isBefore(expected.date())) {
            findings.warning(
                    expires.origin(), PlanMessages.expiresBeforeArrival(lot.item(), expires.date(), expected.date()));
        } else if (expected != null && !expected.date().isAfter(date)) {
            overdue.add(lot);
        }
    }

    private void reportOverdue(LocalDate date) {
        if (overdue.isEmpty()) {
            return;
        }
        Day first = Objects.requireNonNull(overdue.get(0).expected());
        if (overdue.size() == 1 && !isPlainlyThere(overdue.get(0), date)) {
            findings.warning(first.origin(), PlanMessages.overdue(overdue.get(0).item(), first.date(), date));
            return;
        }
        findings.warning(first.origin(), PlanMessages.overdue(cells(), Math.max(0, overdue.size() - NAMED), date));
    }

    /**
     * Whether goods are clearly on the shelf: they were due long ago, or their expiry date is known. Their day is that
     * of their arrival.
     */
    private static boolean isPlainlyThere(StockLot lot, LocalDate date) {
        Day expected = lot.expected();
        return lot.expires() != null || (expected != null && expected.date().isBefore(date.minusDays(DAYS_LATE)));
    }

    private List<String> cells() {
        return overdue.stream()
                .limit(NAMED)
                .map(lot -> Objects.requireNonNull(lot.expected()).origin().cell())
                .toList();
    }

    private void checkPieces(StockLot lot) {
        if (!lot.unit().isCount()) {
            findings.error(
                    lot.quantity().origin(),
                    PlanMessages.componentNotInPieces(lot.item(), lot.unit().symbol()));
        }
    }

    private void checkWeight(StockLot lot, Material material) {
        if (lot.unit().isCount()) {
            findings.error(lot.quantity().origin(), PlanMessages.materialInPieces(lot.item()));
        }
        if (lot.unit().kind() == Measure.Kind.VOLUME && material.density() == null) {
            findings.error(
                    lot.quantity().origin(),
                    PlanMessages.noDensity(lot.item(), lot.unit().symbol()));
        }
    }
}
