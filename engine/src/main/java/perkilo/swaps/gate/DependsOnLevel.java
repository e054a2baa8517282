package perkilo.swaps.gate;

/** A gate whose answer depends on how much of the material is used. */
interface DependsOnLevel extends Gate {}
