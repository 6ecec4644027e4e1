package lampwright.planted.drawing;

/** No name for what has no noun. */
record DrawingHelper(int number) {}
