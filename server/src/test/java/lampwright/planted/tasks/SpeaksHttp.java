package lampwright.planted.tasks;

import io.javalin.http.Context;

/** HTTP belongs to the web. */
record SpeaksHttp(Context context) {}
