/**
 * One material tried in the place of another: the recipe before and after, and the level of the other material.
 *
 * <p>This package neither judges nor costs. Start at {@link perkilo.swaps.trial.Dosing}, which makes a
 * {@link perkilo.swaps.trial.Trial} out of a {@link perkilo.swaps.trial.Recipe}. This package uses {@code model},
 * {@code swaps.facts}, {@code swaps.law} and the JDK.
 */
@NullMarked
package perkilo.swaps.trial;

import org.jspecify.annotations.NullMarked;
