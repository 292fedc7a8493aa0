// The folder in which shared papers wait, on real files: what is whole gets its name, and everything else is said.
package app.wellkept.book;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

public final class SharedFolderTest {
  private final File root;
  private int folders = 0;

  /** `root`: an empty folder for what the tests write. */
  private SharedFolderTest(File root) {
    this.root = root;
  }

  public static void main(String[] args) throws Exception {
    SharedFolderTest test = new SharedFolderTest(new File(args[0]));
    test.copiesInOrder();
    test.boundsTheSize();
    test.saysWhatCouldNotBeCopied();
    test.boundsTheNumber();
    test.boundsTheNumberForSeveralAtOnce();
    test.clearsOnlyWhatIsHalf();
    System.out.println("the folder of shared papers: 6 tests passed");
  }

  private void copiesInOrder() throws Exception {
    File folder = folder();
    SharedFolder shared = new SharedFolder(folder);
    for (int number = 0; number < 12; number += 1) {
      byte[] bytes = {(byte) number};
      shared.take(() -> new ByteArrayInputStream(bytes));
    }
    List<File> files = sorted(folder);
    same(12, files.size(), "files that wait");
    for (int number = 0; number < 12; number += 1) {
      File file = files.get(number);
      same(".paper", ending(file), "the ending of what is whole");
      same(number, (int) Files.readAllBytes(file.toPath())[0], "what file " + number + " holds");
    }
  }

  private void boundsTheSize() throws Exception {
    File folder = folder();
    SharedFolder shared = new SharedFolder(folder);
    shared.take(() -> new Endless(SharedFolder.MOST_BYTES));
    same(SharedFolder.MOST_BYTES, sorted(folder).get(0).length(), "a file as large as may be");
    Endless endless = new Endless(Long.MAX_VALUE);
    shared.take(() -> endless);
    File refused = sorted(folder).get(1);
    same(".too-large", ending(refused), "the ending of what never ends");
    same(0L, refused.length(), "what is kept of it");
    same(true, endless.closed, "whether it is closed");
    same(true, endless.read < SharedFolder.MOST_BYTES + 1024 * 1024, "whether it was left soon");
  }

  private void saysWhatCouldNotBeCopied() throws Exception {
    File folder = folder();
    SharedFolder shared = new SharedFolder(folder);
    shared.take(() -> { throw new IOException("gone"); });
    shared.take(() -> { throw new SecurityException("not lent"); });
    shared.take(() -> new InputStream() {
      private int left = 5;

      @Override
      public int read() throws IOException {
        left -= 1;
        if (left < 0) throw new IOException("torn");
        return 1;
      }
    });
    for (File file : sorted(folder)) {
      same(".not-copied", ending(file), "the ending");
      same(0L, file.length(), "what is kept of it");
    }
    same(3, sorted(folder).size(), "files that wait");
  }

  private void boundsTheNumber() throws Exception {
    File folder = folder();
    SharedFolder shared = new SharedFolder(folder);
    for (int number = 0; number < SharedFolder.MOST_WAITING + 5; number += 1) {
      shared.take(() -> new ByteArrayInputStream(new byte[] {1}));
    }
    List<File> files = sorted(folder);
    same(SharedFolder.MOST_WAITING + 1, files.size(), "files that wait, with the word that others do not");
    same(".too-many", ending(files.get(files.size() - 1)), "the ending of the last");
  }

  private void boundsTheNumberForSeveralAtOnce() throws Exception {
    File folder = folder();
    List<Thread> threads = IntStream.range(0, 4).mapToObj((number) -> new Thread(() -> {
      for (int copy = 0; copy < 30; copy += 1) {
        try {
          new SharedFolder(folder).take(() -> new ByteArrayInputStream(new byte[] {1}));
        } catch (IOException error) {
          throw new IllegalStateException(error);
        }
      }
    })).collect(Collectors.toList());
    threads.forEach(Thread::start);
    for (Thread thread : threads) thread.join();
    long whole = sorted(folder).stream().filter((file) -> ending(file).equals(".paper")).count();
    same((long) SharedFolder.MOST_WAITING, whole, "files that wait");
  }

  private void clearsOnlyWhatIsHalf() throws Exception {
    File folder = folder();
    SharedFolder shared = new SharedFolder(folder);
    shared.clear();
    shared.take(() -> new ByteArrayInputStream(new byte[] {1}));
    Files.write(new File(folder, "0.part").toPath(), new byte[] {1});
    shared.clear();
    same(1, sorted(folder).size(), "files that are left");
    same(".paper", ending(sorted(folder).get(0)), "the ending of what is left");
  }

  /** A folder that is not there yet, as on the first start. */
  private File folder() {
    folders += 1;
    return new File(root, folders + "/shared");
  }

  private static List<File> sorted(File folder) {
    File[] files = folder.listFiles();
    return Arrays.stream(files).sorted().collect(Collectors.toList());
  }

  private static String ending(File file) {
    return file.getName().substring(file.getName().lastIndexOf('.'));
  }

  private static void same(Object wanted, Object found, String what) {
    if (!wanted.equals(found)) throw new AssertionError(what + ": wanted " + wanted + ", found " + found);
  }

  /** A stream of so many bytes. */
  private static final class Endless extends InputStream {
    private final long bytes;
    long read = 0;
    boolean closed = false;

    Endless(long bytes) {
      this.bytes = bytes;
    }

    @Override
    public int read() {
      read += 1;
      return read > bytes ? -1 : 7;
    }

    @Override
    public int read(byte[] into, int from, int length) {
      if (read >= bytes) return -1;
      int count = (int) Math.min(length, bytes - read);
      read += count;
      return count;
    }

    @Override
    public void close() {
      closed = true;
    }
  }
}
