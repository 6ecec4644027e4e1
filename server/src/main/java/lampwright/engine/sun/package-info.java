/**
 * Where the sun stands, when it stands there again, and what a clear sky gives. May import {@code
 * engine}, {@code engine.unit}, {@code engine.exposure}, {@code engine.light}, java.time and the
 * one library of solar positions, which nothing else may use. Instants come from the caller; no
 * clock is read here. Start reading at {@link lampwright.engine.sun.Observer}, then {@link
 * lampwright.engine.sun.SunSearch}.
 *
 * <p>Conventions. Azimuth from true north, clockwise, 0 up to 360. Longitude positive to the east.
 * Elevation is geometric (no air) or apparent (as seen through air); searches go by the geometric
 * one, which has no step at the horizon. A day is a solar day, from one lowest sun to the next.
 */
@NullMarked
package lampwright.engine.sun;

import org.jspecify.annotations.NullMarked;
