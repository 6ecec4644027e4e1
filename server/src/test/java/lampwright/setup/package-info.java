/**
 * Tests of the setup document and of the gear in it: round trips, checks, the published schema.
 * Start reading at SetupDocumentTest.
 */
@NullMarked
package lampwright.setup;

import org.jspecify.annotations.NullMarked;
