package perkilo.names;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Spellings that count as one name, and spellings that do not. */
final class NamesTest {

    @Test
    void case_spaces_and_marks_do_not_matter() {
        for (String[] same : new String[][] {
            {"Emulsifier-X", "Emulsifier X"},
            {"PEG-8", "PEG 8"},
            {"PEG\u20118", "peg8"},
            {"Shea butter (refined)", "Shea Butter, refined"},
            {"Vitamin E.", "vitamin  e"}
        }) {
            assertThat(Names.withoutMarks(same[0])).isEqualTo(Names.withoutMarks(same[1]));
        }
    }

    @Test
    void letters_digits_and_what_parts_numbers_do() {
        for (String[] other : new String[][] {
            {"PEG-8", "PEG-80"},
            {"PEG-8", "PEG-9"},
            {"Emulsifier X", "Emulsifier XL"},
            {"Emulsifier X", "Emulsifier X+"},
            {"1,2-Hexanediol", "12-Hexanediol"},
            {"Grade 1.2", "Grade 1,2"},
            {"Oil 8-0", "Oil 80"},
            {"C12-15 alkyl benzoate", "C1215 alkyl benzoate"}
        }) {
            assertThat(Names.withoutMarks(other[0])).isNotEqualTo(Names.withoutMarks(other[1]));
        }
    }
}
