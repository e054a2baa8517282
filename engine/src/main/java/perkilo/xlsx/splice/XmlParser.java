package perkilo.xlsx.splice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.splice.XmlElement.Attribute;

/**
 * Finds the elements of an XML text and their positions, so that the text can be edited in place.
 *
 * <p>Common parsers do not report the exact position of each character. Document types are refused: no workbook needs
 * one, and they can pull in other files.
 */
final class XmlParser {

    private final String text;
    private final Deque<XmlElement> open = new ArrayDeque<>();
    private @Nullable XmlElement root;
    private int at;

    private XmlParser(String text) {
        this.text = text;
    }

    /** The outermost element. */
    static XmlElement parse(String text) throws UnfitPackageException {
        return new XmlParser(text).parse();
    }

    private XmlElement parse() throws UnfitPackageException {
        for (at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at)) {
            if (text.startsWith("<!--", at)) {
                at = after("-->", at + 4);
            } else if (text.startsWith("<![CDATA[", at)) {
                at = after("]]>", at);
            } else if (text.startsWith("<?", at)) {
                at = after("?>", at);
            } else if (text.startsWith("<!", at)) {
                throw new UnfitPackageException(SpliceMessages.docType());
            } else if (text.startsWith("</", at)) {
                close();
            } else {
                open();
            }
        }
        if (root == null || !open.isEmpty()) {
            throw malformed();
        }
        return root;
    }

    private void close() throws UnfitPackageException {
        int afterIt = after(">", at);
        String name = text.substring(at + 2, afterIt - 1).strip();
        if (open.isEmpty() || !open.peek().name().equals(name)) {
            throw malformed();
        }
        open.pop().closeAt(at, afterIt);
        at = afterIt;
    }

    private void open() throws UnfitPackageException {
        int start = at;
        at++;
        String name = name();
        List<Attribute> attributes = attributes();
        boolean empty = text.charAt(at) == '/';
        int contentStart = after(">", at);
        XmlElement element = new XmlElement(text, name, start, contentStart, attributes);
        if (!open.isEmpty()) {
            open.peek().add(element);
        } else if (root == null) {
            root = element;
        } else {
            throw malformed();
        }
        if (!empty) {
            open.push(element);
        }
        at = contentStart;
    }

    private List<Attribute> attributes() throws UnfitPackageException {
        List<Attribute> attributes = new ArrayList<>();
        for (skipBlanks(); here() != '>' && here() != '/'; skipBlanks()) {
            String name = name();
            skipBlanks();
            expect('=');
            skipBlanks();
            char quote = here();
            if (quote != '"' && quote != '\'') {
                throw malformed();
            }
            int from = at + 1;
            at = after(String.valueOf(quote), from);
            attributes.add(new Attribute(name, from, at - 1, XmlText.unescaped(text.substring(from, at - 1))));
        }
        return attributes;
    }

    private String name() throws UnfitPackageException {
        int from = at;
        while (!Character.isWhitespace(here()) && "=/>\"'<".indexOf(here()) < 0) {
            at++;
        }
        if (from == at) {
            throw malformed();
        }
        return text.substring(from, at);
    }

    private void skipBlanks() throws UnfitPackageException {
        while (Character.isWhitespace(here())) {
            at++;
        }
    }

    private void expect(char expected) throws UnfitPackageException {
        if (here() != expected) {
            throw malformed();
        }
        at++;
    }

    private char here() throws UnfitPackageException {
        if (at >= text.length()) {
            throw malformed();
        }
        return text.charAt(at);
    }

    private int after(String mark, int from) throws UnfitPackageException {
        int found = text.indexOf(mark, from);
        if (found < 0) {
            throw malformed();
        }
        return found + mark.length();
    }

    private static UnfitPackageException malformed() {
        return new UnfitPackageException(SpliceMessages.notWellFormed());
    }
}
