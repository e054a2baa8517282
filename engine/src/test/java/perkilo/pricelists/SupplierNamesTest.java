package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Two spellings of one supplier are found; two suppliers stay two. */
final class SupplierNamesTest {

    private static final List<String> KNOWN =
            List.of("Alpha", "Nadelhorst Tenside AG", "Fen & Moor Ltd", "Havre Chimie", "Ölmühle Süd");

    @ParameterizedTest
    @CsvSource({
        "Alpha GmbH, Alpha",
        "ALPHA S.r.l., Alpha",
        "Alpha GmbH & Co. KG, Alpha",
        "Alpha Deutschland, Alpha",
        "Nadelhorst Tenside, Nadelhorst Tenside AG",
        "Nadelhorst, Nadelhorst Tenside AG",
        "Fen and Moor, Fen & Moor Ltd",
        "Fen&Moor Limited, Fen & Moor Ltd",
        "Havre Chimie SAS, Havre Chimie",
        "Havre-Chimie S.A., Havre Chimie",
        "Harve Chimie, Havre Chimie",
        "Oelmühle Süd GmbH, Ölmühle Süd",
    })
    void another_spelling_of_a_known_supplier_is_found(String name, String known) {
        assertThat(SupplierNames.alike(name, known)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Beta GmbH", "Alphabet AG", "Chimie du Sud", "GmbH"})
    void another_supplier_is_not(String name) {
        assertThat(KNOWN).noneMatch(known -> SupplierNames.alike(known, name));
    }
}
