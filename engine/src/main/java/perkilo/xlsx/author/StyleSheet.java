package perkilo.xlsx.author;

import perkilo.sheet.Look;
import perkilo.sheet.NumberFormat;
import perkilo.xlsx.author.LookStyles.Border;
import perkilo.xlsx.author.LookStyles.Font;
import perkilo.xlsx.author.LookStyles.Line;

/** The styles of one workbook's cells, each listed once. */
final class StyleSheet {

    /** The first number for custom formats; lower numbers are built in. */
    private static final int FIRST_OWN_FORMAT = 164;

    /** The number of fixed fills: none, and a grey pattern. */
    private static final int FIRST_OWN_FILL = 2;

    private final NumberedList<String> numberFormats = new NumberedList<>(FIRST_OWN_FORMAT);
    private final NumberedList<Font> fonts = new NumberedList<>(1);
    private final NumberedList<String> fills = new NumberedList<>(FIRST_OWN_FILL);
    private final NumberedList<Border> borders = new NumberedList<>(1);
    private final NumberedList<CellLook> formats = new NumberedList<>(1);
    private final NumberedList<Look> conditional = new NumberedList<>(0);

    /** The number by which a cell refers to its look. */
    int number(CellLook look) {
        font(look);
        fill(look);
        border(look);
        numberFormat(look);
        return formats.of(look);
    }

    private int font(CellLook look) {
        return fonts.of(LookStyles.font(look.look(), look.linked()));
    }

    private int fill(CellLook look) {
        String ground = LookStyles.ground(look.look());
        return ground.isEmpty() ? 0 : fills.of(ground);
    }

    private int border(CellLook look) {
        Border border = LookStyles.border(look.look());
        return border == Border.NONE ? 0 : borders.of(border);
    }

    private int numberFormat(CellLook look) {
        return look.format().equals(NumberFormat.GENERAL)
                ? 0
                : numberFormats.of(look.format().code());
    }

    /** The number by which a condition refers to a look. */
    int conditional(Look look) {
        return conditional.of(look);
    }

    byte[] xml() {
        PartXml xml = new PartXml("styleSheet", "xmlns", StandardNames.MAIN);
        if (!numberFormats.isEmpty()) {
            xml.open("numFmts", "count", numberFormats.end() - FIRST_OWN_FORMAT);
            for (String code : numberFormats) {
                xml.leaf("numFmt", "numFmtId", numberFormats.of(code), "formatCode", code);
            }
            xml.close();
        }
        fonts(xml);
        fills(xml);
        xml.open("borders", "count", borders.end());
        border(Border.NONE, xml);
        for (Border border : borders) {
            border(border, xml);
        }
        xml.close();
        xml.open("cellStyleXfs", "count", 1);
        xml.leaf("xf", "numFmtId", 0, "fontId", 0, "fillId", 0, "borderId", 0).close();
        formats(xml);
        xml.open("cellStyles", "count", 1);
        xml.leaf("cellStyle", "name", "Normal", "xfId", 0, "builtinId", 0).close();
        xml.open("dxfs", "count", conditional.end());
        for (Look look : conditional) {
            conditional(look, xml);
        }
        return xml.close().bytes();
    }

    private void fonts(PartXml xml) {
        xml.open("fonts", "count", fonts.end());
        font(new Font(LookStyles.USUAL_SIZE, "000000", false), xml);
        for (Font font : fonts) {
            font(font, xml);
        }
        xml.close();
    }

    private static void font(Font font, PartXml xml) {
        xml.open("font");
        if (font.bold()) {
            xml.leaf("b");
        }
        xml.leaf("sz", "val", font.size()).leaf("color", "rgb", Palette.opaque(font.color()));
        xml.leaf("name", "val", LookStyles.FONT).leaf("family", "val", 2).close();
    }

    private void fills(PartXml xml) {
        xml.open("fills", "count", fills.end());
        xml.open("fill").leaf("patternFill", "patternType", "none").close();
        xml.open("fill").leaf("patternFill", "patternType", "gray125").close();
        for (String color : fills) {
            xml.open("fill")
                    .open("patternFill", "patternType", "solid")
                    .leaf("fgColor", "rgb", Palette.opaque(color))
                    .close(2);
        }
        xml.close();
    }

    private static void border(Border border, PartXml xml) {
        xml.open("border");
        line("left", border.sides(), xml);
        line("right", border.sides(), xml);
        line("top", border.top(), xml);
        line("bottom", border.bottom(), xml);
        xml.leaf("diagonal").close();
    }

    private static void line(String side, Line line, PartXml xml) {
        if (line == Line.NONE) {
            xml.leaf(side);
        } else {
            xml.open(side, "style", line.style()).leaf("color", "rgb", Palette.opaque(line.color()));
            xml.close();
        }
    }

    private void formats(PartXml xml) {
        xml.open("cellXfs", "count", formats.end());
        xml.leaf("xf", "numFmtId", 0, "fontId", 0, "fillId", 0, "borderId", 0, "xfId", 0);
        for (CellLook look : formats) {
            format(look, xml);
        }
        xml.close();
    }

    private void format(CellLook look, PartXml xml) {
        xml.open("xf", "numFmtId", numberFormat(look), "fontId", font(look), "fillId", fill(look));
        xml.set("borderId", border(look)).set("xfId", 0);
        for (String applied :
                new String[] {"applyNumberFormat", "applyFont", "applyFill", "applyBorder", "applyAlignment"}) {
            xml.set(applied, true);
        }
        if (look.quoted()) {
            xml.set("quotePrefix", true);
        }
        boolean unlocked = look.look() == Look.FILL_IN;
        if (unlocked) {
            xml.set("applyProtection", true);
        }
        xml.open("alignment", "vertical", "center");
        switch (look.place()) {
            case USUAL -> {}
            case RIGHT -> xml.set("horizontal", "right");
            case LEFT -> xml.set("horizontal", "left");
            case INDENTED -> xml.set("horizontal", "left").set("indent", 1);
        }
        if (look.wrapped()) {
            xml.set("wrapText", true);
        }
        xml.close();
        if (unlocked) {
            xml.leaf("protection", "locked", false);
        }
        xml.close();
    }

    private static void conditional(Look look, PartXml xml) {
        xml.open("dxf").open("font").leaf("b", "val", LookStyles.isBold(look));
        xml.leaf("color", "rgb", Palette.opaque(LookStyles.ink(look))).close();
        String ground = LookStyles.ground(look);
        if (!ground.isEmpty()) {
            xml.open("fill").open("patternFill", "patternType", "solid");
            xml.leaf("bgColor", "rgb", Palette.opaque(ground)).close(2);
        }
        xml.close();
    }
}
