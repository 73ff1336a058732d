//! One spelling of a JSON value, so that its hash is the same on every device and in every build.
//!
//! Keys are sorted here: the order in which `serde_json` keeps them depends on what else is compiled in.

use serde_json::Value;
use sha2::{Digest, Sha256};

use crate::model::hex;

/// SHA-256 over the canonical JSON of a value, in hex.
pub fn sha256(value: &Value) -> String {
    let mut text = String::new();
    write(value, &mut text);
    hex::encode(&Sha256::digest(text.as_bytes()))
}

/// Keys sorted by their bytes, no white space, strings and numbers as `serde_json` writes them.
fn write(value: &Value, out: &mut String) {
    match value {
        Value::Object(fields) => {
            let mut sorted: Vec<(&String, &Value)> = fields.iter().collect();
            sorted.sort_by_key(|(key, _)| *key);
            write_all(sorted, ['{', '}'], out, |(key, inner), out| {
                out.push_str(&Value::String(key.clone()).to_string());
                out.push(':');
                write(inner, out);
            });
        }
        Value::Array(items) => write_all(items, ['[', ']'], out, write),
        plain => out.push_str(&plain.to_string()),
    }
}

fn write_all<T>(
    items: impl IntoIterator<Item = T>,
    [open, close]: [char; 2],
    out: &mut String,
    each: impl Fn(T, &mut String),
) {
    out.push(open);
    for (at, item) in items.into_iter().enumerate() {
        if at > 0 {
            out.push(',');
        }
        each(item, out);
    }
    out.push(close);
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    #[track_caller]
    fn check(value: Value, want: &str) {
        let mut text = String::new();
        super::write(&value, &mut text);
        assert_eq!(text, want);
    }

    #[test]
    fn keys_are_sorted_at_every_depth() {
        check(
            json!({"b": 1, "a": {"d": [true, null], "c": "x\"y"}}),
            r#"{"a":{"c":"x\"y","d":[true,null]},"b":1}"#,
        );
        check(json!([]), "[]");
        check(json!({}), "{}");
    }

    /// FIPS 180-4 example digest of the bytes `abc` does not fit a JSON value, so the empty object's
    /// digest was taken with the system's `sha256sum`.
    #[test]
    fn hash_agrees_with_the_system_tool() {
        let want = "44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a";
        assert_eq!(super::sha256(&json!({})), want);
    }
}
