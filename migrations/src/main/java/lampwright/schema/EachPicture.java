package lampwright.schema;

import java.io.IOException;

/** What is done with every picture's file that rows name. */
@FunctionalInterface
public interface EachPicture {

  /** Takes the hash that the file lies under. */
  void accept(String sha256) throws IOException;
}
