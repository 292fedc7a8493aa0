// What another app shares with this one: photos and documents, as streams that this app is lent and copies at once.
package app.wellkept.book;

import android.content.ClipData;
import android.content.ContentResolver;
import android.content.Context;
import android.content.Intent;
import android.content.pm.ProviderInfo;
import android.net.Uri;
import android.os.Bundle;
import android.os.Process;
import android.util.Log;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Copies what an intent shares into a folder of the shelf, where the window's `shared.rs` finds it. */
final class SharedPapers {
  /** The shelf stands in the app's own data, as the window's `shelf` says. */
  private static final String FOLDER = "shelf/shared";

  /** Whether what an earlier run left half copied is cleared away. */
  private static boolean cleared = false;

  private final Context context;
  private final SharedFolder folder;
  private final Runnable onCopied;

  /** `onCopied` is run on a thread of its own whenever something new waits. */
  SharedPapers(Context context, Runnable onCopied) {
    this.context = context;
    this.folder = new SharedFolder(new File(context.getDataDir(), FOLDER));
    this.onCopied = onCopied;
  }

  /** Copies what an intent shares, if it shares anything, and comes back at once. */
  void take(Intent intent) {
    clearOnce();
    Set<Uri> streams = isShare(intent) ? streams(intent) : new LinkedHashSet<Uri>();
    // Each on a thread of its own: another app's stream may never end, and the next share does not wait for it.
    if (!streams.isEmpty()) new Thread(() -> copy(streams), "shared-papers").start();
  }

  private void clearOnce() {
    synchronized (SharedPapers.class) {
      if (!cleared) folder.clear();
      cleared = true;
    }
  }

  /** An app that is called back from the list of recent ones is handed its old intent, which was taken before. */
  private static boolean isShare(Intent intent) {
    if (intent == null || (intent.getFlags() & Intent.FLAG_ACTIVITY_LAUNCHED_FROM_HISTORY) != 0) return false;
    String action = intent.getAction();
    return Intent.ACTION_SEND.equals(action) || Intent.ACTION_SEND_MULTIPLE.equals(action);
  }

  /** The addresses that an intent shares, each once, though most apps name them in both places. */
  private static Set<Uri> streams(Intent intent) {
    Set<Uri> streams = new LinkedHashSet<>();
    try {
      addExtra(streams, intent.getExtras());
      addClip(streams, intent.getClipData());
    } catch (RuntimeException unreadable) {
      // What another app packed into an intent may not unpack at all.
      Log.w("shared", "an intent could not be read", unreadable);
    }
    return streams;
  }

  @SuppressWarnings("deprecation") // What is not known to be one address or a list is asked for without its type.
  private static void addExtra(Set<Uri> streams, Bundle extras) {
    Object extra = extras == null ? null : extras.get(Intent.EXTRA_STREAM);
    if (extra instanceof Uri) streams.add((Uri) extra);
    if (!(extra instanceof List)) return;
    for (Object one : (List<?>) extra) {
      if (one instanceof Uri) streams.add((Uri) one);
    }
  }

  private static void addClip(Set<Uri> streams, ClipData clip) {
    for (int index = 0; clip != null && index < clip.getItemCount(); index += 1) {
      Uri uri = clip.getItemAt(index).getUri();
      if (uri != null) streams.add(uri);
    }
  }

  private void copy(Set<Uri> streams) {
    int left = SharedFolder.MOST_WAITING + 1;
    for (Uri uri : streams) {
      if (left == 0) break;
      left -= 1;
      copy(uri);
    }
    onCopied.run();
  }

  private void copy(Uri uri) {
    try {
      folder.take(() -> open(uri));
    } catch (IOException error) {
      Log.w("shared", "nothing could be written", error);
    }
  }

  private InputStream open(Uri uri) throws IOException {
    if (!ContentResolver.SCHEME_CONTENT.equals(uri.getScheme()) || isOwn(uri.getAuthority())) {
      throw new IOException("only what another app offers is copied");
    }
    InputStream stream = context.getContentResolver().openInputStream(uri);
    if (stream == null) throw new IOException("the other app gave nothing");
    return stream;
  }

  /**
   * Whether this app itself answers for an authority. It is asked with this app's rights, so another app could have it
   * copy its own books into a tray by naming them; for the same reason no path of a file is read.
   */
  private boolean isOwn(String authority) {
    if (authority == null) return true;
    // Before an `@` stands the number of a user of the device, which the system takes off before it looks.
    String name = authority.substring(authority.lastIndexOf('@') + 1);
    ProviderInfo provider = context.getPackageManager().resolveContentProvider(name, 0);
    return provider != null && provider.applicationInfo.uid == Process.myUid();
  }
}
