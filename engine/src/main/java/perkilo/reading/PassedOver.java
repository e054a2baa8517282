package perkilo.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import perkilo.names.Names;
import perkilo.offers.Listed;
import perkilo.origin.Origin;
import perkilo.reading.table.Findings;
import perkilo.reading.table.TableRow;
import perkilo.schema.OffersSheet;
import perkilo.xlsx.grid.Cell;

/** Rows of price lists that are not read, because no item that the book names is in them. */
final class PassedOver {

    private final List<Listed> listed = new ArrayList<>();

    /** Names by themselves, so that lists that repeat them share them. */
    private final Map<String, String> once = new HashMap<>();

    private int rows;
    private Cell lastDay = Cell.BLANK;
    private @Nullable LocalDate day;

    /** Takes note of such a row: what a supplier's list holds says whether a newer list replaces an older one. */
    void add(TableRow row) {
        rows++;
        LocalDate quoted = day(row);
        if (quoted != null) {
            listed.add(new Listed(
                    once(Names.key(row.cell(OffersSheet.SUPPLIER).text())),
                    once(Names.key(row.cell(OffersSheet.ITEM).text())),
                    row.table().grid().file(),
                    quoted));
        }
    }

    private @Nullable LocalDate day(TableRow row) {
        Cell cell = row.cell(OffersSheet.QUOTED_ON);
        if (!cell.equals(lastDay)) {
            lastDay = cell;
            day = row.table().row(row.number(), new Findings()).date(OffersSheet.QUOTED_ON);
        }
        return cell.isBlank() ? null : day;
    }

    private String once(String name) {
        String known = once.putIfAbsent(name, name);
        return known == null ? name : known;
    }

    /** What the lists hold besides what is read. */
    List<Listed> listed() {
        return listed;
    }

    /**
     * Says how many rows they are, if there is one.
     *
     * @param book the workbook as a whole
     */
    void report(Origin book, Findings findings) {
        if (rows > 0) {
            findings.note(book, OfferMessages.passedOver(rows));
        }
    }
}
