package lampwright.engine.power;

import lampwright.engine.light.Point;

/** A planted wrong arrow, by which the rules of the engine are tested. */
public record PlantedArrow(Point point) {}
