package perkilo.xlsx.splice;

import java.util.List;

/** The required order of the lists in a style sheet. */
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

    /** The position for a list that is not there yet. */
    static int placeFor(XmlElement styles, String list) {
        int place = styles.contentStart();
        for (XmlElement child : styles.children()) {
            boolean before = LISTS.indexOf(child.local()) < LISTS.indexOf(list);
            place = before ? Math.max(place, child.end()) : place;
        }
        return place;
    }
}
