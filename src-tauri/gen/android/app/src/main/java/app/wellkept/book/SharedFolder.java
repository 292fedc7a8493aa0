// Where papers that another app shared wait until the core takes them in. Nothing here is Android's own, so that it is
// tested without a device; and nothing is newer than Java 8 and `java.io`, which is what Android 7 has.
package app.wellkept.book;

import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A folder of copies, each shown under its name only when it is whole and on the disk. The names are made here: whoever
 * shares may call a file what he likes, and no word of his becomes a path.
 */
final class SharedFolder {
  /** The largest file that the core takes in; a test of the window holds this against the core's own limit. */
  static final long MOST_BYTES = 64L * 1024 * 1024;

  /** How many may wait, so that no app fills the disk. */
  static final int MOST_WAITING = 50;

  /** The ending of a copy that is under way. */
  private static final String HALF = ".part";

  /** What stands for everything that found no room; there is one such file, however much was left out. */
  private static final String NO_ROOM = "zz.too-many";

  private static final int PIECE = 64 * 1024;

  /** Puts files that were shared in the same millisecond in their order. */
  private static final AtomicInteger COUNT = new AtomicInteger();

  /** What became of a stream. It is the ending of the file that waits, so that the core can say it. */
  private enum Outcome {
    WHOLE(".paper"),
    TOO_LARGE(".too-large"),
    NOT_COPIED(".not-copied");

    final String ending;

    Outcome(String ending) {
      this.ending = ending;
    }
  }

  /** Something that can be read once. */
  interface Source {
    InputStream open() throws IOException;
  }

  private final File folder;

  SharedFolder(File folder) {
    this.folder = folder;
  }

  /** Deletes what was half copied when the program ended. To be called before the first copy is begun. */
  void clear() {
    for (File file : waiting()) {
      if (file.getName().endsWith(HALF)) file.delete();
    }
  }

  /** Copies a stream, or leaves a word why it could not be. */
  void take(Source source) throws IOException {
    File half = reserve();
    if (half == null) {
      new File(folder, NO_ROOM).createNewFile();
      return;
    }
    Outcome outcome = copy(source, half);
    if (outcome != Outcome.WHOLE) new FileOutputStream(half).close();
    String name = half.getName();
    File ready = new File(folder, name.substring(0, name.length() - HALF.length()) + outcome.ending);
    if (!half.renameTo(ready)) throw new IOException("a copy could not be given its name");
  }

  /** An empty file for a copy, or null where as many wait as may. */
  private File reserve() throws IOException {
    // Several shares are copied at a time, and the room is one.
    synchronized (SharedFolder.class) {
      folder.mkdirs();
      if (waiting().length >= MOST_WAITING) return null;
      long now = System.currentTimeMillis();
      String name = String.format(Locale.ROOT, "%015d-%06d-%s", now, COUNT.getAndIncrement(), UUID.randomUUID());
      File half = new File(folder, name + HALF);
      if (!half.createNewFile()) throw new IOException("a name was given twice");
      return half;
    }
  }

  private static Outcome copy(Source source, File half) {
    try (InputStream in = source.open(); FileOutputStream out = new FileOutputStream(half)) {
      byte[] piece = new byte[PIECE];
      long total = 0;
      for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
        total += read;
        if (total > MOST_BYTES) return Outcome.TOO_LARGE;
        out.write(piece, 0, read);
      }
      out.getFD().sync();
      return Outcome.WHOLE;
    } catch (IOException | RuntimeException refused) {
      // The other app decides what is thrown here, and none of it may end this one.
      return Outcome.NOT_COPIED;
    }
  }

  private File[] waiting() {
    File[] files = folder.listFiles();
    return files == null ? new File[0] : files;
  }
}
