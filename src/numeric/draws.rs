//! Numbers that look as if drawn by chance and are the same on every run.

/// A generator of numbers: splitmix64 (Steele, Lea and Flood 2014, from memory), which any seed serves.
///
/// # Example
/// ```
/// let mut draws = vatsketch::numeric::Draws::new(1_234_567);
/// assert_eq!(draws.whole(), 6_457_827_717_110_365_317);
/// ```
#[derive(Clone, Copy, Debug)]
pub struct Draws {
    state: u64,
}

impl Draws {
    /// Returns the generator of a seed.
    #[must_use]
    pub const fn new(seed: u64) -> Self {
        Self { state: seed }
    }

    /// Returns the next whole number.
    pub const fn whole(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let z = (self.state ^ (self.state >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Returns the next number from 0 to below 1.
    pub const fn share(&mut self) -> f64 {
        // The 53 bits that a number of this kind holds.
        (self.whole() >> 11) as f64 / (1_u64 << 53) as f64
    }
}

/// Returns so many draws of several quantities, each a number between 0 and 1: a Latin hypercube.
///
/// Each quantity has one draw in each of `count` equal parts of its range, in an order of its own (McKay, Beckman and Conover 1979, from
/// memory), so that its tenths are those of its range whatever the seed.
///
/// # Arguments
/// * `count`: draws; `quantities`: numbers in each
///
/// # Example
/// ```
/// let draws = vatsketch::numeric::latin_hypercube(10, 2, 7);
/// let mut tenths: Vec<u32> = draws.iter().map(|draw| (10.0 * draw[1]) as u32).collect();
/// tenths.sort();
/// assert_eq!(tenths, [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
/// ```
#[must_use]
pub fn latin_hypercube(count: usize, quantities: usize, seed: u64) -> Vec<Vec<f64>> {
    let mut chance = Draws::new(seed);
    let mut draws = vec![Vec::with_capacity(quantities); count];
    for _ in 0..quantities {
        let mut parts: Vec<usize> = (0..count).collect();
        // Fisher and Yates' shuffle; the share is below 1, so the partner is at most the part itself.
        for last in (1..count).rev() {
            parts.swap(last, (chance.share() * (last + 1) as f64) as usize);
        }
        for (draw, part) in draws.iter_mut().zip(parts) {
            draw.push((part as f64 + chance.share()) / count as f64);
        }
    }
    draws
}

/// Returns the number below which a share of some ascending numbers lies, straight between neighbours; none of none.
///
/// # Arguments
/// * `ascending`: may end in infinities; between a number and an infinity there is only the infinity
/// * `share`: 0 to 1
///
/// # Example
/// ```
/// use vatsketch::numeric::quantile;
/// assert_eq!(quantile(&[1.0, 2.0, 4.0], 0.75), Some(3.0));
/// ```
#[must_use]
pub fn quantile(ascending: &[f64], share: f64) -> Option<f64> {
    let at = share * (ascending.len().checked_sub(1)? as f64);
    let below = *ascending.get(at.floor() as usize)?;
    let above = *ascending.get(at.ceil() as usize)?;
    let part = at - at.floor();
    Some(if part > 0.0 && below.is_finite() { below + part * (above - below) } else { below })
}
