package perkilo.pricelists;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import perkilo.layouts.CellFault;
import perkilo.layouts.ListWords;
import perkilo.xlsx.grid.Cell;
import perkilo.xlsx.grid.Grid;

/**
 * What a person typed on a review in the place of cells with which something is wrong. It holds for all cells of the
 * column with the same text.
 */
final class TypedCells {

    /** What holds for a blank cell: what stands above it. */
    static final String AS_ABOVE = "as above";

    private static final int DIGITS = 12;

    private final ListAnswers answers;
    private final String digest;
    private final Map<List<Object>, Typed> all = new LinkedHashMap<>();

    /**
     * What was typed for a cell.
     *
     * @param fault what was wrong before
     * @param about what is remembered
     */
    private record Typed(CellFault fault, String about, String answer) {}

    TypedCells(ListAnswers answers, String digest) {
        this.answers = answers;
        this.digest = digest;
    }

    private static List<Object> place(CellFault fault) {
        return List.of(fault.grid().sheet(), fault.row(), fault.column());
    }

    /** What is remembered of a fault: of a blank cell for this very file alone, as the next list has others there. */
    String about(CellFault fault) {
        boolean blank = fault.grid().at(fault.row(), fault.column()).isBlank();
        String about = fault.where().where() + " " + fault.text();
        return blank ? about + " (" + digest.substring(0, DIGITS) + ")" : about;
    }

    /** Takes what a person typed for cells with which something is wrong; whether there was anything new. */
    boolean take(List<CellFault> faults) {
        boolean any = false;
        for (CellFault fault : faults) {
            if (all.containsKey(place(fault))) {
                continue;
            }
            String about = about(fault);
            String key = answers.keyOf(Memory.ROW, about);
            Optional<String> said = answers.said(key);
            said.ifPresent(answer -> answers.memory().put(Memory.ROW, about, answer, ""));
            String answer = said.or(() -> answers.isTakenOut(key)
                            ? Optional.empty()
                            : answers.memory().answer(Memory.ROW, about))
                    .orElse("");
            if (!answer.isEmpty() && !answer.equalsIgnoreCase(RowNotRead.IGNORE)) {
                all.put(place(fault), new Typed(fault, about, answer));
                any = true;
            }
        }
        return any;
    }

    /** The sheets with what was typed in its places. */
    List<Grid> in(List<Grid> sheets) {
        List<Grid> typed = new ArrayList<>();
        for (Grid sheet : sheets) {
            Map<Integer, Map<Integer, Cell>> others = new HashMap<>();
            for (Typed one : all.values()) {
                if (one.fault().grid().sheet().equals(sheet.sheet())) {
                    put(one, sheet, others);
                }
            }
            typed.add(sheet.with(others));
        }
        return typed;
    }

    private static void put(Typed typed, Grid sheet, Map<Integer, Map<Integer, Cell>> others) {
        CellFault fault = typed.fault();
        Cell wrong = sheet.at(fault.row(), fault.column());
        for (int row : sheet.rows().numbers()) {
            boolean here = row == fault.row();
            Cell cell = sheet.at(row, fault.column());
            boolean same = !wrong.isBlank() && cell.text().equals(wrong.text()) && row > fault.row();
            if (here || same) {
                others.computeIfAbsent(row, any -> new HashMap<>())
                        .put(fault.column(), meant(typed.answer(), sheet, row, fault.column()));
            }
        }
    }

    private static Cell meant(String answer, Grid sheet, int row, int column) {
        if (ListWords.is("ditto", answer)) {
            for (int above = row - 1; above >= 0; above--) {
                if (!sheet.at(above, column).isBlank()) {
                    return sheet.at(above, column);
                }
            }
        }
        return Cell.text(answer);
    }

    /** What was typed for a cell, if it does not settle what is wrong with it. */
    Optional<String> failed(CellFault fault) {
        return Optional.ofNullable(all.get(place(fault))).map(Typed::answer);
    }

    /** The key of a fault on a review: that of the first one at its place. */
    String key(CellFault fault) {
        Typed typed = all.get(place(fault));
        return answers.keyOf(Memory.ROW, typed == null ? about(fault) : typed.about());
    }

    /** The rows whose cells are read as typed, except those with which something is still wrong. */
    List<RowNotRead> settled(List<CellFault> still) {
        List<RowNotRead> rows = new ArrayList<>();
        all.forEach((place, typed) -> {
            if (still.stream().noneMatch(fault -> place(fault).equals(place))) {
                String remark = answers.remark(Memory.ROW, typed.about(), "");
                rows.add(new RowNotRead(
                        answers.keyOf(Memory.ROW, typed.about()),
                        typed.fault().where(),
                        typed.fault().text(),
                        typed.answer(),
                        remark.isEmpty() ? ListMessages.readAsTyped() : ListMessages.readAsTypedBefore(),
                        List.of(RowNotRead.IGNORE),
                        true));
            }
        });
        return rows;
    }
}
