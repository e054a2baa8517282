package perkilo.xlsx.grid;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;

/** How the numbers of a workbook are shown, by the style of their cells. */
final class NumberFormats {

    /**
     * One way to show a number.
     *
     * @param code as the spreadsheet spells it
     * @param date whether it shows a day
     */
    record Format(String code, boolean date) {}

    private static final Format GENERAL = new Format("General", false);

    private final List<Format> byStyle = new ArrayList<>();
    private final BitSet struck = new BitSet();

    /** The formats in a part; none if the part is missing. */
    static NumberFormats of(PackageParts parts, String part) throws IOException {
        NumberFormats formats = new NumberFormats();
        if (!part.isEmpty()) {
            try (Xml xml = parts.xml(part)) {
                formats.read(xml);
            }
        }
        return formats;
    }

    private void read(Xml xml) throws IOException {
        Map<Integer, String> codes = new HashMap<>();
        Map<Integer, Format> known = new HashMap<>();
        BitSet struckFonts = new BitSet();
        while (xml.nextElement()) {
            if (xml.isAt("numFmt")) {
                codes.putIfAbsent(xml.number("numFmtId", 0), xml.attribute("formatCode", ""));
            } else if (xml.isAt("fonts")) {
                fonts(xml, struckFonts);
            } else if (xml.isAt("cellXfs")) {
                int inside = xml.depth();
                while (xml.nextElementInside(inside)) {
                    if (xml.isAt("xf")) {
                        if (struckFonts.get(Math.max(0, xml.number("fontId", 0)))) {
                            struck.set(byStyle.size());
                        }
                        byStyle.add(known.computeIfAbsent(xml.number("numFmtId", 0), id -> format(id, codes)));
                    }
                }
            } else if (xml.isAt("dxfs")) {
                xml.skip();
            }
        }
    }

    /** Notes which fonts strike their text through. */
    private static void fonts(Xml xml, BitSet struck) throws IOException {
        int inside = xml.depth();
        int font = -1;
        while (xml.nextElementInside(inside)) {
            if (xml.isAt("font")) {
                font++;
                int within = xml.depth();
                while (xml.nextElementInside(within)) {
                    String value = xml.attribute("val", "1");
                    if (xml.isAt("strike") && !value.equals("0") && !value.equals("false")) {
                        struck.set(font);
                    }
                }
            }
        }
    }

    /** Whether any style strikes its text through. */
    boolean anyStruck() {
        return !struck.isEmpty();
    }

    /** Whether a style strikes its text through. */
    boolean isStruck(int style) {
        return style >= 0 && struck.get(style);
    }

    private static Format format(int id, Map<Integer, String> codes) {
        String own = codes.get(id);
        String builtIn = own == null ? BuiltinFormats.getBuiltinFormat(id) : own;
        String code = builtIn == null ? "" : builtIn;
        return code.equals(GENERAL.code()) ? GENERAL : new Format(code, Days.isShownBy(id, code));
    }

    /** The format of a cell's style; the general one if there is no such style. */
    Format of(int style) {
        return style >= 0 && style < byStyle.size() ? byStyle.get(style) : GENERAL;
    }
}
