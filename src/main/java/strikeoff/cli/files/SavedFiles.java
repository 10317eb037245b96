package strikeoff.cli.files;

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
import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import strikeoff.cli.text.FileNames;

/** Tells when something below a folder, or in some others, may have been saved. */
public final class SavedFiles implements AutoCloseable {

  /** Editors write a file in several moves; what follows this soon belongs to one save. */
  private static final long SETTLE_MILLIS = 60;

  /** A program that never stops writing must not keep a save from being seen. */
  private static final int MOST_SETTLING = 20;

  /**
   * Where the system tells nothing, as of a network drive or of a folder that was taken away and
   * put back, a look from time to time finds it.
   */
  private static final long LOOK_MILLIS = 1000;

  /** Systems bound the number of folders that are watched. */
  private static final int MOST_FOLDERS = 500;

  private final Path root;
  private final boolean deep;
  private final WatchService service;

  /**
   * @param of a folder with all below it, or a file
   * @throws IOException if it can't be read, or nothing can be watched here
   */
  public SavedFiles(Path of) throws IOException {
    if (!Files.exists(of)) {
      throw new IOException("it isn't there, or not any more");
    }
    // Of a file its folder is watched, since editors put a new file in its place.
    this.deep = Files.isDirectory(of);
    this.root = deep ? of : of.toAbsolutePath().getParent();
    this.service = root.toAbsolutePath().getFileSystem().newWatchService();
  }

  /**
   * Watches what is there now; what was watched before stays so.
   *
   * @param besides further folders, each without those below it
   */
  public void watch(Collection<Path> besides) {
    Set<Path> folders = new HashSet<>();
    try {
      if (deep) {
        Files.walkFileTree(root, new Below(folders));
      } else {
        folders.add(root);
      }
    } catch (IOException e) {
      // It is gone for now; the next look will tell.
    }
    folders.addAll(besides);
    for (Path folder : folders) {
      try {
        folder.register(service, ENTRY_CREATE, ENTRY_MODIFY, ENTRY_DELETE);
      } catch (IOException e) {
        // It is gone already, or one too many: looked at from time to time.
      }
    }
  }

  /** Waits until something is saved and all is quiet again, or it is time for a look. */
  public void await() throws InterruptedException {
    WatchKey key = service.poll(LOOK_MILLIS, TimeUnit.MILLISECONDS);
    for (int i = 0; key != null && i < MOST_SETTLING; i++) {
      key.pollEvents();
      key.reset();
      key = service.poll(SETTLE_MILLIS, TimeUnit.MILLISECONDS);
    }
    if (key != null) {
      key.pollEvents();
      key.reset();
    }
  }

  /** Collects folders, hidden ones left out as they are for plans. */
  private final class Below extends SimpleFileVisitor<Path> {

    private final Set<Path> folders;

    Below(Set<Path> folders) {
      this.folders = folders;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
      if (!folder.equals(root) && FileNames.last(folder).startsWith(".")) {
        return FileVisitResult.SKIP_SUBTREE;
      }
      folders.add(folder);
      return folders.size() < MOST_FOLDERS ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException e) {
      return FileVisitResult.CONTINUE;
    }
  }

  @Override
  public void close() throws IOException {
    service.close();
  }
}
