package perkilo.xlsx.author;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import perkilo.origin.Origin;
import perkilo.sheet.SheetNames;

/**
 * The places that a cell may link to: cells of the same workbook, and other files that were named as such.
 *
 * @param bookName the workbook's file name as origins name it
 * @param ownSheets the names of the person's sheets
 * @param resultSheets final names by the names that the result sheets were built with
 * @param files addresses of other files; an origin whose file is one of them links there
 */
public record Links(String bookName, List<String> ownSheets, Map<String, String> resultSheets, Set<String> files) {

    private static final Pattern CELL = Pattern.compile(
            "(\\$?[A-Za-z]{1,3}\\$?[1-9][0-9]{0,6}(?::\\$?[A-Za-z]{1,3}\\$?[1-9][0-9]{0,6})?)(?:[, ].*)?");

    public Links {
        ownSheets = List.copyOf(ownSheets);
        resultSheets = Map.copyOf(resultSheets);
        files = Set.copyOf(files);
    }

    /** Links inside one workbook only. */
    public Links(String bookName, List<String> ownSheets, Map<String, String> resultSheets) {
        this(bookName, ownSheets, resultSheets, Set.of());
    }

    /** Whether a cell can link to this place. */
    boolean lead(Origin origin) {
        return locationOf(origin).isPresent() || files.contains(origin.file());
    }

    /** The place inside another file, such as {@code 'Offers'!F12}; empty for the file as a whole. */
    static Optional<String> locationInFile(Origin origin) {
        return origin.sheet().isEmpty()
                ? Optional.empty()
                : Optional.of(SheetNames.quoted(origin.sheet()) + "!"
                        + firstCells(origin).orElse("A1"));
    }

    /** The place as a link writes it, such as {@code 'Offers'!F12}; empty if it is not in this workbook. */
    Optional<String> locationOf(Origin origin) {
        Optional<String> cells = origin.cell().isEmpty() ? Optional.of("A1") : firstCells(origin);
        return cells.flatMap(cell -> sheetOf(origin).map(sheet -> SheetNames.quoted(sheet) + "!" + cell));
    }

    /** The cell, or the first range of several; empty for a line of a text file. */
    private static Optional<String> firstCells(Origin origin) {
        Matcher cells = CELL.matcher(origin.cell());
        return cells.matches() ? Optional.of(cells.group(1)) : Optional.empty();
    }

    private Optional<String> sheetOf(Origin origin) {
        String result = resultSheets.get(origin.sheet());
        if (result != null && origin.file().isEmpty()) {
            return Optional.of(result);
        }
        boolean here = origin.file().isEmpty() || origin.file().equals(bookName);
        return here && ownSheets.contains(origin.sheet()) ? Optional.of(origin.sheet()) : Optional.empty();
    }
}
