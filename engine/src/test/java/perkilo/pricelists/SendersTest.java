package perkilo.pricelists;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.desk.TakeInAnswer;

/** Who a list is from, and whether a file is a list at all. */
final class SendersTest {

    private static final String TABLE = "\nPrices as of 2026-10-05\nArticle;Pack;EUR/kg\nA;25 kg;9,00\n";

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Larch Oils Ltd, Cork | Larch Oils Ltd",
                "Larch Oils, Inc. | Larch Oils, Inc.",
                "Larch Verpackungen GmbH & Co. KG | Larch Verpackungen GmbH & Co. KG",
                "Fratelli Larch S.p.A. | Fratelli Larch S.p.A.",
                "Larch Aceites, S.L. | Larch Aceites, S.L.",
                "Laboratoires Larch SARL - ZI des Prés - Nyons | Laboratoires Larch SARL",
                "Chemiehandel Larch KG | Chemiehandel Larch KG",
            })
    void the_one_company_above_the_table_is_taken_and_said(String line, String name) throws IOException {
        TakenIn taken = new Intake(folder, null).take("list.csv", line + TABLE);

        assertThat(taken.supplier()).isEqualTo(name);
        assertThat(taken.isKept()).isTrue();
        assertThat(Intake.said(taken))
                .contains(
                        "The list seems to be from \"" + name + "\", so it is taken in for them. If it is from somebody"
                                + " else, correct it on the sheet \"Lists\" of the review.");
    }

    @Test
    void the_first_line_is_taken_if_the_name_of_the_file_says_the_same() throws IOException {
        assertThat(new Intake(folder, null)
                        .take("tarif_larch.csv", "MAISON LARCH" + TABLE)
                        .supplier())
                .isEqualTo("MAISON LARCH");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Larch Oils Ltd\nMoor Waxes Ltd", "For Larch Oils Ltd", "Our oils", "25 KG", "Autumn list"})
    void what_may_be_somebody_else_is_asked(String lines) throws IOException {
        TakenIn taken = new Intake(folder, null).take("list.csv", lines + TABLE);
        assertThat(taken.questions()).extracting(one -> one.field()).containsExactly("supplier");
    }

    @ParameterizedTest
    @ValueSource(strings = {"LARCH OILS LTD", "Larch Oils Ltd", "Larch Oils", "larch oils limited"})
    void capitals_and_the_kind_of_company_make_no_other_supplier(String line) throws IOException {
        TakenIn taken = new Intake(folder, null)
                .takeKnowing("larch oils.csv", line + TABLE, Set.of("Larch Oils Ltd", "Moor Waxes"));
        assertThat(taken.supplier()).isEqualTo("Larch Oils Ltd");
    }

    @Test
    void another_kind_of_company_may_be_another_supplier() {
        assertThat(SupplierNames.same("Larch GmbH", "Larch AG")).isFalse();
        assertThat(SupplierNames.same("Larch", "LARCH S. p. A.")).isTrue();
    }

    @Test
    void a_file_that_is_no_list_is_dismissed_once_and_for_all() throws IOException {
        String text =
                "Open orders of week 49\nOrder;Article;Amount kg;Day;Carrier\nB-1;Almond oil;190;2026-12-03;Fern\n";
        Intake intake = new Intake(folder, null);
        TakenIn asked = intake.take("orders.csv", text);
        assertThat(Intake.choices(asked, "No price table")).contains("this is no price list");
        assertThat(Intake.choices(asked, "Who is it from")).doesNotContain("Open orders of week 49");
        intake.answer("No price table", "this is no price list");

        TakenIn dismissed = intake.take("orders.csv", text);
        assertThat(dismissed.noList()).isTrue();
        assertThat(dismissed.waitsFor()).isZero();
        assertThat(Intake.said(dismissed)).isEqualTo("This file is no price list, as you answered. It is not read.");
        Files.delete(folder.resolve("orders.csv"));
        TakeInAnswer later = intake.again();
        assertThat(later.missing()).isEmpty();
        assertThat(later.lists()).isEmpty();
        Files.delete(folder.resolve("prices-review.xlsx"));
        assertThat(intake.take("orders.csv", text).noList()).isTrue();
    }

    @Test
    void it_can_be_called_a_list_again() throws IOException {
        String text =
                "Open orders of week 49\nOrder;Article;Amount kg;Day;Carrier\nB-1;Almond oil;190;2026-12-03;Fern\n";
        Intake intake = new Intake(folder, null);
        intake.take("orders.csv", text);
        intake.answer("No price table", "this is no price list");
        intake.take("orders.csv", text);
        intake.fill("Questions", "orders.csv", "Answer", "line 2");

        assertThat(intake.take("orders.csv", text).noList()).isFalse();
    }

    @Test
    void all_that_can_be_asked_is_asked_at_once() throws IOException {
        Path book = Files.writeString(
                folder.resolve("materials.csv"), "Material,INCI\nAlmond oil sweet,Prunus Amygdalus Dulcis Oil\n");
        Path list = Files.writeString(folder.resolve("list.csv"), """
                        Larch Oils Ltd
                        Prices as of 2026-10-05
                        Article;INCI;Pack;Price per kg
                        Mandelöl raff.;Prunus Amygdalus Dulcis Oil;25 kg;9,00
                        """);
        TakenIn taken = new TakeIn(
                        new ListFolder(folder.resolve("kept")),
                        perkilo.xlsx.grid.Grids.ofPriceFile(book).sheets(),
                        Set.of())
                .take(list, new TakeIn.Said(null, null, null));
        assertThat(taken.questions()).extracting(one -> one.field()).containsExactly("currency", "name");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"Prezzo €/kg | EUR", "Preis €/kg | EUR", "Prix €/kg | EUR", "Price £/kg | GBP"})
    void a_sign_in_a_header_is_no_question(String header, String currency) throws IOException {
        TakenIn taken = new Intake(folder, "Fen & Moor")
                .take("list.csv", "Prices as of 2026-10-05\nArticle;Pack;" + header + "\nA;25 kg;9,00\n");
        assertThat(LayoutsProperties.rows(taken)).containsExactly("A|25|kg||9|kg|" + currency);
    }

    @Test
    void a_title_says_which_dollar_it_is() throws IOException {
        TakenIn taken = new Intake(folder, "Fen & Moor")
                .take(
                        "list.csv",
                        "Prices as of 2026-10-05 - All prices CAD\nArticle;Pack;Price per lb\nA;36 lb;$9.50\n");
        assertThat(LayoutsProperties.rows(taken)).containsExactly("A|36|lb||9.5|lb|CAD");
    }

    @Test
    void a_pack_that_is_given_twice_is_a_weight_where_the_price_is_for_one() throws IOException {
        TakenIn taken = new Intake(folder, "Fen & Moor").take("list.csv", """
                        Prices as of 2026-10-05 - All prices USD
                        Article;Container;Price per lb
                        A;5 gal pail (36 lb);$9.50
                        B;55 gal drum (400 lb);$8.50
                        C;25 kg (55 lb);$7.50
                        """);
        assertThat(LayoutsProperties.rows(taken))
                .containsExactly("A|36|lb||9.5|lb|USD", "B|400|lb||8.5|lb|USD", "C|25|kg||7.5|lb|USD");
    }

    @Test
    void a_strength_in_one_name_is_no_pack() throws IOException {
        TakenIn taken = new Intake(folder, "Fen & Moor").take("list.csv", """
                        Prices as of 2026-10-05
                        Article;EUR/kg
                        Panthenol D 75 L;9,00
                        Allantoin;8,00
                        Bisabolol;7,00
                        """);
        assertThat(taken.questions()).extracting(one -> one.field()).containsExactly("pack column");
        assertThat(Intake.said(taken)).doesNotContain("75 L");
    }

    @Test
    void prices_on_request_and_blank_first_prices_are_named() throws IOException {
        TakenIn taken = new Intake(folder, "Fen & Moor").take("list.csv", """
                        Prices as of 2026-10-05
                        Article;Pack;EUR/kg from 25 kg;EUR/kg from 100 kg
                        A;25 kg;9,00;POA
                        B;25 kg;;8,00
                        """);
        assertThat(taken.isKept()).isTrue();
        assertThat(Intake.said(taken))
                .contains(
                        "1 price is on request, so it is left out: \"A\" (line 3).",
                        "\"B\" has no price for less than \"EUR/kg from 100 kg\": the cell is blank. Ask the supplier if you"
                                + " need less.");
    }
}
