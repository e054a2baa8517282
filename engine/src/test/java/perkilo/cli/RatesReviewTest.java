package perkilo.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import perkilo.review.SavedByOffice;
import perkilo.review.prices.FilledReview;

/** What {@code perkilo rates} asks is answered in a workbook, counts in the next run, and is remembered. */
final class RatesReviewTest {

    @TempDir
    private Path folder = Path.of("");

    private Path table = Path.of("");
    private Path review = Path.of("");

    @BeforeEach
    void files() {
        table = folder.resolve("rates.csv");
        review = folder.resolve("rates-review.xlsx");
    }

    @Test
    void nothing_is_taken_in_before_the_base_currency_is_answered() throws IOException {
        Path file = file("bank-11.csv", "Date,GBP,JPY\n2026-11-19,0.8642,161.94\n");

        CommandLineRun asked = take(file);

        assertThat(asked.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(asked.err())
                .contains("Nothing is taken in yet: 1 question about these rates is open. Open " + review
                        + ", answer in the yellow cells, save and close it, and run the same command again.");
        assertThat(table).doesNotExist();
        try (FilledReview open = FilledReview.open(review)) {
            assertThat(open.rows("Questions")).isEqualTo(1);
            var row = open.row("Questions", words -> words.equals("bank-11.csv"));
            assertThat(open.under(row, "Where")).isEqualTo("line 1");
            assertThat(open.under(row, "What is there")).isEqualTo("GBP");
            assertThat(open.under(row, "Question"))
                    .isEqualTo("What are the rates of this table for? \"1 EUR =\" means that 1 EUR costs 0.8642 GBP."
                            + " \"EUR per unit\" means that 1 GBP costs 0.8642 EUR. Choose, or type the same with"
                            + " another currency.");
            open.answer("What are the rates", "1 USD =");
        }

        CommandLineRun taken = take(file);

        assertThat(taken.exit()).isZero();
        assertThat(taken.err()).contains("This is read with your answer \"1 USD =\".");
        assertThat(Files.readAllLines(table)).contains("USD,GBP,0.8642,2026-11-19,", "USD,JPY,161.94,2026-11-19,");
        // the file of the next month, of the same form, is read alike; one of another bank is asked about
        Path next = file("bank-12.csv", "Date,GBP,JPY\n2026-12-19,0.87,162\n");
        assertThat(take(next).exit()).isZero();
        assertThat(Files.readAllLines(table)).contains("USD,GBP,0.87,2026-12-19,");
        Path other = file("house.csv", "Date,GBP,JPY\n2026-12-20,0.87,162\n");
        assertThat(take(other).exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(Files.readAllLines(table)).noneMatch(line -> line.contains("2026-12-20"));
    }

    @Test
    void an_answer_that_is_not_understood_leaves_the_question_open() throws IOException {
        Path file = file("bank.csv", "Date,GBP\n2026-11-19,0.8642\n");
        take(file);
        answer("What are the rates", "euro, I think");

        CommandLineRun again = take(file);

        assertThat(again.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(again.err()).contains("The answer \"euro, I think\" is not understood. Choose one of the list.");
        assertThat(table).doesNotExist();
    }

    /** 100 yen for 0.6175 euro are 0.006175 euro for one; the other reading is 0.006175 yen for one euro. */
    @Test
    void the_currency_that_units_are_of_is_asked_once_for_a_table() throws IOException {
        Path file = file(
                "bank.csv",
                "1 EUR =\nDate;Currency;Units;Rate\n2026-11-18;JPY;100;0,6170\n2026-11-19;JPY;100;0,6175\n");
        take(file);
        answer("Does 100 EUR = 0.617", "the currency of the row");

        assertThat(take(file).exit()).isZero();
        assertThat(Files.readAllLines(table)).contains("JPY,EUR,0.006175,2026-11-19,");
    }

    @Test
    void the_order_of_day_and_month_and_the_decimal_mark_are_asked() throws IOException {
        Path file = file("bank.csv", "From;To;Rate;Date\nEUR;JPY;1,234;03.04.2026\n".replace('.', '/'));
        take(file);
        answer("Is this 2026-04-03 or 2026-03-04?", "the month comes first");
        answer("which mark is the decimal mark", "a comma is the decimal mark");

        assertThat(take(file).exit()).isZero();
        assertThat(Files.readAllLines(table)).contains("EUR,JPY,1.234,2026-03-04,");
    }

    @Test
    void a_rate_far_from_the_one_before_waits_and_can_be_left_out() throws IOException {
        Path file = file("own.csv", rates("2026-11-18,161.94", "2026-11-19,1619.5", "2026-11-20,162"));
        CommandLineRun asked = take(file);
        assertThat(asked.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(asked.err()).contains("1 question about these rates is open");
        assertThat(table).doesNotExist();
        answer("900 % more", "leave it out");

        assertThat(take(file).exit()).isZero();
        assertThat(Files.readAllLines(table))
                .contains("EUR,JPY,161.94,2026-11-18,me", "EUR,JPY,162,2026-11-20,me")
                .noneMatch(line -> line.contains("1619.5"));
    }

    /** The table itself is not asked about again: what was right once stays right. */
    @Test
    void a_rate_that_is_right_is_not_asked_about_again() throws IOException {
        take(file("own.csv", rates("2026-11-18,100")));
        Path next = file("next.csv", rates("2026-11-19,150"));
        assertThat(take(next).exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(Files.readAllLines(table)).hasSize(2);
        answer("50 % more", "it is right");

        assertThat(take(next).exit()).isZero();
        CommandLineRun later = take(file("later.csv", rates("2026-11-20,151")));
        assertThat(later.exit()).isZero();
        assertThat(later.err()).doesNotContain("50 %");
        assertThat(Files.readAllLines(table)).hasSize(4);
    }

    /** 1 / 1.25 = 0.8 */
    @Test
    void a_rate_the_wrong_way_round_can_be_turned() throws IOException {
        Path file = file("own.csv", rates("2026-11-18,0.8", "2026-11-19,1.25"));
        take(file);
        answer("Does 1 EUR cost 1.25 JPY", "the other way round");

        assertThat(take(file).exit()).isZero();
        assertThat(Files.readAllLines(table)).contains("EUR,JPY,0.8,2026-11-19,me");
    }

    /** The law's rate counts, whatever is typed: 1.95583 marks for 1 euro, Council Regulation (EC) No 2866/98. */
    @Test
    void rates_of_a_replaced_currency_are_told_and_not_asked_about() throws IOException {
        Path file = file(
                "own.csv",
                "From,To,Rate,Date,Source\nEUR,DEM,2.1,2026-11-19,me\nEUR,DEM,0.48,2026-11-20,me\nEUR,USD,1.1,2026-11-19,me\n");

        CommandLineRun taken = take(file);

        assertThat(taken.exit()).isZero();
        assertThat(taken.err())
                .containsOnlyOnce("DEM from then on are not used. The rate is 1.95583 DEM for 1 EUR, fixed by law");
        assertThat(review).doesNotExist();
    }

    /** What was filled in for one file is not lost when another one is taken in first. */
    @Test
    void answers_about_other_files_are_kept() throws IOException {
        Path one = file("one.csv", "Date,GBP\n2026-11-19,0.8642\n");
        Path two = file("two.csv", "Date,CHF\n2026-11-19,0.93\n");
        take(one);
        answer("What are the rates", "1 EUR =");
        take(two);
        answer("costs 0.93 CHF", "1 EUR =");

        assertThat(take(two).exit()).isZero();
        assertThat(take(one).exit()).isZero();
        assertThat(Files.readAllLines(table)).contains("EUR,GBP,0.8642,2026-11-19,", "EUR,CHF,0.93,2026-11-19,");
    }

    @Test
    @Tag("office")
    void a_review_saved_by_another_program_counts() throws IOException, InterruptedException {
        Path file = file("bank.csv", "Date,GBP\n2026-11-19,0.8642\n");
        take(file);
        answer("What are the rates", "EUR per unit");
        Files.copy(SavedByOffice.of(review), review, StandardCopyOption.REPLACE_EXISTING);

        assertThat(take(file).exit()).isZero();
        assertThat(Files.readAllLines(table)).contains("GBP,EUR,0.8642,2026-11-19,");
    }

    private CommandLineRun take(Path file) {
        return CommandLineRun.of("rates", file, "-o", table);
    }

    private void answer(String question, String answer) throws IOException {
        try (FilledReview filled = FilledReview.open(review)) {
            filled.answer(question, answer);
        }
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private static String rates(String... daysAndRates) {
        StringBuilder text = new StringBuilder("From,To,Rate,Date,Source\n");
        for (String one : daysAndRates) {
            String[] parts = one.split(",", -1);
            text.append("EUR,JPY,%s,%s,me\n".formatted(parts[1], parts[0]));
        }
        return text.toString();
    }
}
