package perkilo.xlsx.splice;

import java.io.IOException;
import perkilo.xlsx.parts.PartNames;

/** Checks for what makes a workbook unfit for new sheets. */
final class Obstacles {

    private Obstacles() {}

    static void refuse(BookPackage book, WorkbookPart workbook) throws IOException {
        if (workbook.isProtectedAgainstNewSheets()) {
            throw new UnfitPackageException(SpliceMessages.protectedStructure());
        }
        for (Relationship relationship : Relationship.of(book, PartNames.PACKAGE)) {
            if (relationship.type().equals("origin")) {
                throw new UnfitPackageException(SpliceMessages.signed());
            }
        }
        for (Relationship relationship : Relationship.of(book, workbook.part())) {
            if (relationship.type().equals("revisionHeaders")) {
                throw new UnfitPackageException(SpliceMessages.shared());
            }
        }
    }
}
