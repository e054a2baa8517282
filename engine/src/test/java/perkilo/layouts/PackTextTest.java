package perkilo.layouts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Packs as suppliers type them, alone and in the names of items. */
final class PackTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "25 kg                     | 25 kg",
                "25kg                      | 25 kg",
                "25 KG                     | 25 kg",
                "25 Kilo                   | 25 kg",
                "25 Kilogramm              | 25 kg",
                "25 kilos                  | 25 kg",
                "25 kg net                 | 25 kg",
                "25 kg netto               | 25 kg",
                "25 kg can                 | 25 kg",
                "25 kg bag                 | 25 kg",
                "25 kg bags                | 25 kg",
                "25-kg-Sack                | 25 kg",
                "25 kg/Sack                | 25 kg",
                "25kg/drum                 | 25 kg",
                "25 kg / bag               | 25 kg",
                "bag (25 kg)               | 25 kg",
                "25 kg (bag)               | 25 kg",
                "Sack à 25 kg              | 25 kg",
                "Sack 25 kg netto          | 25 kg",
                "sac de 25 kg              | 25 kg",
                "sac 25kg                  | 25 kg",
                "sacco da 25 kg            | 25 kg",
                "saco de 25 kg             | 25 kg",
                "25 kg blue drum           | 25 kg",
                "25 kg paper bag           | 25 kg",
                "25 kg open-top drum       | 25 kg",
                "25 kg UN-approved can     | 25 kg",
                "drum 190kg                | 190 kg",
                "drum, 190 kg              | 190 kg",
                "Fass à 190 kg             | 190 kg",
                "190 kg steel drum         | 190 kg",
                "fût de 190 kg             | 190 kg",
                "fusto 190 kg              | 190 kg",
                "bidón de 190 kg           | 190 kg",
                "tambor 190 kg             | 190 kg",
                "IBC 1000 kg               | 1000 kg",
                "IBC à 1000 kg             | 1000 kg",
                "1000 kg IBC               | 1000 kg",
                "1 t Big Bag               | 1000 kg",
                "Big Bag 500 kg            | 500 kg",
                "1 t                       | 1000 kg",
                "0,5 kg                    | 0.5 kg",
                "0.5 kg                    | 0.5 kg",
                "1 kg jar                  | 1 kg",
                "500 g                     | 500 g",
                "500 Gramm                 | 500 g",
                "100 g Dose                | 100 g",
                "Kanister à 10 l           | 10 L",
                "Kanister 10 L             | 10 L",
                "5-l-Kanister              | 5 L",
                "5 Liter                   | 5 L",
                "5 ltr. jerrycan           | 5 L",
                "5 litros                  | 5 L",
                "5 litri                   | 5 L",
                "tanica 10 L               | 10 L",
                "garrafa 5 l               | 5 L",
                "bidon de 5 litres         | 5 L",
                "200-l-Fass                | 200 L",
                "250 ml                    | 250 mL",
                "250 ml bottle             | 250 mL",
                "1 lb                      | 1 lb",
                "440 lb drum               | 440 lb",
                "40 lbs pail               | 40 lb",
                "16 oz                     | 16 oz",
                "1 gal                     | 1 US gal",
                "5 gal pail                | 5 US gal",
                "55 gal drum               | 55 US gal",
                "32 fl oz                  | 32 US fl oz",
                "1000 pcs                  | 1000 each",
                "1000 pieces               | 1000 each",
                "1000 Stück                | 1000 each",
                "500 St./Karton            | 500 each",
                "carton of 500 pcs         | 500 each",
                "Karton à 500 Stk.         | 500 each",
                "carton de 500 pièces      | 500 each",
                "caja de 500 unidades      | 500 each",
                "scatola da 500 pezzi      | 500 each",
                "500 pz                    | 500 each",
                "1 piece                   | 1 each",
                "4 x 5 L                   | 20 L of 4",
                "4x5L                      | 20 L of 4",
                "4x5L Kanister             | 20 L of 4",
                "Karton 4×5 l              | 20 L of 4",
                "box of 12 x 100 g         | 1200 g of 12",
                "10 * 1 kg                 | 10 kg of 10",
                "1 x 25 kg                 | 25 kg",
                "6 bottles x 1 kg          | 6 kg of 6",
                "pallet 36 x 25 kg         | 900 kg of 36",
            })
    void a_pack_is_read(String text, String expected) {
        PackText pack = PackText.of(text, DecimalMark.POINT, null).orElse(null);
        assertThat(pack).as(text).isNotNull();
        assertThat(pack.content() + (pack.pieces() == 1 ? "" : " of " + pack.pieces()))
                .as(text)
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drum",
                "bulk",
                "kg",
                "25",
                "ca. 25 kg",
                "min. 25 kg",
                "ab 25 kg",
                "from 25 kg",
                "25–30 kg",
                "20/25 kg",
                "25 kg brutto",
                "25 kg gross",
                "25 kg net 24 kg",
                "25 kg or 50 kg",
                "0 kg",
                "a sack",
                "25 kg per 100 g",
                "several",
                "25 kg half",
                "1 dozen",
                "25 XY",
                "1,5,5 kg"
            })
    void what_is_no_pack_is_not_guessed(String text) {
        assertThat(PackText.of(text, DecimalMark.POINT, null)).as(text).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Glycerin 99.5 % 25 kg can      | Glycerin 99.5 %         | 25 kg",
                "Jojobaöl 5 l                   | Jojobaöl                | 5 L",
                "Xanthan gum, 25 kg bag         | Xanthan gum             | 25 kg",
                "Xanthan gum (25 kg)            | Xanthan gum             | 25 kg",
                "Betain 30 % - Kanister 10 kg   | Betain 30 %             | 10 kg",
                "Dimethicone 100 cSt 190kg drum | Dimethicone 100 cSt     | 190 kg",
                "Vitamin E 1000 IU/g 5 kg       | Vitamin E 1000 IU/g     | 5 kg",
                "Polysorbate 20 4 x 5 kg        | Polysorbate 20          | 20 kg",
                "Shea butter 55 lb box          | Shea butter             | 55 lb",
            })
    void a_pack_in_a_name_is_parted_from_it(String item, String name, String pack) {
        PackInName found = PackInName.of(item, DecimalMark.POINT).orElse(null);
        assertThat(found).as(item).isNotNull();
        assertThat(found.name()).isEqualTo(name);
        assertThat(found.pack().content()).hasToString(pack);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Glycerin 99.5 %",
                "Bottle PET 100 ml",
                "Jar 50 g",
                "Polysorbate 20",
                "25 kg",
                "Oil 5 kg or 10 kg",
                "Iron oxide CI 77491",
                "Closure 24/410",
                "Squalane"
            })
    void a_name_without_one_clear_pack_has_none(String item) {
        assertThat(PackInName.of(item, DecimalMark.POINT)).as(item).isEmpty();
    }
}
