package perkilo.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * A formula filled into packaging.
 *
 * <p>Its figures are grouped by what they are about; each can also be asked for by its own name.
 *
 * @param name as typed
 * @param formula the formula's name
 * @param filling the content of one unit
 * @param work the work of filling a run
 * @param pricing margins and target prices
 * @param oneOffs one-off costs
 * @param yearlyUnits sold in a year; null if unknown
 * @param claims the claims on its label
 * @param components packaging
 * @param leadDays how many days before the units its materials and components are needed; null for the usual
 * @param origin its row
 */
public record Product(
        String name,
        String formula,
        Filling filling,
        FillingWork work,
        Pricing pricing,
        OneOffs oneOffs,
        @Nullable Figure yearlyUnits,
        Claims claims,
        List<Component> components,
        @Nullable Figure leadDays,
        Origin origin) {

    public Product {
        components = List.copyOf(components);
    }

    /** A product of which nothing is said of the time to make it. */
    public Product(
            String name,
            String formula,
            Filling filling,
            FillingWork work,
            Pricing pricing,
            OneOffs oneOffs,
            @Nullable Figure yearlyUnits,
            Claims claims,
            List<Component> components,
            Origin origin) {
        this(name, formula, filling, work, pricing, oneOffs, yearlyUnits, claims, components, null, origin);
    }

    /** The same product with another content of a unit. */
    public Product with(Filling other) {
        return new Product(
                name, formula, other, work, pricing, oneOffs, yearlyUnits, claims, components, leadDays, origin);
    }

    /** The same product in other packaging. */
    public Product with(List<Component> others) {
        return new Product(
                name, formula, filling, work, pricing, oneOffs, yearlyUnits, claims, others, leadDays, origin);
    }

    /** {@link Filling#fill}. */
    public Figure fill() {
        return filling.fill();
    }

    /** {@link Filling#unit}. */
    public Measure fillUnit() {
        return filling.unit();
    }

    /** {@link Filling#density}. */
    public @Nullable Figure density() {
        return filling.density();
    }

    /** {@link Filling#overfill}. */
    public @Nullable Figure overfill() {
        return filling.overfill();
    }

    /** {@link Filling#fillerSd}. */
    public @Nullable Figure fillerSd() {
        return filling.fillerSd();
    }

    /** {@link Filling#loss}. */
    public Figure fillLoss() {
        return filling.loss();
    }

    /** {@link FillingWork#setUpHours}. */
    public Figure setUpHours() {
        return work.setUpHours();
    }

    /** {@link FillingWork#unitsPerHour}. */
    public @Nullable Figure unitsPerHour() {
        return work.unitsPerHour();
    }

    /** {@link FillingWork#people}. */
    public Figure fillingPeople() {
        return work.people();
    }

    /** {@link Pricing#targetMargin}. */
    public @Nullable Figure targetMargin() {
        return pricing.targetMargin();
    }

    /** {@link Pricing#distributorMargin}. */
    public Figure distributorMargin() {
        return pricing.distributorMargin();
    }

    /** {@link Pricing#retailerMargin}. */
    public Figure retailerMargin() {
        return pricing.retailerMargin();
    }

    /** {@link Pricing#vat}. */
    public Figure vat() {
        return pricing.vat();
    }

    /** {@link Pricing#targetRetailPrice}. */
    public @Nullable Figure targetRetailPrice() {
        return pricing.targetRetailPrice();
    }

    /** {@link OneOffs#costs}. */
    public Figure oneOffCosts() {
        return oneOffs.costs();
    }

    /** {@link OneOffs#spreadOver}. */
    public @Nullable Figure spreadOver() {
        return oneOffs.spreadOver();
    }

    /** {@link Claims#requiredTags}. */
    public List<String> requiredTags() {
        return claims.requiredTags();
    }

    /** {@link Claims#naturalOriginTarget}. */
    public @Nullable Figure naturalOriginTarget() {
        return claims.naturalOriginTarget();
    }

    /**
     * The content of one unit.
     *
     * @param fill the nominal fill, in {@code unit}
     * @param unit a unit of mass or volume
     * @param density of the bulk in g/mL; null if unknown
     * @param overfill as a fraction; null for none
     * @param fillerSd the filler's standard deviation, in {@code unit}; null if the average-quantity rules do not apply
     * @param loss bulk lost in filling, as a fraction of what goes into the filler; below one
     */
    public record Filling(
            Figure fill,
            Measure unit,
            @Nullable Figure density,
            @Nullable Figure overfill,
            @Nullable Figure fillerSd,
            Figure loss) {}

    /**
     * The work of filling a run.
     *
     * @param setUpHours of the filling line, for each run
     * @param unitsPerHour null if filling time is not counted
     * @param people on the line
     */
    public record FillingWork(Figure setUpHours, @Nullable Figure unitsPerHour, Figure people) {

        /** Filling whose time is not counted. */
        public static final FillingWork NONE = new FillingWork(Figure.ZERO, null, Figure.ONE);
    }

    /**
     * Margins and target prices.
     *
     * @param targetMargin the brand's, as a fraction of the wholesale price; null for no price ladder
     * @param distributorMargin as a fraction of the price to the retailer; zero where the retailer buys from the brand
     * @param retailerMargin as a fraction of the retail price without VAT
     * @param vat as a fraction
     * @param targetRetailPrice with VAT, in home currency; null for none
     */
    public record Pricing(
            @Nullable Figure targetMargin,
            Figure distributorMargin,
            Figure retailerMargin,
            Figure vat,
            @Nullable Figure targetRetailPrice) {

        /** No price ladder. */
        public static final Pricing NONE = new Pricing(null, Figure.ZERO, Figure.ZERO, Figure.ZERO, null);
    }

    /**
     * Costs that are paid once, before the first run.
     *
     * @param costs stability, challenge test, safety assessment, notification, artwork; in home currency
     * @param spreadOver units that they are spread over; null for the run itself
     */
    public record OneOffs(Figure costs, @Nullable Figure spreadOver) {

        /** No one-off costs. */
        public static final OneOffs NONE = new OneOffs(Figure.ZERO, null);
    }

    /**
     * The claims on the label.
     *
     * @param requiredTags tags that every material must have
     * @param naturalOriginTarget by ISO 16128, as a fraction; null for none
     */
    public record Claims(
            List<String> requiredTags, @Nullable Figure naturalOriginTarget) {

        /** No claims. */
        public static final Claims NONE = new Claims(List.of(), null);

        public Claims {
            requiredTags = List.copyOf(requiredTags);
        }
    }

    /**
     * A packaging part.
     *
     * @param name as typed
     * @param perUnit pieces for one unit
     * @param loss pieces spoiled on the line, as a fraction of those that are put on it; below one
     * @param weight of a piece, in grams; null if unknown
     * @param safetyStock pieces that are always to be there; null for none
     * @param origin its row
     */
    public record Component(
            String name,
            Figure perUnit,
            Figure loss,
            @Nullable Figure weight,
            @Nullable Figure safetyStock,
            Origin origin) {

        /** A part without safety stock. */
        public Component(String name, Figure perUnit, Figure loss, @Nullable Figure weight, Origin origin) {
            this(name, perUnit, loss, weight, null, origin);
        }
    }
}
