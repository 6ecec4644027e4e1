/**
 * The product's stories in a real Chromium, on a desktop and on a phone. Start reading at Story.
 */
@NullMarked
package lampwright.browser;

import org.jspecify.annotations.NullMarked;
