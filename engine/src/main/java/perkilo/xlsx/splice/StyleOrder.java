package perkilo.xlsx.splice;

import java.util.List;

/** The order in which the lists of a style sheet must stand. */
final class StyleOrder {

    private static final List<String> LISTS = List.of(
            "numFmts",
            "fonts",
            "fills",
            "borders",
            "cellStyleXfs",
            "cellXfs",
            "cellStyles",
            "dxfs",
            "tableStyles",
            "colors",
            "extLst");

    private StyleOrder() {}

    /** Where a list goes that is not there yet. */
    static int placeFor(XmlElement styles, String list) {
        int place = styles.contentStart();
        for (XmlElement child : styles.children()) {
            boolean before = LISTS.indexOf(child.local()) < LISTS.indexOf(list);
            place = before ? Math.max(place, child.end()) : place;
        }
        return place;
    }
}
