// What only Android can do for the screens. Each command does one thing and decides nothing.
// Never compiled where it was written: see src-tauri/gen/README.md.
package app.steady.device

import android.app.Activity
import android.content.Intent
import android.os.VibrationEffect
import android.os.Vibrator
import android.view.WindowManager
import android.webkit.WebView
import androidx.core.content.FileProvider
import androidx.core.view.ViewCompat
import androidx.core.view.WindowInsetsCompat
import app.tauri.annotation.Command
import app.tauri.annotation.InvokeArg
import app.tauri.annotation.TauriPlugin
import app.tauri.plugin.Invoke
import app.tauri.plugin.JSObject
import app.tauri.plugin.Plugin
import java.io.File

@InvokeArg
class ShareArgs {
    lateinit var path: String
    lateinit var mime: String
}

@InvokeArg
class FeelArgs {
    var milliseconds: Long = 0
}

@InvokeArg
class StayAwakeArgs {
    var on: Boolean = false
}

@TauriPlugin
class DevicePlugin(private val activity: Activity) : Plugin(activity) {
    // The screens ask for the insets again when they hear of a change: bars, cut-out, keyboard, rotation.
    override fun load(webView: WebView) {
        activity.runOnUiThread {
            ViewCompat.setOnApplyWindowInsetsListener(webView) { view, insets ->
                webView.evaluateJavascript("dispatchEvent(new Event('device-insets'))", null)
                ViewCompat.onApplyWindowInsets(view, insets)
            }
        }
    }

    @Command
    fun share(invoke: Invoke) {
        val args = invoke.parseArgs(ShareArgs::class.java)
        val authority = activity.packageName + ".fileprovider"
        val address = FileProvider.getUriForFile(activity, authority, File(args.path))
        val send = Intent(Intent.ACTION_SEND).apply {
            type = args.mime
            putExtra(Intent.EXTRA_STREAM, address)
            addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        }
        activity.startActivity(Intent.createChooser(send, null))
        invoke.resolve()
    }

    @Command
    fun feel(invoke: Invoke) {
        val args = invoke.parseArgs(FeelArgs::class.java)
        val effect = VibrationEffect.createOneShot(args.milliseconds, VibrationEffect.DEFAULT_AMPLITUDE)
        activity.getSystemService(Vibrator::class.java)?.vibrate(effect)
        invoke.resolve()
    }

    @Command
    fun stayAwake(invoke: Invoke) {
        val args = invoke.parseArgs(StayAwakeArgs::class.java)
        activity.runOnUiThread {
            val flag = WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON
            if (args.on) activity.window.addFlags(flag) else activity.window.clearFlags(flag)
            invoke.resolve()
        }
    }

    // CSS px are density-independent pixels.
    @Command
    fun insets(invoke: Invoke) {
        activity.runOnUiThread {
            val covering = WindowInsetsCompat.Type.systemBars() or
                WindowInsetsCompat.Type.displayCutout() or
                WindowInsetsCompat.Type.ime()
            val insets = ViewCompat.getRootWindowInsets(activity.window.decorView)?.getInsets(covering)
            val density = activity.resources.displayMetrics.density.toDouble()
            invoke.resolve(JSObject().apply {
                put("top", (insets?.top ?: 0) / density)
                put("right", (insets?.right ?: 0) / density)
                put("bottom", (insets?.bottom ?: 0) / density)
                put("left", (insets?.left ?: 0) / density)
            })
        }
    }

    @Command
    fun leave(invoke: Invoke) {
        activity.moveTaskToBack(true)
        invoke.resolve()
    }
}
