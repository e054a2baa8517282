package perkilo.xlsx.author;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * One part of the package while it is written.
 *
 * <p>Names are written unchanged, prefix included. Attributes are pairs of a name and a value; a boolean is written as
 * 1 or 0. Characters that XML cannot hold are left out.
 */
final class PartXml {

    private static final XMLOutputFactory FACTORY = XMLOutputFactory.newDefaultFactory();

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter writer;

    /** Begins a part with its outermost element. */
    PartXml(String root, Object... attributes) {
        try {
            writer = FACTORY.createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        text.write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
        open(root, attributes);
    }

    /** Opens an element, to be closed. */
    PartXml open(String name, Object... attributes) {
        try {
            writer.writeStartElement(name);
            write(attributes);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** Adds an attribute to the element that was opened last, before any content is written. */
    PartXml set(String attribute, Object value) {
        try {
            writer.writeAttribute(attribute, value(value));
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** Closes the element that was opened last. */
    PartXml close() {
        try {
            writer.writeEndElement();
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** Closes several elements. */
    PartXml close(int elements) {
        for (int i = 0; i < elements; i++) {
            close();
        }
        return this;
    }

    /** Writes an empty element. */
    PartXml leaf(String name, Object... attributes) {
        try {
            writer.writeEmptyElement(name);
            write(attributes);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** Writes an element that holds words. */
    PartXml words(String name, String words, Object... attributes) {
        open(name, attributes);
        try {
            writer.writeCharacters(CellText.writable(words));
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return close();
    }

    /** Ends the part and returns its bytes. */
    byte[] bytes() {
        try {
            writer.writeEndDocument();
            writer.close();
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void write(Object... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            writer.writeAttribute((String) attributes[i], value(attributes[i + 1]));
        }
    }

    private static String value(Object value) {
        if (value instanceof Boolean truth) {
            return truth ? "1" : "0";
        }
        return CellText.writable(String.valueOf(value));
    }

    private static IllegalStateException impossible(XMLStreamException e) {
        return new IllegalStateException("writing into memory failed", e);
    }
}
