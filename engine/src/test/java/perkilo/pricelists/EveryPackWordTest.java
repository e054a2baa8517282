package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import perkilo.layouts.DecimalMark;
import perkilo.layouts.ListWords;
import perkilo.layouts.PackText;
import perkilo.layouts.PriceNote;
import perkilo.layouts.Quantity;
import perkilo.reading.table.PackWords;
import perkilo.reading.table.UnitText;
import perkilo.units.Measure;

/** A word for a pack means one wherever it may be typed, and nothing else. */
final class EveryPackWordTest {

    static List<String> words() {
        return List.copyOf(new HashSet<>(PackWords.all()));
    }

    @ParameterizedTest
    @MethodSource("words")
    void it_is_understood_on_the_offers_sheet_and_in_price_lists(String word) {
        assertThat(UnitText.parse("€/" + word).map(UnitText::pack))
                .as("\"€/%s\" as a price for a pack on the Offers sheet", word)
                .contains(true);
        assertThat(PriceNote.of("€/" + word).map(PriceNote::pack))
                .as("\"€/%s\" as a price for a pack in a price list", word)
                .contains(true);
        assertThat(PackText.of("25 kg " + word, DecimalMark.POINT, null))
                .as("\"25 kg %s\" as a pack of 25 kg", word)
                .contains(new PackText(Quantity.unit("kg").orElseThrow().times(new BigDecimal(25)), 1));
    }

    @ParameterizedTest
    @MethodSource("words")
    void it_is_no_unit_as_well(String word) {
        assertThat(Measure.parse(word))
                .as("whether \"%s\" is a unit too, so that a price for it could mean both", word)
                .isEmpty();
    }

    /** The two lists that there were must not come back: words.csv holds no words for packs. */
    @Test
    void there_is_one_list_of_them() {
        Set<String> kinds = new HashSet<>();
        ListWords.rows(ListWords.class, "words.csv").forEach(row -> kinds.add(row.get(0)));
        assertThat(kinds).doesNotContain("container").contains("remark");
    }
}
