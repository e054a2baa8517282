package perkilo.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import perkilo.model.Book;
import perkilo.model.Demand;
import perkilo.model.Run;
import perkilo.origin.Reading;
import perkilo.reading.arrange.Proposals;
import perkilo.xlsx.grid.Grids;

/** Plans that count batches, and plans with losses. */
final class BatchPlanTest {

    private static final String UNITS_OF_ONE = "\"Balm 30\" is planned in batches here, and purchases are planned in"
            + " units. How many units does one batch give?";

    /** 45 kg at 30 g each are 1,500 units. */
    @Test
    void units_of_a_batch_are_asked_for_with_a_proposal_and_the_answer_counts() {
        TestBook book = TestBook.sound()
                .sheet(
                        "Production plan",
                        List.of("Product", "Batches planned", "Batch size kg", "Month"),
                        List.of("Balm 30", 2, 45, "2027-01-10"),
                        List.of("Balm 30", 3, 45, "2027-02-10"));

        assertThat(texts(book))
                .filteredOn(text -> text.startsWith("error"))
                .singleElement()
                .asString()
                .startsWith("error Production plan!B2: " + UNITS_OF_ONE + " A batch of 45 kg fills 1500 if nothing is"
                        + " lost.");
        assertThat(proposed(book))
                .filteredOn(one -> one.there().startsWith("units per batch"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.there()).isEqualTo("units per batch of Balm 30 at 45 kg");
                    assertThat(one.choices()).containsExactly("1500");
                });

        answer(book, "units per batch of Balm 30 at 45 kg", 1450);

        Reading<Book> read = book.read();
        assertThat(read.findings()).noneMatch(finding -> finding.isError());
        assertThat(read.value().demand())
                .extracting(Demand::units)
                .extracting(units -> units.value().intValueExact())
                .containsExactly(2 * 1450, 3 * 1450);
        assertThat(texts(book))
                .contains("note Production plan!B2: Batches of \"Balm 30\" are read as 1450 units each, as the"
                        + " sheet Reading says.");
    }

    @Test
    void the_largest_batch_of_the_vessel_is_a_proposal_too() {
        TestBook book = TestBook.sound()
                .sheet("Batches", List.of("Formula", "Vessel max kg"), List.of("Balm", 60))
                .sheet("Plan", List.of("Produkt", "Anzahl Chargen", "Termin"), List.of("Balm 30", 2, "2027-01-10"));

        assertThat(texts(book))
                .anyMatch(text -> text.startsWith("error Plan!B2: " + UNITS_OF_ONE
                        + " The largest batch, 60 kg, fills 2000 if nothing is lost."));
    }

    @Test
    void without_a_size_the_question_is_asked_all_the_same() {
        TestBook book = TestBook.sound()
                .sheet("Plan", List.of("Product", "Batches"), List.of("Balm 30", 2))
                .drop("Runs");
        assertThat(texts(book))
                .anyMatch(text -> text.startsWith("error Plan!B2: " + UNITS_OF_ONE + " Write the answer"));

        answer(book, "units per batch of Balm 30", 700);

        assertThat(book.read().value().runs())
                .singleElement()
                .isInstanceOfSatisfying(
                        Run.OfProduct.class,
                        run -> assertThat(run.units().value()).isEqualByComparingTo("1400"));
    }

    @Test
    void an_answer_that_is_no_number_leaves_the_question_open() {
        TestBook book = TestBook.sound().sheet("Plan", List.of("Product", "Batches"), List.of("Balm 30", 2));
        answer(book, "units per batch of Balm 30", "many");

        assertThat(texts(book)).anyMatch(text -> text.startsWith("error Plan!B2: " + UNITS_OF_ONE));
    }

    @Test
    void losses_on_a_plan_are_told_where_they_belong() {
        TestBook book = TestBook.sound()
                .sheet(
                        "Demand",
                        List.of("Product", "Units", "Needed by", "Loss %"),
                        List.of("Balm 30", 500, "2027-01-10", 3));

        assertThat(texts(book))
                .filteredOn(text -> text.contains("Loss %"))
                .containsExactly(
                        "warning Demand!D1: \"Loss %\" is not read: a plan counts good units, and losses belong to"
                                + " what they are lost at. For bulk that stays in the kettle, fill \"Hold-up kg\" on Batches; for"
                                + " bulk lost in filling, \"Fill loss %\" on Products; for parts spoiled on the line, \"Loss %\" on"
                                + " Components.");
    }

    private static void answer(TestBook book, String question, Object answer) {
        String sheet = question.contains("45 kg") ? "Production plan" : "Plan";
        book.sheet(
                "Reading",
                List.of("Sheet", "Cell", "What is there", "Looks like", "Read as"),
                List.of(sheet, "B2", question, "", answer));
    }

    private static List<Proposals.Proposal> proposed(TestBook book) {
        try {
            return Proposals.of(Grids.ofBook(book.save()).sheets(), List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> texts(TestBook book) {
        return book.findings();
    }
}
