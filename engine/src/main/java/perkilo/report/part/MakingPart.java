package perkilo.report.part;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.costing.Batches;
import perkilo.costing.FillTarget;
import perkilo.costing.RunNeeds;
import perkilo.costing.TolerableError;
import perkilo.model.Batching;
import perkilo.model.Product;
import perkilo.model.Run;
import perkilo.origin.Figure;
import perkilo.sheet.Expr;
import perkilo.sheet.NumberFormat;

/**
 * The part of a run's block with the quantities filled and made.
 *
 * @param units null for bulk that is not filled
 * @param targetFill in the fill's unit; null for bulk
 * @param giveawayKg kilograms in a unit above its nominal fill; null for bulk
 * @param batches number of batches
 * @param batchKg size of a batch
 * @param charged kilograms weighed in
 * @param output kilograms that leave the kettle
 * @param over kilograms that are not filled
 */
public record MakingPart(
        @Nullable Expr units,
        @Nullable Expr targetFill,
        @Nullable Expr giveawayKg,
        Expr batches,
        Expr batchKg,
        Expr charged,
        Expr output,
        Expr over) {

    /** Writes the part. */
    public static MakingPart write(Lines lines, RunNeeds needs) {
        lines.section("Filling and making");
        Product product = needs.product();
        FillTarget fill = needs.fill();
        if (product == null || fill == null) {
            return bulk(lines, needs);
        }
        Run.OfProduct run = (Run.OfProduct) needs.run();
        Expr units = lines.figure(
                "Units", Expr.input(run.units()), NumberFormat.WHOLE, "", "to be made in this run", run.origin());
        String unit = product.fillUnit().symbol();
        Expr nominal = lines.figure(
                "Nominal fill",
                Expr.input(product.fill()),
                NumberFormat.QUANTITY,
                unit,
                "on the label",
                product.fill().origin());
        Expr target = target(lines, product, fill, nominal);
        Expr perUnit = Inputs.basePer(product.fillUnit(), product.density());
        Expr targetKg = lines.checked(
                "Target fill by weight",
                target.times(perUnit),
                fill.targetKg(),
                NumberFormat.FACTOR,
                "kg",
                "target fill, through the density where it is a volume");
        Expr filled = units.times(targetKg);
        Expr loss = lines.figure(
                "Fill loss",
                Expr.input(product.fillLoss()),
                NumberFormat.PERCENT,
                "",
                "bulk lost on the filling line",
                product.fillLoss().origin());
        Expr bulk = lines.checked(
                "Bulk to fill",
                filled.over(Expr.of(1).minus(loss)),
                needs.batches().bulkToFill(),
                NumberFormat.QUANTITY,
                "kg",
                "units × target fill ÷ (1 − fill loss)");
        return made(lines, needs, units, target, target.minus(nominal).times(perUnit), bulk, null);
    }

    private static MakingPart bulk(Lines lines, RunNeeds needs) {
        Run.OfBulk run = (Run.OfBulk) needs.run();
        Expr wanted = lines.figure(
                "Bulk to make",
                Expr.input(run.batchKg()),
                NumberFormat.QUANTITY,
                "kg",
                "weighed in, hold-up included",
                run.origin());
        return made(lines, needs, null, null, null, wanted, wanted);
    }

    private static Expr target(Lines lines, Product product, FillTarget fill, Expr nominal) {
        String unit = product.fillUnit().symbol();
        Figure sd = product.fillerSd();
        Figure overfill = product.overfill();
        BigDecimal tolerable = fill.tolerable();
        Expr target = nominal;
        String why = "the nominal fill";
        if (sd != null && tolerable != null) {
            Expr error = lines.checked(
                    "Tolerable negative error",
                    tolerable(product, nominal),
                    tolerable,
                    NumberFormat.QUANTITY,
                    unit,
                    "Directive 76/211/EEC, Annex I, for this nominal quantity");
            Expr spread = lines.figure(
                    "Filler's standard deviation", Expr.input(sd), NumberFormat.QUANTITY, unit, "", sd.origin());
            Expr second =
                    nominal.minus(error).plus(Expr.of(FillTarget.SHORT_BY_ONE).times(spread));
            Expr third = nominal.minus(Expr.of(2).times(error))
                    .plus(Expr.of(FillTarget.SHORT_BY_TWO).times(spread));
            target = Expr.ifLess(
                    Expr.of(0), error, nominal.max(second).max(third), nominal); // no error: outside the directive
            why = "smallest mean that satisfies the average-quantity rules";
        } else if (sd == null && overfill != null) {
            Expr more = lines.figure(
                    "Overfill",
                    Expr.input(overfill),
                    NumberFormat.PERCENT,
                    "",
                    "of the nominal fill",
                    overfill.origin());
            target = nominal.times(Expr.of(1).plus(more));
            why = "nominal fill × (1 + overfill)";
        }
        return lines.checked("Target fill", target, fill.target(), NumberFormat.QUANTITY, unit, why);
    }

    /** The error of the class that the nominal fill is in; the directive uses grams and millilitres. */
    private static Expr tolerable(Product product, Expr nominal) {
        BigDecimal perUnit = product.fillUnit().inBase().movePointRight(3);
        boolean same = perUnit.compareTo(BigDecimal.ONE) == 0;
        Expr small = same ? nominal : nominal.times(Expr.of(perUnit));
        List<TolerableError> classes = TolerableError.classes();
        Expr error = Expr.of(0);
        for (int i = classes.size() - 1; i >= 0; i--) {
            error = Expr.ifLess(Expr.of(classes.get(i).to()), small, error, inClass(classes.get(i), small));
        }
        error = Expr.ifLess(small, Expr.of(classes.get(0).from()), Expr.of(0), error);
        return same ? error : error.over(Expr.of(perUnit));
    }

    private static Expr inClass(TolerableError error, Expr small) {
        BigDecimal fraction = error.fraction();
        return fraction == null
                ? Expr.of(error.of(small.value()))
                : Expr.of(fraction).times(small).roundedUpToTenth(error.of(small.value()));
    }

    private static MakingPart made(
            Lines lines,
            RunNeeds needs,
            @Nullable Expr units,
            @Nullable Expr target,
            @Nullable Expr giveawayKg,
            Expr bulk,
            @Nullable Expr wanted) {
        Batching batching = needs.formula().batching();
        Batches engine = needs.batches();
        Expr max = null;
        Figure vesselMax = batching.vesselMax();
        if (vesselMax != null) {
            max = lines.figure(
                    "Vessel maximum", Expr.input(vesselMax), NumberFormat.QUANTITY, "kg", "", vesselMax.origin());
        }
        Expr min = lines.figure(
                "Vessel minimum",
                Expr.input(batching.vesselMin()),
                NumberFormat.QUANTITY,
                "kg",
                "",
                batching.vesselMin().origin());
        Expr holdUp = lines.figure(
                "Hold-up",
                Expr.input(batching.holdUp()),
                NumberFormat.QUANTITY,
                "kg",
                "stays in kettle and lines, per batch",
                batching.holdUp().origin());
        BigDecimal exact = BigDecimal.valueOf(engine.count());
        Expr count = Expr.of(1);
        if (max != null) {
            Expr room = wanted == null ? max.minus(holdUp) : max;
            count = bulk.over(room).roundedUp(exact).max(Expr.of(1));
        }
        Expr batches = lines.checked(
                "Batches", count, exact, NumberFormat.WHOLE, "", "bulk ÷ (vessel maximum − hold-up), rounded up");
        Expr even = wanted == null ? bulk.over(batches).plus(holdUp) : bulk.over(batches);
        Expr batchKg = lines.checked(
                "Batch size",
                even.max(min),
                engine.batchKg(),
                NumberFormat.QUANTITY,
                "kg",
                "at least the vessel's minimum");
        Expr charged = lines.checked(
                "Weighed in", batches.times(batchKg), engine.charged(), NumberFormat.QUANTITY, "kg", "all batches");
        Expr output = lines.checked(
                "Leaves the kettle",
                batches.times(batchKg.minus(holdUp)),
                engine.output(),
                NumberFormat.QUANTITY,
                "kg",
                "all batches, without hold-up");
        Expr used = wanted == null ? bulk : bulk.minus(batches.times(holdUp));
        Expr over = lines.checked(
                "Bulk left over",
                output.minus(used).max(Expr.of(0)),
                engine.over(),
                NumberFormat.QUANTITY,
                "kg",
                "because of the vessel's minimum");
        return new MakingPart(units, target, giveawayKg, batches, batchKg, charged, output, over);
    }
}
