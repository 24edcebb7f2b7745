//! Roots of a function between two bounds.

/// Two bounds between which a root is looked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bracket {
    /// One bound.
    pub from: f64,
    /// The other bound.
    pub to: f64,
}

/// Why no root was found.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum RootError {
    /// The function has the same sign at both bounds.
    #[error("the function has the same sign at {from} ({at_from}) and at {to} ({at_to}): no root is bracketed")]
    NotBracketed {
        /// One bound.
        from: f64,
        /// The other bound.
        to: f64,
        /// Value there.
        at_from: f64,
        /// Value there.
        at_to: f64,
    },
}

/// Steps after which the best point so far is returned; bisection alone would need about 60.
const MOST_STEPS: usize = 200;

/// Returns a root of a continuous function between two bounds, to a few units in the last place or to `tolerance`, whichever is coarser.
///
/// Brent's method: inverse quadratic interpolation where it converges, bisection where it does not.
///
/// # Arguments
/// * `bracket`: bounds at which the function has different signs (or is zero)
/// * `tolerance`: absolute tolerance of the root, ≥ 0
///
/// # Errors
/// [`RootError::NotBracketed`]; also where the function is not a number at a bound.
///
/// # Source
/// R. P. Brent 1973, Algorithms for Minimization without Derivatives, chapter 4 (from memory).
///
/// # Example
/// ```
/// use vatsketch::numeric::{brent, Bracket};
/// let root = brent(|x| x * x - 2.0, Bracket { from: 0.0, to: 2.0 }, 1e-14)?;
/// assert!((root - 2.0_f64.sqrt()).abs() < 1e-13);
/// # Ok::<(), vatsketch::numeric::RootError>(())
/// ```
pub fn brent(function: impl Fn(f64) -> f64, bracket: Bracket, tolerance: f64) -> Result<f64, RootError> {
    let (mut a, mut b) = (bracket.from, bracket.to);
    let (mut fa, mut fb) = (function(a), function(b));
    if fa == 0.0 {
        return Ok(a);
    }
    let bracketed = fa * fb <= 0.0;
    if !bracketed {
        return Err(RootError::NotBracketed { from: a, to: b, at_from: fa, at_to: fb });
    }
    // `b` is the best point, `a` the one before, `c` the one on the other side of the root.
    let (mut c, mut fc) = (a, fa);
    let mut last = b - a;
    let mut step = last;
    for _ in 0..MOST_STEPS {
        if fc.abs() < fb.abs() {
            (a, b, c) = (b, c, b);
            (fa, fb, fc) = (fb, fc, fb);
        }
        let narrow = 2.0 * f64::EPSILON * b.abs() + 0.5 * tolerance;
        let middle = 0.5 * (c - b);
        if middle.abs() <= narrow || fb == 0.0 {
            return Ok(b);
        }
        let interpolated = if last.abs() >= narrow && fa.abs() > fb.abs() { interpolate((a, fa), (b, fb), (c, fc)) } else { None };
        match interpolated {
            Some(trial) if trial.abs() < (1.5 * middle.abs() - 0.5 * narrow).min(0.5 * last.abs()) && trial * middle > 0.0 => {
                (last, step) = (step, trial);
            }
            _ => (last, step) = (middle, middle),
        }
        (a, fa) = (b, fb);
        b += if step.abs() > narrow { step } else { narrow.copysign(middle) };
        fb = function(b);
        if (fb > 0.0) == (fc > 0.0) {
            (c, fc) = (a, fa);
            last = b - a;
            step = last;
        }
    }
    Ok(b)
}

/// Returns the step from `b` towards the root by the secant, or by the inverse parabola through three points.
fn interpolate((a, fa): (f64, f64), (b, fb): (f64, f64), (c, fc): (f64, f64)) -> Option<f64> {
    let s = fb / fa;
    let (p, q) = if a.to_bits() == c.to_bits() {
        ((c - b) * s, 1.0 - s)
    } else {
        let (q, r) = (fa / fc, fb / fc);
        (s * ((c - b) * q * (q - r) - (b - a) * (r - 1.0)), (q - 1.0) * (r - 1.0) * (s - 1.0))
    };
    let trial = -p / q;
    trial.is_finite().then_some(trial)
}
