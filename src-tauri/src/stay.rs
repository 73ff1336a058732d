//! The window shows the app's own pages and nothing else, whatever an address asks for.

use tauri::plugin::{Builder, TauriPlugin};
use tauri::{Runtime, Url};

/// Elsewhere such a name is any server of this machine.
const BY_NAME: bool = cfg!(any(target_os = "android", windows));

/// Refuses to go anywhere else.
pub fn init<R: Runtime>() -> TauriPlugin<R> {
    Builder::new("stay").on_navigation(|_, address| is_own(address)).build()
}

/// The pages: by Tauri's protocol, or by the local name that stands for it on Android and Windows. A paper that is
/// saved is a `blob:` of such a page.
fn is_own(address: &Url) -> bool {
    match address.scheme() {
        "tauri" => address.host_str() == Some("localhost"),
        "http" | "https" => {
            BY_NAME && address.host_str() == Some("tauri.localhost") && address.port().is_none()
        }
        "blob" => Url::parse(address.path()).is_ok_and(|page| page.scheme() != "blob" && is_own(&page)),
        "about" => address.path() == "blank",
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::{BY_NAME, is_own};

    #[test]
    fn only_pages_of_the_app_are_gone_to() {
        for (address, own) in [
            ("tauri://localhost/#/settings", true),
            ("http://tauri.localhost/", BY_NAME),
            ("https://tauri.localhost/index.html", BY_NAME),
            ("http://tauri.localhost:8080/", false),
            ("blob:tauri://localhost/0191d2f0-0000-7000-8000-000000000001", true),
            ("about:blank", true),
            ("blob:https://example.org/0191d2f0-0000-7000-8000-000000000001", false),
            ("https://example.org/", false),
            ("http://tauri.localhost.example.org/", false),
            ("http://127.0.0.1:8080/", false),
            ("tauri://elsewhere/", false),
            ("file:///etc/passwd", false),
            ("data:text/html,x", false),
            ("javascript:alert(1)", false),
        ] {
            assert_eq!(is_own(&address.parse().unwrap()), own, "{address}");
        }
    }
}
