//! Android and iOS: each request goes to the Kotlin or Swift beside this crate, and to nowhere else.

use std::path::Path;
use std::sync::Arc;

use serde::Serialize;
use serde::de::{DeserializeOwned, IgnoredAny};
use tauri::Runtime;
use tauri::plugin::{PluginApi, PluginHandle};

use crate::phone::{Feel, Insets, Phone, PhoneFault};

#[cfg(target_os = "ios")]
tauri::ios_plugin_binding!(init_plugin_device);

/// The device of a phone.
pub fn phone<R: Runtime, C: DeserializeOwned>(
    api: PluginApi<R, C>,
) -> Result<Arc<dyn Phone>, tauri::plugin::mobile::PluginInvokeError> {
    #[cfg(target_os = "android")]
    let handle = api.register_android_plugin("app.steady.device", "DevicePlugin")?;
    #[cfg(target_os = "ios")]
    let handle = api.register_ios_plugin(init_plugin_device)?;
    Ok(Arc::new(Native(handle)))
}

struct Native<R: Runtime>(PluginHandle<R>);

#[derive(Serialize)]
struct Share<'a> {
    path: &'a str,
    mime: &'a str,
}

#[derive(Serialize)]
struct Buzz {
    milliseconds: u32,
}

#[derive(Serialize)]
struct Awake {
    on: bool,
}

#[derive(Serialize)]
struct Nothing {}

impl<R: Runtime> Native<R> {
    fn run<T: DeserializeOwned>(&self, command: &str, arguments: impl Serialize) -> Result<T, PhoneFault> {
        self.0.run_mobile_plugin(command, arguments).map_err(|_| PhoneFault::Failed)
    }

    fn tell(&self, command: &str, arguments: impl Serialize) -> Result<(), PhoneFault> {
        self.run::<IgnoredAny>(command, arguments).map(|_| ())
    }
}

impl<R: Runtime> Phone for Native<R> {
    fn share(&self, file: &Path, mime: &str) -> Result<(), PhoneFault> {
        let path = file.to_str().ok_or(PhoneFault::Failed)?;
        self.tell("share", Share { path, mime })
    }

    fn feel(&self, feel: Feel) -> Result<(), PhoneFault> {
        self.tell("feel", Buzz { milliseconds: feel.milliseconds() })
    }

    fn stay_awake(&self, on: bool) -> Result<(), PhoneFault> {
        self.tell("stayAwake", Awake { on })
    }

    fn insets(&self) -> Result<Insets, PhoneFault> {
        self.run("insets", Nothing {})
    }

    fn leave(&self) -> Result<(), PhoneFault> {
        self.tell("leave", Nothing {})
    }
}
