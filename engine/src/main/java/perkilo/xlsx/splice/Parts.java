package perkilo.xlsx.splice;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** The readable parts of a workbook. */
interface Parts {

    boolean has(String part);

    /** The part's bytes; null if it is not there. */
    byte @Nullable [] find(String part) throws IOException;

    /** The part's bytes. */
    default byte[] bytes(String part) throws IOException {
        byte[] bytes = find(part);
        if (bytes == null) {
            throw new UnfitPackageException(SpliceMessages.noPart(part));
        }
        return bytes;
    }

    /** The part's outermost element. */
    default XmlElement xml(String part) throws IOException {
        return XmlParser.parse(PartText.decoded(bytes(part)));
    }
}
