package perkilo.swaps.trial;

import java.math.BigDecimal;
import perkilo.model.Formula;
import perkilo.model.Material;

/**
 * One line of a recipe with what is known about its material.
 *
 * @param line as typed
 * @param material what it names
 * @param level as a fraction; the balance for the q.s. line
 */
public record Portion(Formula.Line line, Material material, BigDecimal level) {}
