package perkilo.xlsx.splice;

import java.util.List;

/** The XML of a result sheet, with style numbers changed to those in the person's workbook. */
final class SheetXml {

    private final XmlEdits edits;
    private final XmlElement sheet;
    private final StyleMerge styles;

    private SheetXml(XmlElement sheet, StyleMerge styles) {
        this.sheet = sheet;
        this.styles = styles;
        this.edits = new XmlEdits(sheet);
    }

    static String restyled(XmlElement sheet, StyleMerge styles) throws UnfitPackageException {
        return new SheetXml(sheet, styles).restyled();
    }

    private String restyled() throws UnfitPackageException {
        for (XmlElement columns : sheet.children("cols")) {
            restyle(columns.children("col"), "style");
        }
        for (XmlElement data : sheet.children("sheetData")) {
            restyle(data.children("row"), "s");
            for (XmlElement row : data.children("row")) {
                restyle(row.children("c"), "s");
            }
        }
        for (XmlElement conditions : sheet.children("conditionalFormatting")) {
            for (XmlElement rule : conditions.children("cfRule")) {
                if (rule.get("dxfId") != null) {
                    edits.set(rule, "dxfId", String.valueOf(styles.conditionalFormat(rule.number("dxfId", 0))));
                }
            }
        }
        return edits.apply();
    }

    private void restyle(List<XmlElement> elements, String attribute) throws UnfitPackageException {
        for (XmlElement element : elements) {
            if (element.get(attribute) != null) {
                edits.set(element, attribute, String.valueOf(styles.format(element.number(attribute, 0))));
            }
        }
    }
}
