package app.wellkept.book

import android.content.Intent
import android.os.Bundle
import android.webkit.WebView
import androidx.activity.enableEdgeToEdge

class MainActivity : TauriActivity() {
  private var page: WebView? = null
  private val shared by lazy { SharedPapers(applicationContext) { tellPage() } }

  override fun onCreate(savedInstanceState: Bundle?) {
    enableEdgeToEdge()
    super.onCreate(savedInstanceState)
    // One that the system brings back is handed what was shared with it before once more.
    if (savedInstanceState == null) shared.take(intent)
  }

  override fun onNewIntent(intent: Intent) {
    super.onNewIntent(intent)
    shared.take(intent)
  }

  override fun onWebViewCreate(webView: WebView) {
    super.onWebViewCreate(webView)
    page = webView
  }

  override fun onDestroy() {
    page = null
    super.onDestroy()
  }

  /** The page asks what waits when it opens and when it comes into sight; a copy may be ready only after that. */
  private fun tellPage() = runOnUiThread {
    page?.evaluateJavascript("window.dispatchEvent(new Event('shared'))", null)
  }
}
