package perkilo.xlsx.author;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Origin;

/** The cells of a sheet that have a link. */
final class Hyperlinks {

    private final Links links;
    private final Map<String, Origin> placeByCell = new LinkedHashMap<>();

    Hyperlinks(Links links) {
        this.links = links;
    }

    /** Links a cell to a place if the place can be reached from this workbook; returns whether it can. */
    boolean add(String cell, @Nullable Origin place) {
        boolean leads = place != null && links.lead(place);
        if (place != null && leads) {
            placeByCell.put(cell, place);
        }
        return leads;
    }

    void write(PartXml xml, Relationships relationships) {
        if (placeByCell.isEmpty()) {
            return;
        }
        xml.open("hyperlinks");
        placeByCell.forEach((cell, place) -> write(cell, place, xml, relationships));
        xml.close();
    }

    private void write(String cell, Origin place, PartXml xml, Relationships relationships) {
        xml.open("hyperlink", "ref", cell);
        Optional<String> here = links.locationOf(place);
        if (here.isEmpty()) {
            xml.set("r:id", relationships.addOutside("hyperlink", place.file()));
        }
        here.or(() -> Links.locationInFile(place)).ifPresent(location -> xml.set("location", location));
        xml.close();
    }
}
