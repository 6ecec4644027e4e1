package lampwright.planted.util;

/** No drawer for what has no place. */
record Anything(int number) {}
