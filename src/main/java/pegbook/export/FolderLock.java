package pegbook.export;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The folder in which a packet's files wait until all are written, held by one run at a time.
 *
 * <p>Its name is always the same, so that the next run clears what a run that was killed left; the
 * lock on a file in it goes with the process that holds it, however that ends.
 */
final class FolderLock implements AutoCloseable {
  private static final String LOCK = "lock";

  /** How often a lock that its holder removes meanwhile is looked for anew. */
  private static final int MOST_TRIES = 20;

  private final Path folder;
  private final FileChannel channel;

  private FolderLock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /**
   * Takes the waiting folder, empty.
   *
   * @throws IOException when another run holds it, or the place cannot be written
   */
  static FolderLock take(Path folder) throws IOException {
    for (int time = 0; time < MOST_TRIES; time++) {
      Files.createDirectories(folder);
      FileChannel channel;
      try {
        channel =
            FileChannel.open(
                folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      } catch (NoSuchFileException removedMeanwhile) {
        continue;
      }
      try {
        if (isHeld(folder, channel)) {
          FolderLock lock = new FolderLock(folder, channel);
          lock.clear();
          return lock;
        }
        channel.close();
      } catch (IOException failed) {
        channel.close();
        throw failed;
      }
    }
    throw new IOException(folder + " comes and goes; another run is printing there");
  }

  /** Whether the lock is ours, and still the one that others would find. */
  private static boolean isHeld(Path folder, FileChannel channel) throws IOException {
    if (!isLocked(channel)) {
      throw new IOException("another run is printing into it at this moment");
    }
    // The holder before us may have removed the file after we opened it: then what we write now
    // stands in a file that nobody finds.
    String mark = ProcessHandle.current().pid() + " " + Thread.currentThread().getId();
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(mark.getBytes(StandardCharsets.UTF_8)));
    try {
      return Files.readString(folder.resolve(LOCK)).equals(mark);
    } catch (NoSuchFileException removed) {
      return false;
    }
  }

  private static boolean isLocked(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException heldByThisProcess) {
      return false;
    }
  }

  Path file(String name) {
    return folder.resolve(name);
  }

  private void clear() throws IOException {
    List<Path> left = new ArrayList<>();
    try (Stream<Path> entries = Files.list(folder)) {
      entries.filter(entry -> !entry.endsWith(LOCK)).forEach(left::add);
    }
    for (Path entry : left) {
      Files.deleteIfExists(entry);
    }
  }

  /** Removes the folder. */
  @Override
  public void close() throws IOException {
    try {
      clear();
      Files.deleteIfExists(folder.resolve(LOCK));
    } finally {
      channel.close();
    }
    try {
      Files.deleteIfExists(folder);
    } catch (DirectoryNotEmptyException takenAgain) {
      // The next run is in it already.
    }
  }
}
