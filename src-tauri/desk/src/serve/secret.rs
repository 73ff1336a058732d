//! The secret of one start: whoever has it sits at this desk. A photo is named with a token made of it, so that an
//! address that is copied or kept somewhere opens that one photo and nothing else.

use sha2::{Digest as _, Sha256};
use steady_core::app::failure::Failure;
use steady_core::model::hex;
use subtle::ConstantTimeEq as _;

use crate::fault;

/// 256 bits, as the browser sends them: 64 hex digits.
pub struct Secret(String);

/// Length of a token, bytes.
const TOKEN_BYTES: usize = 16;
/// What SHA-256 works on at once, bytes.
const BLOCK: usize = 64;

/// HMAC-SHA-256 (RFC 2104) under a key of at most a block.
fn hmac(key: &[u8], text: &[u8]) -> [u8; 32] {
    let padded = |pad: u8| {
        let filled = key.iter().copied().chain(std::iter::repeat(0)).take(BLOCK);
        filled.map(|byte| byte ^ pad).collect::<Vec<u8>>()
    };
    let inner = Sha256::new().chain_update(padded(0x36)).chain_update(text).finalize();
    Sha256::new().chain_update(padded(0x5c)).chain_update(inner).finalize().into()
}

/// Whether two texts are the same. Takes the same time wherever the first difference is.
fn same(ours: &str, theirs: &str) -> bool {
    ours.as_bytes().ct_eq(theirs.as_bytes()).into()
}

impl Secret {
    /// Draws a secret from the system.
    pub fn fresh() -> Result<Self, Failure> {
        let mut bytes = [0_u8; 32];
        getrandom::fill(&mut bytes).map_err(|_| fault::internal())?;
        Ok(Self(hex::encode(&bytes)))
    }

    /// The digits, for the printed address.
    pub fn as_text(&self) -> &str {
        &self.0
    }

    /// Whether the given text is the token of a photo's address: the first half of an HMAC-SHA-256 in hex, over the
    /// address and under the digits of the secret. `ui/src/client.ts` makes it likewise.
    pub fn is_token(&self, address: &str, given: &str) -> bool {
        let mac = hex::encode(&hmac(self.0.as_bytes(), address.as_bytes()));
        same(&format!("{:.*}", 2 * TOKEN_BYTES, mac), given)
    }

    /// Whether the given text is the secret.
    pub fn is(&self, given: &str) -> bool {
        same(&self.0, given)
    }
}

#[cfg(test)]
mod tests {
    use super::Secret;

    #[test]
    fn only_the_whole_secret_is_the_secret() {
        let secret = Secret::fresh().expect("the system has random bytes");
        let text = secret.as_text().to_owned();
        assert_eq!(text.len(), 64);
        assert!(secret.is(&text));
        let (most, last) = text.split_at(63);
        let other = if last == "0" { "1" } else { "0" };
        for wrong in ["", most, &format!("{text}0"), &format!("{most}{other}")] {
            assert!(!secret.is(wrong), "{wrong}");
        }
    }

    /// Key, data and result of test case 2 of RFC 4231.
    #[test]
    fn token_is_of_one_address_alone() {
        let secret = Secret("Jefe".to_owned());
        let (address, token) = ("what do ya want for nothing?", "5bdcc146bf60754e6a042426089575c7");
        assert!(secret.is_token(address, token));
        let whole = format!("{token}5a003f089d2739839dec58b964ec3843");
        for wrong in
            ["", "5bdcc146bf60754e", &token.replace('5', "6"), &whole, "not hex at all, not hex at all!!"]
        {
            assert!(!secret.is_token(address, wrong), "{wrong}");
        }
        assert!(!secret.is_token("what do ya want for nothing!", token));
    }

    #[test]
    fn each_start_has_its_own() {
        let draw = || Secret::fresh().expect("the system has random bytes").as_text().to_owned();
        assert_ne!(draw(), draw());
    }
}
