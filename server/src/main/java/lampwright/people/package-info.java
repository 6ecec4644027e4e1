/**
 * People, the studios they belong to, and who may do what there. Records and decisions only;
 * imports no other package of ours. Start reading at {@link lampwright.people.Role}.
 */
@NullMarked
package lampwright.people;

import org.jspecify.annotations.NullMarked;
