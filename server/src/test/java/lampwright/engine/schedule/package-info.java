/** Tests of schedules of jobs that share hands. */
@NullMarked
package lampwright.engine.schedule;

import org.jspecify.annotations.NullMarked;
