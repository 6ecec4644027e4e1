package lampwright.planted.engine;

/** The engine must be the same each time. */
record ThrowsDice(double number) {
  static ThrowsDice thrown() {
    return new ThrowsDice(Math.random());
  }
}
