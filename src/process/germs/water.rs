//! The water activity of every place: of milk and curd by record, of the cheese by its sorption, looked up quickly.

use crate::law::sorption::Sorption;

crate::constants! {
    /// Milk and fresh curd.
    MILK_WATER_ACTIVITY = { "Water activity of milk and of fresh unsalted curd", 0.993, "1", (0.990, 0.995), Textbook, "lactose and salts of the milk; no cheese is taken to be wetter", FromMemory }
}

/// Nodes of the table.
const NODES: usize = 48;

/// Water activity against water, straight between nodes that stand closer where it is dry.
#[derive(Clone, Debug)]
pub(super) struct WaterTable {
    least: f64,
    per_node: f64,
    values: Vec<f64>,
}

impl WaterTable {
    /// Returns the table of one cheese between two waters, kg per kg of dry solids.
    pub(super) fn of(sorption: &Sorption, least: f64, most: f64) -> Self {
        let (low, high) = (least.max(1e-4).sqrt(), most.max(2e-4).sqrt());
        let per_node = ((high - low) / (NODES - 1) as f64).max(1e-9);
        let values = (0..NODES)
            .map(|node| {
                let root = low + per_node * node as f64;
                sorption.water_activity(root * root).min(MILK_WATER_ACTIVITY.value)
            })
            .collect();
        Self { least: low, per_node, values }
    }

    /// Returns the water activity at a water, kg per kg of dry solids.
    pub(super) fn at(&self, water: f64) -> f64 {
        let place = ((water.max(0.0).sqrt() - self.least) / self.per_node).max(0.0);
        let node = (place as usize).min(NODES - 2);
        let share = (place - node as f64).min(1.0);
        match (self.values.get(node), self.values.get(node + 1)) {
            (Some(low), Some(high)) => low + share * (high - low),
            _ => MILK_WATER_ACTIVITY.value,
        }
    }
}
