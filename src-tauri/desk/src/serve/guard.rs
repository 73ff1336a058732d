//! Who is let in. A page of some other site, opened in the same browser, must reach nothing here.
//!
//! `Host` is checked against rebinding of a foreign name to 127.0.0.1, `Origin` against requests
//! sent from a foreign page, and the key against other programs and accounts of this computer.

use hyper::HeaderMap;
use hyper::header::{HOST, HeaderValue, ORIGIN};

use super::secret::Secret;

/// The header that carries the key.
pub const KEY_HEADER: &str = "x-steady-key";

/// Knows the names this desk goes by, and its key.
pub struct Guard {
    hosts: [String; 2],
    origins: [String; 2],
    secret: Secret,
}

impl Guard {
    /// A guard of the desk at this port.
    pub fn new(port: u16, secret: Secret) -> Self {
        let hosts = [format!("127.0.0.1:{port}"), format!("localhost:{port}")];
        let origins = hosts.each_ref().map(|host| format!("http://{host}"));
        Self { hosts, origins, secret }
    }

    /// The request names this desk, and only once.
    pub fn knows_host(&self, headers: &HeaderMap) -> bool {
        match only_value(headers, HOST.as_str()) {
            Some(Some(host)) => self.hosts.iter().any(|ours| host.eq_ignore_ascii_case(ours)),
            _ => false,
        }
    }

    /// The request comes from a page of this desk, or from no page.
    pub fn knows_origin(&self, headers: &HeaderMap) -> bool {
        match only_value(headers, ORIGIN.as_str()) {
            None => true,
            Some(Some(origin)) => self.origins.iter().any(|ours| origin == ours),
            Some(None) => false,
        }
    }

    /// The request's header carries the key.
    pub fn has_key(&self, headers: &HeaderMap) -> bool {
        matches!(only_value(headers, KEY_HEADER), Some(Some(key)) if self.secret.is(key))
    }

    /// The request's query carries the token of this photo's address, as an `<img>` has to send it.
    pub fn has_token(&self, query: Option<&str>, address: &str) -> bool {
        let token = query.and_then(|query| query.strip_prefix("token="));
        token.is_some_and(|token| self.secret.is_token(address, token))
    }
}

/// `None` without the header; `Some(None)` if it comes twice or is not text.
fn only_value<'a>(headers: &'a HeaderMap, name: &str) -> Option<Option<&'a str>> {
    let mut values = headers.get_all(name).iter();
    let first: &HeaderValue = values.next()?;
    Some(if values.next().is_none() { first.to_str().ok() } else { None })
}

#[cfg(test)]
mod tests {
    use super::{Guard, Secret};
    use hyper::HeaderMap;
    use hyper::header::{HOST, HeaderName, HeaderValue, ORIGIN};

    fn guard() -> Guard {
        Guard::new(8123, Secret::fresh().expect("the system has random bytes"))
    }

    fn headers(name: HeaderName, values: &[&'static str]) -> HeaderMap {
        values.iter().map(|value| (name.clone(), HeaderValue::from_static(value))).fold(
            HeaderMap::new(),
            |mut map, (name, value)| {
                map.append(name, value);
                map
            },
        )
    }

    #[track_caller]
    fn host(values: &[&'static str], known: bool) {
        assert_eq!(guard().knows_host(&headers(HOST, values)), known, "{values:?}");
    }

    #[track_caller]
    fn origin(values: &[&'static str], known: bool) {
        assert_eq!(guard().knows_origin(&headers(ORIGIN, values)), known, "{values:?}");
    }

    #[test]
    fn only_this_desk_is_a_known_host() {
        host(&["127.0.0.1:8123"], true);
        host(&["localhost:8123"], true);
        host(&["LocalHost:8123"], true);
        host(&[], false);
        host(&["127.0.0.1"], false);
        host(&["127.0.0.1:8124"], false);
        host(&["bay.example:8123"], false);
        host(&["127.0.0.1:8123.bay.example"], false);
        host(&["127.0.0.1:8123", "bay.example"], false);
    }

    #[test]
    fn a_foreign_page_is_a_foreign_origin() {
        origin(&[], true);
        origin(&["http://127.0.0.1:8123"], true);
        origin(&["http://localhost:8123"], true);
        origin(&["null"], false);
        origin(&["http://127.0.0.1:9000"], false);
        origin(&["https://127.0.0.1:8123"], false);
        origin(&["http://bay.example"], false);
        origin(&["http://127.0.0.1:8123", "http://bay.example"], false);
    }

    #[test]
    fn the_key_is_asked_for_in_a_header_alone() {
        let secret = Secret::fresh().expect("the system has random bytes");
        let key = secret.as_text().to_owned();
        let guard = Guard::new(8123, secret);
        let mut carried = HeaderMap::new();
        assert!(!guard.has_key(&carried));
        carried.insert("x-steady-key", HeaderValue::from_str(&key).expect("hex digits"));
        assert!(guard.has_key(&carried));
        for query in [format!("key={key}"), format!("token={key}"), "token=".to_owned()] {
            assert!(!guard.has_token(Some(&query), "0/full"), "{query}");
        }
        assert!(!guard.has_token(None, "0/full"));
    }
}
