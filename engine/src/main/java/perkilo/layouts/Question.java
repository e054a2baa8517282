package perkilo.layouts;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import perkilo.origin.Origin;

/**
 * A question about what a list does not say clearly; a person answers it on a review.
 *
 * @param field what the answer is about, such as {@code breaks in}
 * @param key for {@code columns}: the header; empty elsewhere
 * @param where the cell that raises it
 * @param text the question, from {@link QuestionMessages}
 * @param choices what the answer can be
 */
public record Question(String field, String key, Origin where, String text, List<String> choices) {

    private static final Set<String> FIELDS = Set.of(
            Mapping.DECIMALS,
            Mapping.DATES,
            Mapping.CURRENCY,
            Mapping.PRICE_PER,
            Mapping.BREAKS_IN,
            Mapping.MINIMUMS_IN,
            Mapping.MULTI_PACKS,
            Mapping.BLANK_ITEMS,
            Mapping.ROW_BASIS,
            Mapping.GALLONS,
            Mapping.FIRST_DAY,
            Mapping.LAST_DAY,
            Mapping.PACK_COLUMN,
            Mapping.PACK_UNIT,
            ListRows.STRUCK);

    /** How the fields begin that quote what they are about. */
    private static final List<String> BEGINNINGS = List.of(
            Mapping.DECIMALS + " in ",
            TitleFacts.DATE_AFTER + "\"",
            CostText.field(""),
            TitleFacts.BELOW,
            PriceCell.PRICES_WITH,
            RowCells.beginning(),
            RemarkCells.beginning(),
            ListRows.MINIMUM_ORDER);

    public Question {
        choices = List.copyOf(choices);
    }

    /** A question that one answer settles for the whole list. */
    public static Question of(String field, Origin where, String text, String... choices) {
        return new Question(field, "", where, text, List.of(choices));
    }

    /**
     * The question which of two numbers a text means.
     *
     * @param digits the number in the text, one that can mean two
     */
    public static Question decimals(Origin where, String text, String digits) {
        return of(
                Mapping.DECIMALS,
                where,
                QuestionMessages.decimals(
                        text,
                        DecimalMark.POINT.number(digits).orElseThrow(),
                        DecimalMark.COMMA.number(digits).orElseThrow()),
                "point",
                "comma");
    }

    /** Whether words are a field that an answer can be about, and no header of a column. */
    public static boolean isField(String words) {
        String field = words.strip().toLowerCase(Locale.ROOT);
        return FIELDS.contains(field) || BEGINNINGS.stream().anyMatch(field::startsWith);
    }

    /** Whether the answer may give the first day of the list's prices. */
    public boolean isAboutFirstDay() {
        return field.equals(Mapping.FIRST_DAY) || field.startsWith(TitleFacts.DATE_AFTER);
    }

    /** The question on one line, with the answers to choose from. */
    public String sentence() {
        return choices.isEmpty() ? text : text + " " + QuestionMessages.choices(choices);
    }
}
