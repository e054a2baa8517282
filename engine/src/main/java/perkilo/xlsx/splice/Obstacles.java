package perkilo.xlsx.splice;

import java.io.IOException;
import perkilo.xlsx.parts.PartNames;

/** What makes a workbook unfit for new sheets. */
final class Obstacles {

    private Obstacles() {}

    static void refuse(BookPackage book, WorkbookPart workbook) throws IOException {
        if (workbook.isProtectedAgainstNewSheets()) {
            throw new UnfitPackageException(
                    "is protected against new sheets; take the protection of its structure off (Review, Protect"
                            + " Workbook)");
        }
        for (Relationship relationship : Relationship.of(book, PartNames.PACKAGE)) {
            if (relationship.type().equals("origin")) {
                throw new UnfitPackageException(
                        "is digitally signed, and new sheets would break the signature; use a copy without it");
            }
        }
        for (Relationship relationship : Relationship.of(book, workbook.part())) {
            if (relationship.type().equals("revisionHeaders")) {
                throw new UnfitPackageException("is shared with a record of changes; stop sharing it first");
            }
        }
    }
}
