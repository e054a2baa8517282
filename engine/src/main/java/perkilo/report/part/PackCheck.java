package perkilo.report.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.Look;
import perkilo.sheet.ResultSheet;
import perkilo.sheet.SheetNames;
import perkilo.sheet.Sign;
import perkilo.sheet.table.Column;
import perkilo.sheet.table.Mark;
import perkilo.sheet.table.Placed;
import perkilo.sheet.table.Row;

/** Words beside packs that a person has changed to a number that the supplier does not sell. */
public final class PackCheck {

    private static final int DIGITS = 9;

    private final Column<PurchaseLine> packs;

    /** The words, in a column without a heading; empty for packs that can be ordered. */
    public final Column<PurchaseLine> words;

    /**
     * The check of a column of packs.
     *
     * @param packs the column, in the same table
     */
    public PackCheck(Column<PurchaseLine> packs) {
        this.packs = packs;
        this.words = Column.<PurchaseLine>of("packCheck", "")
                .withoutHeading()
                .sentence(this::faults)
                .look(Look.HINT);
        words.mark(Mark.attention(words, Look.ERROR));
    }

    /** How many lines of a placed table cannot be ordered. */
    public Expr count(Placed<PurchaseLine> table) {
        return filled(table, words);
    }

    /** How many cells of a column of words are not empty; none is while the engine's own purchase is there. */
    public static <R> Expr filled(Placed<R> table, Column<R> words) {
        if (table.rows().isEmpty()) {
            return Expr.of(0);
        }
        String cells =
                table.address(0, words) + ":" + table.address(table.rows().size() - 1, words);
        String sheet = table.sheet().name();
        return Expr.writtenHere(
                BigDecimal.ZERO,
                names -> "SUMPRODUCT(--(LEN(" + SheetNames.quoted(names.apply(sheet)) + "!" + cells + ")>0))");
    }

    private List<ResultSheet.Part> faults(Row<PurchaseLine> row) {
        Expr typed = row.ref(packs);
        List<ResultSheet.Part> parts = new ArrayList<>();
        parts.add(fault(notWhole(typed), "not a whole number of packs"));
        Expr number = Expr.typed(typed);
        parts.add(fault(Expr.ifLess(Expr.of(0), number, Expr.of(0), Expr.of(1)), "not bought"));
        Figure multiple = row.entry().listing().offer().orderMultiple();
        if (multiple.origin().isKnown()) {
            Expr times = number.over(Expr.input(multiple));
            Expr apart = Expr.differs(times.rounded(DIGITS), times.rounded(0));
            parts.add(fault(apart, "not a multiple of what the supplier sells"));
        }
        Figure minimum = row.entry().listing().offer().minimumOrder();
        if (minimum != null) {
            Expr ordered = Landing.inPackUnit(row.entry().listing(), number);
            Expr least = Expr.input(minimum);
            Expr below = Expr.ifLess(ordered.rounded(DIGITS), least.rounded(DIGITS), Expr.of(1), Expr.of(0));
            parts.add(fault(Expr.ifLess(Expr.of(0), number, below, Expr.of(0)), "below the minimum order"));
        }
        return parts;
    }

    /**
     * Words if the goods of an order are below the value that the supplier delivers for; none if nothing is ordered.
     *
     * @param goods in the supplier's currency
     * @param minimum in the same currency
     */
    public static List<ResultSheet.Part> belowMinimumValue(Expr goods, Expr minimum) {
        Expr below = Expr.ifLess(goods.rounded(DIGITS), minimum.rounded(DIGITS), Expr.of(1), Expr.of(0));
        return List.of(fault(
                Expr.ifLess(Expr.of(0), goods, below, Expr.of(0)), "below the minimum order value of the supplier"));
    }

    private static Expr notWhole(Expr typed) {
        return Expr.writtenHere(BigDecimal.ZERO, names -> {
            String cell = typed.formula(names);
            return "IF(ISNUMBER(" + cell + "),IF(ROUND(" + cell + ",0)=" + cell + ",0,1),1)";
        });
    }

    private static ResultSheet.Part fault(Expr count, String words) {
        return new ResultSheet.Notice(count, "", List.of(new ResultSheet.Words(Sign.ATTENTION + " " + words + ". ")));
    }
}
