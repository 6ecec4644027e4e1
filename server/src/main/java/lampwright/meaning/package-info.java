/**
 * What texts mean, as directions that lie near one another where the meanings do: a small model of
 * sentences that runs in this process. The only room that knows the model's run time.
 */
@NullMarked
package lampwright.meaning;

import org.jspecify.annotations.NullMarked;
