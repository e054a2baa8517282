package perkilo.desk;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.origin.Decimals;
import perkilo.reading.table.NumberText;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.grid.UnreadableFileException;
import perkilo.xlsx.splice.CellChange;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/** Service that types into cells of a person's workbook, and changes nothing else in it. */
public final class EditBook {

    private static final Pattern CELL = Pattern.compile("([A-Z]{1,3})([1-9]\\d{0,6})");
    private static final int LETTERS = 26;

    /**
     * What is typed into a cell.
     *
     * @param sheet as its tab shows it
     * @param cell as a spreadsheet names it
     * @param words as a person types them: a number, a date, words; empty to empty the cell
     */
    public record Typed(String sheet, String cell, String words) {}

    /**
     * Types into cells. A backup is kept beside the workbook.
     *
     * @param today used in the name of the backup
     * @throws IOException whose message is a sentence for a person, if a cell cannot be changed or the file not written
     */
    public Written edit(OpenedBook opened, List<Typed> typed, LocalDate today) throws IOException {
        List<Grid> sheets = Grids.ofBook(opened.sources().book()).sheets();
        List<CellChange> changes = new ArrayList<>();
        for (Typed one : typed) {
            changes.add(change(one, sheets));
        }
        return new WorkbookWriter().change(opened.book(), changes, today);
    }

    private static CellChange change(Typed typed, List<Grid> sheets) throws IOException {
        Matcher cell = CELL.matcher(typed.cell().strip().toUpperCase(Locale.ROOT));
        if (!cell.matches()) {
            throw new UnreadableFileException(DeskMessages.noSuchCell(typed.cell()));
        }
        int row = Integer.parseInt(cell.group(2)) - 1;
        int column = 0;
        for (char letter : cell.group(1).toCharArray()) {
            column = column * LETTERS + letter - 'A' + 1;
        }
        int place = column - 1;
        Cell old = sheets.stream()
                .filter(sheet -> sheet.sheet().equals(typed.sheet()))
                .findFirst()
                .map(sheet -> sheet.at(row, place))
                .orElse(Cell.BLANK);
        return meant(typed, row, place, old);
    }

    /** What a spreadsheet program would make of the words in that cell. */
    private static CellChange meant(Typed typed, int row, int column, Cell old) throws IOException {
        String words = typed.words().strip();
        NumberText number = NumberText.parse(words);
        if (number instanceof NumberText.Ambiguous two && two.words().isEmpty()) {
            throw new UnreadableFileException(
                    DeskMessages.twoMeanings(words, Decimals.plain(two.large()), Decimals.plain(two.small())));
        }
        if (number instanceof NumberText.Parsed one) {
            boolean percent = old.isPercentFormat();
            if (one.words().isEmpty() || (percent && one.words().equals("%"))) {
                BigDecimal value = percent ? one.value().movePointLeft(2) : one.value();
                return new CellChange(typed.sheet(), row, column, value, "");
            }
        }
        return new CellChange(typed.sheet(), row, column, null, words);
    }
}
