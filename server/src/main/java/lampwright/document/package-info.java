/**
 * How documents stand in JSON: each field is declared once, and from that one declaration a
 * document is read (with every problem named by its place), written, and described as JSON Schema.
 * Imports Jackson for the text of JSON only ({@link lampwright.document.Json}); knows nothing of
 * lighting. Start reading at {@link lampwright.document.Form}, then {@link
 * lampwright.document.ObjectForm}.
 */
@NullMarked
package lampwright.document;

import org.jspecify.annotations.NullMarked;
