package perkilo.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Who bears what on the way: Incoterms 2020 of the International Chamber of Commerce, as split in
 * {@code incoterms.csv}.
 *
 * <p>The place named after a rule of sea carriage is a port, so that carriage from there on is the buyer's freight
 * (CFR, CIF). With CPT and CIP the seller pays to the named place itself, and what may follow is no part of the
 * delivery.
 */
final class DeliveryTermTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "incoterms.csv", numLinesToSkip = 1)
    void the_buyer_pays_what_the_rules_leave_to_him(
            DeliveryTerm term,
            String mode,
            String exportClearance,
            String toPort,
            String mainCarriage,
            String insurance,
            String onCarriage,
            String importDuty) {
        assertThat(term.buyerPaysFreight())
                .isEqualTo(mainCarriage.equals("buyer") || (mode.equals("sea") && onCarriage.equals("buyer")));
        assertThat(term.buyerPaysInsurance()).isEqualTo(insurance.equals("buyer"));
        assertThat(term.buyerPaysDuty()).isEqualTo(importDuty.startsWith("buyer"));
    }

    /** Incoterms 2020 has eleven rules. */
    @Test
    void there_are_eleven() {
        assertThat(DeliveryTerm.values()).hasSize(11);
    }

    @ParameterizedTest(name = "\"{0}\" is {1}")
    @CsvSource({"EXW, EXW", "fca, FCA", "FCA Hamburg, FCA", "' DDP, Lyon ', DDP", "cif(Rotterdam), CIF"})
    void a_place_may_follow_the_term(String text, DeliveryTerm term) {
        assertThat(DeliveryTerm.parse(text)).contains(term);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "free", "DDU", "EXWORKS", "2020 FCA"})
    void what_is_no_term_is_not_found(String text) {
        assertThat(DeliveryTerm.parse(text)).isEmpty();
    }
}
