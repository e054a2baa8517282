package perkilo.xlsx.splice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Adds the styles of our sheets to those of the person's workbook, except styles that are already there.
 *
 * <p>Style 0, the look of a cell without a style, is always the person's. So are the first two fills: office suites
 * always read them as none and grey.
 */
final class StyleMerge {

    /** The first number for custom formats; lower numbers are built in. */
    private static final int FIRST_OWN_FORMAT = 164;

    private final XmlElement ours;
    private final XmlElement theirs;
    private final StyleGroup fonts;
    private final StyleGroup fills;
    private final StyleGroup borders;
    private final StyleGroup namedFormats;
    private final StyleGroup formats;
    private final StyleGroup conditionalFormats;
    private final StyleGroup numberFormats;
    private final Map<String, Integer> numberFormatIds = new HashMap<>();
    private final Map<Integer, Integer> formatPlaces = new HashMap<>();
    private int nextNumberFormat = FIRST_OWN_FORMAT;

    /**
     * Begins with nothing added.
     *
     * @param ours the style sheet of the workbook that our sheets come from
     * @param theirs the person's style sheet
     * @param used the numbers that the person's own sheets use: a number without an entry must not become one of ours
     */
    StyleMerge(XmlElement ours, XmlElement theirs, StyleNumbers used) throws UnfitPackageException {
        this.ours = ours;
        this.theirs = theirs;
        fonts = new StyleGroup(theirs, "fonts");
        fills = new StyleGroup(theirs, "fills");
        borders = new StyleGroup(theirs, "borders");
        namedFormats = new StyleGroup(theirs, "cellStyleXfs");
        formats = new StyleGroup(theirs, "cellXfs");
        conditionalFormats = new StyleGroup(theirs, "dxfs");
        numberFormats = new StyleGroup(theirs, "numFmts");
        readNumberFormats();
        fillReservedPlaces();
        fill(formats, used.formats());
        fill(conditionalFormats, used.conditionalFormats());
    }

    private void readNumberFormats() throws UnfitPackageException {
        XmlElement known = theirs.child("numFmts");
        for (XmlElement format : known == null ? List.<XmlElement>of() : known.children("numFmt")) {
            int id = format.number("numFmtId", 0);
            numberFormatIds.putIfAbsent(format.get("formatCode", ""), id);
            nextNumberFormat = Math.max(nextNumberFormat, id + 1);
        }
    }

    private void fillReservedPlaces() throws UnfitPackageException {
        XmlElement defaults = XmlParser.parse(DefaultStyles.XML);
        reserve(fonts, defaults, 1);
        reserve(fills, defaults, 2);
        reserve(borders, defaults, 1);
        reserve(namedFormats, defaults, 1);
        reserve(formats, defaults, 1);
    }

    private static void reserve(StyleGroup group, XmlElement defaults, int places) throws UnfitPackageException {
        while (group.size() < places) {
            group.add(entry(defaults, group.name(), group.size()), Map.of());
        }
    }

    /** Gives each number that is used an entry without a look of its own. */
    private static void fill(StyleGroup group, int used) throws UnfitPackageException {
        XmlElement plain = XmlParser.parse(
                group.name().equals("dxfs")
                        ? "<dxf/>"
                        : "<xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>");
        while (group.size() < used) {
            group.add(plain, Map.of());
        }
    }

    /** The number in the person's style sheet for one of ours. */
    int format(int number) throws UnfitPackageException {
        if (number == 0) {
            return 0;
        }
        Integer known = formatPlaces.get(number);
        if (known != null) {
            return known;
        }
        int place = formats.placeOf(entry(ours, "cellXfs", number), references(entry(ours, "cellXfs", number)));
        formatPlaces.put(number, place);
        return place;
    }

    private Map<String, String> references(XmlElement format) throws UnfitPackageException {
        Map<String, String> changed = new TreeMap<>();
        changed.put("fontId", place(fonts, format.number("fontId", 0)));
        changed.put("fillId", place(fills, format.number("fillId", 0)));
        changed.put("borderId", place(borders, format.number("borderId", 0)));
        changed.put("numFmtId", String.valueOf(numberFormat(format.number("numFmtId", 0))));
        changed.put("xfId", "0");
        for (String applied : List.of("applyFont", "applyFill", "applyBorder", "applyNumberFormat", "applyAlignment")) {
            changed.put(applied, "1");
        }
        return changed;
    }

    private String place(StyleGroup group, int number) throws UnfitPackageException {
        return String.valueOf(group.placeOf(entry(ours, group.name(), number), Map.of()));
    }

    private int numberFormat(int id) throws UnfitPackageException {
        if (id < FIRST_OWN_FORMAT) {
            return id;
        }
        XmlElement format = numberFormatOfOurs(id);
        String code = format.get("formatCode", "");
        Integer known = numberFormatIds.get(code);
        if (known != null) {
            return known;
        }
        int fresh = nextNumberFormat++;
        numberFormatIds.put(code, fresh);
        numberFormats.add(format, Map.of("numFmtId", String.valueOf(fresh)));
        return fresh;
    }

    private XmlElement numberFormatOfOurs(int id) throws UnfitPackageException {
        XmlElement all = ours.child("numFmts");
        for (XmlElement format : all == null ? List.<XmlElement>of() : all.children("numFmt")) {
            if (format.number("numFmtId", 0) == id) {
                return format;
            }
        }
        throw new IllegalStateException("no number format " + id);
    }

    /** The number in the person's style sheet for one of our conditional formats. */
    int conditionalFormat(int number) throws UnfitPackageException {
        return conditionalFormats.placeOf(entry(ours, "dxfs", number), Map.of());
    }

    private static XmlElement entry(XmlElement styles, String list, int number) throws UnfitPackageException {
        @Nullable XmlElement group = styles.child(list);
        if (group == null || number >= group.children().size()) {
            throw new UnfitPackageException(SpliceMessages.noStyle(number, list));
        }
        return group.children().get(number);
    }

    /** The person's style sheet with the additions; the same text if there are none. */
    String merged() {
        XmlEdits edits = new XmlEdits(theirs);
        List.of(numberFormats, fonts, fills, borders, namedFormats, formats, conditionalFormats).stream()
                .filter(StyleGroup::hasAdditions)
                .forEach(group -> group.store(theirs, edits));
        return edits.apply();
    }
}
