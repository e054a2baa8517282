package perkilo.xlsx.splice;

/**
 * The two families of namespaces for workbooks: the usual one, which every office suite writes, and the "Strict" one.
 */
enum Dialect {
    TRANSITIONAL(
            "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships"),
    STRICT("http://purl.oclc.org/ooxml/spreadsheetml/main", "http://purl.oclc.org/ooxml/officeDocument/relationships");

    private final String main;
    private final String relationships;

    Dialect(String main, String relationships) {
        this.main = main;
        this.relationships = relationships;
    }

    /** The dialect that a workbook part is written in. */
    static Dialect of(XmlElement workbook) {
        String declaration = workbook.prefix().isEmpty()
                ? "xmlns"
                : "xmlns:" + workbook.prefix().replace(":", "");
        boolean strict = workbook.attributes().stream()
                .anyMatch(attribute -> attribute.name().equals(declaration)
                        && attribute.value().equals(STRICT.main));
        return strict ? STRICT : TRANSITIONAL;
    }

    /** The namespace of sheets and styles. */
    String main() {
        return main;
    }

    /** The namespace of references to parts, and the beginning of the types of relationships. */
    String relationships() {
        return relationships;
    }

    /** Converts XML from the usual dialect to this one. */
    String translated(String xml) {
        if (this == TRANSITIONAL) {
            return xml;
        }
        return xml.replace(TRANSITIONAL.main, main)
                .replace(TRANSITIONAL.relationships, relationships)
                .replace("http://schemas.openxmlformats.org/drawingml/2006/", "http://purl.oclc.org/ooxml/drawingml/");
    }
}
