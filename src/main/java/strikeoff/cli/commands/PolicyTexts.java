package strikeoff.cli.commands;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import strikeoff.check.FileTrouble;
import strikeoff.cli.files.PolicyFiles.PolicyFile;
import strikeoff.document.Bounds;

/** The texts of policies, each read once. */
final class PolicyTexts {

  /** Stands for a policy that can't be read, so that nothing else is said to be wrong with it. */
  private static final byte[] UNREAD = "studio: unread".getBytes(StandardCharsets.UTF_8);

  private final Map<Path, byte[]> texts = new HashMap<>();
  private final Bounds bounds;
  private final StudioFaults faults;

  PolicyTexts(Bounds bounds, StudioFaults faults) {
    this.bounds = bounds;
    this.faults = faults;
  }

  byte[] of(PolicyFile file) {
    return texts.computeIfAbsent(file.path(), path -> read(file));
  }

  private byte[] read(PolicyFile file) {
    Optional<String> odd = file.odd();
    if (odd.isPresent()) {
      faults.unread(file, odd.get());
      return UNREAD;
    }
    try (InputStream in = Files.newInputStream(file.path())) {
      return in.readNBytes(bounds.bytes() + 1);
    } catch (NoSuchFileException e) {
      faults.wrong(file, file.name() + ": no such file");
    } catch (IOException e) {
      faults.unread(file, FileTrouble.of(e));
    }
    return UNREAD;
  }
}
