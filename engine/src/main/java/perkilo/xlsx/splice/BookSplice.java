package perkilo.xlsx.splice;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A person's workbook into which result sheets are set. */
public final class BookSplice implements Closeable {

    private final BookPackage book;
    private final WorkbookPart workbook;
    private final OwnSheets own;

    private BookSplice(BookPackage book) throws IOException {
        this.book = book;
        this.workbook = WorkbookPart.of(book);
        this.own = OwnSheets.of(workbook);
    }

    /**
     * Opens a workbook; the file is never written to.
     *
     * @throws UnfitPackageException if no sheet can be set into it
     */
    public static BookSplice open(Path file) throws IOException {
        BookPackage book = BookPackage.open(file);
        try {
            BookSplice splice = new BookSplice(book);
            Obstacles.refuse(book, splice.workbook);
            return splice;
        } catch (IOException | RuntimeException e) {
            book.close();
            throw e;
        }
    }

    /** Whether the workbook is of the kind that holds macros. */
    public boolean isMacroWorkbook() throws IOException {
        String type = ContentTypes.of(book).typeOf(workbook.part());
        return type != null && type.contains("macroEnabled");
    }

    /** The names of the person's own sheets. */
    public List<String> sheetsOfThePerson() {
        return own.tabsOfThePerson();
    }

    /** Lets a sheet take the place of the person's own sheet of that name, if there is one. */
    public void takeOver(String name) {
        own.takeOver(name);
    }

    /**
     * The final names of our sheets: the name from an earlier run, or the name it was built with, or that name with a
     * number if a sheet of the person has it.
     */
    public Map<String, String> finalNames(List<String> builtNames) {
        return own.finalNames(builtNames);
    }

    /**
     * Sets sheets in: in the place of the same sheet from an earlier run, or else after all sheets.
     *
     * @param workbookOfOurs the parts of a workbook with the sheets, named by their final names, strings inline
     * @param names final names by the names that the sheets were built with
     * @param given built names of sheets that belong to the person from now on
     * @param records words about given sheets, by their built names
     * @param subject the answer and the workbook, for the {@link ResultRecord}
     */
    public void setIn(
            Map<String, byte[]> workbookOfOurs,
            Map<String, String> names,
            Set<String> given,
            Map<String, String> records,
            String subject)
            throws IOException {
        new Grafting(book, workbook, own).graft(new MemoryParts(workbookOfOurs), names, given, records, subject);
    }

    /**
     * Changes cells of the person's own sheets; every other byte of their parts stays.
     *
     * @throws UnfitPackageException if a sheet is not the person's, a cell holds a formula, or a formula of the person
     *     may use it: its saved value would be that of before
     */
    public void change(List<CellChange> changes) throws IOException {
        Map<String, List<CellChange>> bySheet = new LinkedHashMap<>();
        changes.forEach(change -> bySheet.computeIfAbsent(change.sheet(), any -> new ArrayList<>())
                .add(change));
        List<String> sheets = own.tabsOfThePerson();
        for (String sheet : sheets) {
            String part = partOf(sheet);
            List<CellChange> here = bySheet.remove(sheet);
            if (here != null && book.has(part)) {
                book.put(part, CellEdits.applied(book.xml(part), here));
            }
        }
        for (String sheet : sheets) {
            refuseIfUsed(sheet, changes);
        }
        if (!bySheet.isEmpty()) {
            throw new UnfitPackageException(
                    SpliceMessages.noSheetOfYours(bySheet.keySet().iterator().next()));
        }
    }

    private void refuseIfUsed(String sheet, List<CellChange> changes) throws IOException {
        String part = partOf(sheet);
        if (!book.has(part)) {
            return;
        }
        XmlElement xml = book.xml(part);
        for (CellChange change : changes) {
            Optional<String> formula = FormulaReach.first(sheet, xml, change);
            if (formula.isPresent()) {
                throw new UnfitPackageException(SpliceMessages.usedByFormula(change.where(), formula.get()));
            }
        }
    }

    private String partOf(String sheet) throws IOException {
        String reference = workbook.tabs().stream()
                .filter(tab -> tab.name().equals(sheet))
                .map(WorkbookPart.Tab::reference)
                .findFirst()
                .orElse("");
        return Relationship.of(book, workbook.part()).stream()
                .filter(one -> one.id().equals(reference))
                .map(Relationship::target)
                .findFirst()
                .orElse("");
    }

    /**
     * Reads a file that was written with {@link #writeTo} again.
     *
     * @throws UnfitPackageException if it is not what was to be written
     */
    public void check(Path draft) throws IOException {
        DraftCheck.check(draft, book);
    }

    /** Writes the workbook; everything that is not ours is copied byte for byte. */
    public void writeTo(OutputStream out) throws IOException {
        book.writeTo(out);
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
