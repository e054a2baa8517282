package perkilo.workbook.read.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Texts of a workbook's parts: those that cells share, and those inside one cell. */
final class SharedTexts {

    private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private SharedTexts() {}

    /** All shared texts, in their order. */
    static List<Cell> read(XMLStreamReader xml) throws XMLStreamException {
        List<Cell> texts = new ArrayList<>();
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT
                    && xml.getLocalName().equals("si")) {
                texts.add(Cell.text(unescaped(text(xml, "si"))));
            }
        }
        return texts;
    }

    /**
     * The text of an element whose beginning the reader stands at; its runs are joined, how they are pronounced is left
     * out.
     */
    static String text(XMLStreamReader xml, String element) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        int pronounced = 0;
        while (true) {
            int event = xml.next();
            if (event == XMLStreamConstants.END_ELEMENT) {
                if (xml.getLocalName().equals(element)) {
                    return text.toString();
                }
                pronounced -= xml.getLocalName().equals("rPh") ? 1 : 0;
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                if (xml.getLocalName().equals("rPh")) {
                    pronounced++;
                } else if (xml.getLocalName().equals("t") && pronounced == 0) {
                    text.append(xml.getElementText());
                }
            }
        }
    }

    /** A text with characters that XML cannot hold written out, such as {@code _x000D_} for a carriage return. */
    static String unescaped(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        Matcher escape = ESCAPE.matcher(text);
        return escape.replaceAll(
                found -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(found.group(1), 16))));
    }
}
