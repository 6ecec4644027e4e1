package lampwright.planted.tasks;

import javax.imageio.ImageReader;

/** Only picture may decode pictures. */
record Decodes(ImageReader reader) {}
