/**
 * A little house that breaks every rule of the architecture, so that a test can see each rule fail.
 * Nothing may use it. Start reading at ArchitectureTest.
 */
@NullMarked
package lampwright.planted;

import org.jspecify.annotations.NullMarked;
