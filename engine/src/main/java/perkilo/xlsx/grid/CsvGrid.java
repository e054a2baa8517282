package perkilo.xlsx.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import perkilo.origin.Finding;
import perkilo.origin.Origin;

/**
 * A delimited text file as a grid.
 *
 * <p>If a comma separates the fields, the point in a bare {@code 1.053} is a decimal point, so the field is a number.
 * With other delimiters the point may also separate thousands, so the field stays text; so it does beside quoted
 * numbers with a decimal comma, such as {@code "37,13"}.
 */
final class CsvGrid {

    private static final int MOST_DIGITS = 15;

    private static final Pattern COMMA_DECIMAL = Pattern.compile(
            "\"(?:[€£$]|[A-Z]{3}[ \u00A0])?[ \u00A0]?\\d{1,3}(?:[.\u00A0 ]?\\d{3})*,\\d{1,2}(?:[ \u00A0]?(?:[€£$]|[A-Z]{3}\\b)[^\"\\n]{0,16})?\"");
    private static final Pattern POINT_THOUSANDS = Pattern.compile("[+-]?\\d{1,3}\\.\\d{3}");

    private CsvGrid() {}

    /** The tables of a file, one; findings tell how it was read if that is doubtful. */
    static Grids of(String file, TextFile.Decoded content) {
        List<Finding> findings = new ArrayList<>();
        if (content.guessed()) {
            findings.add(Finding.note(place(file, content.line()), FileMessages.macRoman(content.word())));
        }
        return new Grids(List.of(of(file, content.text(), findings)), findings);
    }

    private static Grid of(String file, String text, List<Finding> findings) {
        DialectFinder.Found found = DialectFinder.find(text);
        Dialect dialect = found.dialect();
        boolean pointDecimals = dialect.delimiter().equals(",");
        boolean commaDecimals = pointDecimals
                && text.indexOf('"') >= 0
                && COMMA_DECIMAL.matcher(text).find();
        TextCells maker = new TextCells();
        GridRows.Builder rows = new GridRows.Builder(maker);
        PackedRow row = new PackedRow();
        int[] number = {0};
        int[] usualAt = {0};
        Csv csv = new Csv(text, dialect, found.usual());
        csv.read(line -> {
            row.clear();
            pack(line.fields(), pointDecimals, commaDecimals, row, maker);
            if (row.count() > 0) {
                rows.add(number[0], line.number(), row);
            }
            if (usualAt[0] == 0 && line.fields().size() == found.usual()) {
                usualAt[0] = line.number();
            }
            number[0]++;
        });
        tellDialect(found, place(file, Math.max(1, usualAt[0])), findings);
        List<Integer> odd = csv.oddLines();
        if (!odd.isEmpty()) {
            findings.add(Finding.warning(place(file, odd.get(0)), FileMessages.oddMarks(odd)));
        }
        return Grid.ofText(file, title(file), rows.rows());
    }

    private static void tellDialect(DialectFinder.Found found, Origin place, List<Finding> findings) {
        String delimiter = found.dialect().delimiter();
        String other = found.other();
        if (other != null) {
            findings.add(Finding.note(
                    place, FileMessages.otherDelimiter(delimiter, found.usual(), other, found.otherUsual())));
        } else if (found.weak()) {
            findings.add(Finding.note(place, FileMessages.weakDelimiter(delimiter, found.usual())));
        } else if (found.dialect().quote() == '\'') {
            findings.add(Finding.note(place, FileMessages.apostrophes()));
        }
    }

    private static Origin place(String file, int line) {
        return Origin.ofLine(file, "", line);
    }

    private static void pack(
            List<Csv.Field> fields, boolean pointDecimals, boolean commaDecimals, PackedRow row, TextCells maker) {
        for (int column = 0; column < fields.size(); column++) {
            Csv.Field field = fields.get(column);
            String text = field.text().strip();
            boolean doubtful = commaDecimals && POINT_THOUSANDS.matcher(text).matches();
            if (pointDecimals && !field.quoted() && isNumber(text) && !doubtful) {
                row.number(column, 0, text);
            } else if (!text.isEmpty()) {
                maker.pack(row, column, Cell.text(field.text()));
            }
        }
    }

    /** Whether a text is a number with a decimal point, if it has decimals; at most fifteen digits on either side. */
    private static boolean isNumber(String text) {
        int at = !text.isEmpty() && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        int point = afterDigits(text, at);
        boolean whole = point > at && point - at <= MOST_DIGITS;
        if (!whole || point == text.length()) {
            return whole;
        }
        int end = afterDigits(text, point + 1);
        return text.charAt(point) == '.' && end == text.length() && end > point + 1 && end - point - 1 <= MOST_DIGITS;
    }

    private static int afterDigits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    private static String title(String file) {
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }
}
