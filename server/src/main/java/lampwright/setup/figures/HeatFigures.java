package lampwright.setup.figures;

import lampwright.engine.power.HeatLoad;
import lampwright.setup.LightId;

/**
 * The head that gets hottest at the session's pace. The maker's limit in flashes a minute goes
 * before it.
 *
 * @param hottest the light whose head it is
 * @param load of one of its heads
 * @param isPaceOfPlan whether the plan gave the pace; else it is as fast as the slowest light can
 */
public record HeatFigures(LightId hottest, HeatLoad load, boolean isPaceOfPlan) {}
