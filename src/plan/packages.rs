//! Which packages to buy: least cost or least waste, exactly.

use std::cmp::Ordering;

/// A package on the shelf. Sizes and needs are whole numbers of one unit (millilitres, grams, or hundredths of them).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Package {
    /// What it holds, > 0.
    pub size: i64,
    /// What it costs, in hundredths of the currency, > 0.
    pub price: i64,
    /// How many there are; none: as many as wanted.
    pub at_most: Option<i64>,
}

/// What counts first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Aim {
    /// Price, and a price on what is left over.
    LeastCost {
        /// Hundredths of the currency for each thousand units left over, ≥ 0.
        waste_price: i64,
    },
    /// What is left over, then price.
    LeastWaste,
}

/// What is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Want {
    /// The need, ≥ 0.
    pub need: i64,
    /// How much less would still do, ≥ 0.
    pub stretch: i64,
    /// What is at home already, ≥ 0.
    pub at_home: i64,
    /// What counts first.
    pub aim: Aim,
}

/// What is bought.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Basket {
    /// How many of each package, in the order given.
    pub counts: Vec<i64>,
    /// How many in all.
    pub packs: i64,
    /// What they hold.
    pub bought: i64,
    /// What they cost, in hundredths of the currency.
    pub price: i64,
    /// What is over at the end, with what was at home.
    pub left_over: i64,
    /// What is short of the need; never more than the stretch.
    pub short: i64,
}

/// Why nothing can be bought.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum PackageError {
    /// No package to choose from.
    #[error("{need} units are wanted, but no package is given to choose from; give at least one with its size and price")]
    NothingToChooseFrom {
        /// What is asked for.
        need: i64,
    },
    /// A package that holds nothing.
    #[error("package {number} holds {size} units; give a size above 0")]
    WrongSize {
        /// Which one, counted from 1.
        number: usize,
        /// Its size.
        size: i64,
    },
    /// A package that costs nothing.
    #[error("package {number} costs {price} hundredths; give a price above 0, or count what is free as being at home")]
    WrongPrice {
        /// Which one, counted from 1.
        number: usize,
        /// Its price.
        price: i64,
    },
    /// A number below 0.
    #[error("{what} is {value}; give 0 or more")]
    BelowZero {
        /// Which number.
        what: &'static str,
        /// Its value.
        value: i64,
    },
    /// There is not enough of it.
    #[error("{need} units are wanted, but all packages together hold only {most}; allow more of them, or another size")]
    NotEnough {
        /// What has to be bought.
        need: i64,
        /// What there is.
        most: i64,
    },
    /// Too many sums to look at.
    #[error("{steps} sums of these sizes would have to be looked at, at most {most} can be; round the sizes to tens or hundreds")]
    TooFine {
        /// Sums.
        steps: i64,
        /// The most.
        most: i64,
    },
}

/// Sums that are looked at, at most; a kitchen needs some thousands.
const MOST_STEPS: i64 = 400_000;
/// The greatest size, price or need, so that no sum overflows.
const GREATEST: i64 = 1_000_000_000;

/// Price and number of packages that make up a sum, the cheapest way.
type Paid = (i64, i64);

/// Returns which packages to buy, exactly: a dynamic programme over every sum of the sizes.
///
/// It minimises 1000·price + λ·waste subject to total ≥ need − stretch (or waste first, then price), where waste is what the total lies above
/// the need. Of equal ways it takes the one with less waste, then with fewer packages, then with more of the larger.
///
/// # Arguments
/// * `want`: the need and what is at home; what is at home is used first
/// * `packages`: what there is to buy; may be empty if nothing is needed
///
/// # Errors
/// [`PackageError`].
///
/// # Example
/// ```
/// use vatsketch::plan::{Aim, Package, Want, choose};
/// let packages = [Package { size: 500, price: 90, at_most: None }, Package { size: 1500, price: 190, at_most: None }];
/// let want = Want { need: 3200, stretch: 0, at_home: 0, aim: Aim::LeastCost { waste_price: 0 } };
/// let basket = choose(&want, &packages)?;
/// assert_eq!((basket.counts, basket.price, basket.left_over), (vec![1, 2], 470, 300));
/// # Ok::<(), vatsketch::plan::PackageError>(())
/// ```
pub fn choose(want: &Want, packages: &[Package]) -> Result<Basket, PackageError> {
    check(want, packages)?;
    let wanted = (want.need - want.at_home).max(0);
    let least = (wanted - want.stretch).max(0);
    if least == 0 {
        return Ok(basket(want, packages, vec![0; packages.len()]));
    }
    if packages.is_empty() {
        return Err(PackageError::NothingToChooseFrom { need: least });
    }
    let unit = packages.iter().fold(0, |unit, package| greatest_common_divisor(unit, package.size));
    let largest = packages.iter().map(|package| package.size).max().unwrap_or(0);
    // Prices are above 0: no best choice has a package to spare, so none reaches so far above the need.
    let steps = (least + largest + unit - 1) / unit + 1;
    if steps > MOST_STEPS {
        return Err(PackageError::TooFine { steps, most: MOST_STEPS });
    }
    let sums = Sums::of(packages, unit, usize::try_from(steps).unwrap_or(0));
    let rank = |sum: i64, (price, packs): Paid| {
        let waste = (sum - wanted).max(0);
        match want.aim {
            Aim::LeastCost { waste_price } => (1000 * price + waste_price * waste, waste, packs),
            Aim::LeastWaste => (waste, price, packs),
        }
    };
    let reached = sums.all().filter(|(sum, _)| *sum >= least);
    let ranked = reached.map(|(sum, way)| (rank(sum, way), sum));
    let best = ranked.min_by(|one, other| {
        // Only short baskets tie in all three: their waste is 0 whatever they hold.
        one.0.cmp(&other.0).then_with(|| if one.1 == other.1 { Ordering::Equal } else { sums.larger_first(one.1, other.1) })
    });
    let most = || packages.iter().map(|package| package.size * package.at_most.unwrap_or(0)).sum();
    let (_, sum) = best.ok_or_else(|| PackageError::NotEnough { need: least, most: most() })?;
    Ok(basket(want, packages, sums.counts(sum)))
}

fn check(want: &Want, packages: &[Package]) -> Result<(), PackageError> {
    let waste_price = if let Aim::LeastCost { waste_price } = want.aim { waste_price } else { 0 };
    let amounts = [
        ("the need", want.need),
        ("how much less would do", want.stretch),
        ("what is at home", want.at_home),
        ("the price of what is left over", waste_price),
    ];
    for (what, value) in amounts {
        if value < 0 {
            return Err(PackageError::BelowZero { what, value });
        }
        if value > GREATEST {
            return Err(PackageError::TooFine { steps: value, most: GREATEST });
        }
    }
    for (number, package) in (1..).zip(packages) {
        if !(1..=GREATEST).contains(&package.size) {
            return Err(PackageError::WrongSize { number, size: package.size });
        }
        if !(1..=GREATEST).contains(&package.price) {
            return Err(PackageError::WrongPrice { number, price: package.price });
        }
        if let Some(value) = package.at_most.filter(|count| *count < 0) {
            return Err(PackageError::BelowZero { what: "the number of packages that there are", value });
        }
    }
    Ok(())
}

fn basket(want: &Want, packages: &[Package], counts: Vec<i64>) -> Basket {
    let sum = |of: fn(&Package) -> i64| packages.iter().zip(&counts).map(|(package, count)| of(package) * count).sum::<i64>();
    let (bought, price) = (sum(|package| package.size), sum(|package| package.price));
    let have = bought + want.at_home;
    Basket {
        packs: counts.iter().sum(),
        bought,
        price,
        left_over: (have - want.need).max(0),
        short: (want.need - have).max(0),
        counts,
    }
}

const fn greatest_common_divisor(one: i64, other: i64) -> i64 {
    let (mut one, mut other) = (one, other);
    while other != 0 {
        (one, other) = (other, one % other);
    }
    one
}

/// The cheapest way to every sum from the smaller packages on: one row for the smallest alone, one for the two smallest, and so on.
struct Sums<'a> {
    packages: &'a [Package],
    unit: i64,
    /// Packages by size, the largest first, with the row of ways that uses it and all smaller ones.
    rows: Vec<(usize, Vec<Option<Paid>>)>,
}

impl<'a> Sums<'a> {
    fn of(packages: &'a [Package], unit: i64, steps: usize) -> Self {
        let mut order: Vec<usize> = (0..packages.len()).collect();
        order.sort_by_key(|at| std::cmp::Reverse(packages.get(*at).map_or(0, |package| package.size)));
        let mut row = vec![None; steps];
        if let Some(nothing) = row.first_mut() {
            *nothing = Some((0, 0));
        }
        let mut rows = Vec::with_capacity(packages.len());
        for at in order.into_iter().rev() {
            if let Some(package) = packages.get(at) {
                add(&mut row, package, usize::try_from(package.size / unit).unwrap_or(usize::MAX));
                rows.push((at, row.clone()));
            }
        }
        rows.reverse();
        Self { packages, unit, rows }
    }

    /// Returns every sum that can be made, with its cheapest way.
    fn all(&self) -> impl Iterator<Item = (i64, Paid)> {
        let row = self.rows.first().map(|(_, row)| row.as_slice()).unwrap_or_default();
        (0_i64..).zip(row).filter_map(|(step, way)| way.map(|way| (step * self.unit, way)))
    }

    /// Returns how many of each package make up a sum: of the cheapest ways the one with most of the largest, then of the next.
    fn counts(&self, sum: i64) -> Vec<i64> {
        let mut counts = vec![0; self.packages.len()];
        let mut left = sum;
        for (position, (at, row)) in self.rows.iter().enumerate() {
            let (Some(package), Some(count), Some(way)) = (self.packages.get(*at), counts.get_mut(*at), self.way(row, left)) else {
                continue;
            };
            let most = (left / package.size).min(package.at_most.unwrap_or(i64::MAX));
            let rest = |count: i64| match self.rows.get(position + 1) {
                Some((_, smaller)) => self.way(smaller, left - count * package.size),
                None => (count * package.size == left).then_some((0, 0)),
            };
            let fits =
                |count: &i64| rest(*count).is_some_and(|(price, packs)| (price + count * package.price, packs + count) == way);
            *count = (0..=most).rev().find(fits).unwrap_or(0);
            left -= *count * package.size;
        }
        counts
    }

    fn way(&self, row: &[Option<Paid>], sum: i64) -> Option<Paid> {
        row.get(usize::try_from(sum / self.unit).ok()?).copied().flatten()
    }

    /// Compares two sums by their counts, more of the larger first.
    fn larger_first(&self, one: i64, other: i64) -> Ordering {
        let counts = |sum: i64| {
            let counts = self.counts(sum);
            self.rows.iter().map(|(at, _)| counts.get(*at).copied().unwrap_or(0)).collect::<Vec<_>>()
        };
        counts(other).cmp(&counts(one))
    }
}

/// Adds a package to what the smaller ones make up.
fn add(row: &mut [Option<Paid>], package: &Package, step: usize) {
    match package.at_most {
        None => add_times(row, package, step, 1, true),
        Some(most) => {
            // Any number up to the most is a sum of 1, 2, 4, … and a rest, each taken once or not.
            let fitting = i64::try_from(row.len() / step.max(1)).unwrap_or(0);
            let (mut left, mut times) = (most.min(fitting), 1);
            while left > 0 {
                let taken = times.min(left);
                add_times(row, package, step, taken, false);
                (left, times) = (left - taken, 2 * times);
            }
        }
    }
}

/// Adds so many of a package at once, upwards where it may be repeated and downwards where not.
fn add_times(row: &mut [Option<Paid>], package: &Package, step: usize, times: i64, again: bool) {
    let Some(jump) = usize::try_from(times).ok().and_then(|times| step.checked_mul(times)) else { return };
    let steps = jump..row.len();
    let mut improve = |to: usize| {
        let from = row.get(to - jump).copied().flatten();
        let with = from.map(|(price, packs)| (price + times * package.price, packs + times));
        if let (Some(with), Some(way)) = (with, row.get_mut(to)) {
            *way = Some(way.map_or(with, |way| way.min(with)));
        }
    };
    if again { steps.for_each(&mut improve) } else { steps.rev().for_each(&mut improve) }
}
