/**
 * The words of the trade that the house explains, and how they lead to one another. Their texts are
 * phrases. May import the setup's records, never the store, the tasks or the web. Start reading at
 * {@link lampwright.learning.glossary.Term}.
 */
@NullMarked
package lampwright.learning.glossary;

import org.jspecify.annotations.NullMarked;
