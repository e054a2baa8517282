package perkilo.xlsx.splice;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import perkilo.xlsx.parts.PartNames;
import perkilo.xlsx.splice.WorkbookPart.Tab;

/**
 * A second look at a written workbook before it takes its place: every part is there, the person's parts are those of
 * their file, ours can be unpacked, each tab leads to a part, and each style number of our sheets exists.
 */
final class DraftCheck {

    private final BookPackage draft;
    private final BookPackage intended;

    private DraftCheck(BookPackage draft, BookPackage intended) {
        this.draft = draft;
        this.intended = intended;
    }

    /**
     * Compares a file with what was to be written.
     *
     * @throws UnfitPackageException if they differ
     */
    static void check(Path file, BookPackage intended) throws IOException {
        try (BookPackage draft = BookPackage.open(file)) {
            new DraftCheck(draft, intended).check();
        }
    }

    private void check() throws IOException {
        Map<String, Long> is = draft.sums();
        Map<String, Long> shall = intended.sums();
        Set<String> all = new HashSet<>(is.keySet());
        all.addAll(shall.keySet());
        for (String part : all) {
            if (!Objects.equals(is.get(part), shall.get(part))) {
                throw new UnfitPackageException(SpliceMessages.notAsWritten(part));
            }
        }
        WorkbookPart workbook = WorkbookPart.of(draft);
        WorkbookRelationships parts = new WorkbookRelationships(draft, workbook.part(), workbook.dialect());
        XmlElement styles = draft.xml(parts.targets("styles").get(0));
        int formats = count(styles, "cellXfs");
        int conditional = count(styles, "dxfs");
        Set<String> untouched = intended.untouched();
        for (Tab tab : workbook.tabs()) {
            String part = parts.target(tab.reference()).orElse("");
            if (!part.isEmpty() && draft.has(part) && !untouched.contains(PartNames.key(part))) {
                new SheetStyles(formats, conditional).check(part, draft.xml(part));
            }
        }
    }

    private static int count(XmlElement styles, String list) {
        XmlElement group = styles.child(list);
        return group == null ? 0 : group.children().size();
    }

    /** The style numbers that a sheet may use. */
    private record SheetStyles(int formats, int conditional) {

        void check(String part, XmlElement element) throws UnfitPackageException {
            for (XmlElement child : element.children()) {
                boolean wrong = child.number("dxfId", 0) > Math.max(conditional - 1, 0)
                        || switch (child.local()) {
                            case "c", "row" -> child.number("s", 0) >= formats;
                            case "col" -> child.number("style", 0) >= formats;
                            default -> false;
                        };
                if (wrong) {
                    throw new UnfitPackageException(SpliceMessages.notAsWritten(part));
                }
                check(part, child);
            }
        }
    }
}
