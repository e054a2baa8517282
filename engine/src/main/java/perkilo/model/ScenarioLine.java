package perkilo.model;

import perkilo.origin.Origin;

/**
 * One change of a scenario, as typed.
 *
 * @param name of the scenario; lines of one name are one scenario
 * @param what is changed: an item, a supplier, a currency, the labour rate, the run size …
 * @param change such as {@code +10 %}, or a new value
 * @param whatOrigin the cell of what is changed
 * @param origin the cell of the change
 */
public record ScenarioLine(String name, String what, String change, Origin whatOrigin, Origin origin) {

    /** A line that is in one place. */
    public ScenarioLine(String name, String what, String change, Origin origin) {
        this(name, what, change, origin, origin);
    }
}
