/**
 * The maths of light: pure records and functions that turn a setup and gear into figures.
 *
 * <p>May import the JDK only (java.lang, java.util, java.math, java.time) and the nullness
 * annotations, {@code engine.sun} the library of solar positions too; no clock, no input or output,
 * no static mutable state. Everything here is immutable, thread-safe and deterministic. The same
 * source is compiled to JavaScript and must give the same doubles bit for bit, so only these
 * functions are used: {@code + - * /}, {@link java.lang.Math}'s sqrt, floor, ceil, round, abs, min
 * and max, {@link java.lang.StrictMath}'s sin, cos, tan, asin, acos, atan, atan2, exp and log, and
 * {@link lampwright.engine.unit.BaseTwo} built on them. A sum of a difference or a product of a
 * product is written in two steps, since its brackets would be lost on the way; the library of
 * {@code engine.sun} is not bound by this.
 *
 * <p>Conventions. One stop is a factor of two of luminous exposure. Printed marks are computed with
 * their exact powers of two and only shown as marks. Light is kept in lux seconds at the subject
 * and becomes an f-number only at the end. Axes in metres: x to camera right, y away from the
 * camera, z up.
 *
 * <p>Start reading at {@link lampwright.engine.light.LightAtTarget}, then {@link
 * lampwright.engine.exposure.ExposureSettings}; {@link lampwright.engine.Working} is how an answer
 * shows its steps. The keys of all sources are in REFERENCES.md, departures from published methods
 * in DEPARTURES.md, both beside this file.
 */
@NullMarked
package lampwright.engine;

import org.jspecify.annotations.NullMarked;
