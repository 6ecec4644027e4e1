package lampwright.planted.tasks;

import gg.jte.TemplateEngine;

/** Templates belong to the web. */
record Renders(TemplateEngine templates) {}
