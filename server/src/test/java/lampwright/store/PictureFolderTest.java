package lampwright.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PictureFolderTest {

  private static final byte[] SENT = {1, 2, 3};
  private static final long MOST = 100;

  @TempDir Path folder;

  @Test
  void whatCameInWholeIsThere() throws IOException {
    try (PictureFolder pictures = PictureFolder.open(folder);
        PictureFiles.Arrival arrival =
            pictures.receive(new ByteArrayInputStream(SENT), MOST).orElseThrow()) {
      assertArrayEquals(SENT, Files.readAllBytes(arrival.file()));
    }
  }

  @Test
  void aFileThatBreaksOffIsTheSendersFault() {
    try (PictureFolder pictures = PictureFolder.open(folder)) {
      InputStream broken =
          new InputStream() {
            @Override
            public int read() throws IOException {
              throw new IOException("The line is dead");
            }
          };
      assertThrows(IOException.class, () -> pictures.receive(broken, MOST));
    }
  }

  @Test
  void aDiskThatTakesNothingIsNot() throws IOException {
    try (PictureFolder pictures = PictureFolder.open(folder)) {
      Path arriving = folder.resolve("arriving");
      Path away = folder.resolve("away");
      Files.move(arriving, away);
      PicturesUnavailable unavailable =
          assertThrows(
              PicturesUnavailable.class,
              () -> pictures.receive(new ByteArrayInputStream(SENT), MOST));
      assertTrue(
          unavailable.getMessage().startsWith("The folder of pictures cannot be written: "),
          unavailable.getMessage());
      Files.move(away, arriving);
      assertTrue(pictures.receive(new ByteArrayInputStream(SENT), MOST).isPresent());
    }
  }
}
