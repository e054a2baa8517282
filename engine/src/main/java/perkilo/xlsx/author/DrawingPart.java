package perkilo.xlsx.author;

import java.util.List;
import perkilo.sheet.Chart;

/** The part that places the charts of a sheet. */
final class DrawingPart {

    private final PartXml xml = new PartXml(
            "xdr:wsDr",
            "xmlns:xdr",
            StandardNames.SHEET_DRAWING,
            "xmlns:a",
            StandardNames.DRAWING,
            "xmlns:c",
            StandardNames.CHART);

    private DrawingPart() {}

    /** Writes a drawing and its charts; returns the name of the drawing's part. */
    static String write(List<Chart> charts, ChartValues values, PartList parts) {
        String part = parts.free("/xl/drawings/drawing1.xml");
        Relationships relationships = new Relationships(part);
        DrawingPart drawing = new DrawingPart();
        for (Chart chart : charts) {
            String chartPart = parts.free("/xl/charts/chart1.xml");
            parts.add(chartPart, StandardNames.CHART_TYPE, ChartPart.xml(chart, values), new Relationships(chartPart));
            drawing.place(chart, relationships.add("chart", chartPart));
        }
        parts.add(part, StandardNames.DRAWING_TYPE, drawing.xml.bytes(), relationships);
        return part;
    }

    private void place(Chart chart, String reference) {
        xml.open("xdr:twoCellAnchor");
        corner("xdr:from", chart.place().left(), chart.place().top());
        corner("xdr:to", chart.place().right() + 1, chart.place().bottom() + 1);
        xml.open("xdr:graphicFrame", "macro", "");
        xml.open("xdr:nvGraphicFramePr");
        String number = reference.replaceAll("\\D", "");
        xml.leaf("xdr:cNvPr", "id", number, "name", "Chart " + number, "descr", chart.title());
        xml.leaf("xdr:cNvGraphicFramePr").close();
        xml.open("xdr:xfrm")
                .leaf("a:off", "x", 0, "y", 0)
                .leaf("a:ext", "cx", 0, "cy", 0)
                .close();
        xml.open("a:graphic").open("a:graphicData", "uri", StandardNames.CHART);
        xml.leaf("c:chart", "xmlns:r", StandardNames.RELATIONSHIPS, "r:id", reference);
        xml.close(3).leaf("xdr:clientData").close();
    }

    private void corner(String name, int column, int row) {
        xml.open(name).words("xdr:col", String.valueOf(column)).words("xdr:colOff", "0");
        xml.words("xdr:row", String.valueOf(row)).words("xdr:rowOff", "0").close();
    }
}
