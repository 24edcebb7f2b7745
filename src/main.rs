//! Arguments to window or command line; the only place that exits.

fn main() {}
