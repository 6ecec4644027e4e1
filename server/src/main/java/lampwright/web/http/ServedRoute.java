package lampwright.web.http;

/**
 * A route as it is really served.
 *
 * @param verb the method
 * @param path the address, with its parts that vary in braces
 * @param access who may come in
 */
public record ServedRoute(String verb, String path, Access access) {}
