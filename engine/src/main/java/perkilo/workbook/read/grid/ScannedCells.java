package perkilo.workbook.read.grid;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.DateUtil;
import org.jspecify.annotations.Nullable;

/**
 * The cells of a workbook that is read by streaming, as {@link CellReader} would read them. Equal cells are held once.
 */
final class ScannedCells {

    private static final double LAST_DAY = 2_958_466;
    private static final int SURELY_EXACT = 15;
    private static final int MOST_KNOWN = 50_000;

    private final List<Cell> shared;
    private final NumberFormats formats;
    private final boolean date1904;
    private final Map<String, Map<String, Cell>> known = new HashMap<>();

    /**
     * The cells of one workbook.
     *
     * @param shared the texts that cells share
     */
    ScannedCells(List<Cell> shared, NumberFormats formats, boolean date1904) {
        this.shared = shared;
        this.formats = formats;
        this.date1904 = date1904;
    }

    /**
     * The cell that the reader stands at the beginning of.
     *
     * @throws NotStreamableException if only an evaluation can tell what it holds
     */
    Cell read(XMLStreamReader xml) throws XMLStreamException {
        String type = xml.getAttributeValue(null, "t");
        String style = xml.getAttributeValue(null, "s");
        String value = null;
        boolean formula = false;
        while (!(xml.next() == XMLStreamConstants.END_ELEMENT
                && xml.getLocalName().equals("c"))) {
            if (xml.getEventType() != XMLStreamConstants.START_ELEMENT) {
                continue;
            }
            switch (xml.getLocalName()) {
                case "v" -> value = xml.getElementText();
                case "is" -> value = SharedTexts.text(xml, "is");
                case "f" -> formula = true;
                default -> {}
            }
        }
        if (value == null || (value.isEmpty() && !"str".equals(type))) {
            if (formula) {
                throw new NotStreamableException("a formula without a saved value");
            }
            return Cell.BLANK;
        }
        return cell(type == null ? "n" : type, style == null ? "0" : style, value);
    }

    private Cell cell(String type, String style, String value) {
        return switch (type) {
            case "n" -> number(style, value);
            case "s" -> shared(value);
            case "str", "inlineStr" -> text(value);
            case "b" -> Cell.text(value.equals("1") || value.equals("true") ? "TRUE" : "FALSE");
            case "e" -> Cell.error(value + ", an error value");
            default -> throw new NotStreamableException("a cell of the type " + type);
        };
    }

    private Cell shared(String index) {
        boolean there = index.matches("\\d{1,9}") && Integer.parseInt(index) < shared.size();
        return there
                ? shared.get(Integer.parseInt(index))
                : Cell.error("a reference to a text that the workbook does not hold; it is damaged");
    }

    private Cell text(String value) {
        return knownOr("", value, Cell.text(SharedTexts.unescaped(value)));
    }

    private Cell number(String style, String value) {
        Map<String, Cell> ofStyle = known.computeIfAbsent(style, any -> new HashMap<>());
        Cell before = ofStyle.get(value);
        return before != null ? before : knownOr(style, value, newNumber(formats.of(style), value));
    }

    private Cell newNumber(NumberFormats.Format format, String value) {
        double number = Double.parseDouble(value);
        if (Double.isNaN(number) || Double.isInfinite(number)) {
            return Cell.error("a number too large to be meant");
        }
        if (format.isDate()) {
            return number < 0 || number >= LAST_DAY
                    ? Cell.error("a number in date format that is no day")
                    : Cell.date(DateUtil.getLocalDateTime(number, date1904).toLocalDate());
        }
        BigDecimal exact = exact(value);
        return Cell.number(exact == null ? Decimal.shortest(number) : exact, format.code());
    }

    /** The text's own decimal where it has so few digits that it is the shortest; null elsewhere. */
    private static @Nullable BigDecimal exact(String value) {
        if (value.length() > SURELY_EXACT) {
            return null;
        }
        for (int at = 0; at < value.length(); at++) {
            char letter = value.charAt(at);
            if ((letter < '0' || letter > '9') && letter != '.' && letter != '-') {
                return null;
            }
        }
        BigDecimal stripped = new BigDecimal(value).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private Cell knownOr(String style, String value, Cell cell) {
        Map<String, Cell> ofStyle = known.computeIfAbsent(style, any -> new HashMap<>());
        if (ofStyle.size() >= MOST_KNOWN) {
            return cell;
        }
        Cell before = ofStyle.putIfAbsent(value, cell);
        return before == null ? cell : before;
    }
}
