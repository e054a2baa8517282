package perkilo.swaps;

import perkilo.model.Formula;
import perkilo.swaps.trial.Portion;

/**
 * A line that is not compared with anything.
 *
 * @param formula that has it
 * @param portion the line
 * @param role what its material is there for; empty if it is not known
 * @param why it is not compared, in full sentences
 */
public record KeptLine(Formula formula, Portion portion, String role, String why) {}
