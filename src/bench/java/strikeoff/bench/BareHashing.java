package strikeoff.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.stream.Stream;

/** Reads every file below some folders and takes the SHA-256 of each, and does nothing else. */
public final class BareHashing {

  private BareHashing() {}

  /**
   * @param args the folders
   */
  public static void main(String[] args) throws IOException, NoSuchAlgorithmException {
    long bytes = 0;
    int sum = 0;
    for (String folder : args) {
      try (Stream<Path> walk = Files.walk(Path.of(folder))) {
        List<Path> files = walk.filter(Files::isRegularFile).toList();
        for (Path file : files) {
          byte[] read = Files.readAllBytes(file);
          bytes += read.length;
          sum ^= MessageDigest.getInstance("SHA-256").digest(read)[0];
        }
      }
    }
    System.out.println(bytes + " bytes " + sum);
  }
}
