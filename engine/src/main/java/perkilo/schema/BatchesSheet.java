package perkilo.schema;

import static perkilo.schema.ValueKind.LIST;
import static perkilo.schema.ValueKind.MONEY;
import static perkilo.schema.ValueKind.NUMBER;
import static perkilo.schema.ValueKind.TEXT;

import java.util.List;
import perkilo.model.ProductKind;

/** The Batches sheet: how each formula is made. */
public final class BatchesSheet {

    public static final InputColumn FORMULA = InputColumn.of("Formula", TEXT, "the formula's name", "Body lotion")
            .also("Formula name", "Recipe", "Formulation")
            .needed();

    public static final InputColumn VESSEL_MAX = InputColumn.of(
                    "Vessel max kg", NUMBER, "the largest batch that the vessel takes", "250")
            .in("kg")
            .also("Vessel max", "Max batch", "Maximum batch", "Vessel size", "Vessel capacity", "Batch max")
            .limited(Limits.ABOVE_ZERO)
            .orElse("any batch fits");

    public static final InputColumn VESSEL_MIN = InputColumn.of(
                    "Vessel min kg", NUMBER, "the smallest batch that can be stirred", "80")
            .in("kg")
            .also("Vessel min", "Min batch", "Minimum batch", "Batch min")
            .orElse("0");

    public static final InputColumn HOLD_UP = InputColumn.of(
                    "Hold-up kg", NUMBER, "what stays in kettle and lines, per batch", "2.5")
            .in("kg")
            .also("Hold-up", "Holdup", "Residue per batch", "Batch loss")
            .orElse("0");

    public static final InputColumn HOURS_PER_BATCH = InputColumn.of(
                    "Hours per batch", NUMBER, "making time for each batch", "5")
            .in("hours")
            .also("Making hours per batch", "Batch hours")
            .orElse("0");

    public static final InputColumn HOURS_PER_KG = InputColumn.of(
                    "Hours per kg", NUMBER, "making time for each kilogram", "0.008")
            .in("hours")
            .also("Making hours per kg")
            .orElse("0");

    public static final InputColumn QUALITY_CONTROL = InputColumn.of(
                    "Quality control per batch", MONEY, "in home currency", "60")
            .also("QC per batch", "QC cost per batch", "Quality control", "QC")
            .orElse("0");

    public static final InputColumn FINAL_PH = InputColumn.of("Final pH", NUMBER, "of the finished bulk", "5.2")
            .also("pH")
            .limited(Limits.PH);

    public static final InputColumn KIND = InputColumn.of(
                    "Kind",
                    LIST,
                    "leave-on or rinse-off, and what else limits of the law depend on: "
                            + String.join(
                                    ", ", ProductKind.WORDS.stream().skip(2).toList()),
                    "rinse-off; hair")
            .also("Type", "Use", "Leave-on / rinse-off")
            .orElse("leave-on, part of the body not known");

    public static final SheetSchema SCHEMA = new SheetSchema(
            "Batches",
            List.of("Batch", "Batching", "Making", "Manufacturing"),
            List.of(FORMULA),
            List.of(
                    List.of(FORMULA, VESSEL_MAX),
                    List.of(FORMULA, VESSEL_MIN),
                    List.of(FORMULA, HOURS_PER_BATCH),
                    List.of(FORMULA, HOLD_UP)),
            List.of(
                    FORMULA,
                    VESSEL_MAX,
                    VESSEL_MIN,
                    HOLD_UP,
                    HOURS_PER_BATCH,
                    HOURS_PER_KG,
                    QUALITY_CONTROL,
                    FINAL_PH,
                    KIND),
            "How each formula is made; a formula without a row is made in one batch, at no cost of work.");

    private BatchesSheet() {}
}
