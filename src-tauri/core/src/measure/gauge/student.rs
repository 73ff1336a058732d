//! Student's t and the normal distribution: cumulative probability and its inverse.
//!
//! Own code, because two functions do not pay for a statistics library on a phone. By the incomplete beta
//! function as a continued fraction (modified Lentz) and the incomplete gamma function as a series; the
//! suite holds it against printed tables and against scipy.

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
    let half = 0.5 * lower_gamma_of_half(z * z / 2.0);
    if z > 0.0 { 0.5 + half } else { 0.5 - half }
}

/// Regularised lower incomplete gamma function for a = 1/2, by its series.
fn lower_gamma_of_half(x: f64) -> f64 {
    if x > 700.0 {
        return 1.0;
    }
    let mut term = 2.0;
    let mut sum = term;
    let mut a = 0.5;
    while term > sum * 1e-17 {
        a += 1.0;
        term *= x / a;
        sum += term;
    }
    (sum * (0.5 * x.ln() - x).exp() / std::f64::consts::PI.sqrt()).min(1.0)
}

/// Regularised incomplete beta function.
fn incomplete_beta(x: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if x >= 1.0 {
        return 1.0;
    }
    let front = (ln_gamma(a + b) - ln_gamma(a) - ln_gamma(b) + a * x.ln() + b * (1.0 - x).ln()).exp();
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

/// Logarithm of the gamma function for positive arguments (Lanczos, g = 7, nine terms).
fn ln_gamma(x: f64) -> f64 {
    const G: f64 = 7.0;
    const TERMS: [f64; 8] = [
        676.520_368_121_885_1,
        -1_259.139_216_722_402_8,
        771.323_428_777_653_1,
        -176.615_029_162_140_6,
        12.507_343_278_686_905,
        -0.138_571_095_265_720_12,
        9.984_369_578_019_572e-6,
        1.505_632_735_149_311_6e-7,
    ];
    let x = x - 1.0;
    let start = 0.999_999_999_999_809_9;
    let sum = TERMS.iter().zip(1_u8..).fold(start, |sum, (term, at)| sum + term / (x + f64::from(at)));
    let t = x + G + 0.5;
    0.5 * (2.0 * std::f64::consts::PI).ln() + (x + 0.5) * t.ln() - t + sum.ln()
}
