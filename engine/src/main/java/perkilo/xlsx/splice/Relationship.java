package perkilo.xlsx.splice;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import perkilo.xlsx.parts.PartNames;

/**
 * A reference from one part to another.
 *
 * @param id by which the part's XML refers to it
 * @param type the last word of the type, such as {@code worksheet}
 * @param target the other part, absolute; for a target outside the workbook, the text as written
 * @param outside whether it leads out of the workbook
 */
record Relationship(String id, String type, String target, boolean outside) {

    /** All relationships of a part, or of {@link PartNames#PACKAGE}. */
    static List<Relationship> of(Parts parts, String source) throws IOException {
        String part = PartNames.relationshipsOf(source);
        List<Relationship> all = new ArrayList<>();
        if (parts.has(part)) {
            for (XmlElement element : parts.xml(part).children("Relationship")) {
                all.add(of(source, element));
            }
        }
        return all;
    }

    private static Relationship of(String source, XmlElement element) {
        String type = element.get("Type", "");
        String target = element.get("Target", "");
        boolean outside = element.get("TargetMode", "").equals("External");
        return new Relationship(
                element.get("Id", ""),
                type.substring(type.lastIndexOf('/') + 1),
                outside ? target : PartNames.resolved(source, target),
                outside);
    }
}
