//! Logarithm and exponential without branches, tables or calls, so that a loop over many numbers takes several at a time.
//!
//! Both err by a few units in the last place, far below any law that uses them; a test compares them with those of the standard library.

/// ln 2 in two parts; so many multiples of the first as there are powers of two are exact.
const LN_2: (f64, f64) = (0.693_147_180_369_123_8, 1.908_214_929_270_587_7e-10);
/// Added to a number below 2⁵¹, leaves it rounded to a whole one in the last bits.
const ROUNDING: f64 = 6_755_399_441_055_744.0;
/// Bits of √½.
const ROOT_HALF: u64 = 0x3FE6_A09E_667F_3BCD;
/// Bits of 1, and of 2⁵².
const ONE: u64 = 0x3FF0_0000_0000_0000;
const MANTISSA: u64 = 0x4330_0000_0000_0000;
/// Beyond this, e to the power is taken as at it: 10 to 304 either way.
const MOST_POWER: f64 = 700.0;

/// Returns the natural logarithm of a positive number that is no smaller than 10⁻³⁰⁷, to 4·10⁻¹⁶ of it or of 1, whichever is more.
///
/// # Example
/// ```
/// assert!((vatsketch::numeric::quick_ln(2.0) - 2.0_f64.ln()).abs() < 1e-15);
/// ```
#[must_use]
#[inline(always)]
#[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left")]
pub fn quick_ln(x: f64) -> f64 {
    // x = 2^k (1 + f) with 1 + f between √½ and √2.
    let bits = x.to_bits();
    let exponent = bits.wrapping_add(ONE - ROOT_HALF) >> 52;
    let k = f64::from_bits(MANTISSA | exponent) - (4_503_599_627_370_496.0 + 1023.0);
    let f = f64::from_bits(bits.wrapping_sub(exponent.wrapping_sub(1023) << 52)) - 1.0;
    // ln(1 + f) = 2 artanh s, s = f/(2 + f) below 0.172.
    let s = f / (2.0 + f);
    let z = s * s;
    let tail = 1.0 / 13.0 + z * (1.0 / 15.0 + z * (1.0 / 17.0 + z * (1.0 / 19.0 + z / 21.0)));
    let series = z * (1.0 / 3.0 + z * (1.0 / 5.0 + z * (1.0 / 7.0 + z * (1.0 / 9.0 + z * (1.0 / 11.0 + z * tail)))));
    k * LN_2.0 + (2.0 * s + (2.0 * s * series + k * LN_2.1))
}

/// Returns e to a power, to 10⁻¹⁵ of it; beyond a power of ±700 as at that.
///
/// # Example
/// ```
/// assert!((vatsketch::numeric::quick_exp(-1.0) * std::f64::consts::E - 1.0).abs() < 1e-15);
/// ```
#[must_use]
#[inline(always)]
#[expect(clippy::inline_always, reason = "a loop goes several at a time only where no call is left")]
pub fn quick_exp(x: f64) -> f64 {
    // Comparisons instead of `clamp`, which is slower here; what is no number stays so.
    let x = if x > MOST_POWER { MOST_POWER } else { x };
    let x = if x < -MOST_POWER { -MOST_POWER } else { x };
    // x = k ln 2 + r with r between −0.347 and 0.347.
    let rounded = x * std::f64::consts::LOG2_E + ROUNDING;
    let k = rounded - ROUNDING;
    let r = (x - k * LN_2.0) - k * LN_2.1;
    let tail = 1.0 / 5_040.0
        + r * (1.0 / 40_320.0 + r * (1.0 / 362_880.0 + r * (1.0 / 3_628_800.0 + r * (1.0 / 39_916_800.0 + r / 479_001_600.0))));
    let series = 0.5 + r * (1.0 / 6.0 + r * (1.0 / 24.0 + r * (1.0 / 120.0 + r * (1.0 / 720.0 + r * tail))));
    let power = f64::from_bits(rounded.to_bits().wrapping_add(1023) << 52);
    (1.0 + (r + r * r * series)) * power
}
