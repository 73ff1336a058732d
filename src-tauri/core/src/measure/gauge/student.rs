//! Student's t and the normal distribution: cumulative probability and its inverse.
//!
//! Own code, because one function does not pay for a statistics library on a phone: the incomplete beta function, as
//! a continued fraction (modified Lentz). The rest is `libm`'s. The suite holds it against printed tables and, to
//! 1e-9, against scipy.

use libm::lgamma;

/// From here on t and normal differ by less than this module's own error.
const UNLIMITED: f64 = 1e7;

/// P(T <= t) with `dof` degrees of freedom; `None` is unlimited, the normal distribution.
pub fn cumulative(t: f64, dof: Option<f64>) -> f64 {
    let Some(dof) = dof.filter(|dof| *dof < UNLIMITED) else { return normal(t) };
    let tail = 0.5 * incomplete_beta(dof / (dof + t * t), dof / 2.0, 0.5);
    if t > 0.0 { 1.0 - tail } else { tail }
}

/// The t below which the probability `p` lies, for `p` strictly between 0 and 1.
pub fn quantile(p: f64, dof: Option<f64>) -> f64 {
    if p < 0.5 {
        return -quantile(1.0 - p, dof);
    }
    let mut high = 1.0;
    while cumulative(high, dof) < p && high < 1e12 {
        high *= 2.0;
    }
    let mut low = 0.0;
    for _ in 0..200 {
        let middle = 0.5 * (low + high);
        if middle <= low || middle >= high {
            break;
        }
        if cumulative(middle, dof) < p { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

/// The factor that spans 95 % on both sides.
pub fn factor_95(dof: Option<f64>) -> f64 {
    quantile(0.975, dof)
}

fn normal(z: f64) -> f64 {
    0.5 * libm::erfc(-z * std::f64::consts::FRAC_1_SQRT_2)
}

/// Regularised incomplete beta function.
fn incomplete_beta(x: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    let front = (lgamma(a + b) - lgamma(a) - lgamma(b) + a * x.ln() + b * (1.0 - x).ln()).exp();
    if x < (a + 1.0) / (a + b + 2.0) {
        front * beta_fraction(x, a, b) / a
    } else {
        1.0 - front * beta_fraction(1.0 - x, b, a) / b
    }
}

fn beta_fraction(x: f64, a: f64, b: f64) -> f64 {
    const TINY: f64 = 1e-300;
    let keep = |value: f64| if value.abs() < TINY { TINY } else { value };
    let mut c = 1.0;
    let mut d = 1.0 / keep(1.0 - (a + b) * x / (a + 1.0));
    let mut fraction = d;
    for step in 1..20_000 {
        let m = f64::from(step);
        let even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        d = 1.0 / keep(1.0 + even * d);
        c = keep(1.0 + even / c);
        fraction *= d * c;
        let odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / keep(1.0 + odd * d);
        c = keep(1.0 + odd / c);
        fraction *= d * c;
        if (d * c - 1.0).abs() < 1e-16 {
            break;
        }
    }
    fraction
}
