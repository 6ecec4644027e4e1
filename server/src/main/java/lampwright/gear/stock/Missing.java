package lampwright.gear.stock;

/**
 * What a kit asks for and the studio does not have in order.
 *
 * @param pointer where the kit asks for it
 * @param message how many are asked for and how many there are
 */
public record Missing(String pointer, String message) {}
