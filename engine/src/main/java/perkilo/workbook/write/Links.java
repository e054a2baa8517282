package perkilo.workbook.write;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import perkilo.origin.Origin;
import perkilo.report.SheetNames;

/**
 * Where a click on a cell may lead: to cells of the same workbook alone.
 *
 * @param bookName the workbook's file name as origins give it
 * @param ownSheets the sheets of the person
 * @param resultSheets final names by the names that the result sheets were built with
 */
record Links(String bookName, List<String> ownSheets, Map<String, String> resultSheets) {

    private static final Pattern CELL = Pattern.compile("\\$?[A-Za-z]{1,3}\\$?[1-9][0-9]{0,6}");

    Links {
        ownSheets = List.copyOf(ownSheets);
        resultSheets = Map.copyOf(resultSheets);
    }

    /** The place as a link gives it, such as {@code 'Offers'!F12}; empty where it is not in this workbook. */
    Optional<String> locationOf(Origin origin) {
        String cell = origin.cell().isEmpty() ? "A1" : origin.cell();
        if (!CELL.matcher(cell).matches()) {
            return Optional.empty();
        }
        return sheetOf(origin).map(sheet -> SheetNames.quoted(sheet) + "!" + cell);
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
