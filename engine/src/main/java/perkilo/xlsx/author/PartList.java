package perkilo.xlsx.author;

import java.util.LinkedHashMap;
import java.util.Map;
import perkilo.xlsx.parts.PartNames;

/** The finished parts of a package and the type of each. */
final class PartList {

    private final Map<String, byte[]> parts = new LinkedHashMap<>();
    private final Map<String, String> types = new LinkedHashMap<>();

    /**
     * Adds a part and its relationships.
     *
     * @param type its type, one of {@link StandardNames}
     */
    void add(String part, String type, byte[] xml, Relationships relationships) {
        types.put(part, type);
        parts.put(part, xml);
        addRelationships(part, relationships);
    }

    /** Adds the relationships of a part, or of the package itself. */
    void addRelationships(String source, Relationships relationships) {
        if (!relationships.isEmpty()) {
            parts.put(PartNames.relationshipsOf(source), relationships.xml());
        }
    }

    /** The first name that is free, such as {@code /xl/charts/chart1.xml}. */
    String free(String like) {
        return PartNames.free(like, parts::containsKey);
    }

    /** All parts by their names, the list of types first. */
    Map<String, byte[]> finished() {
        PartXml xml = new PartXml("Types", "xmlns", StandardNames.CONTENT_TYPES);
        xml.leaf("Default", "Extension", "rels", "ContentType", StandardNames.RELATIONSHIPS_TYPE);
        xml.leaf("Default", "Extension", "xml", "ContentType", "application/xml");
        types.forEach((part, type) -> xml.leaf("Override", "PartName", part, "ContentType", type));
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put("/[Content_Types].xml", xml.bytes());
        all.putAll(parts);
        return all;
    }
}
