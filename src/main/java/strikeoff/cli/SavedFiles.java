package strikeoff.cli;

import static java.nio.file.StandardWatchEventKinds.ENTRY_CREATE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_DELETE;
import static java.nio.file.StandardWatchEventKinds.ENTRY_MODIFY;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/** Tells when something below a folder is saved. */
final class SavedFiles implements AutoCloseable {

  /** Editors write a file in several moves; what follows this soon belongs to one save. */
  private static final long SETTLE_MILLIS = 60;

  /** Systems bound the number of folders that are watched. */
  private static final int MOST_FOLDERS = 500;

  private final Path root;
  private final WatchService service;
  private final Set<Path> folders = new HashSet<>();

  SavedFiles(Path root) throws IOException {
    this.root = root;
    this.service = root.toAbsolutePath().getFileSystem().newWatchService();
    register();
  }

  /** Waits until something is saved and all is quiet again. */
  void await() throws IOException, InterruptedException {
    WatchKey key = service.take();
    while (key != null) {
      key.pollEvents();
      key.reset();
      key = service.poll(SETTLE_MILLIS, TimeUnit.MILLISECONDS);
    }
    // A folder that was made meanwhile is watched from now on.
    register();
  }

  private void register() throws IOException {
    if (!Files.isDirectory(root)) {
      throw new IOException("it is no folder, or not any more");
    }
    Files.walkFileTree(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes)
              throws IOException {
            if (!folder.equals(root) && folder.getFileName().toString().startsWith(".")) {
              return FileVisitResult.SKIP_SUBTREE;
            }
            if (folders.size() < MOST_FOLDERS && folders.add(folder)) {
              folder.register(service, ENTRY_CREATE, ENTRY_MODIFY, ENTRY_DELETE);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path file, IOException e) {
            return FileVisitResult.CONTINUE;
          }
        });
  }

  @Override
  public void close() throws IOException {
    service.close();
  }
}
