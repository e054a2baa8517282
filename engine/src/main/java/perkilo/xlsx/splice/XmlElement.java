package perkilo.xlsx.splice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** An element of an XML text and its positions in that text. */
final class XmlElement {

    /**
     * An attribute.
     *
     * @param name with its prefix
     * @param from the position in the text at which its value begins
     * @param to the position at which its value ends
     * @param value without escapes
     */
    record Attribute(String name, int from, int to, String value) {

        boolean isDeclaration() {
            return name.equals("xmlns") || name.startsWith("xmlns:");
        }
    }

    private final String text;
    private final String name;
    private final int start;
    private final int contentStart;
    private final List<Attribute> attributes;
    private final List<XmlElement> children = new ArrayList<>();
    private int contentEnd;
    private int end;

    XmlElement(String text, String name, int start, int contentStart, List<Attribute> attributes) {
        this.text = text;
        this.name = name;
        this.start = start;
        this.contentStart = contentStart;
        this.attributes = List.copyOf(attributes);
        this.contentEnd = contentStart;
        this.end = contentStart;
    }

    void closeAt(int closingTag, int afterIt) {
        contentEnd = closingTag;
        end = afterIt;
    }

    void add(XmlElement child) {
        children.add(child);
    }

    /** The whole text that contains the element. */
    String document() {
        return text;
    }

    String name() {
        return name;
    }

    /** The prefix with its colon; empty without one. */
    String prefix() {
        return name.substring(0, name.indexOf(':') + 1);
    }

    String local() {
        return name.substring(name.indexOf(':') + 1);
    }

    int start() {
        return start;
    }

    /** The position after the opening tag. */
    int contentStart() {
        return contentStart;
    }

    /** The position before the closing tag; for an element without one, its end. */
    int contentEnd() {
        return contentEnd;
    }

    int end() {
        return end;
    }

    /** Whether there is no closing tag. */
    boolean isEmptyTag() {
        return contentStart == end;
    }

    List<XmlElement> children() {
        return children;
    }

    /** The children of that name, with any prefix. */
    List<XmlElement> children(String local) {
        return children.stream().filter(child -> child.local().equals(local)).toList();
    }

    /** The first child of that name, with any prefix. */
    @Nullable XmlElement child(String local) {
        for (XmlElement child : children) {
            if (child.local().equals(local)) {
                return child;
            }
        }
        return null;
    }

    List<Attribute> attributes() {
        return attributes;
    }

    /** The attribute of that name without a prefix, or else with any prefix. */
    @Nullable Attribute attribute(String local) {
        for (Attribute attribute : attributes) {
            if (attribute.name().equals(local)) {
                return attribute;
            }
        }
        for (Attribute attribute : attributes) {
            if (!attribute.isDeclaration() && attribute.name().endsWith(":" + local)) {
                return attribute;
            }
        }
        return null;
    }

    /** The attribute's value, or null. */
    @Nullable String get(String local) {
        Attribute attribute = attribute(local);
        return attribute == null ? null : attribute.value();
    }

    /** The attribute's value, or a default. */
    String get(String local, String otherwise) {
        String value = get(local);
        return value == null ? otherwise : value;
    }

    /** The attribute's whole number, or a default. */
    int number(String local, int otherwise) throws UnfitPackageException {
        String value = get(local);
        try {
            return value == null ? otherwise : Integer.parseInt(value.strip());
        } catch (NumberFormatException e) {
            throw new UnfitPackageException(SpliceMessages.noNumber(local, value));
        }
    }

    /** Whether the attribute is present and true. */
    boolean isOn(String local) {
        String value = get(local, "0").strip();
        return value.equals("1") || value.equals("true") || value.equals("on");
    }

    /** The text inside, without escapes. */
    String words() {
        return XmlText.unescaped(text.substring(contentStart, contentEnd));
    }

    /** The element in a canonical form: attributes sorted by name, no declarations, no blanks between elements. */
    String canonical() {
        return copy("", Map.of());
    }

    /**
     * The element as XML text.
     *
     * @param prefix with its colon, for this element and all in it
     * @param changed attributes of this element with their new values
     */
    String copy(String prefix, Map<String, String> changed) {
        Map<String, String> all = new TreeMap<>();
        for (Attribute attribute : attributes) {
            if (!attribute.isDeclaration()) {
                all.put(attribute.name(), attribute.value());
            }
        }
        all.putAll(changed);
        String content = copiedContent(prefix);
        String tag = prefix + local();
        return XmlText.openTag(tag, new LinkedHashMap<>(all), content.isEmpty())
                + (content.isEmpty() ? "" : content + "</" + tag + ">");
    }

    private String copiedContent(String prefix) {
        if (children.isEmpty()) {
            return text.substring(contentStart, contentEnd).strip();
        }
        StringBuilder content = new StringBuilder();
        children.forEach(child -> content.append(child.copy(prefix, Map.of())));
        return content.toString();
    }
}
