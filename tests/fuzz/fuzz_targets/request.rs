//! Requests as the desk and the phone's shell hand them on, one a line, to one workshop: every reply is JSON.

#![no_main]

#[path = "../src/workshop.rs"]
mod workshop;

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let workshop = workshop::shared();
    for line in text.lines().take(20) {
        // Folders named in a request are the shell's to choose; a fuzzer's choice could be anywhere.
        if line.contains("folder") || line.contains("path") {
            continue;
        }
        let reply = workshop.steady.handle_json(line).unwrap_or_else(|failure| failure);
        let reply: serde_json::Value = serde_json::from_str(&reply).expect("a reply is JSON");
        assert_ne!(reply["code"], "internal", "{line}");
    }
});
