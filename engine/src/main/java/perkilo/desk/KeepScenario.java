package perkilo.desk;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import perkilo.model.ScenarioLine;
import perkilo.names.Names;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.TableFinder;
import perkilo.schema.InputColumn;
import perkilo.schema.ScenariosSheet;
import perkilo.schema.Schemas;
import perkilo.sheet.Report;
import perkilo.sheet.SheetBuilder;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Table;
import perkilo.xlsx.grid.Grid;
import perkilo.xlsx.grid.Grids;
import perkilo.xlsx.grid.UnreadableFileException;
import perkilo.xlsx.splice.CellChange;
import perkilo.xlsx.write.WorkbookWriter;
import perkilo.xlsx.write.Written;

/** Service that keeps changes that were tried as a scenario in the workbook, on its sheet Scenarios. */
public final class KeepScenario {

    private static final int LONGEST_NAME = 60;

    /**
     * Adds a scenario. A workbook without such a sheet gets one. A backup is kept beside the workbook.
     *
     * @param name of the scenario
     * @param changes at least one
     * @param today used in the name of the backup
     * @throws IOException whose message is a sentence for a person, if it cannot be kept
     */
    public Written keep(OpenedBook opened, String name, List<ScenarioLine> changes, LocalDate today)
            throws IOException {
        String called = name.strip();
        if (called.isEmpty() || called.length() > LONGEST_NAME || changes.isEmpty()) {
            throw new UnreadableFileException(DeskMessages.nameOfScenario(LONGEST_NAME));
        }
        boolean taken = opened.reading().value().scenarios().stream()
                .anyMatch(line -> Names.key(line.name()).equals(Names.key(called)));
        if (taken) {
            throw new UnreadableFileException(DeskMessages.scenarioThere(called));
        }
        List<ScenarioLine> named = changes.stream()
                .map(line -> new ScenarioLine(called, line.what(), line.change(), line.origin()))
                .toList();
        Optional<FoundTable> table = table(Grids.ofBook(opened.sources().book()).sheets());
        return table.isPresent()
                ? new WorkbookWriter().change(opened.book(), below(table.get(), named), today)
                : new WorkbookWriter().writeInPlace(opened.book(), sheet(named), today);
    }

    private static Optional<FoundTable> table(List<Grid> sheets) {
        return new TableFinder(Schemas.ALL, new Findings())
                .find(sheets).stream()
                        .filter(table -> table.schema().equals(ScenariosSheet.SCHEMA))
                        .findFirst();
    }

    /** The lines below the table's last one. They are words, so that the format of the column does not change them. */
    private static List<CellChange> below(FoundTable table, List<ScenarioLine> lines) throws IOException {
        FoundTable.Place name = place(table, ScenariosSheet.NAME);
        FoundTable.Place what = place(table, ScenariosSheet.WHAT);
        FoundTable.Place change = place(table, ScenariosSheet.CHANGE);
        List<CellChange> cells = new ArrayList<>();
        int row = table.grid().rows().last();
        for (ScenarioLine line : lines) {
            row++;
            String sheet = table.grid().sheet();
            cells.add(new CellChange(sheet, row, name.index(), null, line.name()));
            cells.add(new CellChange(sheet, row, what.index(), null, line.what()));
            cells.add(new CellChange(sheet, row, change.index(), null, line.change()));
        }
        return cells;
    }

    private static FoundTable.Place place(FoundTable table, InputColumn column) throws IOException {
        FoundTable.Place place = table.columns().get(column);
        if (place == null) {
            throw new UnreadableFileException(DeskMessages.noColumn(table.grid().sheet(), column.header()));
        }
        return place;
    }

    private static Report sheet(List<ScenarioLine> lines) {
        SheetBuilder sheet = new SheetBuilder(ScenariosSheet.SCHEMA.name());
        Table<ScenarioLine> table = Table.of(
                Column.<ScenarioLine>of("name", ScenariosSheet.NAME.header())
                        .words(ScenarioLine::name)
                        .width(30),
                Column.<ScenarioLine>of("what", ScenariosSheet.WHAT.header())
                        .words(ScenarioLine::what)
                        .width(36),
                Column.<ScenarioLine>of("change", ScenariosSheet.CHANGE.header())
                        .words(ScenarioLine::change)
                        .width(16));
        table.at(sheet, 0, lines).write();
        return new Report(List.of(sheet.build()), Set.of(ScenariosSheet.SCHEMA.name()));
    }
}
