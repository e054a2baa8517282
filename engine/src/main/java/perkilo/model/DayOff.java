package perkilo.model;

import perkilo.origin.Day;

/**
 * A day on which nothing is ordered.
 *
 * @param day the day
 * @param note why; empty if not said
 */
public record DayOff(Day day, String note) {}
