package lampwright.store;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;

/** Where the files of pictures are to lie, by the choice of who runs the server. */
public sealed interface PicturePlace {

  /** The place in it of one database's own: what has no row in this one may have one in another. */
  PicturePlace of(String identity);

  /**
   * Opens it.
   *
   * @throws PicturesUnavailable where an object store refuses it
   */
  PictureFiles open();

  /** Opens it for who reads beside the servers that have it open, and changes nothing there. */
  PictureSource read();

  /**
   * The folder of this machine in which the files lie, or are on their way; it needs room there.
   */
  Path folder();

  /** A folder, which several servers may share. */
  record Folder(Path path) implements PicturePlace {

    @Override
    public PicturePlace of(String identity) {
      return new Folder(path.resolve(identity));
    }

    @Override
    public PictureFiles open() {
      return PictureFolder.open(path);
    }

    @Override
    public PictureSource read() {
      return sha256 -> PictureFolder.versionsIn(path, sha256);
    }

    @Override
    public Path folder() {
      return path;
    }

    @Override
    public String toString() {
      return path.toString();
    }
  }

  /**
   * A bucket of an object store that speaks S3.
   *
   * @param prefix what all keys in it begin with; empty, or it ends with a slash
   * @param endpoint where the store is; empty for the one that invented S3
   * @param keyFile two lines, the key's id and the key; empty for the usual chain of the SDK
   * @param arriving a folder on this machine for files on their way
   */
  record Bucket(
      String bucket,
      String prefix,
      Optional<URI> endpoint,
      String region,
      Optional<Path> keyFile,
      Path arriving)
      implements PicturePlace {

    @Override
    public PicturePlace of(String identity) {
      return new Bucket(bucket, prefix + identity + "/", endpoint, region, keyFile, arriving);
    }

    @Override
    public PictureFiles open() {
      return PictureBucket.open(this);
    }

    @Override
    public PictureSource read() {
      return PictureBucket.read(this);
    }

    @Override
    public Path folder() {
      return arriving;
    }

    @Override
    public String toString() {
      return "s3://" + bucket + "/" + prefix;
    }
  }
}
