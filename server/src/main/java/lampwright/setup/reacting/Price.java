package lampwright.setup.reacting;

import lampwright.engine.unit.Stops;

/**
 * What a way costs besides what it leaves off, against the setup as it was.
 *
 * @param longer how much longer the shutter is open: so much farther the ambient draws movement
 * @param deeper how much smaller the aperture is: minus is less depth of field
 * @param noisier how much more sensitive the camera is
 * @param stronger how much more energy a frame takes; 0 where it is not known
 */
public record Price(Stops longer, Stops deeper, Stops noisier, Stops stronger) {}
