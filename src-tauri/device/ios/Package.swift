// swift-tools-version:5.5
// The iOS half of the device plugin. Never compiled where it was written: see src-tauri/gen/README.md.
import PackageDescription

let package = Package(
  name: "tauri-plugin-device",
  platforms: [.iOS(.v15)],
  products: [.library(name: "tauri-plugin-device", type: .static, targets: ["tauri-plugin-device"])],
  dependencies: [.package(name: "Tauri", path: "../.tauri/tauri-api")],
  targets: [
    .target(name: "tauri-plugin-device", dependencies: [.byName(name: "Tauri")], path: "Sources")
  ]
)
