//! Being laid.
fn main() {}
