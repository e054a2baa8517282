/**
 * The search for the cheapest purchase, with its proof.
 *
 * <p>Start at {@link perkilo.ordering.CheapestPlan}. This package uses {@code perkilo.purchasing} and the JDK.
 */
@NullMarked
package perkilo.ordering;

import org.jspecify.annotations.NullMarked;
