package perkilo.xlsx.author;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import perkilo.sheet.Choices;
import perkilo.sheet.ResultSheet.DropDown;
import perkilo.sheet.SheetNames;

/** Writes the drop-down lists of a sheet. They help to type an answer and refuse none. */
final class DropDowns {

    private DropDowns() {}

    static void write(List<DropDown> dropDowns, UnaryOperator<String> names, PartXml xml) {
        if (dropDowns.isEmpty()) {
            return;
        }
        Map<Choices, List<CellRange>> byChoices = new LinkedHashMap<>();
        for (DropDown one : dropDowns) {
            add(one, byChoices.computeIfAbsent(one.choices(), any -> new ArrayList<>()));
        }
        xml.open("dataValidations", "count", byChoices.size());
        byChoices.forEach((choices, ranges) -> {
            xml.open("dataValidation", "type", "list", "allowBlank", true, "showErrorMessage", false);
            xml.set(
                    "sqref",
                    String.join(" ", ranges.stream().map(CellRange::relative).toList()));
            xml.words("formula1", formula(choices, names)).close();
        });
        xml.close();
    }

    /** Lengthens the last range if the cell follows it in its column. */
    private static void add(DropDown one, List<CellRange> ranges) {
        int last = ranges.size() - 1;
        CellRange before = last < 0 ? null : ranges.get(last);
        if (before != null && before.firstColumn() == one.column() && before.lastRow() == one.row() - 1) {
            ranges.set(last, new CellRange(before.firstRow(), one.column(), one.row(), one.column()));
        } else {
            ranges.add(new CellRange(one.row(), one.column(), one.row(), one.column()));
        }
    }

    private static String formula(Choices choices, UnaryOperator<String> names) {
        if (choices instanceof Choices.Listed listed) {
            CellRange range = new CellRange(0, listed.column(), listed.count() - 1, listed.column());
            return SheetNames.quoted(names.apply(listed.sheet())) + "!" + range.absolute();
        }
        String words = String.join(",", ((Choices.Words) choices).words());
        return "\"" + words.replace("\"", "\"\"") + "\"";
    }
}
