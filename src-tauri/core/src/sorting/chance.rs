//! Seeded chance: the same seed gives the same numbers for ever. Nothing here is secret or unpredictable.

use crate::model::learned::Beta;

/// A source of pseudo-random numbers.
///
/// Source: Steele, Lea & Flood, *Fast Splittable Pseudorandom Number Generators*, OOPSLA 2014 (the
/// generator SplitMix64), from memory.
#[derive(Debug, Clone)]
pub struct Chance {
    state: u64,
}

impl Chance {
    /// Starts at a seed.
    pub fn seeded(seed: u64) -> Self {
        Self { state: seed }
    }

    fn bits(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.state;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Evenly between 0 and 1, both excluded.
    pub fn uniform(&mut self) -> f64 {
        ((self.bits() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }

    /// Whether something of this probability happens.
    pub fn happens(&mut self, probability: f64) -> bool {
        self.uniform() < probability
    }

    /// A probability from a Beta distribution, by two Gamma draws.
    pub fn beta(&mut self, beta: Beta) -> f64 {
        let with = self.gamma(beta.a);
        let without = self.gamma(beta.b);
        if with + without > 0.0 { with / (with + without) } else { beta.mean() }
    }

    /// Standard normal, by the polar method.
    fn normal(&mut self) -> f64 {
        loop {
            let (x, y) = (2.0 * self.uniform() - 1.0, 2.0 * self.uniform() - 1.0);
            let square = x * x + y * y;
            if square > 0.0 && square < 1.0 {
                return x * (-2.0 * square.ln() / square).sqrt();
            }
        }
    }

    /// Gamma with this shape and scale 1.
    ///
    /// Source: Marsaglia & Tsang, *A Simple Method for Generating Gamma Variables*, ACM Transactions on
    /// Mathematical Software 26 (2000) 363, from memory.
    fn gamma(&mut self, shape: f64) -> f64 {
        if shape < 1.0 {
            let lift = self.uniform().powf(1.0 / shape);
            return lift * self.gamma(shape + 1.0);
        }
        let d = shape - 1.0 / 3.0;
        let c = 1.0 / (9.0 * d).sqrt();
        loop {
            let x = self.normal();
            let v = (1.0 + c * x).powi(3);
            if v > 0.0 && self.uniform().ln() < 0.5 * x * x + d - d * v + d * v.ln() {
                return d * v;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Chance;
    use crate::model::learned::Beta;

    #[track_caller]
    fn check(a: f64, b: f64) {
        let mut chance = Chance::seeded(1);
        let drawn: Vec<f64> = (0..20_000).map(|_| chance.beta(Beta { a, b })).collect();
        let mean = drawn.iter().sum::<f64>() / 20_000.0;
        let variance = drawn.iter().map(|one| (one - mean).powi(2)).sum::<f64>() / 20_000.0;
        let expected = a / (a + b);
        let spread = expected * (1.0 - expected) / (a + b + 1.0);
        assert!((mean - expected).abs() < 4.0 * (spread / 20_000.0).sqrt(), "{mean} for {expected}");
        assert!((variance / spread - 1.0).abs() < 0.08, "{variance} for {spread}");
    }

    #[test]
    fn beta_draws_have_their_mean_and_spread() {
        for (a, b) in [(0.4, 19.6), (2.0, 18.0), (14.0, 6.0), (300.0, 700.0)] {
            check(a, b);
        }
    }

    #[test]
    fn same_seed_gives_the_same_numbers() {
        let draw = || Chance::seeded(7).beta(Beta { a: 2.0, b: 3.0 });
        assert_eq!(draw().to_bits(), draw().to_bits());
    }
}
