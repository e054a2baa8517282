package perkilo.xlsx.author;

import java.util.ArrayList;
import java.util.List;
import perkilo.xlsx.parts.PartNames;

/** The relationships of one part: the parts and files that it refers to. */
final class Relationships {

    private record Relationship(String kind, String target, boolean outside) {}

    private final String source;
    private final List<Relationship> all = new ArrayList<>();

    /** The relationships of a part, or of {@link PartNames#PACKAGE}. */
    Relationships(String source) {
        this.source = source;
    }

    /**
     * Adds a part that is referred to.
     *
     * @param kind such as {@code worksheet}
     * @return the identifier by which the source refers to it
     */
    String add(String kind, String part) {
        return add(new Relationship(kind, PartNames.relative(source, part), false));
    }

    /** Adds a reference to a file outside the workbook. */
    String addOutside(String kind, String address) {
        return add(new Relationship(kind, address, true));
    }

    private String add(Relationship relationship) {
        all.add(relationship);
        return "rId" + all.size();
    }

    boolean isEmpty() {
        return all.isEmpty();
    }

    byte[] xml() {
        PartXml xml = new PartXml("Relationships", "xmlns", StandardNames.PACKAGE_RELATIONSHIPS);
        for (int i = 0; i < all.size(); i++) {
            Relationship one = all.get(i);
            xml.open("Relationship", "Id", "rId" + (i + 1), "Type", StandardNames.RELATIONSHIPS + "/" + one.kind());
            xml.set("Target", one.target());
            if (one.outside()) {
                xml.set("TargetMode", "External");
            }
            xml.close();
        }
        return xml.bytes();
    }
}
