//! The secret of one start: whoever has it sits at this desk.

use steady_core::app::failure::Failure;

use crate::fault;

/// 256 bits, as the browser sends them: 64 hex digits.
pub struct Secret(String);

impl Secret {
    /// Draws a secret from the system.
    pub fn fresh() -> Result<Self, Failure> {
        let mut bytes = [0_u8; 32];
        getrandom::fill(&mut bytes).map_err(|_| fault::internal())?;
        Ok(Self(bytes.iter().map(|byte| format!("{byte:02x}")).collect()))
    }

    /// The digits, for the printed address.
    pub fn as_text(&self) -> &str {
        &self.0
    }

    /// Whether the given text is the secret. Takes the same time wherever the first difference is.
    pub fn is(&self, given: &str) -> bool {
        let differing =
            self.0.bytes().zip(given.bytes()).fold(0_u8, |all, (ours, theirs)| all | (ours ^ theirs));
        given.len() == self.0.len() && std::hint::black_box(differing) == 0
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

    #[test]
    fn each_start_has_its_own() {
        let draw = || Secret::fresh().expect("the system has random bytes").as_text().to_owned();
        assert_ne!(draw(), draw());
    }
}
