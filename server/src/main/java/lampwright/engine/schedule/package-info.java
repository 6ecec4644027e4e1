/**
 * Jobs that wait for one another and share so many hands: the shortest schedule, exactly where the
 * search ends in time, else with its gap to a length that no schedule beats. May import the JDK
 * only. Start reading at {@link lampwright.engine.schedule.ScheduleSearch}.
 */
@NullMarked
package lampwright.engine.schedule;

import org.jspecify.annotations.NullMarked;
