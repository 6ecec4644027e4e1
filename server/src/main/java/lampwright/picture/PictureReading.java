package lampwright.picture;

/** What came of reading a file. */
public sealed interface PictureReading permits Picture, Unusable {}
