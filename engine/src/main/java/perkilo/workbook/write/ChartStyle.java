package perkilo.workbook.write;

import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickMark;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChartSpace;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTPlotArea;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextParagraph;

/** What a chart looks like around its series: quiet lines, small words, no frame. */
final class ChartStyle {

    /** Sizes of words in hundredths of a point. */
    private static final int TITLE_SIZE = 1200;

    private static final int AXIS_TITLE_SIZE = 900;
    private static final int USUAL_SIZE = 900;

    private ChartStyle() {}

    static void apply(XSSFChart chart, XDDFChartAxis across, XDDFValueAxis up) {
        frame(chart.getCTChartSpace());
        words(chart.getCTChart().getTitle(), TITLE_SIZE, Palette.INK);
        CTPlotArea area = chart.getCTChart().getPlotArea();
        area.getValAxList().forEach(axis -> words(axis.getTitle(), AXIS_TITLE_SIZE, Palette.MUTED));
        area.getCatAxList().forEach(axis -> words(axis.getTitle(), AXIS_TITLE_SIZE, Palette.MUTED));
        axis(across, Palette.MUTED);
        axis(up, Palette.RULE);
        up.getOrAddMajorGridProperties().setLineProperties(line(Palette.RULE));
    }

    private static void frame(CTChartSpace space) {
        if (!space.isSetRoundedCorners()) {
            space.addNewRoundedCorners();
        }
        space.getRoundedCorners().setVal(false);
        XDDFShapeProperties shape = new XDDFShapeProperties(space.isSetSpPr() ? space.getSpPr() : space.addNewSpPr());
        shape.setFillProperties(solid("FFFFFF"));
        shape.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
        CTTextBody words = space.isSetTxPr() ? space.getTxPr() : space.addNewTxPr();
        words.addNewBodyPr();
        CTTextParagraph paragraph = words.addNewP();
        dress(paragraph.addNewPPr().addNewDefRPr(), USUAL_SIZE, Palette.MUTED);
    }

    private static void words(CTTitle title, int size, String color) {
        for (CTTextParagraph paragraph : title.getTx().getRich().getPList()) {
            for (CTRegularTextRun run : paragraph.getRList()) {
                dress(run.isSetRPr() ? run.getRPr() : run.addNewRPr(), size, color);
            }
        }
    }

    private static void dress(CTTextCharacterProperties words, int size, String color) {
        words.setSz(size);
        words.setB(size == TITLE_SIZE);
        if (!words.isSetSolidFill()) {
            words.addNewSolidFill().addNewSrgbClr().setVal(Palette.bytes(color));
        }
    }

    private static void axis(XDDFChartAxis axis, String color) {
        axis.setMajorTickMark(AxisTickMark.NONE);
        axis.setMinorTickMark(AxisTickMark.NONE);
        axis.setTickLabelPosition(AxisTickLabelPosition.LOW);
        axis.getOrAddShapeProperties().setLineProperties(line(color));
    }

    static XDDFSolidFillProperties solid(String color) {
        return new XDDFSolidFillProperties(XDDFColor.from(Palette.bytes(color)));
    }

    /** A thin line. */
    static XDDFLineProperties line(String color) {
        XDDFLineProperties line = new XDDFLineProperties(solid(color));
        line.setWidth(0.75);
        return line;
    }
}
