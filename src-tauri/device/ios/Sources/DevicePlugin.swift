// What only iOS can do for the screens. Each command does one thing and decides nothing.
// Never compiled where it was written: see src-tauri/gen/README.md.
import AudioToolbox
import SwiftRs
import Tauri
import UIKit
import WebKit

struct ShareArgs: Decodable {
  let path: String
  let mime: String
}

struct FeelArgs: Decodable {
  let milliseconds: Int
}

struct StayAwakeArgs: Decodable {
  let on: Bool
}

class DevicePlugin: Plugin {
  // Visits hold owners' names, and a phone restored under the same device id would fork every chain. The folder is
  // excluded with all that is in it, before the core first writes there.
  override public func load(webview: WKWebView) {
    let support = FileManager.default.urls(for: .applicationSupportDirectory, in: .userDomainMask)[0]
    var data = support.appendingPathComponent(Bundle.main.bundleIdentifier ?? "app.steady.bay")
    try? FileManager.default.createDirectory(at: data, withIntermediateDirectories: true)
    var values = URLResourceValues()
    values.isExcludedFromBackup = true
    try? data.setResourceValues(values)
  }

  @objc public func share(_ invoke: Invoke) throws {
    let args = try invoke.parseArgs(ShareArgs.self)
    DispatchQueue.main.async {
      guard let above = self.manager.viewController else { return invoke.reject("no window") }
      let file = URL(fileURLWithPath: args.path)
      let sheet = UIActivityViewController(activityItems: [file], applicationActivities: nil)
      // A tablet shows the sheet as a bubble and ends the app where it has nothing to point at.
      sheet.popoverPresentationController?.sourceView = above.view
      sheet.popoverPresentationController?.sourceRect = CGRect(
        x: above.view.bounds.midX, y: above.view.bounds.maxY, width: 0, height: 0)
      above.present(sheet, animated: true) { invoke.resolve() }
    }
  }

  // iOS sets the length itself: the system's long buzz for a long one, a light tap for a short one.
  @objc public func feel(_ invoke: Invoke) throws {
    let args = try invoke.parseArgs(FeelArgs.self)
    DispatchQueue.main.async {
      if args.milliseconds > 100 {
        AudioServicesPlaySystemSound(kSystemSoundID_Vibrate)
      } else {
        UIImpactFeedbackGenerator(style: .medium).impactOccurred()
      }
      invoke.resolve()
    }
  }

  @objc public func stayAwake(_ invoke: Invoke) throws {
    let args = try invoke.parseArgs(StayAwakeArgs.self)
    DispatchQueue.main.async {
      UIApplication.shared.isIdleTimerDisabled = args.on
      invoke.resolve()
    }
  }

  @objc public func insets(_ invoke: Invoke) {
    DispatchQueue.main.async {
      let safe = self.manager.viewController?.view.safeAreaInsets ?? .zero
      invoke.resolve(["top": safe.top, "right": safe.right, "bottom": safe.bottom, "left": safe.left])
    }
  }

  // iOS has no Back button, and an app may not put itself behind the others.
  @objc public func leave(_ invoke: Invoke) {
    invoke.reject("absent")
  }
}

@_cdecl("init_plugin_device")
func initPlugin() -> Plugin {
  return DevicePlugin()
}
