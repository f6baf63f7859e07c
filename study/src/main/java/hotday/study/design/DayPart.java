package hotday.study.design;

import hotday.vehicle.cases.Case;

/**
 * A piece of the day that a fan schedule is judged by.
 *
 * @param ambient K
 * @param share of the day, 0..1
 */
public record DayPart(Case kase, double ambient, double share) {}
