package perkilo.xlsx.splice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import perkilo.xlsx.splice.XmlElement.Attribute;

/** Changes to an XML text that are collected and then made together; all other characters stay unchanged. */
final class XmlEdits {

    private record Change(int to, String by) {}

    private final String text;
    private final TreeMap<Integer, List<Change>> changes = new TreeMap<>();
    private final Map<XmlElement, StringBuilder> appended = new LinkedHashMap<>();

    /** Edits of the text that contains the element. */
    XmlEdits(XmlElement anyElement) {
        this.text = anyElement.document();
    }

    void insert(int at, String xml) {
        replace(at, at, xml);
    }

    void remove(XmlElement element) {
        replace(element.start(), element.end(), "");
    }

    /** Adds XML after the last child. */
    void append(XmlElement parent, String xml) {
        appended.computeIfAbsent(parent, any -> new StringBuilder()).append(xml);
    }

    /** Sets an attribute; adds it if it is missing. */
    void set(XmlElement element, String name, String value) {
        Attribute attribute = element.attribute(name);
        if (attribute == null) {
            insert(element.start() + 1 + element.name().length(), " " + name + "=\"" + XmlText.escaped(value) + "\"");
        } else {
            replace(attribute.from(), attribute.to(), XmlText.escaped(value));
        }
    }

    private void replace(int from, int to, String by) {
        changes.computeIfAbsent(from, any -> new ArrayList<>()).add(new Change(to, by));
    }

    /** The text with all changes made. */
    String apply() {
        appended.forEach(this::placeBehindChildren);
        appended.clear();
        StringBuilder result = new StringBuilder(text.length() + 256);
        int done = 0;
        for (Map.Entry<Integer, List<Change>> entry : changes.entrySet()) {
            for (Change change : entry.getValue()) {
                if (entry.getKey() < done) {
                    throw new IllegalStateException("two changes overlap at " + entry.getKey());
                }
                result.append(text, done, entry.getKey()).append(change.by());
                done = change.to();
            }
        }
        return result.append(text, done, text.length()).toString();
    }

    private void placeBehindChildren(XmlElement parent, StringBuilder xml) {
        if (parent.isEmptyTag()) {
            int slash = text.lastIndexOf('/', parent.end());
            replace(slash, parent.end(), ">" + xml + "</" + parent.name() + ">");
        } else {
            insert(parent.contentEnd(), xml.toString());
        }
    }
}
