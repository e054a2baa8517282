package perkilo.workbook.author;

import java.util.List;
import perkilo.report.ResultSheet.Highlight;

/** Cells that change their look by their value. */
final class Highlights {

    private Highlights() {}

    static void write(List<Highlight> highlights, StyleSheet styles, Xml xml) {
        int priority = 1;
        for (Highlight highlight : highlights) {
            int style = styles.conditional(highlight.look());
            xml.open("conditionalFormatting", "sqref", highlight.range());
            switch (highlight.condition()) {
                case BELOW_ZERO -> comparison("lessThan", style, priority, xml);
                case ABOVE_ZERO -> comparison("greaterThan", style, priority, xml);
                case LOWEST_OF_RANGE -> {
                    xml.open("cfRule", "type", "expression", "dxfId", style, "priority", priority);
                    xml.words("formula", lowest(CellRange.of(highlight.range())))
                            .close();
                }
            }
            xml.close();
            priority++;
        }
    }

    private static void comparison(String operator, int style, int priority, Xml xml) {
        xml.open("cfRule", "type", "cellIs", "dxfId", style, "priority", priority, "operator", operator);
        xml.words("formula", "0").close();
    }

    private static String lowest(CellRange range) {
        String first = range.firstCell();
        return "AND(ISNUMBER(%s),%s=MIN(%s))".formatted(first, first, range.absolute());
    }
}
