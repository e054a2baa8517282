package perkilo.xlsx.author;

import java.util.List;
import perkilo.sheet.ResultSheet.Condition;
import perkilo.sheet.ResultSheet.Highlight;
import perkilo.sheet.ResultSheet.Holds;

/** Writes the conditional formats of a sheet: cells whose look depends on their value. */
final class Highlights {

    private Highlights() {}

    static void write(List<Highlight> highlights, StyleSheet styles, PartXml xml) {
        int priority = 1;
        for (Highlight highlight : highlights) {
            int style = styles.conditional(highlight.look());
            xml.open("conditionalFormatting", "sqref", highlight.range());
            if (highlight.condition() instanceof Holds holds) {
                formula(holds.formula(), style, priority, xml);
            } else if (highlight.condition() instanceof Condition condition) {
                condition(condition, highlight.range(), style, priority, xml);
            }
            xml.close();
            priority++;
        }
    }

    private static void condition(Condition condition, String range, int style, int priority, PartXml xml) {
        switch (condition) {
            case BELOW_ZERO -> comparison("lessThan", style, priority, xml);
            case ABOVE_ZERO -> comparison("greaterThan", style, priority, xml);
            case LOWEST_OF_RANGE -> formula(lowest(CellRange.of(range)), style, priority, xml);
        }
    }

    private static void formula(String formula, int style, int priority, PartXml xml) {
        xml.open("cfRule", "type", "expression", "dxfId", style, "priority", priority);
        xml.words("formula", formula).close();
    }

    private static void comparison(String operator, int style, int priority, PartXml xml) {
        xml.open("cfRule", "type", "cellIs", "dxfId", style, "priority", priority, "operator", operator);
        xml.words("formula", "0").close();
    }

    private static String lowest(CellRange range) {
        String first = range.firstCell();
        return "AND(ISNUMBER(" + first + ")," + first + "=MIN(" + range.absolute() + "))";
    }
}
