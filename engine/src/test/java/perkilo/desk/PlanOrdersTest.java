package perkilo.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import perkilo.orderplan.OrderPlan;
import perkilo.orderplan.Reasons;

/** Planning orders, and stopping it. */
final class PlanOrdersTest {

    private static final Duration LONG = Duration.ofMinutes(5);

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_template_is_planned_and_proven() throws IOException {
        Seen watch = Seen.all();
        OrderAnswer.Planned planned = planned(Duration.ZERO, watch);

        assertThat(plan(planned).proven()).isTrue();
        assertThat(plan(planned).orders()).isNotEmpty();
        assertThat(planned.reasons()).isEqualTo(Reasons.NONE);
        assertThat(planned.report().sheets()).isNotEmpty();
        assertThat(watch.of(Stage.PLANNING)).containsExactly("0 of 1", "1 of 1");
        assertThat(watch.asked()).as("the search asks often").isGreaterThan(20);
    }

    /** However long it may take: a search that is stopped asks no more than once in each of its parts. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 20})
    void a_cancelled_search_ends_at_once_with_the_best_plan_so_far(int asked) throws IOException {
        Seen watch = Seen.cancelAfter(asked);
        OrderAnswer.Planned stopped = planned(LONG, watch);

        assertThat(watch.askedAgain()).isLessThanOrEqualTo(3);
        assertThat(plan(stopped).orders()).isNotEmpty();
        assertThat(plan(stopped).proven()).isFalse();
        assertThat(plan(stopped).bound()).isLessThan(plan(stopped).cost().objective());
        assertThat(stopped.findings()).anyMatch(finding -> finding.text().contains("best found in the time allowed"));
        assertThat(stopped.reasons()).as("nothing more is asked").isEqualTo(Reasons.NONE);
    }

    @Test
    void questions_about_the_plan_are_counted_and_can_be_stopped() throws IOException {
        Path book = Templates.book(folder, Template.LAUNCH);
        OrderRequest request = new OrderRequest(Templates.alone(book), LONG, Templates.DAY);
        StopAtQuestion watch = new StopAtQuestion();
        OrderAnswer.Planned first = (OrderAnswer.Planned) new PlanOrders().plan(request, watch);
        assertThat(first.reasons()).as("the plan comes before its reasons").isEqualTo(Reasons.NONE);
        assertThat(plan(first).proven()).isTrue();

        OrderAnswer.Planned planned = new PlanOrders().explain(first, WhyRequest.within(LONG), watch);
        assertThat(watch.questions).isEqualTo(2);
        assertThat(planned.reasons().items()).isNotEmpty();
    }

    /** Lets the search go on, and stops at the second question about the plan. */
    private static final class StopAtQuestion implements Watch {

        private int questions;

        @Override
        public void at(Stage stage, int done, int of) {
            if (stage == Stage.ASKING) {
                questions = done;
            }
        }

        @Override
        public boolean isCancelled() {
            return questions >= 2;
        }
    }

    @Test
    void without_demand_it_is_bad_input() throws IOException {
        Path book = Templates.book(folder, Template.MINIMAL);
        OrderAnswer answer =
                new PlanOrders().plan(new OrderRequest(Templates.alone(book), LONG, Templates.DAY), Watch.NONE);

        assertThat(answer).isInstanceOf(OrderAnswer.BadInput.class);
        assertThat(answer.findings()).anyMatch(finding -> finding.text().contains("no demand to plan for"));
    }

    private OrderAnswer.Planned planned(Duration why, Watch watch) throws IOException {
        Path book = Templates.book(folder, Template.ORDERS);
        OrderRequest request = new OrderRequest(Templates.alone(book), LONG, Templates.DAY);
        OrderAnswer.Planned planned = (OrderAnswer.Planned) new PlanOrders().plan(request, watch);
        return new PlanOrders().explain(planned, WhyRequest.within(why), watch);
    }

    private static OrderPlan plan(OrderAnswer.Planned planned) {
        return planned.planned().plan();
    }
}
