package lampwright.planted.search;

import tools.jackson.databind.JsonNode;

/** JSON text belongs to the document and to the web. */
record ParsesJson(JsonNode json) {}
