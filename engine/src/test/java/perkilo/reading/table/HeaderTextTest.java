package perkilo.reading.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;

/** What spellings of one header have in common. */
class HeaderTextTest {

    @Property
    void a_key_is_the_letters_digits_and_per_cent_signs_in_lower_case(
            @ForAll @StringLength(max = 20) @CharRange(from = ' ', to = '\u017f') String header) {
        String plain = Normalizer.normalize(header, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        assertThat(HeaderText.key(header)).isEqualTo(plain.replaceAll("[^\\p{L}\\p{Nd}%]", ""));
    }

    @Property
    void so_it_is_without_letters_beyond_ascii(
            @ForAll @StringLength(max = 20) @CharRange(from = '\t', to = '~') String header) {
        assertThat(HeaderText.key(header))
                .isEqualTo(header.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9%]", ""));
    }
}
