package perkilo.layouts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;
import perkilo.reading.table.CurrencySign;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * What the lines above a list say: its date, its validity, the currency and what prices are for.
 *
 * @param lines the rows above the headers, each as one text
 * @param quotedOn the list's day; null if they give none
 * @param validUntil its last day; null if they give none
 * @param ambiguous the cell of a date that can be two days; null if there is none
 * @param note currency and what prices are for
 */
public record TitleFacts(
        List<String> lines,
        @Nullable LocalDate quotedOn,
        @Nullable LocalDate validUntil,
        @Nullable Origin ambiguous,
        PriceNote note) {

    private static final Pattern UNTIL = Pattern.compile(
            "(?iu)(valid (?:until|to|till)|g[üu]e?ltig bis|\\bbis\\b|jusqu|expires|until|\\bau\\b|\\bto\\b|[-–]\\s*$)");
    private static final Pattern PRICES = Pattern.compile("(?iu)\\b(prices?|preise?n?|prix|tarifs?|alle preise)\\b");
    private static final Pattern CODE = Pattern.compile("[€£$¥]|US\\$|\\b[A-Z]{3}\\b");
    private static final Pattern BASIS =
            Pattern.compile("(?iu)(?:/|\\b(?:per|pro|je|par|au|le)\\s+)\\s*(\\d*\\s*[\\p{L}]+)");

    /** What the lines above the headers of a layout say. */
    public static TitleFacts of(ListLayout layout, ListDates dates) {
        List<String> lines = new ArrayList<>();
        LocalDate quoted = null;
        LocalDate until = null;
        Origin ambiguous = null;
        PriceNote note = PriceNote.NONE;
        Grid grid = layout.grid();
        for (int row : grid.rows().between(-1, layout.firstHeader())) {
            String line = line(grid.row(row));
            lines.add(line);
            for (ListDates.Placed date : dates.all(line)) {
                if (date.read().ambiguous()) {
                    ambiguous = grid.origin(row, grid.row(row).firstKey());
                } else if (UNTIL.matcher(date.before()).find()) {
                    until = until == null ? date.read().day() : until;
                } else {
                    quoted = quoted == null ? date.read().day() : quoted;
                }
            }
            note = note.equals(PriceNote.NONE) ? note(line) : note;
        }
        return new TitleFacts(lines, quoted, until, ambiguous, note);
    }

    private static String line(Map<Integer, Cell> cells) {
        StringBuilder line = new StringBuilder();
        cells.values()
                .forEach(cell -> line.append(line.length() == 0 ? "" : " ").append(cell.text()));
        return line.toString();
    }

    private static PriceNote note(String line) {
        if (!PRICES.matcher(line).find()) {
            return PriceNote.NONE;
        }
        Set<CurrencySign> signs = new HashSet<>();
        CODE.matcher(line)
                .results()
                .forEach(code -> CurrencySign.parse(code.group()).ifPresent(signs::add));
        Optional<PriceNote> basis = BASIS.matcher(line)
                .results()
                .flatMap(found -> PriceNote.of("per " + found.group(1)).stream())
                .filter(PriceNote::saysWhatFor)
                .findFirst();
        CurrencySign sign = signs.size() == 1 ? signs.iterator().next() : null;
        PriceNote said = basis.orElse(PriceNote.NONE);
        return new PriceNote(sign, said.per(), said.pack(), said.content());
    }
}
