/**
 * Picture files: bytes to facts. What a file is, what it says of the camera, smaller sizes in sRGB,
 * its tones and colours, and the same file without what it tells of places and people. Pure; may
 * import {@code engine} and the picture libraries, and nothing else imports those. Start reading at
 * {@link lampwright.picture.PictureReader}.
 */
@NullMarked
package lampwright.picture;

import org.jspecify.annotations.NullMarked;
