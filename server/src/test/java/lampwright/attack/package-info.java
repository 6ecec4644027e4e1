/**
 * Attacks on a whole server on loopback, each of a kind that the OWASP Web Security Testing Guide
 * names, held to what must come of it. Start reading at {@link lampwright.attack.AttackedHouse}.
 */
@NullMarked
package lampwright.attack;

import org.jspecify.annotations.NullMarked;
