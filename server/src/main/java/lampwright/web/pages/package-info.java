/**
 * What each page shows: one record a page, its text and numbers ready to print, with a template of
 * the same name in {@code src/main/jte}. May import the drawings; tasks fill the records. Start
 * reading at {@link lampwright.web.pages.SetupPage}.
 */
@NullMarked
package lampwright.web.pages;

import org.jspecify.annotations.NullMarked;
