package perkilo.workbook.write;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import perkilo.report.Look;
import perkilo.report.NumberFormat;

/** The styles of one workbook's cells, each made once. */
final class CellStyles {

    /**
     * What tells one style from another.
     *
     * @param look what the cell is for
     * @param format how its number is shown
     * @param quoted whether it holds words that an office suite would take for a formula when they are edited
     * @param wrapped whether its words run over several lines
     * @param linked whether a click leads to another cell
     * @param place where its words stand
     */
    record Key(Look look, NumberFormat format, boolean quoted, boolean wrapped, boolean linked, Place place) {}

    /** Where words stand in their cell. */
    enum Place {
        /** As the office suite does it: words at the left, numbers at the right. */
        USUAL,
        /** At the right, as the numbers below them. */
        RIGHT,
        /** A little away from the number at their left. */
        INDENTED
    }

    private final XSSFWorkbook workbook;
    private final Map<Key, XSSFCellStyle> styles = new HashMap<>();

    CellStyles(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    XSSFCellStyle style(Key key) {
        return styles.computeIfAbsent(key, this::made);
    }

    private XSSFCellStyle made(Key key) {
        XSSFCellStyle style = workbook.createCellStyle();
        LookStyles.apply(key.look(), key.linked(), workbook, style);
        style.setDataFormat(workbook.createDataFormat().getFormat(key.format().code()));
        style.setQuotePrefixed(key.quoted());
        style.setWrapText(key.wrapped());
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        place(key.place(), style);
        return style;
    }

    private static void place(Place place, XSSFCellStyle style) {
        switch (place) {
            case USUAL -> style.setAlignment(HorizontalAlignment.GENERAL);
            case RIGHT -> style.setAlignment(HorizontalAlignment.RIGHT);
            case INDENTED -> {
                style.setAlignment(HorizontalAlignment.LEFT);
                style.setIndention((short) 1);
            }
        }
    }
}
