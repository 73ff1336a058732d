// The one activity. The screens keep clear of the system's bars by what the device plugin tells them, and hear
// the Back button through Tauri; neither needs a line here.
package app.steady.bay

import android.os.Bundle
import androidx.activity.enableEdgeToEdge

class MainActivity : TauriActivity() {
  override fun onCreate(savedInstanceState: Bundle?) {
    enableEdgeToEdge()
    super.onCreate(savedInstanceState)
  }
}
