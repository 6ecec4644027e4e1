/**
 * The engine as a web page calls it: one function, JSON in and JSON out, compiled to an ES module
 * from the very classes that the server runs, so that there is one engine. Only {@link
 * lampwright.browser.BrowserEngine} and {@link lampwright.browser.BrowserJson} know that there is a
 * browser. May import what it answers with: {@code wording}, {@code drawing}, {@code setup}, {@code
 * gear}, {@code place}, {@code people}, {@code document}, {@code language}, {@code engine}. Start
 * reading at {@link lampwright.browser.Answers}.
 */
@NullMarked
package lampwright.browser;

import org.jspecify.annotations.NullMarked;
