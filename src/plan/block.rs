//! Handlings that hang together by fixed gaps, and where each such block may begin.

use super::gap::{GRID_MIN, Gap, IMPOSSIBLE_POINTS};
use super::handling::Handling;
use super::waking::{Visit, alarm_points, still_up};
use super::{Hours, ScheduleError, Start};

/// Longest time that a plan may look over.
const LONGEST_DAYS: i64 = 400;

/// Handlings with fixed gaps between them, to the minute. Blocks begin on the grid, the first one perhaps at an odd minute.
#[derive(Clone, Debug)]
pub(super) struct Block {
    /// Minutes from its start, and hands, of each handling.
    pub steps: Vec<(i64, i64)>,
    /// Gap from the last handling to the next block, the shortest that ends on the grid.
    pub first_gap_min: i64,
    /// What that gap costs, and each one that is a quarter of an hour longer; empty for the last block.
    pub gap_points: Vec<i64>,
    /// How far each of these gaps lies outside the usual.
    pub shifts_min: Vec<i64>,
    /// Odd minutes of its start.
    odd_min: i64,
    /// First and last place on the grid where it may begin.
    pub from: i64,
    pub to: i64,
}

impl Block {
    fn new(odd_min: i64, hands_min: i64) -> Self {
        Self {
            steps: vec![(0, hands_min)],
            first_gap_min: 0,
            gap_points: Vec::new(),
            shifts_min: Vec::new(),
            odd_min,
            from: 0,
            to: 0,
        }
    }

    /// Returns minutes from its start to its last handling.
    pub fn span_min(&self) -> i64 {
        self.steps.last().map_or(0, |(at_min, _)| *at_min)
    }

    /// Returns minutes from its start to the end of its last handling.
    pub fn whole_min(&self) -> i64 {
        self.steps.last().map_or(0, |(at_min, hands_min)| at_min + hands_min)
    }

    /// Returns the minute at a place of the grid.
    pub const fn minute(&self, place: i64) -> i64 {
        GRID_MIN * place + self.odd_min
    }

    /// Returns how many places on the next block begins after the shortest gap.
    pub fn jump(&self) -> i64 {
        (self.odd_min + self.span_min() + self.first_gap_min) / GRID_MIN
    }

    /// Returns what its hands count if it begins at a place of the grid, with every alarm but that of its first handling: what they cost, and
    /// far more for each minute in which nobody can be there.
    pub fn points(&self, place: i64, hours: &Hours) -> i64 {
        let visits: Vec<Visit> = self.steps.iter().map(|(at_min, hands_min)| (self.minute(place) + at_min, *hands_min)).collect();
        let counts = |(start_min, hands_min): &Visit| {
            hours.points(*start_min, *hands_min) + IMPOSSIBLE_POINTS * hours.impossible_min(*start_min, *hands_min)
        };
        let hands: i64 = visits.iter().map(counts).sum();
        let pairs = visits.iter().zip(visits.iter().skip(1));
        hands + pairs.map(|(before, visit)| alarm_points(hours, Some(*before), *visit)).sum::<i64>()
    }

    /// Returns what the alarm of its first handling costs if it begins at a place of the grid and nobody is up.
    pub fn first_alarm(&self, place: i64, hours: &Hours) -> i64 {
        let hands_min = self.steps.first().map_or(0, |(_, hands_min)| *hands_min);
        alarm_points(hours, None, (self.minute(place), hands_min))
    }

    /// Returns its last handling if it begins at a place of the grid.
    pub fn last(&self, place: i64) -> Visit {
        (self.minute(place) + self.span_min(), self.whole_min() - self.span_min())
    }

    /// Returns after how many of its gaps, the shortest first, nobody has slept if its last handling was at night.
    pub fn short_gaps(&self) -> usize {
        let hands_min = self.whole_min() - self.span_min();
        let gaps_min = (0_i64..).zip(&self.gap_points).map(|(longer, _)| self.first_gap_min + longer * GRID_MIN);
        gaps_min.take_while(|gap_min| still_up(*gap_min, hands_min)).count()
    }

    /// Sets the gaps to the next block that end on the grid; without any, it returns the gap that stays fixed.
    fn fixed_gap_min(&mut self, gap: &Gap) -> Option<i64> {
        if gap.least_min == gap.most_min {
            return Some(gap.least_min);
        }
        let off_grid = (self.odd_min + self.span_min() + gap.least_min).rem_euclid(GRID_MIN);
        self.first_gap_min = gap.least_min + if off_grid == 0 { 0 } else { GRID_MIN - off_grid };
        if self.first_gap_min > gap.most_min {
            return Some(gap.usual_from_min);
        }
        let count = (gap.most_min - self.first_gap_min) / GRID_MIN;
        let gaps_min = || (0..=count).map(|longer| self.first_gap_min + longer * GRID_MIN);
        let (points, shifts_min) =
            (gaps_min().map(|gap_min| gap.points(gap_min)), gaps_min().map(|gap_min| gap.shift_min(gap_min)));
        (self.gap_points, self.shifts_min) = (points.collect(), shifts_min.collect());
        None
    }
}

/// Returns the blocks, each with the places where it may begin.
pub(super) fn blocks(handlings: &[Handling], start: &Start) -> Result<Vec<Block>, ScheduleError> {
    handlings.iter().try_for_each(Handling::check)?;
    start.check()?;
    let mut all = grouped(handlings, start)?;
    let (mut from, mut to) = start.places();
    if to < from {
        return Err(ScheduleError::NoQuarterHour { within_min: start.within_min() });
    }
    for block in &mut all {
        (block.from, block.to) = (from, to);
        from += block.jump();
        to += block.jump() + i64::try_from(block.gap_points.len()).unwrap_or(1) - 1;
    }
    if let Some(by_min) = start.by_min() {
        trim(&mut all, by_min);
    }
    let Some((first, last)) = all.first().zip(all.last()) else { return Err(ScheduleError::NothingToPlan) };
    if first.to < first.from {
        return Err(too_late(handlings, start, last.minute(last.from) + last.whole_min()));
    }
    let days = (last.minute(last.to) + last.whole_min() - first.minute(first.from)) / (24 * 60);
    if days > LONGEST_DAYS {
        return Err(ScheduleError::TooLong { days, most_days: LONGEST_DAYS });
    }
    Ok(all)
}

fn grouped(handlings: &[Handling], start: &Start) -> Result<Vec<Block>, ScheduleError> {
    let mut hands = handlings.iter().map(|handling| handling.hands_min);
    let mut block = Block::new(start.odd_min(), hands.next().ok_or(ScheduleError::NothingToPlan)?);
    let mut all = Vec::new();
    for (handling, next_hands_min) in handlings.iter().zip(hands) {
        match block.fixed_gap_min(&handling.then) {
            Some(gap_min) => block.steps.push((block.span_min() + gap_min, next_hands_min)),
            None => all.push(std::mem::replace(&mut block, Block::new(0, next_hands_min))),
        }
    }
    all.push(block);
    Ok(all)
}

/// Leaves only places from which everything can still be done by a minute.
fn trim(all: &mut [Block], by_min: i64) {
    let mut next_to = None;
    for block in all.iter_mut().rev() {
        let latest = next_to.map_or_else(
            || (by_min - block.odd_min - block.whole_min()).div_euclid(GRID_MIN),
            |next_to: i64| next_to - block.jump(),
        );
        block.to = block.to.min(latest);
        next_to = Some(block.to);
    }
}

fn too_late(handlings: &[Handling], start: &Start, soonest_min: i64) -> ScheduleError {
    let by_min = start.by_min().unwrap_or(soonest_min);
    let from_min = start.earliest_min();
    let (left_min, shortest_min, later_min) = (by_min - from_min, soonest_min - from_min, soonest_min - by_min);
    if let Start::Here { .. } = start {
        return ScheduleError::TooLateNow { left_min, shortest_min, later_min };
    }
    let longest = handlings.split_last().and_then(|(_, before)| before.iter().max_by_key(|handling| handling.then.least_min));
    ScheduleError::NoFeasibleStart {
        left_min,
        shortest_min,
        later_min,
        // Whole quarters of an hour move the whole run on the grid.
        earlier_min: later_min + (-later_min).rem_euclid(GRID_MIN),
        longest: longest.map_or_else(String::new, |handling| handling.name.clone()),
        longest_min: longest.map_or(0, |handling| handling.then.least_min),
    }
}
