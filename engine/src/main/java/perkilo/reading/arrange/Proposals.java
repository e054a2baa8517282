package perkilo.reading.arrange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Mapping;
import perkilo.origin.Origin;
import perkilo.reading.table.DateText;
import perkilo.reading.table.Findings;
import perkilo.reading.table.FoundTable;
import perkilo.reading.table.NumberText;
import perkilo.reading.table.TableFinder;
import perkilo.schema.InputColumn;
import perkilo.schema.Schemas;
import perkilo.schema.SheetSchema;
import perkilo.sheet.Choices;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/** What could stand on the sheet Reading of a workbook: each of its sheets, its headers, and what it leaves open. */
public final class Proposals {

    /** From this confidence on a guess is filled in, for the person to confirm by saving. */
    private static final double SURE = 0.7;

    private static final int ROWS_LOOKED_AT = 500;

    /** What a row is about. */
    public enum Kind {
        /** Something that the workbook leaves open. */
        QUESTION,
        /** A whole sheet. */
        SHEET,
        /** A header. */
        COLUMN
    }

    /**
     * A row of the sheet.
     *
     * @param kind what it is about
     * @param where the sheet, or the cell
     * @param there what is there, in the words of the sheet Reading
     * @param recognised what it is read as without an answer; empty if it is not read
     * @param looksLike what it looks like, or what is asked; empty if nothing is known
     * @param as the answer that is filled in; empty to leave it to the person
     * @param choices possible answers
     */
    public record Proposal(
            Kind kind,
            Origin where,
            String there,
            String recognised,
            String looksLike,
            String as,
            List<String> choices) {

        public Proposal {
            choices = List.copyOf(choices);
        }

        /** Its name among all rows. */
        public String id() {
            return where.where() + " " + there;
        }

        /** The same row with another answer. */
        public Proposal answered(String answer) {
            return new Proposal(kind, where, there, recognised, looksLike, answer, choices);
        }
    }

    private final Arrangement arranged;
    private final ContentGuess guess;
    private final List<Proposal> all = new ArrayList<>();
    private final ReadingSheet said;
    private final List<Arrangement.Open> open;

    private Proposals(List<Grid> sheets, List<Arrangement.Open> others) {
        this.said = ReadingSheet.of(sheets, new Findings());
        TableFinder finder = new TableFinder(Schemas.ALL, new Findings());
        this.arranged = new Arranger(finder, new Findings()).arrange(sheets);
        List<FoundTable> known = finder.find(arranged.grids());
        this.guess = new ContentGuess(BookNames.of(known));
        this.open = new ArrayList<>(arranged.open());
        open.addAll(others);
    }

    /**
     * The rows for all sheets of a workbook.
     *
     * @param others what the workbook leaves open once it is read together with its price lists
     */
    public static List<Proposal> of(List<Grid> sheets, List<Arrangement.Open> others) {
        Proposals proposals = new Proposals(sheets, others);
        List<Grid> shown = sheets.stream()
                .filter(sheet -> Schemas.RESULT_SHEETS.stream().noneMatch(sheet.sheet()::equalsIgnoreCase)
                        && !ReadingSheet.isOne(sheet)
                        && !sheet.rows().isEmpty())
                .toList();
        shown.forEach(proposals::questions); // first, because nothing goes on without their answers
        shown.forEach(proposals::add);
        proposals.all.addAll(proposals.said.others(List.copyOf(proposals.all)));
        return proposals.all;
    }

    private void add(Grid sheet) {
        List<FoundTable> tables = arranged.asIs().stream()
                .filter(table -> table.grid().sheet().equals(sheet.sheet()))
                .toList();
        List<ArrangedPart> parts = arranged.parts().stream()
                .filter(part -> part.from().sheet().equals(sheet.sheet()))
                .toList();
        Set<String> kinds = new LinkedHashSet<>();
        tables.forEach(table -> kinds.add(table.schema().name()));
        parts.forEach(part -> kinds.add(part.schema().name()));
        ContentGuess.SheetGuess looks = kinds.isEmpty()
                ? guess.sheet(said.kind(sheet)
                                .map(kind -> sheet.meant(kind.name()))
                                .orElse(sheet))
                        .orElse(null)
                : null;
        String like = looks == null ? "" : looks.schema().name();
        boolean sure = looks != null
                && looks.confidence() >= SURE
                && !said.isEmptied(sheet.origin(), "", looks.schema().name());
        String as = said.as(sheet.origin(), "").orElse(sure ? like : "");
        all.add(new Proposal(
                Kind.SHEET,
                sheet.origin(),
                ReadingSheet.WHOLE_SHEET,
                String.join(", ", kinds),
                like,
                as,
                tableChoices()));
        tables.forEach(table -> headers(sheet, table));
        parts.forEach(part -> headers(sheet, part));
        if (looks != null) {
            headers(sheet, looks);
        }
        doubts(sheet);
    }

    /** What is asked about a sheet. */
    private void questions(Grid sheet) {
        open.stream()
                .filter(open -> open.where().sheet().equals(sheet.sheet()))
                .forEach(open -> all.add(new Proposal(
                        Kind.QUESTION,
                        open.where(),
                        open.asked(),
                        "",
                        open.text(),
                        said.as(open.where(), open.asked()).orElse(""),
                        open.choices())));
    }

    /** Choices that fit into a cell's own list; the last columns, which are rare, are left out. */
    private static List<String> fitting(List<String> all) {
        List<String> some = new ArrayList<>(all);
        while (!Choices.fit(with(some)) && some.size() > 1) {
            some.remove(some.size() - 1);
        }
        return with(some);
    }

    private static List<String> with(List<String> some) {
        List<String> choices = new ArrayList<>(some);
        choices.add(ReadingSheet.IGNORE);
        return choices;
    }

    private static List<String> tableChoices() {
        List<String> choices = new ArrayList<>();
        Schemas.ALL.forEach(schema -> choices.add(schema.name()));
        return fitting(choices);
    }

    private static List<String> columnChoices(SheetSchema schema) {
        List<String> choices = new ArrayList<>();
        schema.columns().forEach(column -> choices.add(column.header()));
        return fitting(choices);
    }

    private void headers(Grid sheet, FoundTable table) {
        Map<Integer, String> known = new TreeMap<>();
        table.columns().forEach((column, place) -> known.put(place.index(), column.header()));
        headers(sheet, table.grid(), table.headerRow(), table.schema(), known, Map.of());
    }

    private void headers(Grid sheet, ArrangedPart part) {
        headers(sheet, part.from(), part.headerRow(), part.schema(), part.uses(), Map.of());
    }

    private void headers(Grid sheet, ContentGuess.SheetGuess looks) {
        headers(sheet, sheet, looks.headerRow(), looks.schema(), Map.of(), looks.columns());
    }

    /**
     * Adds the headers of a table.
     *
     * @param block the part of the sheet that holds it
     */
    private void headers(
            Grid sheet,
            Grid block,
            int row,
            SheetSchema schema,
            Map<Integer, String> known,
            Map<Integer, ContentGuess.ColumnGuess> guessed) {
        Set<InputColumn> taken = new HashSet<>();
        sheet.row(row).forEach((column, cell) -> {
            boolean beside =
                    block.at(row, column).isBlank() && !sheet.at(row, column).isBlank();
            if (cell.kind() != Cell.Kind.TEXT || beside || isListed(sheet.origin(row, column), cell.text())) {
                return;
            }
            ContentGuess.ColumnGuess found = guessed.get(column);
            String like = found == null ? "" : found.column().header();
            String recognised = known.getOrDefault(column, "");
            if (found == null && recognised.isEmpty()) {
                like = guess.column(sheet, row, column, schema).stream()
                        .filter(one -> !known.containsValue(one.column().header()) && taken.add(one.column()))
                        .findFirst()
                        .map(one -> one.column().header())
                        .orElse("");
            }
            Origin where = sheet.origin(row, column);
            boolean sure = found != null && found.confidence() >= SURE && !said.isEmptied(where, cell.text(), like);
            all.add(new Proposal(
                    Kind.COLUMN,
                    where,
                    cell.text(),
                    recognised,
                    like,
                    said.as(where, cell.text()).orElse(sure ? like : ""),
                    columnChoices(schema)));
        });
    }

    /** Whether a header is among the rows, as that of a column which two tables share. */
    private boolean isListed(Origin where, String text) {
        return all.stream()
                .anyMatch(row -> row.where().equals(where) && row.there().equals(text));
    }

    /** Numbers and dates that can mean two things. */
    private void doubts(Grid sheet) {
        Origin number = null;
        Origin date = null;
        String numberText = "";
        String dateText = "";
        for (int row : sheet.head(ROWS_LOOKED_AT).rows().numbers()) {
            for (Map.Entry<Integer, Cell> cell : sheet.row(row).entrySet()) {
                String text = cell.getValue().text();
                if (cell.getValue().kind() != Cell.Kind.TEXT) {
                    continue;
                }
                if (number == null && NumberText.parse(text) instanceof NumberText.Ambiguous) {
                    number = sheet.origin(row, cell.getKey());
                    numberText = text;
                }
                if (date == null && DateText.parse(text) instanceof DateText.Ambiguous) {
                    date = sheet.origin(row, cell.getKey());
                    dateText = text;
                }
            }
        }
        doubt(sheet, number, Mapping.DECIMALS, numberText, List.of("point", "comma"));
        doubt(sheet, date, Mapping.DATES, dateText, List.of("day first", "month first"));
    }

    private void doubt(Grid sheet, @Nullable Origin where, String asked, String text, List<String> choices) {
        boolean before = all.stream()
                .anyMatch(row ->
                        row.where().sheet().equals(sheet.sheet()) && row.there().equals(asked));
        if (where != null && !before) {
            all.add(new Proposal(
                    Kind.QUESTION,
                    where,
                    asked,
                    "",
                    ArrangeMessages.canMeanTwo(text),
                    said.as(where, asked).orElse(""),
                    choices));
        }
    }
}
