//! What the exact sum is carried out in: plain `f64`, or several networks side by side in [`Lanes`].

use std::array::from_fn;
use std::fmt::Debug;
use std::ops::{Add, Div, Mul, MulAssign, Sub};

/// A probability or weight of one network, or of several side by side.
pub trait Number:
    Copy
    + Debug
    + Add<Output = Self>
    + Sub<Output = Self>
    + Mul<Output = Self>
    + Div<Output = Self>
    + MulAssign
    + PartialEq
{
    /// Below this, weights are brought back to one; far from the least number there is.
    const SMALL: f64;
    /// The least weight that can be divided by.
    const LEAST: f64;

    /// The same number in every network.
    fn all(value: f64) -> Self;
    /// The greater of the two, network by network.
    fn greater(self, other: Self) -> Self;
    /// Natural logarithm.
    fn logarithm(self) -> Self;
    /// Whether it is below this in any network.
    fn below(self, limit: f64) -> bool;
    /// Whether it is above this in any network.
    fn above(self, limit: f64) -> bool;
}

impl Number for f64 {
    const SMALL: f64 = 1e-60;
    const LEAST: f64 = f64::MIN_POSITIVE;

    #[inline]
    fn all(value: f64) -> Self {
        value
    }
    #[inline]
    fn greater(self, other: Self) -> Self {
        self.max(other)
    }
    #[inline]
    fn logarithm(self) -> Self {
        self.ln()
    }
    #[inline]
    fn below(self, limit: f64) -> bool {
        self < limit
    }
    #[inline]
    fn above(self, limit: f64) -> bool {
        self > limit
    }
}

/// Networks side by side.
pub const LANES: usize = 8;

/// One number of eight networks, in half the precision: an interval rests on 200 draws, whose own scatter
/// is ten thousand times what seven digits leave out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lanes(pub [f32; LANES]);

impl Lanes {
    #[inline]
    fn zip(self, other: Self, work: impl Fn(f32, f32) -> f32) -> Self {
        let (Self(left), Self(right)) = (self, other);
        let mut out = left;
        for (left, right) in out.iter_mut().zip(right) {
            *left = work(*left, right);
        }
        Self(out)
    }

    /// One value for each network.
    #[inline]
    pub fn each(mut value: impl FnMut() -> f64) -> Self {
        Self(from_fn(|_| value() as f32))
    }
}

impl Add for Lanes {
    type Output = Self;
    #[inline]
    fn add(self, other: Self) -> Self {
        self.zip(other, |left, right| left + right)
    }
}

impl Sub for Lanes {
    type Output = Self;
    #[inline]
    fn sub(self, other: Self) -> Self {
        self.zip(other, |left, right| left - right)
    }
}

impl Mul for Lanes {
    type Output = Self;
    #[inline]
    fn mul(self, other: Self) -> Self {
        self.zip(other, |left, right| left * right)
    }
}

impl Div for Lanes {
    type Output = Self;
    #[inline]
    fn div(self, other: Self) -> Self {
        self.zip(other, |left, right| left / right)
    }
}

impl MulAssign for Lanes {
    #[inline]
    fn mul_assign(&mut self, other: Self) {
        *self = *self * other;
    }
}

impl Number for Lanes {
    const SMALL: f64 = 1e-12;
    const LEAST: f64 = f32::MIN_POSITIVE as f64;

    #[inline]
    fn all(value: f64) -> Self {
        Self([value as f32; LANES])
    }
    #[inline]
    fn greater(self, other: Self) -> Self {
        self.zip(other, f32::max)
    }
    #[inline]
    fn logarithm(self) -> Self {
        Self(self.0.map(f32::ln))
    }
    #[inline]
    fn below(self, limit: f64) -> bool {
        self.0.iter().any(|one| f64::from(*one) < limit)
    }
    #[inline]
    fn above(self, limit: f64) -> bool {
        self.0.iter().any(|one| f64::from(*one) > limit)
    }
}
