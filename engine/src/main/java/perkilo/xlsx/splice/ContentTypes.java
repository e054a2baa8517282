package perkilo.xlsx.splice;

import java.io.IOException;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import perkilo.xlsx.parts.PartNames;

/** The part that lists the type of each part. */
final class ContentTypes {

    static final String PART = "/[Content_Types].xml";

    private static final String RELATIONSHIPS = "application/vnd.openxmlformats-package.relationships+xml";

    private final XmlElement types;
    private final Map<String, String> added = new LinkedHashMap<>();
    private final Set<XmlElement> removed = new HashSet<>();
    private final XmlEdits edits;

    private ContentTypes(XmlElement types) {
        this.types = types;
        this.edits = new XmlEdits(types);
    }

    static ContentTypes of(Parts parts) throws IOException {
        return new ContentTypes(parts.xml(PART));
    }

    /** The type of a part; null if it is not listed. */
    @Nullable String typeOf(String part) {
        for (XmlElement override : types.children("Override")) {
            if (isFor(override, part)) {
                return override.get("ContentType");
            }
        }
        String ending = part.substring(part.lastIndexOf('.') + 1);
        for (XmlElement byEnding : types.children("Default")) {
            if (ending.equalsIgnoreCase(byEnding.get("Extension"))) {
                return byEnding.get("ContentType");
            }
        }
        return null;
    }

    void add(String part, String type) {
        added.put(part, type);
    }

    void remove(String part) {
        added.remove(part);
        types.children("Override").stream()
                .filter(override -> isFor(override, part))
                .filter(removed::add)
                .forEach(edits::remove);
    }

    private static boolean isFor(XmlElement override, String part) {
        return PartNames.key(override.get("PartName", "")).equals(PartNames.key(part));
    }

    void store(BookPackage book) {
        if (types.children("Default").stream()
                .noneMatch(known ->
                        known.get("Extension", "").toLowerCase(Locale.ROOT).equals("rels"))) {
            append("Default", "Extension", "rels", RELATIONSHIPS);
        }
        added.forEach((part, type) -> append("Override", "PartName", part, type));
        book.put(PART, edits.apply());
    }

    private void append(String element, String key, String value, String type) {
        Map<String, String> attributes = new LinkedHashMap<>();
        attributes.put(key, value);
        attributes.put("ContentType", type);
        edits.append(types, XmlText.openTag(types.prefix() + element, attributes, true));
    }
}
