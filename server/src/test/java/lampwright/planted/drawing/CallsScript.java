package lampwright.planted.drawing;

import org.teavm.jso.JSObject;

/** Only the browser's room may know of JavaScript. */
record CallsScript(JSObject value) {}
