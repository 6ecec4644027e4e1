package lampwright.picture;

/** What came of examining a file of which nothing is made yet. */
public sealed interface PictureExamination permits PictureFrame, Unusable {}
