//! To come.
/// Plan.
pub struct Plan;
/// Plan.
pub fn plan(_batch: &crate::batch::Batch) -> Plan {
    Plan
}
