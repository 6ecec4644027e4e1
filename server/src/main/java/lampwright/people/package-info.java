/**
 * People, the studios they belong to, and who may do what there. Records and decisions only;
 * imports the language only, for how each person reads. Start reading at {@link
 * lampwright.people.Role}.
 */
@NullMarked
package lampwright.people;

import org.jspecify.annotations.NullMarked;
