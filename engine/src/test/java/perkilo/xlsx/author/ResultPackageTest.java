package perkilo.xlsx.author;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import perkilo.origin.Origin;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.sheet.Report;
import perkilo.sheet.SheetBuilder;

/** The content and the look of cells in result sheets. */
final class ResultPackageTest {

    private XSSFWorkbook workbook = new XSSFWorkbook();

    @BeforeEach
    void the_sample_is_written() throws IOException {
        workbook =
                written(SampleReport.build(), Map.of("Cost summary", "Cost summary 2", "Cost detail", "Cost detail"));
    }

    @AfterEach
    void close() throws IOException {
        workbook.close();
    }

    private static XSSFWorkbook written(Report report, Map<String, String> names) throws IOException {
        Links links = new Links(SampleBook.FILE, List.of("Offers", "Köln's notes"), names);
        return Written.read(report, links);
    }

    private XSSFSheet summary() {
        return workbook.getSheet("Cost summary 2");
    }

    private XSSFSheet detail() {
        return workbook.getSheet("Cost detail");
    }

    @Test
    void a_formula_stands_with_its_value() {
        XSSFCell cost = detail().getRow(4).getCell(5);
        assertThat(cost.getCTCell().getF().getStringValue())
                .isEqualTo("'Cost detail'!E5*'Cost detail'!D5*IF(ISNUMBER('Offers'!D2),'Offers'!D2,6.4)"
                        + "*(1+IF(ISNUMBER('Offers'!E2),"
                        + "'Offers'!E2/IF(LEFT(CELL(\"format\",'Offers'!E2))=\"P\",1,100),0.025))");
        assertThat(cost.getCTCell().getV()).isEqualTo("328");
    }

    @Test
    void formulas_and_charts_follow_the_final_names() {
        assertThat(summary().getRow(5).getCell(5).getCTCell().getF().getStringValue())
                .isEqualTo("'Cost summary 2'!B6+'Cost summary 2'!C6+'Cost summary 2'!D6+'Cost summary 2'!E6");
    }

    @Test
    void a_plain_number_has_no_formula_and_17_digits() throws IOException {
        BigDecimal third = new BigDecimal("0.33333333333333333333");
        SheetBuilder sheet = new SheetBuilder("One");
        sheet.value(0, 0, Expr.of(third), NumberFormat.FACTOR, Look.PLAIN);
        try (XSSFWorkbook one = written(new Report(List.of(sheet.build())), Map.of("One", "One"))) {
            var cell = one.getSheetAt(0).getRow(0).getCell(0).getCTCell();
            assertThat(cell.isSetF()).isFalse();
            assertThat(cell.getV()).isEqualTo("0.33333333333333333");
        }
    }

    @Test
    void words_are_never_a_formula() {
        XSSFCell remark = detail().getRow(4).getCell(7);
        assertThat(remark.getCellType()).isEqualTo(CellType.STRING);
        assertThat(remark.getStringCellValue()).isEqualTo("=not a formula");
        assertThat(remark.getCellStyle().getQuotePrefixed()).isTrue();
        assertThat(detail().getRow(5).getCell(7).getCellStyle().getQuotePrefixed())
                .isFalse();
    }

    @Test
    void links_lead_to_cells_of_this_workbook_alone() {
        assertThat(detail().getRow(4).getCell(0).getHyperlink().getLocation()).isEqualTo("'Offers'!B2");
        assertThat(summary().getRow(11).getCell(0).getHyperlink().getLocation()).isEqualTo("'Cost detail'!A5");
        assertThat(summary().getRow(12).getCell(0).getHyperlink()).isNull();
    }

    @Test
    void a_link_to_a_sheet_of_another_file_is_left_out() {
        Links links = new Links("cream.xlsx", List.of("Offers"), Map.of("Swaps", "Swaps 2"));
        assertThat(links.locationOf(new Origin("other.xlsx", "Offers", "A1"))).isEmpty();
        assertThat(links.locationOf(new Origin("cream.xlsx", "Prices", "A1"))).isEmpty();
        assertThat(links.locationOf(new Origin("cream.xlsx", "Offers", ""))).contains("'Offers'!A1");
        assertThat(links.locationOf(new Origin("", "Swaps", "B2"))).contains("'Swaps 2'!B2");
    }

    @Test
    void looks_differ() {
        XSSFCell packs = detail().getRow(4).getCell(4);
        assertThat(packs.getCellStyle().getFillForegroundColorColor().getARGBHex())
                .isEqualTo("FF" + Palette.CHOICE_GROUND);
        assertThat(packs.getCellStyle().getBorderLeft()).isEqualTo(BorderStyle.THIN);
        XSSFCell head = detail().getRow(3).getCell(4);
        assertThat(head.getCellStyle().getWrapText()).isTrue();
        assertThat(head.getCellStyle().getFont().getBold()).isTrue();
        assertThat(detail().getRow(4).getCell(5).getCellStyle().getDataFormatString())
                .isEqualTo("#,##0.00\\ \"EUR\";-#,##0.00\\ \"EUR\";\"–\"");
    }

    @Test
    void few_styles_serve_many_cells() {
        assertThat(workbook.getNumCellStyles()).isLessThan(30);
    }

    @Test
    void what_moves_stays_in_sight_and_is_printed_again() {
        assertThat(detail().getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 4);
        assertThat(detail().getPaneInformation().getVerticalSplitPosition()).isEqualTo((short) 1);
        assertThat(detail().getRepeatingRows().formatAsString()).isEqualTo("1:4");
        assertThat(detail().getPrintSetup().getLandscape()).isTrue();
        assertThat(detail().getPrintSetup().getFitWidth()).isEqualTo((short) 1);
        assertThat(detail().getPrintSetup().getFitHeight()).isZero();
        assertThat(detail().getFitToPage()).isTrue();
        assertThat(detail().getCTWorksheet().getAutoFilter().getRef()).isEqualTo("A4:H8");
        assertThat(detail().getFooter().getLeft()).isEqualTo("&A");
    }

    @Test
    void no_tab_is_selected_together_with_the_persons() {
        for (var sheet : workbook) {
            assertThat(sheet.isSelected()).isFalse();
        }
    }

    @Test
    void conditions_compare_with_zero_and_with_the_range() {
        var conditions = detail().getSheetConditionalFormatting();
        assertThat(conditions.getConditionalFormattingAt(0).getRule(0).getFormula1())
                .isEqualTo("0");
        assertThat(conditions.getConditionalFormattingAt(1).getRule(0).getFormula1())
                .isEqualTo("AND(ISNUMBER(F5),F5=MIN($F$5:$F$8))");
    }

    @Test
    void charts_carry_their_values() {
        List<XSSFChart> charts = summary().getDrawingPatriarch().getCharts();
        assertThat(charts).hasSize(2);
        var curve =
                charts.get(0).getCTChart().getPlotArea().getScatterChartArray(0).getSerArray(0);
        assertThat(curve.getYVal().getNumRef().getF()).isEqualTo("'Cost summary 2'!$F$6:$F$10");
        assertThat(curve.getYVal().getNumRef().getNumCache().getPtArray(1).getV())
                .isEqualTo("1.4070525");
        assertThat(curve.getXVal().getNumRef().getNumCache().getPtArray(4).getV())
                .isEqualTo("10000.0");
        var columns = charts.get(1).getCTChart().getPlotArea().getBarChartArray(0);
        assertThat(columns.getSerArray()).hasSize(4);
        assertThat(columns.getSerArray(0)
                        .getCat()
                        .getStrRef()
                        .getStrCache()
                        .getPtArray(0)
                        .getV())
                .isEqualTo("500");
    }

    @Test
    void axes_are_titled_and_the_wide_one_is_logarithmic() {
        var axes = summary().getDrawingPatriarch().getCharts().get(0).getAxes();
        assertThat(axes.get(0).getLogBase()).isEqualTo(10);
        assertThat(axes.get(0).getMinimum()).isEqualTo(100);
        assertThat(axes.get(0).getMaximum()).isEqualTo(10_000);
        var area =
                summary().getDrawingPatriarch().getCharts().get(0).getCTChart().getPlotArea();
        assertThat(area.getValAxArray(0)
                        .getTitle()
                        .getTx()
                        .getRich()
                        .getPArray(0)
                        .getRArray(0)
                        .getT())
                .isEqualTo("Units (logarithmic)");
    }
}
