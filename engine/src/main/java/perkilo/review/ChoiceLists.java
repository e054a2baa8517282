package perkilo.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import perkilo.sheet.Choices;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetBuilder;

/** The drop-down lists of a workbook: short ones in their cells, the others on a hidden sheet. */
public final class ChoiceLists {

    /** The hidden sheet. */
    public static final String SHEET = "Choices";

    private final Map<List<String>, Choices> known = new LinkedHashMap<>();
    private final List<List<String>> listed = new ArrayList<>();

    /** The drop-down list of some answers; null for none. */
    public @Nullable Choices of(List<String> answers) {
        return answers.isEmpty() ? null : known.computeIfAbsent(answers, this::added);
    }

    private Choices added(List<String> answers) {
        if (Choices.fit(answers)) {
            return new Choices.Words(answers);
        }
        listed.add(answers);
        return new Choices.Listed(SHEET, listed.size() - 1, answers.size());
    }

    /** The hidden sheet, to be written with the others; empty if no list needs it. */
    public Optional<ResultSheet> sheet() {
        if (listed.isEmpty()) {
            return Optional.empty();
        }
        SheetBuilder sheet = new SheetBuilder(SHEET).hidden();
        for (int column = 0; column < listed.size(); column++) {
            List<String> answers = listed.get(column);
            for (int row = 0; row < answers.size(); row++) {
                sheet.text(row, column, answers.get(row), Look.HINT);
            }
        }
        return Optional.of(sheet.build());
    }
}
