package perkilo.report.part;

import java.util.List;
import java.util.Objects;
import perkilo.costing.Item;
import perkilo.model.Formula;
import perkilo.model.Material;
import perkilo.model.Product;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;

/** The need of an item in a run, as formulas. */
public final class NeedFormulas {

    private NeedFormulas() {}

    /** The share of a material in the bulk, all its lines in the formula together. */
    public static Expr share(Formula formula, Item item) {
        return Expr.sum(item.lines().stream().map(line -> level(formula, line)).toList());
    }

    /**
     * Kilograms of a material: {@code charged × share ÷ (1 − handling loss)}.
     *
     * @param charged the weight of all batches, in kg
     * @param share of the bulk
     */
    public static Expr kilograms(Material material, Expr charged, Expr share) {
        Expr needed = charged.times(share);
        Figure loss = material.handlingLoss();
        return Inputs.isNone(loss) ? needed : needed.over(Inputs.oneLess(loss));
    }

    /** Pieces of a component: {@code ⌈ units × per unit ÷ (1 − loss) ⌉}. */
    public static Expr pieces(Item item, Expr units) {
        Product.Component component = Objects.requireNonNull(item.component());
        Expr exact = units.times(Expr.input(component.perUnit())).over(Inputs.oneLess(component.loss()));
        return exact.roundedUp(item.needed());
    }

    private static Expr level(Formula formula, Formula.Line line) {
        Figure level = line.level();
        if (level != null) {
            return Expr.input(level);
        }
        List<Expr> others = formula.lines().stream()
                .map(Formula.Line::level)
                .filter(Objects::nonNull)
                .map(Expr::input)
                .toList();
        return Expr.of(1).minus(Expr.sum(others));
    }
}
