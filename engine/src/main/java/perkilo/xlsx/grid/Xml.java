package perkilo.xlsx.grid;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.NoSuchElementException;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A cursor that goes once through the XML of a part, with any prefixes and any encoding.
 *
 * <p>Nothing outside the part is ever opened; a document type, which could ask for that, is refused.
 */
final class Xml implements Closeable {

    private static final XMLInputFactory FACTORY = factory();

    private final Path file;
    private final GuardedStream content;
    private final XMLStreamReader reader;
    private int depth;

    /**
     * Before the first element.
     *
     * @param file whose part it is
     */
    Xml(Path file, GuardedStream content) throws IOException {
        this.file = file;
        this.content = content;
        try {
            this.reader = FACTORY.createXMLStreamReader(content);
        } catch (XMLStreamException | RuntimeException e) {
            content.close();
            throw told(e);
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = new InputFactoryImpl();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        return factory;
    }

    /** Notes how many bytes of what was read are kept. */
    void keeps(int bytes) {
        content.keeps(bytes);
    }

    /** Goes to the next opening tag; false at the end. */
    boolean nextElement() throws IOException {
        for (int event = next(); event != XMLStreamConstants.END_DOCUMENT; event = next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                return true;
            }
        }
        return false;
    }

    /** Goes to the next opening tag inside the element that was entered at a depth; false after its end. */
    boolean nextElementInside(int outer) throws IOException {
        for (int event = next(); event != XMLStreamConstants.END_DOCUMENT; event = next()) {
            if (event == XMLStreamConstants.START_ELEMENT) {
                return true;
            }
            if (event == XMLStreamConstants.END_ELEMENT && depth < outer) {
                return false;
            }
        }
        return false;
    }

    /** How many elements are open, the current one included. */
    int depth() {
        return depth;
    }

    /** Whether the cursor is at an element of that name, with any prefix. */
    boolean isAt(String name) {
        return reader.getLocalName().equals(name);
    }

    /** The name of the element, without its prefix. */
    String name() {
        return reader.getLocalName();
    }

    /** The text of the element and of all elements in it; moves past the element. */
    String text() throws IOException {
        int outer = depth;
        String first = "";
        StringBuilder more = null;
        for (int event = next(); !(event == XMLStreamConstants.END_ELEMENT && depth < outer); event = next()) {
            if (event == XMLStreamConstants.CHARACTERS || event == XMLStreamConstants.CDATA) {
                if (more == null && first.isEmpty()) {
                    first = reader.getText();
                } else {
                    more = more == null ? new StringBuilder(first) : more;
                    more.append(reader.getText());
                }
            } else if (event == XMLStreamConstants.END_DOCUMENT) {
                break;
            }
        }
        return more == null ? first : more.toString();
    }

    /** Moves past the element. */
    void skip() throws IOException {
        int outer = depth;
        for (int event = next(); event != XMLStreamConstants.END_DOCUMENT; event = next()) {
            if (event == XMLStreamConstants.END_ELEMENT && depth < outer) {
                return;
            }
        }
    }

    /** The attribute of that name, with any prefix, or a default. */
    String attribute(String name, String otherwise) {
        int attributes = reader.getAttributeCount();
        for (int i = 0; i < attributes; i++) {
            if (reader.getAttributeLocalName(i).equals(name)) {
                return reader.getAttributeValue(i);
            }
        }
        return otherwise;
    }

    /** How many attributes the element has. */
    int attributes() {
        return reader.getAttributeCount();
    }

    /** The name of an attribute by its place, without its prefix. */
    String attributeName(int place) {
        return reader.getAttributeLocalName(place);
    }

    /** The value of an attribute by its place. */
    String attributeValue(int place) {
        return reader.getAttributeValue(place);
    }

    /** The attribute of that name in the namespace of relationships; empty if there is none. */
    String reference(String name) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String space = reader.getAttributeNamespace(i);
            if (reader.getAttributeLocalName(i).equals(name) && space != null && space.endsWith("/relationships")) {
                return reader.getAttributeValue(i);
            }
        }
        return "";
    }

    /** The whole number in an attribute, or a default if it is missing or not a number. */
    int number(String name, int otherwise) {
        return whole(attribute(name, ""), otherwise);
    }

    /** The whole number in a text, or a default if it is not a number. */
    static int whole(String text, int otherwise) {
        try {
            return text.isEmpty() ? otherwise : Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    /** Whether the attribute is present and true. */
    boolean isOn(String name) {
        String value = attribute(name, "0");
        return value.equals("1") || value.equals("true") || value.equals("on");
    }

    private int next() throws IOException {
        int event;
        try {
            event = reader.next();
        } catch (XMLStreamException | NoSuchElementException e) {
            throw told(e);
        } catch (RuntimeException e) {
            // the parser wraps what the stream throws
            throw told(e);
        }
        if (event == XMLStreamConstants.START_ELEMENT) {
            depth++;
        } else if (event == XMLStreamConstants.END_ELEMENT) {
            depth--;
        } else if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw new UnreadableFileException(FileMessages.docType(file));
        }
        return event;
    }

    private IOException told(Exception e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof UnreadableFileException known) {
                return known;
            }
            if (cause instanceof XMLStreamException wrapped
                    && wrapped.getNestedException() instanceof UnreadableFileException known) {
                return known;
            }
        }
        return new UnreadableFileException(FileMessages.noXml(file), e);
    }

    @Override
    public void close() throws IOException {
        try {
            reader.close();
        } catch (XMLStreamException e) {
            throw told(e);
        } finally {
            content.close();
        }
    }
}
