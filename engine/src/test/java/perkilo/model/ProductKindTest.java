package perkilo.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import perkilo.model.ProductKind.About;
import perkilo.model.ProductKind.Word;

/** Words for kinds of product. */
final class ProductKindTest {

    private static ProductKind read(String cell) {
        Set<Word> words = EnumSet.noneOf(Word.class);
        ProductKind.parts(cell).forEach(part -> words.add(Word.named(part).orElseThrow()));
        return ProductKind.of(words);
    }

    @ParameterizedTest(name = "\"{0}\" is {1}, rinsed off: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "leave-on|leave-on|false",
                "Leave on|leave-on|false",
                "''|leave-on|false",
                "rinse-off|rinse-off|true",
                "RINSE OFF|rinse-off|true",
                "wash-off, Hair|rinse-off; hair|true",
                "Aerosol; underarm|leave-on; underarm; propellant spray|false",
                "Eyes|leave-on; eye|false",
                "Toothpaste|rinse-off; toothpaste|true",
                "rinse-off; body; baby|rinse-off; body; under 3|true"
            })
    void cells_are_read(String cell, String words, boolean rinseOff) {
        assertThat(read(cell).words()).isEqualTo(words);
        assertThat(read(cell).rinseOff()).isEqualTo(rinseOff);
        assertThat(read(read(cell).words())).isEqualTo(read(cell));
    }

    @Test
    void what_follows_holds_too() {
        assertThat(read("propellant spray").is(Word.SPRAY)).isTrue();
        assertThat(read("toothpaste").is(Word.ORAL)).isTrue();
        assertThat(read("spray").is(Word.PROPELLANT_SPRAY)).isFalse();
    }

    @Test
    void what_is_not_said_is_known_not_to_be_said() {
        assertThat(read("").says(About.CONTACT)).isFalse();
        assertThat(read("leave-on").says(About.PART)).isFalse();
        assertThat(read("leave-on; face").says(About.PART)).isTrue();
    }

    @Test
    void a_word_that_nobody_knows_is_no_word() {
        assertThat(Word.named("knees")).isEmpty();
        assertThat(Word.named("")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void each_word_is_found_by_its_own_spelling(Word word) {
        assertThat(Word.named(word.word())).contains(word);
    }
}
