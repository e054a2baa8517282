package perkilo.workbook.write;

import java.util.List;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFFontFormatting;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import perkilo.report.Look;
import perkilo.report.ResultSheet.Highlight;

/** Cells that change their look by their value. */
final class Highlights {

    private Highlights() {}

    static void apply(List<Highlight> highlights, XSSFSheet target) {
        XSSFSheetConditionalFormatting formatting = target.getSheetConditionalFormatting();
        for (Highlight highlight : highlights) {
            CellRangeAddress range = CellRangeAddress.valueOf(highlight.range());
            XSSFConditionalFormattingRule rule = rule(highlight, range, formatting);
            dress(rule, highlight.look());
            formatting.addConditionalFormatting(new CellRangeAddress[] {range}, rule);
        }
    }

    private static XSSFConditionalFormattingRule rule(
            Highlight highlight, CellRangeAddress range, XSSFSheetConditionalFormatting formatting) {
        return switch (highlight.condition()) {
            case BELOW_ZERO -> formatting.createConditionalFormattingRule(ComparisonOperator.LT, "0");
            case ABOVE_ZERO -> formatting.createConditionalFormattingRule(ComparisonOperator.GT, "0");
            case LOWEST_OF_RANGE -> formatting.createConditionalFormattingRule(lowest(range));
        };
    }

    private static String lowest(CellRangeAddress range) {
        String first = new CellRangeAddress(
                        range.getFirstRow(), range.getFirstRow(), range.getFirstColumn(), range.getFirstColumn())
                .formatAsString();
        return "AND(ISNUMBER(%s),%s=MIN(%s))".formatted(first, first, range.formatAsString(null, true));
    }

    private static void dress(XSSFConditionalFormattingRule rule, Look look) {
        XSSFFontFormatting font = rule.createFontFormatting();
        font.setFontColor(Palette.color(LookStyles.ink(look)));
        font.setFontStyle(false, LookStyles.isBold(look));
        String ground = LookStyles.groundOf(look);
        if (!ground.isEmpty()) {
            XSSFPatternFormatting pattern = rule.createPatternFormatting();
            pattern.setFillBackgroundColor(Palette.color(ground));
            pattern.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
        }
    }
}
