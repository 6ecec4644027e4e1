package lampwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import software.amazon.awssdk.auth.credentials.AwsBasicCredentials;
import software.amazon.awssdk.auth.credentials.AwsCredentials;
import software.amazon.awssdk.auth.credentials.AwsCredentialsProvider;
import software.amazon.awssdk.core.exception.SdkClientException;

/**
 * The key to an object store in a file of two lines, its id and itself. It is read for each
 * request, so that a renewed one is taken at once.
 */
record KeyFile(Path path) implements AwsCredentialsProvider {

  @Override
  public AwsCredentials resolveCredentials() {
    List<String> lines;
    try {
      lines =
          Files.readAllLines(path).stream().map(String::strip).filter(l -> !l.isEmpty()).toList();
    } catch (IOException e) {
      throw SdkClientException.create("the key's file %s cannot be read".formatted(path));
    }
    if (lines.size() != 2) {
      throw SdkClientException.create(
          "the key's file %s has not two lines, the key's id and the key".formatted(path));
    }
    return AwsBasicCredentials.create(lines.getFirst(), lines.getLast());
  }
}
