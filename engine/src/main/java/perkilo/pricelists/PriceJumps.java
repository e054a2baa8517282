package perkilo.pricelists;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import perkilo.layouts.Quantity;
import perkilo.layouts.Question;
import perkilo.origin.Origin;

/** Prices that changed by more than half since the list before: a person says whether they are right. */
final class PriceJumps {

    private static final BigDecimal HIGHEST = new BigDecimal("1.5");
    private static final BigDecimal LOWEST = new BigDecimal("0.5");
    private static final int MOST_ASKED = 8;
    private static final int NAMED = 3;
    private static final int DIGITS = 6;
    private static final String RIGHT = "it is right";
    private static final String LEAVE_OUT = "leave it out";
    private static final String ALL_RIGHT = "they are right";
    private static final String LEAVE_ALL_OUT = "leave them out";

    private final String file;
    private final Map<String, KeptRow> before;
    private final ListAnswers answers;
    private final List<Question> open = new ArrayList<>();

    /**
     * Ready to compare.
     *
     * @param before the newest earlier row of each pack and price break
     */
    PriceJumps(String file, Map<String, KeptRow> before, ListAnswers answers) {
        this.file = file;
        this.before = before;
        this.answers = answers;
    }

    /**
     * A row with its cell.
     *
     * @param row the row
     * @param where its cell
     */
    record Placed(KeptRow row, Origin where) {}

    /** The price of the list before for the amount that a row's price is for; null if there is none to compare with. */
    @Nullable BigDecimal before(KeptRow row) {
        KeptRow earlier = before.isEmpty() ? null : before.get(row.packAndBreak());
        if (earlier == null) {
            return null;
        }
        Optional<KeptRow.UnitPrice> now = row.unitPrice();
        Optional<KeptRow.UnitPrice> then = earlier.unitPrice();
        if (now.isEmpty()
                || then.isEmpty()
                || !now.get().isLike(then.get())
                || now.get().amount().signum() == 0) {
            return null;
        }
        BigDecimal price = new BigDecimal(row.price());
        return price.multiply(then.get().amount()).divide(now.get().amount(), MathContext.DECIMAL64);
    }

    /** The rows that a person wants left out. */
    Set<KeptRow> leftOut(List<Placed> rows) {
        List<Placed> jumped =
                rows.stream().filter(placed -> jumps(placed.row())).toList();
        Set<KeptRow> out = new HashSet<>();
        if (jumped.size() > MOST_ASKED) {
            StringJoiner some = new StringJoiner("; ");
            jumped.stream().limit(NAMED).forEach(placed -> some.add(words(placed.row())));
            Question question = new Question(
                    Memory.JUMP,
                    file + " " + jumped.get(0).row().quotedOn() + " " + jumped.size(),
                    new Origin(file, "", ""),
                    ListMessages.jumps(jumped.size(), rows.size(), some.toString()),
                    List.of(ALL_RIGHT, LEAVE_ALL_OUT));
            if (ask(question).filter(LEAVE_ALL_OUT::equals).isPresent()) {
                jumped.forEach(placed -> out.add(placed.row()));
            }
            return out;
        }
        for (Placed placed : jumped) {
            KeptRow row = placed.row();
            Question question = new Question(
                    Memory.JUMP,
                    row.words() + ", " + row.priceWords() + ", " + row.quotedOn(),
                    placed.where(),
                    ListMessages.jump(row.words(), then(row), row.priceWords(), percent(row)),
                    List.of(RIGHT, LEAVE_OUT));
            if (ask(question).filter(LEAVE_OUT::equals).isPresent()) {
                out.add(row);
            }
        }
        return out;
    }

    private Optional<String> ask(Question question) {
        Optional<String> answer = answers.answerTo(question);
        if (answer.isEmpty()) {
            open.add(question);
        }
        return answer;
    }

    private boolean jumps(KeptRow row) {
        BigDecimal then = before(row);
        if (then == null || then.signum() == 0) {
            return false;
        }
        BigDecimal ratio = new BigDecimal(row.price()).divide(then, MathContext.DECIMAL64);
        return ratio.compareTo(HIGHEST) > 0 || ratio.compareTo(LOWEST) < 0;
    }

    private String words(KeptRow row) {
        return row.words() + ": " + then(row) + " to " + row.priceWords();
    }

    private String then(KeptRow row) {
        BigDecimal then = before(row);
        return then == null ? "" : Quantity.plain(then.round(new MathContext(DIGITS)));
    }

    private String percent(KeptRow row) {
        BigDecimal then = before(row);
        if (then == null) {
            return "";
        }
        BigDecimal change = new BigDecimal(row.price())
                .subtract(then)
                .multiply(BigDecimal.valueOf(100))
                .divide(then, 0, RoundingMode.HALF_UP);
        return (change.signum() > 0 ? "+" : "") + change.toPlainString();
    }

    /** What a person has to say first; known after {@link #leftOut}. */
    List<Question> open() {
        return List.copyOf(open);
    }
}
