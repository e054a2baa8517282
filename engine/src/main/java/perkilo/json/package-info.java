/**
 * Answers as JSON, for scripts: the shapes that {@code --json} prints.
 *
 * <p>Amounts are texts in plain decimal, rounded half up to six places; amounts in several currencies are objects keyed
 * by the currency's code. Scripts rely on these shapes: fields may be added, but no field may change its meaning.
 *
 * <p>Start at {@link perkilo.json.CostJson}. This package and the command line are the only ones that know Jackson.
 */
@NullMarked
package perkilo.json;

import org.jspecify.annotations.NullMarked;
