package perkilo.reading;

import java.util.ArrayList;
import java.util.List;
import perkilo.names.Names;
import perkilo.reading.table.TableRow;
import perkilo.schema.InputColumn;

/** Reads cells that hold one or several of a few words; capitals, spaces and marks make no difference. */
final class FactWords {

    private FactWords() {}

    /**
     * The word of a cell as the column spells it. Any other word is reported and left out.
     *
     * @param choices the words that may be typed; none if any may
     * @return empty if the cell is blank or was reported
     */
    static String chosen(TableRow row, InputColumn column, List<String> choices) {
        String typed = row.text(column);
        return typed.isEmpty() || choices.isEmpty() ? typed : chosen(row, column, choices, typed);
    }

    /** The words of a cell as the column spells them; the same for several. */
    static List<String> allChosen(TableRow row, InputColumn column, List<String> choices) {
        List<String> typed = row.list(column);
        if (choices.isEmpty()) {
            return typed;
        }
        List<String> words = new ArrayList<>();
        for (String word : typed) {
            String known = chosen(row, column, choices, word);
            if (!known.isEmpty()) {
                words.add(known);
            }
        }
        return words;
    }

    private static String chosen(TableRow row, InputColumn column, List<String> choices, String typed) {
        String key = Names.withoutMarks(typed);
        for (String choice : choices) {
            if (Names.withoutMarks(choice).equals(key)) {
                return choice;
            }
        }
        row.findings().warning(row.origin(column), MaterialMessages.noChoice(column.header(), typed, choices));
        return "";
    }
}
