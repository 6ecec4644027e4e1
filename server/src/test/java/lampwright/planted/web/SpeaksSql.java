package lampwright.planted.web;

import org.jooq.DSLContext;

/** SQL belongs to the store. */
record SpeaksSql(DSLContext database) {}
