package perkilo.xlsx.author;

/** Namespaces, kinds of parts and kinds of relationships, as the standard (ECMA-376) names them. */
final class StandardNames {

    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static final String PACKAGE_RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
    static final String CONTENT_TYPES = "http://schemas.openxmlformats.org/package/2006/content-types";
    static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";
    static final String SHEET_DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
    static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";

    static final String RELATIONSHIPS_TYPE = "application/vnd.openxmlformats-package.relationships+xml";

    private static final String SPREADSHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    static final String WORKBOOK_TYPE = SPREADSHEET_TYPE + "sheet.main+xml";
    static final String SHEET_TYPE = SPREADSHEET_TYPE + "worksheet+xml";
    static final String STYLES_TYPE = SPREADSHEET_TYPE + "styles+xml";
    static final String DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
    static final String CHART_TYPE = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

    private StandardNames() {}
}
