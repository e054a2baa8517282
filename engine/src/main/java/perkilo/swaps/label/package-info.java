/**
 * The list of ingredients in the order of Regulation (EC) No 1223/2009, Article 19(1)(g), and what a swap changes in
 * it.
 *
 * <p>Start at {@link perkilo.swaps.label.IngredientList}. This package uses {@code swaps.trial}, {@code swaps.facts}
 * and the JDK.
 */
@NullMarked
package perkilo.swaps.label;

import org.jspecify.annotations.NullMarked;
