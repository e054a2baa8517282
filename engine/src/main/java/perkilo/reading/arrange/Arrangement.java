package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import perkilo.origin.Origin;
import perkilo.reading.table.AccountWriter;
import perkilo.reading.table.AsTyped;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;

/**
 * The sheets of a file as they are read.
 *
 * @param grids in the order of the file; an arranged sheet is several: its tables, then what is left of it
 * @param parts what was arranged
 * @param sheets the person's sheets, one each, without those that are left out
 * @param left sheets that the sheet Reading says to ignore, and that sheet itself
 * @param leftOut the headers that it says to leave out, by the names of their sheets
 * @param asIs the tables in the first rows of the sheets that are read as they are laid out
 * @param open what the sheets leave open
 * @param materials which materials lines of formulas mean, as the sheet Reading says
 */
public record Arrangement(
        List<Grid> grids,
        List<ArrangedPart> parts,
        List<Grid> sheets,
        List<Grid> left,
        Map<String, Set<String>> leftOut,
        List<FoundTable> asIs,
        List<Open> open,
        List<MaterialAnswer> materials) {

    /**
     * What a sheet leaves open.
     *
     * @param where the cell that raises it
     * @param asked what the sheet Reading calls it: a header, or a word such as {@code decimals}
     * @param text the question
     * @param choices possible answers
     */
    public record Open(Origin where, String asked, String text, List<String> choices) {

        public Open {
            choices = List.copyOf(choices);
        }
    }

    /**
     * The answer which material is meant.
     *
     * @param sheet the sheet of the formula
     * @param of the name in the formula
     * @param material the answer
     * @param origin the cell of the answer
     */
    public record MaterialAnswer(String sheet, String of, String material, Origin origin) {}

    public Arrangement {
        materials = List.copyOf(materials);
        grids = List.copyOf(grids);
        parts = List.copyOf(parts);
        sheets = List.copyOf(sheets);
        left = List.copyOf(left);
        leftOut = Map.copyOf(leftOut);
        asIs = List.copyOf(asIs);
        open = List.copyOf(open);
    }

    /**
     * The tables as they are on the person's sheets, for the account of the reading.
     *
     * @param found the tables that were found in {@link #grids}
     * @param findings receives what is struck through in arranged parts
     */
    public List<FoundTable> onSheets(List<FoundTable> found, Findings findings) {
        List<FoundTable> tables = new ArrayList<>();
        for (FoundTable table : found) {
            if (!table.grid().isArranged()) {
                tables.add(sheet(table.grid()).map(table::on).orElse(table));
            }
        }
        for (ArrangedPart part : parts) {
            sheet(part.from())
                    .ifPresent(sheet -> tables.add(FoundTable.ofPart(
                            part.schema(),
                            sheet,
                            part.headerRow(),
                            part.from().rows().last(),
                            part.rows(),
                            part.uses(),
                            part.columns(),
                            findings)));
        }
        return tables;
    }

    private Optional<Grid> sheet(Grid part) {
        return sheets.stream()
                .filter(sheet ->
                        sheet.file().equals(part.file()) && sheet.sheet().equals(part.sheet()))
                .findFirst();
    }

    /** Adds what became of a file to an account. */
    public void account(Grids file, List<FoundTable> onSheets, AccountWriter writer) {
        writer.add(asRead(file), onSheets, new AsTyped(file.sheets(), leftOut));
        left.forEach(sheet -> writer.addLeft(sheet, !ReadingSheet.isOne(sheet)));
    }

    /** A file with its sheets as they are read. */
    public Grids asRead(Grids file) {
        return new Grids(sheets, file.findings(), file.others());
    }
}
