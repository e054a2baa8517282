/**
 * What a person decides with: what a cost depends on, and what changes it.
 *
 * <p>Start at {@link perkilo.decision.WhatMoves}. A what-if is a {@link perkilo.model.Book} with one thing changed
 * ({@link perkilo.decision.Edits}), costed again. This package uses costing and what costing uses; planners come from
 * outside.
 */
@NullMarked
package perkilo.decision;

import org.jspecify.annotations.NullMarked;
