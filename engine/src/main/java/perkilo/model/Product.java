package perkilo.model;

import java.util.List;
import org.jspecify.annotations.Nullable;
import perkilo.origin.Figure;
import perkilo.origin.Origin;
import perkilo.units.Measure;

/**
 * A formula filled into packaging.
 *
 * @param name as typed
 * @param formula the formula's name
 * @param fill the nominal fill, in {@code fillUnit}
 * @param fillUnit a unit of mass or volume
 * @param density of the bulk in g/mL; null where not known
 * @param overfill as a fraction; null for none
 * @param fillerSd the filler's standard deviation, in {@code fillUnit}; null where the average-quantity rules are not
 *     applied
 * @param fillLoss bulk lost in filling, as a fraction
 * @param setUpHours of the filling line, for each run
 * @param unitsPerHour null where filling time is not counted
 * @param fillingPeople on the line
 * @param targetMargin the brand's, as a fraction of the wholesale price; null for no price ladder
 * @param retailerMargin as a fraction of the retail price without VAT
 * @param vat as a fraction
 * @param targetRetailPrice with VAT, in home currency; null for none
 * @param oneOffCosts stability, challenge test, safety assessment, notification, artwork; in home currency
 * @param spreadOver units that the one-off costs are spread over; null for the run itself
 * @param yearlyUnits sold in a year; null where not known
 * @param requiredTags what every material must be
 * @param naturalOriginTarget by ISO 16128, as a fraction; null for none
 * @param components packaging
 * @param origin its row
 */
public record Product(
        String name,
        String formula,
        Figure fill,
        Measure fillUnit,
        @Nullable Figure density,
        @Nullable Figure overfill,
        @Nullable Figure fillerSd,
        Figure fillLoss,
        Figure setUpHours,
        @Nullable Figure unitsPerHour,
        Figure fillingPeople,
        @Nullable Figure targetMargin,
        Figure retailerMargin,
        Figure vat,
        @Nullable Figure targetRetailPrice,
        Figure oneOffCosts,
        @Nullable Figure spreadOver,
        @Nullable Figure yearlyUnits,
        List<String> requiredTags,
        @Nullable Figure naturalOriginTarget,
        List<Component> components,
        Origin origin) {

    public Product {
        requiredTags = List.copyOf(requiredTags);
        components = List.copyOf(components);
    }

    /**
     * A packaging part.
     *
     * @param name as typed
     * @param perUnit pieces for one unit
     * @param loss pieces spoiled on the line, as a fraction
     * @param origin its row
     */
    public record Component(String name, Figure perUnit, Figure loss, Origin origin) {}
}
