package perkilo.workbook.read.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;

/** The number formats of a workbook's cell styles. */
final class NumberFormats {

    private static final Format GENERAL = new Format("General", false);

    private final Map<Integer, String> own = new HashMap<>();
    private final List<Integer> styles = new ArrayList<>();
    private final Map<String, Format> known = new HashMap<>();

    /** The formats of a styles part. */
    static NumberFormats read(XMLStreamReader xml) throws XMLStreamException {
        NumberFormats formats = new NumberFormats();
        boolean inCells = false;
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                switch (xml.getLocalName()) {
                    case "numFmt" ->
                        formats.own.putIfAbsent(
                                Integer.parseInt(xml.getAttributeValue(null, "numFmtId")),
                                xml.getAttributeValue(null, "formatCode"));
                    case "cellXfs" -> inCells = true;
                    case "xf" -> {
                        if (inCells) {
                            String id = xml.getAttributeValue(null, "numFmtId");
                            formats.styles.add(id == null ? 0 : Integer.parseInt(id));
                        }
                    }
                    default -> {}
                }
            } else if (event == XMLStreamConstants.END_ELEMENT
                    && xml.getLocalName().equals("cellXfs")) {
                inCells = false;
            }
        }
        return formats;
    }

    /** The format of a style, by its index as the cell names it. */
    Format of(String style) {
        return known.computeIfAbsent(style, this::find);
    }

    private Format find(String style) {
        int index = Integer.parseInt(style);
        if (index < 0 || index >= styles.size()) {
            return GENERAL;
        }
        int id = styles.get(index);
        String code = own.containsKey(id) ? own.get(id) : BuiltinFormats.getBuiltinFormat(id);
        return code == null ? new Format("", false) : new Format(code, DateUtil.isADateFormat(id, code));
    }

    /**
     * A number format.
     *
     * @param code as the spreadsheet spells it
     * @param isDate whether numbers are shown as days
     */
    record Format(String code, boolean isDate) {}
}
