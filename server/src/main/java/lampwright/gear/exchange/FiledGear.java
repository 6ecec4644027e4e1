package lampwright.gear.exchange;

import lampwright.gear.stock.GearId;
import lampwright.gear.stock.GearItem;

/** Gear as a file tells it, with its id. */
public record FiledGear(GearId id, GearItem item) {}
